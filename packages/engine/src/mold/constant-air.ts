import { requireRange } from '../numerics/require-range.ts';
import type { MoldParameters } from './classes.ts';
import { criticalHumidityPercent, GROWTH_ABOVE_C, GROWTH_BELOW_C } from './critical-humidity.ts';
import { largestMoldIndex, SLOW_DOWN, weeksToFirstGrowth } from './growth.ts';

/** Constant air at a surface, and the index asked about. */
export interface ConstantAir {
  /** Surface temperature [°C], -90..90. */
  readonly temperatureC: number;
  /** At the surface [fraction 0..1]. */
  readonly relativeHumidity: number;
  /** Parameters of the surface, see `moldParameters`. */
  readonly parameters: MoldParameters;
  /** Index to be reached, above 0 up to 6. */
  readonly index: number;
}

/** When an index is reached in constant air. */
export interface TimeToIndex {
  /** Weeks from a clean surface, or `never`. */
  readonly weeks: number | 'never';
  /** Index that is approached in the end; 0 where nothing grows. */
  readonly maximumIndex: number;
}

/** The slow-down equation integrated: index-weeks of unhindered growth from far below up to an index. */
function unhindered(index: number, ceiling: number): number {
  const distance = SLOW_DOWN * (index - ceiling);
  return (distance - Math.log(-Math.expm1(distance))) / SLOW_DOWN;
}

/**
 * Weeks until mold reaches an index in constant air, by the closed form of the growth equation, from a clean surface.
 *
 * `never` when nothing grows or when the index lies at or above what is approached in the end.
 *
 * @throws EngineError `not-finite`, `out-of-range` naming the input
 * @source Hukka and Viitanen 1999; Ojanen, Viitanen et al. 2010; integral worked out from them
 */
export function weeksToMoldIndex(input: ConstantAir): TimeToIndex {
  const t = requireRange('surface temperature (°C)', input.temperatureC, -90, 90);
  const h = requireRange('relative humidity at the surface (fraction)', input.relativeHumidity, 0, 1);
  const index = requireRange('mold index to be reached', input.index, Number.MIN_VALUE, 6);
  const p = input.parameters;
  const ceiling = largestMoldIndex(t, h, p);
  if (index >= ceiling) return { weeks: 'never', maximumIndex: ceiling };
  const early = unhindered(Math.min(1, index), ceiling) - unhindered(0, ceiling);
  const late = index > 1 ? unhindered(index, ceiling) - unhindered(1, ceiling) : 0;
  const weeks =
    weeksToFirstGrowth(t, 100 * h, p) * (early / p.earlyGrowth + (late > 0 ? late / p.lateGrowth : 0));
  return { weeks: Number.isFinite(weeks) ? weeks : 'never', maximumIndex: ceiling };
}

/**
 * Relative humidity at the surface at which the index that is approached in constant air equals `index` [fraction]:
 * steady air below it can never bring the index there. Null when no humidity can, as on resistant surfaces for index 3,
 * and outside 0..50 °C.
 *
 * @param temperatureC surface temperature [°C], -90..90
 * @param index mold index, 0..6; default 3, the limit of ASHRAE 160
 * @throws EngineError `not-finite`, `out-of-range` naming the input
 * @source Ojanen, Viitanen et al. 2010 (`moldSources.sensitivityClasses`), ceiling solved for humidity
 */
export function steadyHumidityForMoldIndex(
  temperatureC: number,
  p: MoldParameters,
  index = 3,
): number | null {
  const t = requireRange('surface temperature (°C)', temperatureC, -90, 90);
  const m = requireRange('mold index', index, 0, 6);
  if (!(t > GROWTH_ABOVE_C && t < GROWTH_BELOW_C)) return null;
  const critical = criticalHumidityPercent(t, p);
  const above = m - p.ceilingBase;
  if (above <= 0) return critical / 100;
  const b = p.ceilingLinear;
  const discriminant = b * b - 4 * p.ceilingQuadratic * above;
  if (discriminant < 0) return null;
  // Smaller root in the form that keeps its digits and allows a straight ceiling.
  const x = (2 * above) / (b + Math.sqrt(discriminant));
  return x <= 1 ? (critical + x * (100 - critical)) / 100 : null;
}
