import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import { dewPointC } from './dew-point.ts';
import { enthalpyKJPerKg } from './enthalpy.ts';
import { humidityRatioFromVaporPressure } from './humidity-ratio.ts';
import { saturationPressurePa } from './saturation-pressure.ts';
import { absoluteHumidityGPerM3, moistAirDensityKgPerM3, specificVolumeM3PerKg } from './specific-volume.ts';
import { wetBulbC } from './wet-bulb.ts';

/** What a hygrometer and a barometer (or an altitude) give. */
export interface AirReading {
  /** Dry bulb, °C, −100 to 200. */
  readonly temperatureC: number;
  /** Fraction 0..1. */
  readonly relativeHumidity: number;
  /** Total (barometric) pressure, Pa, 30 000 to 120 000. */
  readonly pressurePa: number;
}

/** Everything that follows from an air reading. */
export interface AirState extends AirReading {
  readonly vaporPressurePa: number;
  /** kg of water vapor per kg of dry air. */
  readonly humidityRatio: number;
  /** NaN when the air is so dry that it has no dew point above −100 °C. */
  readonly dewPointC: number;
  readonly wetBulbC: number;
  /** kJ per kg of dry air. */
  readonly enthalpyKJPerKg: number;
  /** m³ per kg of dry air. */
  readonly specificVolumeM3PerKg: number;
  readonly densityKgPerM3: number;
  readonly absoluteHumidityGPerM3: number;
}

/**
 * All properties of moist air from temperature, relative humidity and pressure. The checked way into this subject;
 * loops call the kernels.
 *
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1, perfect-gas relations (no enhancement factor).
 * @throws EngineError `not-finite` or `out-of-range` naming the reading; `out-of-range` when the vapor pressure would
 *   reach the total pressure (hot, humid air above the boiling point)
 */
export function airState(reading: AirReading): AirState {
  const temperatureC = requireRange('air temperature in °C', reading.temperatureC, -100, 200);
  const relativeHumidity = requireRange('relative humidity as a fraction', reading.relativeHumidity, 0, 1);
  const pressurePa = requireRange('pressure in Pa', reading.pressurePa, 30_000, 120_000);
  const vaporPressurePa = relativeHumidity * saturationPressurePa(temperatureC);
  if (vaporPressurePa >= pressurePa) {
    throw new EngineError(
      'out-of-range',
      `air of ${temperatureC} °C and relative humidity ${relativeHumidity} would have a vapor pressure of ` +
        `${Math.round(vaporPressurePa)} Pa, more than the total pressure of ${pressurePa} Pa; check temperature and humidity`,
    );
  }
  const humidityRatio = humidityRatioFromVaporPressure(vaporPressurePa, pressurePa);
  return {
    temperatureC,
    relativeHumidity,
    pressurePa,
    vaporPressurePa,
    humidityRatio,
    dewPointC: dewPointC(vaporPressurePa),
    wetBulbC: wetBulbC(temperatureC, humidityRatio, pressurePa),
    enthalpyKJPerKg: enthalpyKJPerKg(temperatureC, humidityRatio),
    specificVolumeM3PerKg: specificVolumeM3PerKg(temperatureC, humidityRatio, pressurePa),
    densityKgPerM3: moistAirDensityKgPerM3(temperatureC, humidityRatio, pressurePa),
    absoluteHumidityGPerM3: absoluteHumidityGPerM3(temperatureC, humidityRatio, pressurePa),
  };
}
