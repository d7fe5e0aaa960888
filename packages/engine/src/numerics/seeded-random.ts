/**
 * A generator of repeatable pseudo-random numbers, evenly spread over 0 (included) to 1 (excluded). The same seed
 * gives the same numbers on every machine: only 32-bit integer arithmetic is used.
 *
 * Good enough to vary weather, samples and starting points; not for secrets and not for long statistical runs (period
 * about 4 billion).
 * Source: the public-domain 32-bit generator known as mulberry32 (from memory).
 * @param seed any finite number; its integer part modulo 2^32 is used
 */
export function seededRandom(seed: number): () => number {
  let state = Math.trunc(seed) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
