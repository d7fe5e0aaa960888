import type { ClimateYear } from '../src/climate/year.ts';
import { runSeason } from '../src/season/run.ts';
import type { SeasonCase } from '../src/season/season-case.ts';
import type { SeasonResult } from '../src/season/season-result.ts';
import type { Finding, Outcome, Study } from './study.ts';

/** A study with what the model makes of it. */
export interface Evaluated {
  readonly study: Study;
  readonly findings: readonly Finding[];
  /** Cases whose year did not repeat within tolerance, which the season says of itself. */
  readonly unsettled: readonly string[];
}

/** Runs the year of one case; the result must have its hourly series. */
type RunYear = (space: SeasonCase, weather: ClimateYear) => SeasonResult;

const season: RunYear = (space, weather) => runSeason([space], weather, { hourly: true })[0]!;

/**
 * Runs the cases of one study and evaluates them.
 * @param weatherOf weather by the id of a place
 * @param runYear the season, unless something stands in for it
 */
export function runStudy(
  study: Study,
  weatherOf: (place: string) => ClimateYear,
  runYear = season,
): Evaluated {
  const outcomes = new Map<string, Outcome>();
  for (const { name, place, space } of study.cases) {
    if (outcomes.has(name)) throw new Error(`${study.id} has two cases named ${name}`);
    const weather = weatherOf(place);
    const built = { ...space(weather), name };
    outcomes.set(name, { space: built, weather, result: runYear(built, weather) });
  }
  const findings = study.evaluate((name) => {
    const outcome = outcomes.get(name);
    if (outcome === undefined) throw new Error(`${study.id} has no case named ${name}`);
    return outcome;
  });
  const unsettled = [...outcomes].filter(([, { result }]) => !result.ending.converged).map(([name]) => name);
  return { study, findings, unsettled };
}
