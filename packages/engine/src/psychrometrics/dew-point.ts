import {
  logSaturationPressure,
  logSaturationPressureSlope,
  saturationPressurePa,
  TRIPLE_POINT_C,
} from './saturation-pressure.ts';

const LOWEST_PA = saturationPressurePa(-100);
const HIGHEST_PA = saturationPressurePa(200);
const ICE_AT_TRIPLE_POINT_PA = Math.exp(logSaturationPressure(TRIPLE_POINT_C, true));

/** Newton on the nearly straight ln p over 1/T needs four or five steps; the tests hold that over the whole range. */
const STEPS_MAX = 12;

/**
 * Dew point (frost point at or below 0.01 °C) in °C: the temperature whose saturation pressure is the vapor pressure.
 *
 * NaN, meaning "there is none", where the vapor pressure lies outside the saturation pressures at −100 and 200 °C
 * (0.0014 Pa and 1.55 MPa): dry air has no dew point. NaN gives NaN.
 * Newton's method on the logarithm of the pressure, which converges from any start in that range; the remaining error
 * is below 1e-9 K. Nothing is allocated.
 * Source: inverse of ASHRAE Handbook - Fundamentals 2017 ch. 1 eq. 5 and 6.
 * @param vaporPressurePa partial pressure of water vapor, Pa
 */
export function dewPointC(vaporPressurePa: number): number {
  if (!(vaporPressurePa >= LOWEST_PA && vaporPressurePa <= HIGHEST_PA)) return Number.NaN;
  const target = Math.log(vaporPressurePa);
  const overIce = vaporPressurePa <= ICE_AT_TRIPLE_POINT_PA;

  // Start from the Magnus form, good to a degree or two where it matters and safe elsewhere.
  const x = Math.log(vaporPressurePa / 610.5);
  let t = overIce ? (265.5 * x) / (21.875 - x) : (237.3 * x) / (17.269 - x);
  for (let step = 0; step < STEPS_MAX; step++) {
    const change = (target - logSaturationPressure(t, overIce)) / logSaturationPressureSlope(t, overIce);
    t += change;
    if (Math.abs(change) < 1e-10) break;
  }
  return t;
}
