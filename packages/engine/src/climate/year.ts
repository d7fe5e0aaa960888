import type { Notice } from '../numerics/notice.ts';

/** Where a climate holds. */
export interface Place {
  readonly name: string;
  /** North positive, −90..90. */
  readonly latitudeDeg: number;
  /** East positive, −180..180. */
  readonly longitudeDeg: number;
  /** Above sea level, m. */
  readonly elevationM: number;
  /** Local standard time minus universal time, hours; −5 for US Eastern. Daylight saving is never applied. */
  readonly utcOffsetHours: number;
}

/**
 * How a year came about. `typical-year-file`: a file of typical months, each from the calendar year that stood for it.
 * `single-year-file`: a file of one calendar year. `synthesized`: hours generated from monthly statistics.
 */
export type ClimateYearKind = 'typical-year-file' | 'single-year-file' | 'synthesized';

/** A run of hours of one quantity that the source did not give and that was interpolated. */
export interface FilledGap {
  /** What was missing, e.g. `dry bulb`; `whole hours` when the lines themselves were missing. */
  readonly quantity: string;
  /** Index 0..8759 of the first hour filled; a run that passes the end of December goes on in January. */
  readonly firstHour: number;
  readonly hours: number;
}

/** What was done to the numbers of the source. All zero for a clean file and for a synthesized year. */
export interface ClimateRepairs {
  /** Values changed or filled in, all quantities together. */
  readonly count: number;
  readonly filled: readonly FilledGap[];
  /** Hours whose dew point was missing and came from the relative humidity of the same line. */
  readonly dewPointFromRelativeHumidity: number;
  /** Hours whose dew point stood above the dry bulb by no more than 1 K and was lowered to it. */
  readonly dewPointLowered: number;
  /** Hours whose solar radiation was a little below zero (sensor offset at night) and was set to zero. */
  readonly negativeSolarZeroed: number;
}

/**
 * Outdoor air for 8760 hours in local standard time, no leap day. Index 0 is the hour that ends at 01:00 on January 1.
 *
 * The humidity ratio is what the humidity of the source comes to and is the value to calculate with. The relative
 * humidity follows from it with the convention of the psychrometrics (over ice at or below 0.01 °C). Weather stations
 * report dew point over liquid water at all temperatures, so freezing air can hold more vapor than ice allows; the
 * relative humidity is then 1, the humidity ratio stays, and a notice counts the hours.
 */
export interface ClimateYear {
  readonly place: Place;
  /** Dry bulb, °C. */
  readonly temperatureC: Float64Array;
  /** Fraction 0..1. */
  readonly relativeHumidity: Float64Array;
  /** kg of water vapor per kg of dry air. */
  readonly humidityRatio: Float64Array;
  /** Station pressure (not reduced to sea level), Pa. */
  readonly pressurePa: Float64Array;
  readonly windSpeedMPerS: Float64Array;
  /** Direction the wind blows from, degrees clockwise from north, 0..360. */
  readonly windFromDeg: Float64Array;
  /** Solar radiation on a horizontal plane, mean of the hour, W/m². */
  readonly globalHorizontalWPerM2: Float64Array;
  /** What the numbers come from, for print. */
  readonly source: string;
  readonly kind: ClimateYearKind;
  readonly notices: readonly Notice[];
  readonly repairs: ClimateRepairs;
}
