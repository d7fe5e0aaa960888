import type { Picture } from '../document/blocks.ts';
import { joined } from './png.ts';

/** Markers (ITU-T T.81 table B.1, from memory). */
const START_OF_SCAN = 0xda;
const END = 0xd9;
const APP0 = 0xe0;
const APP1 = 0xe1;
const APP2 = 0xe2;
const APP14 = 0xee;
const APP15 = 0xef;
const COMMENT = 0xfe;

const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** Segments that the picture needs: not camera data (APP1), maker's notes or comments; of APP2 only color profiles. */
function isKept(marker: number, segment: Uint8Array): boolean {
  if (marker === COMMENT) return false;
  if (marker === APP2) return String.fromCharCode(...segment.subarray(4, 15)) === 'ICC_PROFILE';
  return !(marker > APP0 && marker <= APP15) || marker === APP14;
}

/**
 * Where the picture ends, behind its last scan: cameras put further pictures, films and their places behind it. Undefined
 * where it does not end.
 */
function endOfPicture(bytes: Uint8Array, scan: number): number | undefined {
  let at = scan;
  while (at + 3 < bytes.length) {
    // The head of a scan or a table between two scans, then the scan itself up to the next marker.
    at += 2 + bytes[at + 2] * 256 + bytes[at + 3];
    while (at + 1 < bytes.length) {
      const next = bytes[at + 1];
      if (bytes[at] === 0xff && next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) break;
      at += 1;
    }
    if (bytes[at + 1] === END) return at + 2;
  }
  return undefined;
}

/** How the camera was held, 1 to 8, out of its data (Exif 2.32 tag 0x0112, from memory); 1 where it does not say. */
function orientationIn(segment: Uint8Array): number {
  const head = String.fromCharCode(...segment.subarray(4, 8));
  if (head !== 'Exif' || segment.length < 18) return 1;
  const view = new DataView(segment.buffer, segment.byteOffset + 10, segment.byteLength - 10);
  const little = view.getUint16(0) === 0x4949;
  const start = view.getUint32(4, little);
  if (start + 2 > view.byteLength) return 1;
  const count = view.getUint16(start, little);
  for (let i = 0; i < count; i += 1) {
    const at = start + 2 + 12 * i;
    if (at + 12 > view.byteLength) return 1;
    if (view.getUint16(at, little) !== 0x0112) continue;
    const value = view.getUint16(at + 8, little);
    return value >= 1 && value <= 8 ? value : 1;
  }
  return 1;
}

/** Camera data that say nothing but which way up the picture is. */
function orientationSegment(orientation: number): Uint8Array {
  return Uint8Array.from([
    ...[0xff, APP1, 0, 34],
    ...[0x45, 0x78, 0x69, 0x66, 0, 0],
    ...[0x4d, 0x4d, 0, 42, 0, 0, 0, 8],
    ...[0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0],
    ...[0, 0, 0, 0],
  ]);
}

/** A JPEG with nothing but its picture and which way up it is; null where it is cut off or damaged. */
export function jpegForSharing(bytes: Uint8Array): Picture | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: Uint8Array[] = [];
  let [width, height, orientation] = [0, 0, 1];
  for (let at = 2; at + 4 <= bytes.length; ) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1];
    if (marker === START_OF_SCAN) {
      const end = endOfPicture(bytes, at);
      if (width === 0 || height === 0 || end === undefined) return null;
      const way = orientation === 1 ? [] : [orientationSegment(orientation)];
      const turned = orientation > 4;
      return {
        bytes: joined([bytes.subarray(0, 2), ...way, ...parts, bytes.subarray(at, end)]),
        mediaType: 'image/jpeg',
        width: turned ? height : width,
        height: turned ? width : height,
      };
    }
    const end = at + 2 + view.getUint16(at + 2);
    if (end > bytes.length) return null;
    const segment = bytes.subarray(at, end);
    if (marker === APP1) orientation = Math.max(orientation, orientationIn(segment));
    if (isFrame(marker) && segment.length >= 9) {
      height = view.getUint16(at + 5);
      width = view.getUint16(at + 7);
    }
    if (isKept(marker, segment)) parts.push(segment);
    at = end;
  }
  return null;
}
