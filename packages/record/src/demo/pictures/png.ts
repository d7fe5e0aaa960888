import { zlibSync } from 'fflate';

const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const EIGHT_BITS = 8;
const INDEXED = 3;
/** PNG filter that writes each pixel as the difference to the one above. */
const UP = 2;

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k += 1) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

function crc32(bytes: Uint8Array): number {
  let c = 0xffffffff;
  for (const byte of bytes) c = CRC_TABLE[(c ^ byte) & 0xff] ^ (c >>> 8);
  return (c ^ 0xffffffff) >>> 0;
}

/** A chunk: length, name, data, check sum of name and data. */
function chunk(name: string, data: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(data.length + 12);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, data.length);
  for (let i = 0; i < 4; i += 1) bytes[4 + i] = name.charCodeAt(i);
  bytes.set(data, 8);
  view.setUint32(data.length + 8, crc32(bytes.subarray(4, data.length + 8)));
  return bytes;
}

/**
 * A picture with a palette as PNG (W3C Portable Network Graphics, third edition, from memory). The same pixels give the
 * same bytes everywhere.
 * @param pixels place in the palette of each pixel, row by row
 * @param palette red, green and blue of up to 256 colors
 */
export function indexedPng(
  width: number,
  height: number,
  pixels: Uint8Array,
  palette: readonly (readonly [number, number, number])[],
): Uint8Array {
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  header[8] = EIGHT_BITS;
  header[9] = INDEXED;
  const rows = new Uint8Array((width + 1) * height);
  for (let y = 0; y < height; y += 1) {
    const row = y * (width + 1);
    rows[row] = UP;
    for (let x = 0; x < width; x += 1) {
      const above = y === 0 ? 0 : pixels[(y - 1) * width + x];
      rows[row + 1 + x] = pixels[y * width + x] - above;
    }
  }
  const parts = [
    Uint8Array.from(SIGNATURE),
    chunk('IHDR', header),
    chunk('PLTE', Uint8Array.from(palette.flat())),
    chunk('IDAT', zlibSync(rows, { level: 6 })),
    chunk('IEND', new Uint8Array()),
  ];
  const whole = new Uint8Array(parts.reduce((sum, p) => sum + p.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
