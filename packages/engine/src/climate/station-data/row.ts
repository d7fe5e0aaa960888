/**
 * A built-in station as it is stored: twelve values per quantity, January first.
 *
 * Source: hourly typical years of Wilcox and Marion, Users Manual for TMY3 Data Sets, NREL/TP-581-43156 (2008), months
 * of 1976-2005; the statistics were computed from the hourly files and rounded to 0.01 K, 0.01 g/kg, 10 Pa, 0.01 m/s
 * and 0.1 W/m². Zones after PNNL-17211 (2015).
 */
export interface StationRow {
  readonly id: string;
  /** Number of the station in the source. */
  readonly stationNumber: string;
  readonly name: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  readonly utcOffsetHours: number;
  readonly ieccZone: string;
  readonly moistureRegime: string;
  readonly temperatureMeanC: readonly number[];
  /** Mean of the days' highest minus lowest hour. */
  readonly dailyRangeK: readonly number[];
  /** Over liquid water. */
  readonly dewPointMeanC: readonly number[];
  /** kg/kg */
  readonly humidityRatioMean: readonly number[];
  readonly pressurePa: readonly number[];
  readonly windSpeedMPerS: readonly number[];
  readonly temperatureMinC: readonly number[];
  readonly temperatureMaxC: readonly number[];
  readonly globalHorizontalMeanWPerM2: readonly number[];
}
