export type { AirReading, AirState } from './air-state.ts';
export { airState } from './air-state.ts';
export { dewPointC } from './dew-point.ts';
export { enthalpyKJPerKg } from './enthalpy.ts';
export {
  humidityRatioFromRelativeHumidity,
  humidityRatioFromVaporPressure,
  relativeHumidityFromHumidityRatio,
  saturationHumidityRatio,
  vaporPressureFromHumidityRatioPa,
} from './humidity-ratio.ts';
export { saturationPressurePa } from './saturation-pressure.ts';
export { psychrometricsSources } from './sources.ts';
export { absoluteHumidityGPerM3, moistAirDensityKgPerM3, specificVolumeM3PerKg } from './specific-volume.ts';
export { pressureAtAltitudePa, SEA_LEVEL_PRESSURE_PA } from './standard-pressure.ts';
export { humidityRatioFromWetBulb, wetBulbC } from './wet-bulb.ts';
