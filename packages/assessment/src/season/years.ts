import { season } from '@undercroft/engine';

/** So many years are kept for each weather: those of one job and of the change before. About 1 MB each. */
const KEPT = 16;

/** Years that were run last, by what they were run with. */
const ran = new WeakMap<season.SeasonWeather, Map<string, season.SeasonResult>>();

/** Air flows of networks that were met before. */
const flows: season.FlowTables = new WeakMap();

/** Everything of a case but its name. JSON has no infinity, and two cases that differ in one are not the same. */
export function keyOf({ name: _, ...space }: season.SeasonCase): string {
  return JSON.stringify(space, (__, value: unknown) =>
    typeof value === 'number' && !Number.isFinite(value) ? String(value) : value,
  );
}

/**
 * The year of each case, with its hours. A year that was just run in the same weather is not run again, so that a change
 * of one repair costs the years that it changes. Results are shared: do not change them.
 * @param weather the same object for the same hours
 */
export function yearsOf(
  cases: readonly season.SeasonCase[],
  weather: season.SeasonWeather,
): season.SeasonResult[] {
  const kept = ran.get(weather) ?? new Map<string, season.SeasonResult>();
  ran.set(weather, kept);
  const keys = cases.map(keyOf);
  const missing = new Map<string, season.SeasonCase>();
  keys.forEach((key, i) => {
    if (!kept.has(key)) missing.set(key, cases[i]);
  });
  const results = season.runSeason([...missing.values()], weather, { hourly: true, flows });
  [...missing.keys()].forEach((key, i) => {
    kept.set(key, results[i]);
  });
  const years = keys.map((key, i) => {
    const year = kept.get(key) as season.SeasonResult;
    kept.delete(key);
    kept.set(key, year);
    return { ...year, name: cases[i].name };
  });
  for (const oldest of [...kept.keys()].slice(0, Math.max(0, kept.size - KEPT))) kept.delete(oldest);
  return years;
}
