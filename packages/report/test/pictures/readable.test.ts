import { DEMO_JOBS, demoPictures } from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { readablePicture } from '../../src/pictures/readable.ts';

const letters = (text: string) => [...text].map((c) => c.charCodeAt(0));
const text = (bytes: Uint8Array) => String.fromCharCode(...bytes);
const has = (bytes: Uint8Array, word: string) => text(bytes).includes(word);

const segment = (marker: number, data: readonly number[]) => [
  0xff,
  marker,
  (data.length + 2) >> 8,
  (data.length + 2) & 255,
  ...data,
];

/** Camera data: which way up, and a place in words that must not be passed on. */
function exif(orientation: number, little = false): number[] {
  const pair = (value: number) => (little ? [value & 255, value >> 8] : [value >> 8, value & 255]);
  const long = (value: number) => (little ? [...pair(value), 0, 0] : [0, 0, ...pair(value)]);
  const entry = (tag: number, value: number) => [...pair(tag), ...pair(3), ...long(1), ...pair(value), 0, 0];
  return segment(0xe1, [
    ...letters('Exif'),
    0,
    0,
    ...letters(little ? 'II' : 'MM'),
    ...pair(42),
    ...long(8),
    ...pair(2),
    ...entry(0x0100, 4000),
    ...entry(0x0112, orientation),
    ...long(0),
    ...letters('41 N 73 W SECRET-PLACE'),
  ]);
}

const SCAN = [...segment(0xda, [1, 1, 0, 0, 63, 0]), 0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56];
const FRAME = segment(0xc0, [8, 0, 30, 0, 40, 1, 1, 0x11, 0]);

function jpeg(camera: readonly number[], more: readonly number[] = []): Uint8Array {
  return Uint8Array.from([
    ...[0xff, 0xd8],
    ...segment(0xe0, letters('JFIF\0....')),
    ...camera,
    ...segment(0xe1, letters('http://ns.adobe.com/xap/1.0/ SECRET-XMP')),
    ...segment(0xe2, letters('ICC_PROFILE\0 colors')),
    ...segment(0xe2, letters('MPF\0 SECRET-SECOND')),
    ...segment(0xed, letters('Photoshop SECRET-CITY')),
    ...segment(0xfe, letters('SECRET-COMMENT')),
    ...segment(0xdb, [0, 1, 2, 3]),
    ...FRAME,
    ...SCAN,
    // A second scan with a table before it, in which an end marker is only data.
    ...segment(0xc4, [0xff, 0xd9, 7]),
    ...SCAN,
    ...[0xff, 0xd9],
    ...more,
  ]);
}

describe('a JPEG', () => {
  test.each([
    [1, 40, 30],
    [3, 40, 30],
    [6, 30, 40],
    [8, 30, 40],
  ])('held as %d keeps its way up and its colors, and loses what the camera wrote', (way, width, height) => {
    for (const little of [false, true]) {
      const picture = readablePicture(jpeg(exif(way, little)));
      expect(picture).toMatchObject({ mediaType: 'image/jpeg', width, height });
      const { bytes } = picture!;
      expect(has(bytes, 'SECRET')).toBe(false);
      expect(has(bytes, 'ICC_PROFILE')).toBe(true);
      expect(has(bytes, 'JFIF')).toBe(true);
      // Read again it says the same, and loses nothing more.
      const again = readablePicture(bytes);
      expect(again).toMatchObject({ width, height });
      expect(again!.bytes).toEqual(bytes);
      expect(has(bytes, 'Exif')).toBe(way !== 1);
    }
  });

  test('ends with its picture: films and further pictures behind it are cut off', () => {
    const behind = [...letters('ftypmp42 SECRET-FILM'), ...jpeg(exif(1))];
    const { bytes } = readablePicture(jpeg(exif(1), behind))!;
    expect(bytes).toEqual(readablePicture(jpeg(exif(1)))!.bytes);
    expect([...bytes.slice(-2)]).toEqual([0xff, 0xd9]);
    // Both scans are there.
    expect(text(bytes).split(text(Uint8Array.from(SCAN))).length).toBe(3);
  });

  test('that is cut off anywhere is none', () => {
    const whole = jpeg(exif(6));
    for (let length = 2; length < whole.length; length += 1)
      expect(readablePicture(whole.subarray(0, length)), `${length} bytes`).toBeNull();
  });

  test('without a size is none', () => {
    const bytes = Uint8Array.from([0xff, 0xd8, ...SCAN, 0xff, 0xd9]);
    expect(readablePicture(bytes)).toBeNull();
  });
});

describe('a PNG', () => {
  const [png] = demoPictures(DEMO_JOBS.find((d) => d.name === 'doubted-liner')!).values();

  test('of the demo job is shown as it is', () => {
    const picture = readablePicture(png);
    expect(picture).toMatchObject({ mediaType: 'image/png', width: 240, height: 160 });
    expect(picture!.bytes).toEqual(png);
  });

  test('loses texts and camera data, and what lies behind its end', () => {
    const chunk = (name: string, data: string) => [0, 0, 0, data.length, ...letters(name + data), 0, 0, 0, 0];
    const head = 8 + 25;
    const bytes = Uint8Array.from([
      ...png.subarray(0, head),
      ...chunk('tEXt', 'Comment SECRET'),
      ...chunk('eXIf', 'SECRET'),
      ...png.subarray(head),
      ...letters('SECRET'),
    ]);
    expect(readablePicture(bytes)!.bytes).toEqual(png);
  });

  test('that is cut off is none', () => {
    for (const length of [8, 20, 60, png.length - 5])
      expect(readablePicture(png.subarray(0, length))).toBeNull();
  });
});

test('other bytes are no picture', () => {
  for (const bytes of [new Uint8Array(), Uint8Array.from(letters('GIF89a')), Uint8Array.from([0xff])])
    expect(readablePicture(bytes)).toBeNull();
});
