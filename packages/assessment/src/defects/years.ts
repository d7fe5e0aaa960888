import { season } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { Assumptions } from '../assumptions.ts';
import type { ChosenClimate } from '../climate.ts';
import type { PlanFigures } from '../season/machines.ts';
import type { SeasonAssessment } from '../season/season-assessment.ts';
import { seasonCaseOf } from '../season/season-case-of.ts';
import { seasonSite } from '../season/season-weather.ts';
import { asFound } from '../season/space-state.ts';
import { keyOf } from '../season/years.ts';
import type { SaidSpace } from './as-said.ts';
import type { MendedEffect, MendedYear } from './defect-result.ts';
import type { Mend } from './effects.ts';

/** Most defects whose mending is run through a year, by depth of the season; a year takes about 15 ms. */
const MOST: Readonly<Record<SeasonAssessment['depth'], number>> = { quick: 0, cases: 10, full: 20 };

/** Outcomes of years that were run last, by the weather and the case; small, so many are kept. */
const kept = new WeakMap<season.SeasonWeather, Map<string, MendedYear>>();
const KEPT = 200;

const outcomeOf = (year: season.SeasonResult): MendedYear => ({
  daysAbove80: year.daysAbove80,
  peakMoldIndex: year.peakMoldIndex,
  peakWoodMoisture: Math.max(...Object.values(year.peakWoodMoisture).map((w) => w.surface)),
});

function outcomes(cases: readonly season.SeasonCase[], weather: season.SeasonWeather): MendedYear[] {
  const known = kept.get(weather) ?? new Map<string, MendedYear>();
  kept.set(weather, known);
  const keys = cases.map(keyOf);
  const missing = new Map<string, season.SeasonCase>();
  keys.forEach((key, i) => {
    if (!known.has(key)) missing.set(key, cases[i]);
  });
  const ran = season.runSeason([...missing.values()], weather);
  [...missing.keys()].forEach((key, i) => {
    known.set(key, outcomeOf(ran[i]));
  });
  const found = keys.map((key) => known.get(key) as MendedYear);
  for (const oldest of [...known.keys()].slice(0, Math.max(0, known.size - KEPT))) known.delete(oldest);
  return found;
}

/** The mended jobs that lose the most water, as many as are run through a year. */
function heaviest(
  mends: readonly Mend[],
  effects: ReadonlyMap<string, MendedEffect>,
  most: number,
): SurveyedJob[] {
  const water = ({ key }: Mend) => Math.abs(effects.get(key)?.waterKgPerDay ?? 0);
  const sorted = [...mends].sort((a, b) => water(b) - water(a) || (a.key < b.key ? -1 : 1));
  return [...new Set(sorted.map((mend) => mend.job))].slice(0, most);
}

/**
 * The effects with the year of each mended space less the year as found, for the works that take away the most water: ten
 * where the cases of the year are run, twenty where everything is, none for a quick year.
 */
export function withYears(
  mends: readonly Mend[],
  effects: ReadonlyMap<string, MendedEffect>,
  said: SaidSpace,
  chosen: ChosenClimate,
  year: SeasonAssessment | undefined,
  seed: number,
  planFigures?: PlanFigures,
): ReadonlyMap<string, MendedEffect> {
  const found = year?.cases.find((one) => one.kind === 'as-found');
  const picked = year === undefined ? [] : heaviest(mends, effects, MOST[year.depth]);
  if (found === undefined || picked.length === 0) return effects;
  const site = seasonSite(chosen, seed);
  const shared = {
    space: said.space,
    site,
    networks: new Map(),
    ...(planFigures === undefined ? {} : { planFigures }),
  };
  const ran = outcomes(
    picked.map((job) => seasonCaseOf('one defect mended', asFound(job), shared, new Assumptions())),
    site.weather,
  );
  const years = new Map(picked.map((job, i) => [job, ran[i]]));
  const jobs = new Map(mends.map(({ key, job }) => [key, job]));
  return new Map(
    [...effects].map(([key, effect]): [string, MendedEffect] => {
      const job = jobs.get(key);
      const after = job === undefined ? undefined : years.get(job);
      if (after === undefined) return [key, effect];
      const change: MendedYear = {
        daysAbove80: after.daysAbove80 - found.daysAbove80,
        peakMoldIndex: after.peakMoldIndex - found.peakMoldIndex,
        peakWoodMoisture: after.peakWoodMoisture - found.peakWoodMoisture,
      };
      return [key, { ...effect, year: change }];
    }),
  );
}
