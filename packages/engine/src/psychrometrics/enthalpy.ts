/**
 * Specific enthalpy of moist air, kJ per kg of dry air, zero for dry air at 0 °C.
 *
 * Kernel: unchecked. The Handbook's real-gas table is up to 1 % higher (more near zero).
 * Source: ASHRAE Handbook - Fundamentals 2017 ch. 1 eq. 30.
 * @param temperatureC dry bulb, °C
 * @param humidityRatio kg of water vapor per kg of dry air
 */
export function enthalpyKJPerKg(temperatureC: number, humidityRatio: number): number {
  return 1.006 * temperatureC + humidityRatio * (2501 + 1.86 * temperatureC);
}
