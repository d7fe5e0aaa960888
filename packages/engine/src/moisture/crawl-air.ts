import {
  humidityRatioFromVaporPressure,
  vaporPressureFromHumidityRatioPa,
} from '../psychrometrics/humidity-ratio.ts';
import { saturationPressurePa } from '../psychrometrics/saturation-pressure.ts';
import { SEA_LEVEL_PRESSURE_PA } from '../psychrometrics/standard-pressure.ts';
import { vaporDensityKgPerM3 } from './vapor-density.ts';

/** Density of dry air that flows are counted with, kg/m³ at sea level; it falls with the barometer. */
const STANDARD_AIR_KG_PER_M3 = 1.2;

/** The air of the space as the paths of a budget see it. */
export interface CrawlAir {
  readonly temperatureC: number;
  readonly vaporPressurePa: number;
  readonly vaporDensity: number;
  readonly humidityRatio: number;
  readonly relativeHumidity: number;
  /** Dry air, kg/m³. */
  readonly airKgPerM3: number;
}

/** Air of a temperature and vapor pressure. Unchecked. */
function crawlAir(temperatureC: number, vaporPressurePa: number, pressurePa: number): CrawlAir {
  return {
    temperatureC,
    vaporPressurePa,
    vaporDensity: vaporDensityKgPerM3(vaporPressurePa, temperatureC),
    humidityRatio: humidityRatioFromVaporPressure(vaporPressurePa, pressurePa),
    relativeHumidity: vaporPressurePa / saturationPressurePa(temperatureC),
    airKgPerM3: standardAirKgPerM3(pressurePa),
  };
}

/** Dry air density that flows are counted with, kg/m³: 1.2 at sea level, in proportion to the pressure. */
export function standardAirKgPerM3(pressurePa: number): number {
  return (STANDARD_AIR_KG_PER_M3 * pressurePa) / SEA_LEVEL_PRESSURE_PA;
}

/** Air by temperature and relative humidity. Unchecked. */
export function airAtRelativeHumidity(
  temperatureC: number,
  relativeHumidity: number,
  pressurePa: number,
): CrawlAir {
  return crawlAir(temperatureC, relativeHumidity * saturationPressurePa(temperatureC), pressurePa);
}

/** Air by temperature and humidity ratio. Unchecked. */
export function airAtHumidityRatio(
  temperatureC: number,
  humidityRatio: number,
  pressurePa: number,
): CrawlAir {
  return crawlAir(temperatureC, vaporPressureFromHumidityRatioPa(humidityRatio, pressurePa), pressurePa);
}
