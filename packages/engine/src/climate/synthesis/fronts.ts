import { HOURS_PER_YEAR } from '../calendar.ts';

/**
 * Passing weather without a unit: an alternation of highs and lows, each from one turning point to the next on half a
 * cosine, with random spacing and random height up to 1. The year is a ring. Mean about 0, never beyond −1 and 1.
 * @param random numbers in 0..1, one after the other
 * @param shortestCycleH shortest time from one high to the next, h
 * @param longestCycleH longest, h
 */
export function frontSeries(
  random: () => number,
  shortestCycleH: number,
  longestCycleH: number,
): Float64Array {
  const { at, height } = turningPoints(random, shortestCycleH / 2, longestCycleH / 2);
  const series = new Float64Array(HOURS_PER_YEAR);
  let k = 0;
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    while (at[k + 1]! <= hour) k++;
    const progress = (hour - at[k]!) / (at[k + 1]! - at[k]!);
    const share = (1 - Math.cos(Math.PI * progress)) / 2;
    series[hour] = height[k]! * (1 - share) + height[k + 1]! * share;
  }
  return series;
}

/** Turning points from hour 0 to hour 8760, an even number of spans so that the ring closes from a low to a high. */
function turningPoints(
  random: () => number,
  shortestH: number,
  longestH: number,
): { at: number[]; height: number[] } {
  const spans: number[] = [];
  let total = 0;
  while (total < HOURS_PER_YEAR || spans.length % 2 === 1) {
    const span = shortestH + (longestH - shortestH) * random();
    spans.push(span);
    total += span;
  }
  const scale = HOURS_PER_YEAR / total;
  const at = [0];
  const height = [strength(random)];
  spans.forEach((span, k) => {
    at.push(k === spans.length - 1 ? HOURS_PER_YEAR : at[k]! + span * scale);
    const sign = k % 2 === 0 ? -1 : 1;
    height.push(k === spans.length - 1 ? height[0]! : sign * strength(random));
  });
  return { at, height };
}

/** Height of a turning point: most fronts are middling, few strong. */
function strength(random: () => number): number {
  return 0.25 + 0.75 * random();
}
