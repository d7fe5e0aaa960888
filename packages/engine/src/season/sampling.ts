import { seededRandom } from '../numerics/seeded-random.ts';

/**
 * Latin hypercube: for each of `dimensions` columns, `count` numbers of 0..1, one in each of `count` equal strata, in an
 * order of their own. The same seed gives the same sample.
 */
export function latinHypercube(count: number, dimensions: number, seed: number): Float64Array[] {
  const random = seededRandom(seed);
  return Array.from({ length: dimensions }, () => {
    const column = new Float64Array(count);
    for (let i = 0; i < count; i++) column[i] = (i + random()) / count;
    for (let i = count - 1; i > 0; i--) {
      const k = Math.floor(random() * (i + 1));
      const swap = column[i]!;
      column[i] = column[k]!;
      column[k] = swap;
    }
    return column;
  });
}

/** Ranks 1..n; equal values share their mean rank. */
function ranks(values: ArrayLike<number>): Float64Array {
  const order = Array.from({ length: values.length }, (_, i) => i).sort((a, b) => values[a]! - values[b]!);
  const out = new Float64Array(values.length);
  for (let i = 0; i < order.length; ) {
    let end = i + 1;
    while (end < order.length && values[order[end]!]! === values[order[i]!]!) end++;
    for (let k = i; k < end; k++) out[order[k]!] = (i + end + 1) / 2;
    i = end;
  }
  return out;
}

/** Rank correlation of Spearman, −1..1; 0 when one of the two does not vary. */
export function rankCorrelation(a: ArrayLike<number>, b: ArrayLike<number>): number {
  const x = ranks(a);
  const y = ranks(b);
  const mean = (x.length + 1) / 2;
  let xy = 0;
  let xx = 0;
  let yy = 0;
  for (let i = 0; i < x.length; i++) {
    const dx = x[i]! - mean;
    const dy = y[i]! - mean;
    xy += dx * dy;
    xx += dx * dx;
    yy += dy * dy;
  }
  return xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
}

/** Value below which a share of the values lies, by straight lines between the sorted values. */
export function quantile(values: ArrayLike<number>, share: number): number {
  const sorted = Float64Array.from(values).sort();
  const at = share * (sorted.length - 1);
  const low = Math.floor(at);
  const high = Math.min(low + 1, sorted.length - 1);
  return sorted[low]! + (at - low) * (sorted[high]! - sorted[low]!);
}

/** A chance from counted trials with its 95 % interval (Wilson's score interval, from memory). */
export interface Chance {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export function chanceOf(hits: number, trials: number): Chance {
  const z = 1.96;
  const p = hits / trials;
  const middle = (p + (z * z) / (2 * trials)) / (1 + (z * z) / trials);
  const half =
    (z / (1 + (z * z) / trials)) * Math.sqrt((p * (1 - p)) / trials + (z * z) / (4 * trials * trials));
  return { value: p, low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}
