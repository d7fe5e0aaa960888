import { relativeCapacity, relativeEfficiency } from './surfaces.ts';

/** Heat that one kg of vapor gives off when it condenses, J/kg, at crawl space temperatures. */
export const CONDENSATION_HEAT_J_PER_KG = 2.45e6;

/**
 * Heat in W that a dehumidifier leaves in the air of the space: all of its electricity plus the heat of the water that it
 * condenses. Nothing leaves but cool water. Unchecked.
 * @param electricW electric power, W
 * @param waterKgPerS water removed, kg/s
 */
export function dehumidifierHeatW(electricW: number, waterKgPerS: number): number {
  return electricW + waterKgPerS * CONDENSATION_HEAT_J_PER_KG;
}

/**
 * Electric power in W of a running machine: water over efficiency, both at the intake air.
 *
 * Kernel: unchecked, nothing allocated. Where the efficiency fit falls to zero the power at rating is returned: the
 * compressor turns though no water comes. In cold, dry air the quotient of two fits runs low (0.6 of the rated power at
 * 13 °C and 45 %), where a compressor draws nearly its full power; energy there is a lower bound.
 * Source: generic surfaces of `relativeCapacity`.
 * @param ratedKgPerDay capacity at 80 °F/60 %, kg/day
 * @param ratedKgPerKWh efficiency at 80 °F/60 %, kg (L) per kWh, above 0
 * @param temperatureC intake air, °C
 * @param relativeHumidity intake air, fraction 0..1
 */
export function runningPowerW(
  ratedKgPerDay: number,
  ratedKgPerKWh: number,
  temperatureC: number,
  relativeHumidity: number,
): number {
  const ratedW = (ratedKgPerDay / 24 / ratedKgPerKWh) * 1000;
  const efficiency = relativeEfficiency(temperatureC, relativeHumidity);
  if (efficiency === 0) return ratedW;
  return (ratedW * relativeCapacity(temperatureC, relativeHumidity)) / efficiency;
}
