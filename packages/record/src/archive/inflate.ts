import { Inflate } from 'fflate';

/** Packed bytes are fed in steps of this size, of which one can unpack to no more than 8 MB. */
const STEP = 8192;

/**
 * Unpacks deflated bytes that say they unpack to `size` bytes; null when they are damaged or give any other number. Stops
 * as soon as they give more, and where a whole step gives nothing (packed bytes that go on behind their end).
 */
export function inflate(packed: Uint8Array, size: number): Uint8Array | null {
  const unpacked = new Uint8Array(size);
  let at = 0;
  const stream = new Inflate((part) => {
    if (at + part.length <= size) unpacked.set(part, at);
    at += part.length;
  });
  try {
    for (let from = 0; from < packed.length; from += STEP) {
      const before = at;
      const last = from + STEP >= packed.length;
      stream.push(packed.subarray(from, from + STEP), last);
      if (at > size || (at === before && !last)) return null;
    }
  } catch {
    return null;
  }
  return at === size ? unpacked : null;
}
