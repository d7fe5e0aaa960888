import { type Band, known, requireBand, type Spread } from '../moisture/band.ts';
import { moistureBudget } from '../moisture/budget.ts';
import type { BudgetInput } from '../moisture/budget-input.ts';
import type { BudgetPath } from '../moisture/budget-result.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { RATING_POINTS, type RatingPointKey } from './rating-points.ts';
import { relativeCapacity } from './surfaces.ts';

/** Share of the time that a machine may run on the design day. Common practice, no source. */
export const RUN_MAX = 0.75;

/** The day a machine is sized for: every path of water, at the air that it is to hold. */
export interface DesignDay extends Omit<BudgetInput, 'state' | 'dehumidifier'> {
  /** Humidity to hold, fraction. */
  readonly targetRelativeHumidity: number;
  /** Water that wood and masonry still give off, kg/day; see `pullDown`. */
  readonly pullDownKgPerDay?: Band;
  /** Share of the time that the machine may run, above 0 to 1; 0.75 when absent. */
  readonly runMax?: number;
}

/** Capacity to look for on a label. */
export interface LabelNeed {
  readonly ratingPoint: RatingPointKey;
  /** For the steady load, and for the load with pull-down, kg/day. */
  readonly steadyKgPerDay: number;
  readonly pullDownKgPerDay: number;
}

/** Water to remove on the design day, and what a label has to say. */
export interface DesignLoad {
  readonly paths: readonly BudgetPath[];
  /** Water to remove once the building is dry, kg/day; 0 or more. */
  readonly steadyKgPerDay: number;
  /** The same with the pull-down on top: what a rented machine may take over. */
  readonly withPullDownKgPerDay: number;
  readonly steady: Spread;
  readonly temperatureC: number;
  readonly relativeHumidity: number;
  readonly runMax: number;
  /** Capacity at the design air relative to 80 °F/60 %. */
  readonly relativeCapacity: number;
  /** Empty when the surface gives no capacity at the design air. */
  readonly labels: readonly LabelNeed[];
  readonly notices: readonly Notice[];
}

/**
 * Capacity a label must show, kg/day, to remove water from an air state within a share of the time.
 *
 * Kernel: unchecked; endless where the surface gives no capacity.
 * Source: generic surface attributed to Winkler et al. 2011.
 * @param waterKgPerDay water to remove, kg/day
 * @param runMax share of the time running, above 0 to 1
 * @param point test air of the label
 */
export function labelCapacityKgPerDay(
  waterKgPerDay: number,
  temperatureC: number,
  relativeHumidity: number,
  runMax: number,
  point: RatingPointKey,
): number {
  const test = RATING_POINTS.find(({ key }) => key === point)!;
  return (
    ((waterKgPerDay / runMax) * relativeCapacity(test.temperatureC, test.relativeHumidity)) /
    relativeCapacity(temperatureC, relativeHumidity)
  );
}

/**
 * Latent balance of a design day: what has to be removed to hold the target, steadily and while the building dries, and
 * the capacity that a label must show for it at each test air.
 *
 * The paths are those of `moistureBudget` at the target; paths that dry (dry house air, cold ducts) count against the
 * load. The heat of the machine itself is not fed back: it warms the space and lowers the relative humidity a little.
 * @returns notices of the budget, `no-machine-needed` when the paths balance below the target, `no-capacity` when the
 *   surface gives none at the design air, and `extrapolated` below 18.3 °C
 * @throws EngineError `not-finite`, `out-of-range` or `bad-input` naming the input
 */
export function designLoad(day: DesignDay): DesignLoad {
  const { targetRelativeHumidity, pullDownKgPerDay = known(0), runMax = RUN_MAX, ...rest } = day;
  requireRange('target relative humidity as a fraction', targetRelativeHumidity, 0.2, 0.95);
  requireRange('share of time running', runMax, 0.05, 1);
  requireBand('pull-down in kg/day', pullDownKgPerDay, 0, 10_000);
  const budget = moistureBudget({
    ...rest,
    state: { kind: 'read', relativeHumidity: known(targetRelativeHumidity) },
    dehumidifier: { kind: 'running', ratedKgPerDay: known(0), runFraction: known(0) },
  });
  const paths = budget.paths.filter(({ key }) => key !== 'dehumidifier');
  const net = budget.unexplained!;
  const steady: Spread = {
    value: Math.max(0, -net.value),
    low: Math.max(0, -net.high),
    high: Math.max(0, -net.low),
    likelyLow: Math.max(0, -net.likelyHigh),
    likelyHigh: Math.max(0, -net.likelyLow),
  };
  const temperatureC = day.airTemperatureC.value;
  const withPullDown = steady.value + pullDownKgPerDay.value;
  const relative = relativeCapacity(temperatureC, targetRelativeHumidity);
  const label = (water: number, key: RatingPointKey) =>
    labelCapacityKgPerDay(water, temperatureC, targetRelativeHumidity, runMax, key);
  const notices = budget.notices.filter(
    ({ code }) => code !== 'sink-not-found' && code !== 'source-not-found',
  );
  if (steady.value === 0) {
    notices.push({
      code: 'no-machine-needed',
      message: `On this day the paths balance at or below ${(100 * targetRelativeHumidity).toFixed(0)} % without a machine.`,
    });
  }
  return {
    paths,
    steadyKgPerDay: steady.value,
    withPullDownKgPerDay: withPullDown,
    steady,
    temperatureC,
    relativeHumidity: targetRelativeHumidity,
    runMax,
    relativeCapacity: relative,
    labels:
      relative === 0
        ? []
        : RATING_POINTS.map(({ key }) => ({
            ratingPoint: key,
            steadyKgPerDay: label(steady.value, key),
            pullDownKgPerDay: label(withPullDown, key),
          })),
    notices,
  };
}
