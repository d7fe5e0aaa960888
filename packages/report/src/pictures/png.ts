import type { Picture } from '../document/blocks.ts';

const SIGNATURE_BYTES = 8;
/** Chunks that a picture is made of; texts, times and camera data are left out (W3C PNG, third edition, from memory). */
const KEPT = new Set(['IHDR', 'PLTE', 'tRNS', 'IDAT', 'IEND', 'gAMA', 'sRGB', 'cHRM', 'iCCP', 'pHYs']);

/** A PNG with nothing but what its picture needs; null where it is cut off or damaged. */
export function pngForSharing(bytes: Uint8Array): Picture | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: Uint8Array[] = [bytes.subarray(0, SIGNATURE_BYTES)];
  let [width, height] = [0, 0];
  for (let at = SIGNATURE_BYTES; at + 12 <= bytes.length; ) {
    const length = view.getUint32(at);
    const end = at + length + 12;
    if (end > bytes.length) return null;
    const name = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    if (name === 'IHDR' && length === 13) {
      width = view.getUint32(at + 8);
      height = view.getUint32(at + 12);
    }
    if (KEPT.has(name)) parts.push(bytes.subarray(at, end));
    if (name === 'IEND') {
      if (width === 0 || height === 0) return null;
      return { bytes: joined(parts), mediaType: 'image/png', width, height };
    }
    at = end;
  }
  return null;
}

/** Pieces as one. */
export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, p) => sum + p.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
