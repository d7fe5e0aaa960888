import { requireRange } from '../numerics/require-range.ts';
import { vaporPressureFromHumidityRatioPa } from '../psychrometrics/humidity-ratio.ts';
import { HOURS_PER_YEAR } from './calendar.ts';
import type { ClimateMonth, MonthlyClimate } from './monthly.ts';
import { stationDewPointC } from './station-dew-point.ts';
import type { ClimateYear } from './year.ts';

/** The most humid month. */
export interface DesignMonth extends ClimateMonth {
  /** 1..12 */
  readonly month: number;
}

/** Outdoor air that is more humid in only a few hours of the year. */
export interface DesignHour {
  /** kg/kg dry air */
  readonly humidityRatio: number;
  /** °C, of that humidity ratio at the mean pressure of the coincident hours */
  readonly dewPointC: number;
  /** Mean dry bulb of the hours with about this humidity, °C. */
  readonly temperatureC: number;
  /** Mean station pressure of these hours, Pa. */
  readonly pressurePa: number;
  /** How many hours the means are taken over. */
  readonly coincidentHours: number;
}

/** Half width of the humidity class whose hours count as coincident, as a share of the design value. */
const CLASS_HALF_WIDTH = 0.02;

/**
 * The month with the highest mean humidity ratio: the outdoor air for a first balance of the space. The earliest of
 * equal months.
 */
export function designMonth(monthly: MonthlyClimate): DesignMonth {
  let best = 0;
  monthly.months.forEach((month, m) => {
    if (month.humidityRatioMean > monthly.months[best]!.humidityRatioMean) best = m;
  });
  return { month: best + 1, ...monthly.months[best]! };
}

/**
 * The humidity ratio that is exceeded in a given share of the hours of a year, with the mean dry bulb of the hours in
 * which it is about that humid. At the default share of 0.4 % it is exceeded in 35 hours.
 *
 * The share of 0.4 % and the mean coincident dry bulb are the usual form of dehumidification design conditions (ASHRAE
 * Handbook - Fundamentals, chapter on climatic design information; from memory). There the coincident value is found
 * in classes of the measured record; here in a class of ±2 % of the humidity ratio. One typical year gives a milder
 * extreme than a long record.
 * @param exceededShare share of the hours, 0 (the most humid hour) to 0.5
 * @throws EngineError `not-finite` or `out-of-range` for another share
 */
export function designHour(year: ClimateYear, exceededShare = 0.004): DesignHour {
  requireRange('share of hours exceeded', exceededShare, 0, 0.5);
  const sorted = Float64Array.from(year.humidityRatio).sort();
  const exceeded = Math.floor(exceededShare * HOURS_PER_YEAR);
  const humidityRatio = sorted[HOURS_PER_YEAR - 1 - exceeded]!;
  let hours = 0;
  let temperatureSum = 0;
  let pressureSum = 0;
  for (let hour = 0; hour < HOURS_PER_YEAR; hour++) {
    if (Math.abs(year.humidityRatio[hour]! - humidityRatio) > CLASS_HALF_WIDTH * humidityRatio) continue;
    hours++;
    temperatureSum += year.temperatureC[hour]!;
    pressureSum += year.pressurePa[hour]!;
  }
  const pressurePa = pressureSum / hours;
  return {
    humidityRatio,
    dewPointC: stationDewPointC(vaporPressureFromHumidityRatioPa(humidityRatio, pressurePa)),
    temperatureC: temperatureSum / hours,
    pressurePa,
    coincidentHours: hours,
  };
}
