import type { Figure, Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { convert } from '../units/convert.ts';

/** Test air of the label that all relative figures refer to: 80 °F and 60 %. */
const RATING_C = convert(80, 'F', 'C');
const RATING_RH = 0.6;

/** Biquadratic a0 + a1 T + a2 T² + a3 R + a4 R² + a5 T R, T in °C and R in percent. Nothing allocated. */
type Surface = readonly [number, number, number, number, number, number];

function at(a: Surface, t: number, relativeHumidity: number): number {
  const r = 100 * relativeHumidity;
  return a[0] + t * (a[1] + a[2] * t) + r * (a[3] + a[4] * r) + a[5] * t * r;
}

/** Divides a surface by its value at the rating point, where the published fits read 0.975 to 0.987 instead of 1. */
function normalized(a: Surface): Surface {
  const n = at(a, RATING_C, RATING_RH);
  return [a[0] / n, a[1] / n, a[2] / n, a[3] / n, a[4] / n, a[5] / n];
}

const GENERIC_CAPACITY = normalized([
  -1.162525707, 0.02271469, -0.000113208, 0.021110538, -0.0000693034, 0.000378843,
]);
const GENERIC_EFFICIENCY = normalized([
  -1.902154518, 0.063466565, -0.000622839, 0.039540407, -0.000125637, -0.000176722,
]);
const UNIT_CAPACITY = normalized([
  -2.72487866408, 0.100711983591, -0.000990538285, 0.050053043874, -0.000203629282, -0.000341750531,
]);
const UNIT_EFFICIENCY = normalized([
  -2.388319068955, 0.093047739452, -0.001369700327, 0.066533716758, -0.000343198063, -0.000562490295,
]);

/**
 * Water that a dehumidifier removes at an air state, as a share of what it removes at 80 °F/60 %.
 *
 * Fast kernel: unchecked, nothing allocated, NaN in gives NaN out; 0 where the fit falls below zero (cold, dry air).
 * Below 18.3 °C it extrapolates the tests; `performanceAt` says so.
 * Source: generic surface attributed to Winkler, Christensen and Tomerlin 2011 (read in a public model source), divided
 * by its value at 80 °F/60 % (0.986).
 * @param temperatureC air at the intake, °C
 * @param relativeHumidity air at the intake, fraction 0..1
 */
export function relativeCapacity(temperatureC: number, relativeHumidity: number): number {
  return Math.max(0, at(GENERIC_CAPACITY, temperatureC, relativeHumidity));
}

/**
 * Water per kWh at an air state, as a share of that at 80 °F/60 %. Kernel, range and source as `relativeCapacity`.
 * @param temperatureC air at the intake, °C
 * @param relativeHumidity air at the intake, fraction 0..1
 */
export function relativeEfficiency(temperatureC: number, relativeHumidity: number): number {
  return Math.max(0, at(GENERIC_EFFICIENCY, temperatureC, relativeHumidity));
}

/** Which machine a surface speaks for: the generic fit, or one measured unit that shows how far machines differ. */
export type SurfaceKey = 'generic' | 'single-unit';

/** Capacity and efficiency relative to 80 °F/60 %. */
export interface Performance {
  readonly capacity: number;
  readonly efficiency: number;
}

/** Coldest test air behind the generic surface, °C (65 °F). */
const GENERIC_TESTED_FROM_C = convert(65, 'F', 'C');
/** Stated domain of the single unit. */
const UNIT_TESTED = { fromC: 21, toC: 32.2, fromRh: 0.4, toRh: 0.8 };

/**
 * Relative capacity and efficiency with what must be known about them. The checked way into the surfaces.
 *
 * Source: as `relativeCapacity`; `single-unit` is the record of one example unit, valid 21 to 32.2 °C and 40 to 80 %.
 * @param temperatureC air at the intake, °C, −40 to 50
 * @param relativeHumidity fraction 0..1
 * @returns notices `extrapolated` outside the tested air and `no-capacity` where nothing is removed
 * @throws EngineError `not-finite` or `out-of-range`
 */
export function performanceAt(
  temperatureC: number,
  relativeHumidity: number,
  surface: SurfaceKey = 'generic',
): Figure<Performance> {
  requireRange('intake temperature in °C', temperatureC, -40, 50);
  requireRange('intake relative humidity as a fraction', relativeHumidity, 0, 1);
  const generic = surface === 'generic';
  const capacity = at(generic ? GENERIC_CAPACITY : UNIT_CAPACITY, temperatureC, relativeHumidity);
  const efficiency = at(generic ? GENERIC_EFFICIENCY : UNIT_EFFICIENCY, temperatureC, relativeHumidity);
  const notices: Notice[] = [];
  const air = `${temperatureC.toFixed(1)} °C and ${(100 * relativeHumidity).toFixed(0)} %`;
  if (generic && temperatureC < GENERIC_TESTED_FROM_C - 1e-9) {
    notices.push({
      code: 'extrapolated',
      message: `Capacity at ${air} lies below the coldest test air (18.3 °C, 65 °F): it is a guess, and frost may take more.`,
    });
  }
  if (
    !generic &&
    (temperatureC < UNIT_TESTED.fromC ||
      temperatureC > UNIT_TESTED.toC ||
      relativeHumidity < UNIT_TESTED.fromRh ||
      relativeHumidity > UNIT_TESTED.toRh)
  ) {
    notices.push({
      code: 'extrapolated',
      message: `Capacity at ${air} lies outside the tests of this unit, 21 to 32.2 °C and 40 to 80 %.`,
    });
  }
  if (capacity <= 0) {
    notices.push({
      code: 'no-capacity',
      message: `At ${air} the fit falls to zero: count on no water removal.`,
    });
  }
  return {
    value: { capacity: Math.max(0, capacity), efficiency: Math.max(0, efficiency) },
    notices,
  };
}
