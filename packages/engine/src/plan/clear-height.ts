import type { Shape } from '../geometry/area-of-overlap.ts';
import type { Point } from '../geometry/point.ts';
import { sampleGrid } from '../geometry/sample-grid.ts';
import type { Figure, Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';

/** A clear height taken at one place: ground to the underside of the joists, m. */
export interface HeightSample {
  readonly at: Point;
  readonly clearHeightM: number;
}

/** Clear height over a whole floor. */
export interface ClearHeight {
  /** Mean over the floor area, m; times the area it gives the volume. */
  readonly meanM: number;
  /** Least and greatest height that was taken, m. */
  readonly minM: number;
  readonly maxM: number;
  readonly sampleCount: number;
  /** For each limit asked for, the share of the floor, 0..1, whose clear height is below it. */
  readonly shareBelow: readonly { readonly limitM: number; readonly share: number }[];
}

/**
 * Clear height at a place from heights taken near it, m: mean of the samples weighed by one over the distance squared
 * (Shepard 1968, from memory). Never above the greatest or below the least sample; a sample's own height at its
 * place. NaN when there are no samples.
 */
export function clearHeightAtM(samples: readonly HeightSample[], place: Point): number {
  let weights = 0;
  let sum = 0;
  for (const { at, clearHeightM } of samples) {
    const distance2 = (at.xM - place.xM) ** 2 + (at.yM - place.yM) ** 2;
    if (distance2 < 1e-18) return clearHeightM;
    weights += 1 / distance2;
    sum += clearHeightM / distance2;
  }
  return sum / weights;
}

/** Cells of the grid on which heights are averaged. */
const CELLS = 2500;

/**
 * Mean, least and greatest clear height of a floor from heights taken here and there; null without samples.
 *
 * The mean is taken over about 2,500 even cells inside the floor, each with the inverse-distance height at its center
 * (`clearHeightAtM`): samples crowded in one corner don't outweigh a single one in another. It repeats within about
 * 0.2 % of the range of heights when the plan is turned. Heights between samples are an assumption, and one sample is
 * taken for the whole floor; notices say so. A floor without area gives the plain mean of the samples.
 * @param limitsM heights, m, for which the share of floor below is wanted
 * @throws EngineError `not-finite`, `out-of-range` for a height that is not from 0 to 20 m, or a place that is no
 *   number
 */
export function clearHeightOver(
  floor: Shape,
  samples: readonly HeightSample[],
  limitsM: readonly number[] = [],
): Figure<ClearHeight> | null {
  if (samples.length === 0) return null;
  let minM = Number.POSITIVE_INFINITY;
  let maxM = 0;
  let plain = 0;
  for (const { at, clearHeightM } of samples) {
    requireRange('place of a clear height (m)', at.xM, -1e6, 1e6);
    requireRange('place of a clear height (m)', at.yM, -1e6, 1e6);
    requireRange('clear height (m)', clearHeightM, 0, 20);
    minM = Math.min(minM, clearHeightM);
    maxM = Math.max(maxM, clearHeightM);
    plain += clearHeightM / samples.length;
  }
  const { centers } = sampleGrid(floor, CELLS);
  const counts = limitsM.map(() => 0);
  let sum = 0;
  for (const center of centers) {
    const height = clearHeightAtM(samples, center);
    sum += height;
    for (let k = 0; k < limitsM.length; k += 1) if (height < limitsM[k]!) counts[k]! += 1;
  }
  const cells = centers.length;
  // Rounding of the sum must not carry the mean past the samples.
  const meanM = Math.min(maxM, Math.max(minM, cells > 0 ? sum / cells : plain));
  const shareBelow = limitsM.map((limitM, k) => ({
    limitM,
    share: cells > 0 ? counts[k]! / cells : plain < limitM ? 1 : 0,
  }));
  return {
    value: { meanM, minM, maxM, sampleCount: samples.length, shareBelow },
    notices: heightNotices(samples.length, minM, maxM),
  };
}

/** Fewer heights than this leave corners of a room unseen. Common practice, no source. */
const ENOUGH_SAMPLES = 4;

function heightNotices(count: number, minM: number, maxM: number): Notice[] {
  if (count === 1) {
    return [
      {
        code: 'one-clear-height',
        message: `One clear height, ${minM.toFixed(2)} m, is taken for the whole floor.`,
      },
    ];
  }
  if (count < ENOUGH_SAMPLES) {
    return [
      {
        code: 'few-clear-heights',
        message: `Only ${count} clear heights, ${minM.toFixed(2)} to ${maxM.toFixed(2)} m; heights between them are assumed.`,
      },
    ];
  }
  return [];
}
