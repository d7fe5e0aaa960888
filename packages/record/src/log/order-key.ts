import { generateKeyBetween, generateNKeysBetween } from 'fractional-indexing';

/**
 * True for a key that other keys can be made next to: letters and digits, sorted as ASCII; the first one says how many of
 * the others are the whole part (`a0` to `az`, `b00` to `bzz`, ..., `Zz` down to `Y00`), the rest is the fraction and does
 * not end in 0.
 */
export function isOrderKey(value: unknown): value is string {
  if (typeof value !== 'string' || !/^[A-Za-z][0-9A-Za-z]+$/.test(value)) return false;
  try {
    generateKeyBetween(value, null);
    return true;
  } catch {
    return false;
  }
}

/** A key between two others; null stands for the start or the end of the list. */
export function keyBetween(low: string | null, high: string | null): string {
  return generateKeyBetween(low, high);
}

/** Keys for the items of a new list. */
export function keysFor(count: number): string[] {
  return generateNKeysBetween(null, null, count);
}
