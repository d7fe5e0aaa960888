/**
 * Volume of moist air, m³ per kg of dry air in it.
 *
 * Kernel: unchecked.
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1 eq. 26.
 * @param temperatureC dry bulb, °C
 * @param humidityRatio kg of water vapor per kg of dry air
 * @param pressurePa total pressure, Pa
 */
export function specificVolumeM3PerKg(
  temperatureC: number,
  humidityRatio: number,
  pressurePa: number,
): number {
  return (287.042 * (temperatureC + 273.15) * (1 + 1.607858 * humidityRatio)) / pressurePa;
}

/**
 * Density of moist air, kg of air and vapor together per m³.
 *
 * Kernel: unchecked.
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1, density as (1 + W)/v.
 * @param temperatureC dry bulb, °C
 * @param humidityRatio kg of water vapor per kg of dry air
 * @param pressurePa total pressure, Pa
 */
export function moistAirDensityKgPerM3(
  temperatureC: number,
  humidityRatio: number,
  pressurePa: number,
): number {
  return (1 + humidityRatio) / specificVolumeM3PerKg(temperatureC, humidityRatio, pressurePa);
}

/**
 * Absolute humidity, g of water vapor per m³ of moist air.
 *
 * Kernel: unchecked.
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1, absolute humidity as W/v.
 * @param temperatureC dry bulb, °C
 * @param humidityRatio kg of water vapor per kg of dry air
 * @param pressurePa total pressure, Pa
 */
export function absoluteHumidityGPerM3(
  temperatureC: number,
  humidityRatio: number,
  pressurePa: number,
): number {
  return (1000 * humidityRatio) / specificVolumeM3PerKg(temperatureC, humidityRatio, pressurePa);
}
