import { HOURS_PER_YEAR, MONTH_START_HOUR } from '../calendar.ts';
import { monthMeans } from '../monthly.ts';

/** For every hour the two mid-months around it and the share of the later one. */
interface MonthWeights {
  readonly earlier: Uint8Array;
  readonly laterShare: Float64Array;
}

const WEIGHTS = monthWeights();

/**
 * Spreads twelve values, standing at mid-month, over the hours of the year on straight lines between them; December
 * joins January.
 * @param out 8760 hours, overwritten
 */
export function spreadOverYear(values: readonly number[], out: Float64Array): void {
  const { earlier, laterShare } = WEIGHTS;
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    const m = earlier[hour]!;
    const share = laterShare[hour]!;
    out[hour] = values[m]! * (1 - share) + values[m === 11 ? 0 : m + 1]! * share;
  }
}

/**
 * A course over the year whose monthly means are the given ones (to about a millionth of their spread): its mid-month
 * values are corrected pass by pass, and each pass at least halves the error.
 */
export function curveWithMeans(means: readonly number[]): Float64Array {
  const curve = new Float64Array(HOURS_PER_YEAR);
  const middle = [...means];
  for (let pass = 0; pass < 30; pass++) {
    spreadOverYear(middle, curve);
    const actual = monthMeans(curve);
    means.forEach((mean, m) => {
      middle[m]! += mean - actual[m]!;
    });
  }
  spreadOverYear(middle, curve);
  return curve;
}

function monthWeights(): MonthWeights {
  const middle = Array.from({ length: 12 }, (_, m) => (MONTH_START_HOUR[m]! + MONTH_START_HOUR[m + 1]!) / 2);
  const earlier = new Uint8Array(HOURS_PER_YEAR);
  const laterShare = new Float64Array(HOURS_PER_YEAR);
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    const at = hour + 0.5;
    let m = 11;
    while (m >= 0 && middle[m]! > at) m--;
    // Before mid-January the earlier middle is that of last December.
    const from = m < 0 ? middle[11]! - HOURS_PER_YEAR : middle[m]!;
    const to = m === 11 ? middle[0]! + HOURS_PER_YEAR : middle[m + 1]!;
    earlier[hour] = m < 0 ? 11 : m;
    laterShare[hour] = (at - from) / (to - from);
  }
  return { earlier, laterShare };
}
