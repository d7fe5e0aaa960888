import { climate, type season } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { type Assumptions, measured } from '../assumptions.ts';
import { airExchange } from '../budget/air-exchange.ts';
import { type Conditions, houseAt, houseHumidity } from '../budget/conditions.ts';
import { ofHouse } from '../budget/origins.ts';
import type { SpaceGeometry } from '../geometry.ts';
import { airFacts } from './air.ts';
import type { SeasonSite } from './season-weather.ts';
import type { SpaceState } from './space-state.ts';

const DAYS_PER_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
/** Doubt of temperatures that the year worked out [K]. */
const DOUBT_K = 1;

/** Mean of one day of an hourly series. */
function dayMean(series: ArrayLike<number>, day: number): number {
  let sum = 0;
  for (let hour = 24 * day; hour < 24 * day + 24; hour++) sum += series[hour];
  return sum / 24;
}

/** The day of the year, from 0, with the most water in the outdoor air; the first of equal ones. */
export function mostHumidDay(weather: season.SeasonWeather): number {
  let best = 0;
  let most = 0;
  for (let day = 0; day < 365; day++) {
    const mean = dayMean(weather.humidityRatio, day);
    if (mean > most) {
      most = mean;
      best = day;
    }
  }
  return best;
}

function dayInWords(day: number): string {
  let left = day;
  for (let month = 0; month < 12; month++) {
    if (left < DAYS_PER_MONTH[month]) return `${climate.MONTH_NAMES[month]} ${left + 1}`;
    left -= DAYS_PER_MONTH[month];
  }
  return '';
}

/**
 * The most humid day of the weather, with the temperatures that the space has on it without a machine.
 * @param hourly the year of that space without a machine
 */
export function designDay(
  state: SpaceState,
  space: SpaceGeometry,
  site: SeasonSite,
  hourly: season.SeasonHourly,
  assumptions: Assumptions,
): Conditions {
  const { weather } = site;
  const job: SurveyedJob = state.job;
  const day = mostHumidDay(weather);
  const outdoorC = dayMean(weather.temperatureC, day);
  const pressurePa = dayMean(weather.pressurePa, day);
  const crawlC = dayMean(hourly.temperatureC, day);
  const groundC = dayMean(hourly.groundSurfaceC, day);
  const houseC = houseAt(job, outdoorC, assumptions);
  const about = (key: string, title: string, value: number) =>
    assumptions.band(
      key,
      title,
      { value, low: value - DOUBT_K, high: value + DOUBT_K, unit: '°C' },
      'From the hourly year of the repaired space without a machine.',
    );
  const air = airExchange(
    airFacts(state, space, assumptions),
    { outdoorC, crawlC, houseC, windMPerS: dayMean(weather.windSpeedMPerS, day) },
    assumptions,
  );
  // At the mean of a day stack and wind may nearly rest, while its hours bring air in; so the hours count.
  const value = (dayMean(hourly.airChangesPerHour, day) * space.result.volumeM3) / 3600;
  const { low, high } = air.fromOutdoorsM3PerS;
  const overTheHours = { value, low: Math.min(low, value), high: Math.max(high, value), assumed: true };
  return {
    title: `most humid day, ${dayInWords(day)}`,
    pressurePa,
    crawlC: about('designDayAir', 'Temperature of the space on the most humid day', crawlC),
    outdoorC,
    outdoorHumidityRatio: measured(dayMean(weather.humidityRatio, day)),
    houseC,
    houseHumidityRatio: houseHumidity(job, houseC, pressurePa, assumptions),
    groundC: about('designDayGround', 'Temperature of the ground on the most humid day', groundC),
    air: { ...air, fromOutdoorsM3PerS: overTheHours },
    origins: {
      crawl: { kind: 'assumption', note: 'from the hourly year of the repaired space without a machine' },
      outdoor: { kind: 'climate', note: `mean of ${dayInWords(day)} at ${site.weather.place.name}` },
      house: ofHouse(job),
      ground: { kind: 'assumption', note: 'from the hourly year of the repaired space without a machine' },
    },
  };
}
