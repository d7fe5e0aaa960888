import { requireRange } from '../numerics/require-range.ts';

/** Barometric pressure of the standard atmosphere at sea level, Pa. */
export const SEA_LEVEL_PRESSURE_PA = 101_325;

/**
 * Barometric pressure of the standard atmosphere, Pa. Weather moves the true pressure by a few percent.
 *
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1 eq. 3, stated there for −5000 to 11 000 m (range from memory).
 * @param altitudeM height above sea level, m, −5000 to 11 000
 * @throws EngineError `not-finite` or `out-of-range`
 */
export function pressureAtAltitudePa(altitudeM: number): number {
  requireRange('altitude in m', altitudeM, -5000, 11_000);
  return SEA_LEVEL_PRESSURE_PA * (1 - 2.25577e-5 * altitudeM) ** 5.2559;
}
