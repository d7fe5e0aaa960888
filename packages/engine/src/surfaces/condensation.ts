import { requireRange } from '../numerics/require-range.ts';
import { dewPointC } from '../psychrometrics/dew-point.ts';
import { saturationPressurePa } from '../psychrometrics/saturation-pressure.ts';

/**
 * Monthly mean surface humidity above which mold must be expected on building surfaces (ISO 13788:2012, from memory).
 */
export const MOLD_SURFACE_HUMIDITY = 0.8;

/** What the air does to a surface that is colder or warmer than it. */
export interface SurfaceCondition {
  /** NaN when the air is too dry to have a dew point. */
  readonly dewPointC: number;
  /** Surface temperature minus dew point, K. Zero or less means water. */
  readonly marginK: number;
  /** Fraction; above 1 the vapor condenses on the surface. */
  readonly surfaceRelativeHumidity: number;
  /** True when the surface is at or below the dew point. */
  readonly condensing: boolean;
}

/**
 * Relative humidity of the air film on a surface, as a fraction: its vapor pressure over the saturation pressure at the
 * surface. Above 1 the surplus condenses; the value is not cut off.
 *
 * Kernel: unchecked, range of `saturationPressurePa`.
 * Source: ISO 13788:2012.
 * @param vaporPressurePa partial pressure of water vapor in the air, Pa
 * @param surfaceTemperatureC °C
 */
export function surfaceRelativeHumidity(vaporPressurePa: number, surfaceTemperatureC: number): number {
  return vaporPressurePa / saturationPressurePa(surfaceTemperatureC);
}

/**
 * Coldest temperature in °C that a surface may have before its humidity exceeds a limit.
 *
 * Kernel: unchecked; NaN when the air is so dry that no surface above −100 °C reaches the limit.
 * Source: ISO 13788:2012, saturation pressure at the surface = vapor pressure / limit.
 * @param vaporPressurePa partial pressure of water vapor in the air, Pa
 * @param surfaceHumidityLimit fraction above 0 to 1: 0.8 against mold, 1 against dripping water
 */
export function minimumSurfaceTemperatureC(vaporPressurePa: number, surfaceHumidityLimit: number): number {
  return dewPointC(vaporPressurePa / surfaceHumidityLimit);
}

/**
 * Dew point, surface humidity and verdict for air next to a surface. The checked way in.
 *
 * Source: ISO 13788:2012; saturation over ice at or below 0.01 °C.
 * @throws EngineError `not-finite` or `out-of-range` naming the reading
 */
export function surfaceCondition(reading: {
  /** Air, °C, −100 to 200. */
  readonly temperatureC: number;
  /** Of the air, fraction 0..1. */
  readonly relativeHumidity: number;
  /** °C, −100 to 200. */
  readonly surfaceTemperatureC: number;
}): SurfaceCondition {
  const temperatureC = requireRange('air temperature in °C', reading.temperatureC, -100, 200);
  const relativeHumidity = requireRange('relative humidity as a fraction', reading.relativeHumidity, 0, 1);
  const surfaceTemperatureC = requireRange(
    'surface temperature in °C',
    reading.surfaceTemperatureC,
    -100,
    200,
  );
  const vaporPressurePa = relativeHumidity * saturationPressurePa(temperatureC);
  const dew = dewPointC(vaporPressurePa);
  return {
    dewPointC: dew,
    marginK: surfaceTemperatureC - dew,
    surfaceRelativeHumidity: surfaceRelativeHumidity(vaporPressurePa, surfaceTemperatureC),
    condensing: surfaceTemperatureC <= dew,
  };
}
