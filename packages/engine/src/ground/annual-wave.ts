import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { AnnualWave } from './undisturbed.ts';

const DAYS_IN_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/**
 * The sine wave of one year that lies closest to twelve monthly means: mean, half swing and coldest day, for
 * `undisturbedGroundC`. Months weigh by their days.
 *
 * Air temperatures give the wave of the air; the bare ground surface follows within a degree or two where snow does
 * not lie. The half swing of a monthly mean is 1.1 % smaller than that of the wave it was taken from, because a month
 * smooths it; that is put back.
 * Source: least squares on one harmonic; computed, no publication needed.
 * @param monthlyMeansC twelve mean temperatures, January first, °C, each −60 to 60
 * @throws EngineError `bad-input` unless there are twelve; `not-finite` or `out-of-range` naming the month
 */
export function annualWaveFromMonthlyMeans(monthlyMeansC: readonly number[]): AnnualWave {
  if (monthlyMeansC.length !== 12) {
    throw new EngineError('bad-input', `twelve monthly means are needed; got ${monthlyMeansC.length}`);
  }
  // Normal equations of T = m + a cos + b sin, weighted by days; months are unequal, so the terms are not orthogonal.
  const s = { w: 0, c: 0, s: 0, cc: 0, cs: 0, ss: 0, t: 0, tc: 0, ts: 0 };
  let dayBefore = 0;
  for (let month = 0; month < 12; month++) {
    const t = requireRange(`mean temperature of month ${month + 1} in °C`, monthlyMeansC[month]!, -60, 60);
    const w = DAYS_IN_MONTH[month]!;
    const half = (Math.PI * w) / 365;
    const angle = (2 * Math.PI * (dayBefore + w / 2)) / 365;
    // Mean of cos over the month is the cosine at mid-month times sin(half)/half.
    const c = (Math.cos(angle) * Math.sin(half)) / half;
    const q = (Math.sin(angle) * Math.sin(half)) / half;
    s.w += w;
    s.c += w * c;
    s.s += w * q;
    s.cc += w * c * c;
    s.cs += w * c * q;
    s.ss += w * q * q;
    s.t += w * t;
    s.tc += w * t * c;
    s.ts += w * t * q;
    dayBefore += w;
  }
  const cc = s.cc - (s.c * s.c) / s.w;
  const cs = s.cs - (s.c * s.s) / s.w;
  const ss = s.ss - (s.s * s.s) / s.w;
  const tc = s.tc - (s.t * s.c) / s.w;
  const ts = s.ts - (s.t * s.s) / s.w;
  const determinant = cc * ss - cs * cs;
  const a = (tc * ss - ts * cs) / determinant;
  const b = (ts * cc - tc * cs) / determinant;
  const warmest = (Math.atan2(b, a) * 365) / (2 * Math.PI);
  return {
    meanC: (s.t - a * s.c - b * s.s) / s.w,
    amplitudeK: Math.hypot(a, b),
    coldestDay: (warmest + 1.5 * 365) % 365,
  };
}
