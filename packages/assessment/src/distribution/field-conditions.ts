import type { season } from '@undercroft/engine';
import { Assumptions } from '../assumptions.ts';
import type { Conditions } from '../budget/conditions.ts';
import type { ChosenClimate } from '../climate.ts';
import type { SpaceGeometry } from '../geometry.ts';
import { airFacts, keptNetworks } from '../season/air.ts';
import { designDay, mostHumidDay } from '../season/design-day.ts';
import { seasonCaseOf } from '../season/season-case-of.ts';
import { type SeasonSite, seasonSite } from '../season/season-weather.ts';
import type { SpaceState } from '../season/space-state.ts';
import { seasonWalls } from '../season/walls.ts';
import { yearsOf } from '../season/years.ts';
import { type LeakDrive, type OpeningAir, openingAir } from './leak-places.ts';

/** One state of outdoors, house, ground and air for which a field is worked out. */
export interface FieldConditions {
  readonly conditions: Conditions;
  readonly openings: readonly OpeningAir[];
  readonly walls: season.SeasonWalls;
}

function windOn(weather: season.SeasonWeather, day: number): number {
  let sum = 0;
  for (let hour = 24 * day; hour < 24 * day + 24; hour++) sum += weather.windSpeedMPerS[hour];
  return sum / 24;
}

function withAir(
  state: SpaceState,
  space: SpaceGeometry,
  site: SeasonSite,
  conditions: Conditions,
  windMPerS: number,
  noted: Assumptions,
): FieldConditions {
  const drive: LeakDrive = {
    facts: airFacts(state, space, noted),
    outdoorC: conditions.outdoorC,
    crawlC: conditions.crawlC.value,
    houseC: conditions.houseC,
    windMPerS,
  };
  return {
    conditions,
    openings: openingAir(drive, noted),
    walls: seasonWalls(state.job, space, site.base.walls, noted),
  };
}

/**
 * The most humid day of the weather in a space, with the temperatures that it has on it without a machine. Runs that year where it was not just run: about 20 ms, and what the weather costs.
 */
export function designDayField(
  state: SpaceState,
  space: SpaceGeometry,
  chosen: ChosenClimate,
  seed: number,
): FieldConditions {
  const noted = new Assumptions();
  const site = seasonSite(chosen, seed);
  const shared = { space, site, networks: keptNetworks() };
  const without = { ...seasonCaseOf('without a machine', state, shared, noted), machines: [] };
  const [year] = yearsOf([without], site.weather);
  const day = designDay(state, space, site, year.hourly as season.SeasonHourly, noted);
  return withAir(state, space, site, day, windOn(site.weather, mostHumidDay(site.weather)), noted);
}

/** The day of the survey, as its balance has it. */
export function surveyDayField(
  state: SpaceState,
  space: SpaceGeometry,
  chosen: ChosenClimate,
  seed: number,
  conditions: Conditions,
): FieldConditions {
  const { job } = state;
  const month = Number(
    (job.readings.air.find((a) => a.where === 'crawl')?.when ?? job.header.surveyedOn ?? '').slice(5, 7),
  );
  const windMPerS = chosen.monthly.months[month - 1]?.windSpeedMPerS ?? 0;
  return withAir(state, space, seasonSite(chosen, seed), conditions, windMPerS, new Assumptions());
}
