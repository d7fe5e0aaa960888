import type { season } from '@undercroft/engine';
import type { Assumptions } from '../assumptions.ts';
import { caseResult } from './case-result.ts';
import { failureResult, fortnight } from './failure.ts';
import type { RepairGiven } from './repair-rule.ts';
import { type ChosenRepair, repaired } from './repairs.ts';
import type { SeasonCaseResult } from './season-assessment.ts';
import { type CaseGround, seasonCaseOf } from './season-case-of.ts';
import type { SpaceState } from './space-state.ts';
import { yearsOf } from './years.ts';

/** The space as found, with its case and its year by the hour. */
export interface StateYear {
  readonly state: SpaceState;
  readonly space: season.SeasonCase;
  readonly year: season.SeasonResult;
}

/** Years of a job and the state that it ends in. */
export interface RanCases {
  readonly cases: SeasonCaseResult[];
  readonly final: StateYear;
}

const FAILURE_WORDS = { power: 'power out for a fortnight', dehumidifier: 'machine out for a fortnight' };

/** Failures that can befall a space: those of what it has. */
function failuresOf(final: season.SeasonCase): season.SeasonFailure['what'][] {
  const powered = final.machines.length > 0 || final.fans.length > 0 || final.ducts.areaM2 > 0;
  return [
    ...(powered ? (['power'] as const) : []),
    ...(final.machines.length > 0 ? (['dehumidifier'] as const) : []),
  ];
}

function hourlyHumidity(year: season.SeasonResult): ArrayLike<number> {
  return (year.hourly as season.SeasonHourly).relativeHumidity;
}

/**
 * Runs each repair alone, all repairs, and what they end in with each failure; with `found` they make the cases of a job.
 * @param quick leaves the single repairs and the failures out
 */
export function runCases(
  found: StateYear,
  repairs: readonly ChosenRepair[],
  given: RepairGiven,
  shared: CaseGround,
  later: Assumptions,
  quick = false,
): RanCases {
  const acting = repairs.filter((r) => r.meaning.changesTheYear);
  const single = repairs.length > 1 && !quick ? acting : [];
  const state = repaired(found.state, repairs, given);
  const worked = repairs.length > 0;
  const space = worked ? seasonCaseOf('all repairs', state, shared, later) : found.space;
  const failures = quick ? [] : failuresOf(space);
  const years = yearsOf(
    [
      ...single.map((r) => seasonCaseOf(r.meaning.title, repaired(found.state, [r], given), shared, later)),
      ...(worked ? [space] : []),
      ...failures.map((what) => ({
        ...space,
        name: `${space.name}, ${FAILURE_WORDS[what]}`,
        failures: [fortnight(what)],
      })),
    ],
    shared.site.weather,
  );
  const year = worked ? years[single.length] : found.year;
  const failed = years.slice(years.length - failures.length);
  const allIds = repairs.map((r) => r.meaning.id);
  return {
    final: { state, space, year },
    cases: [
      caseResult(found.year, 'as-found', []),
      ...single.map((r, i) => caseResult(years[i], 'repair', [r.meaning.id])),
      ...(worked ? [caseResult(year, 'all-repairs', allIds)] : []),
      ...failures.map((what, i) =>
        caseResult(
          failed[i],
          'failure',
          allIds,
          failureResult(what, hourlyHumidity(failed[i]), hourlyHumidity(year)),
        ),
      ),
    ],
  };
}
