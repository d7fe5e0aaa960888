declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(temperatureC: number): number;
    /** [humidity ratio, wet bulb, dew point, vapor pressure Pa, enthalpy J/kg, volume m³/kg, degree of saturation] */
    CalcPsychrometricsFromRelHum(
      temperatureC: number,
      relativeHumidity: number,
      pressurePa: number,
    ): number[];
    GetHumRatioFromTWetBulb(temperatureC: number, wetBulbC: number, pressurePa: number): number;
    GetMoistAirDensity(temperatureC: number, humidityRatio: number, pressurePa: number): number;
  };
  export default psychrolib;
}
