import { season } from '@undercroft/engine';
import { Assumptions } from '../assumptions.ts';
import type { RepairGiven } from './repair-rule.ts';
import type { ChosenRepair } from './repairs.ts';
import type { RankingResult, RepairOutcomeChange, RepairSetResult } from './season-assessment.ts';
import { type CaseGround, seasonCaseOf } from './season-case-of.ts';
import type { SpaceState } from './space-state.ts';

/** Up to this many repairs every combination is run. */
const EVERY_UP_TO = 8;

/** Years that a ranking of so many repairs runs. */
export function rankingYears(repairs: number): number {
  return repairs <= EVERY_UP_TO ? 2 ** repairs : 2 * repairs + 2;
}

function changeOf(outcome: season.SeasonOutcome): RepairOutcomeChange {
  const { daysAbove80, peakMoldIndex, peakWoodMoisture, yearlyCostCents } = outcome;
  return { daysAbove80, peakMoldIndex, peakWoodMoisture, yearlyCostCents };
}

function setResult(set: season.RepairSet, titles: ReadonlyMap<string, string>): RepairSetResult {
  return {
    repairIds: set.repairs,
    title: set.repairs.map((id) => titles.get(id) ?? id).join(' + ') || 'nothing done',
    priceCents: set.costCents,
    ...changeOf(set.outcome),
  };
}

/** Dryness that a repair buys, alone and last: days above 80 %, then mold, then wood. Negative is drier. */
function byDryness(a: season.RepairEffect, b: season.RepairEffect): number {
  const sum = (e: season.RepairEffect, pick: (o: season.SeasonOutcome) => number) =>
    pick(e.alone) + pick(e.last);
  return (
    sum(a, (o) => o.daysAbove80) - sum(b, (o) => o.daysAbove80) ||
    sum(a, (o) => o.peakMoldIndex) - sum(b, (o) => o.peakMoldIndex) ||
    sum(a, (o) => o.peakWoodMoisture) - sum(b, (o) => o.peakWoodMoisture) ||
    (a.name < b.name ? -1 : 1)
  );
}

/**
 * Which repairs buy dryness: a year for every combination of up to eight of them; of more, each alone and each left
 * out. Repairs that change nothing in the year take no part.
 * @param step is told how many years have been begun
 */
export function rankRepairs(
  found: SpaceState,
  repairs: readonly ChosenRepair[],
  given: RepairGiven,
  shared: CaseGround,
  step: (years: number) => void,
): RankingResult {
  const assumptions = new Assumptions();
  const states = new WeakMap<season.SeasonCase, SpaceState>();
  const caseOf = (state: SpaceState) => {
    const made = seasonCaseOf('as found', state, shared, assumptions);
    states.set(made, state);
    return made;
  };
  const years = rankingYears(repairs.length);
  // Each set of k repairs applies k of them, so all sets apply half of the repairs on average.
  const calls = (years * repairs.length) / 2;
  let applied = 0;
  const unpriced: string[] = [];
  const engineRepairs = repairs.map(({ meaning, apply }): season.SeasonRepair => {
    if (meaning.priceCents === undefined) unpriced.push(meaning.title);
    return {
      name: meaning.id,
      costCents: meaning.priceCents ?? 0,
      apply: (space) => {
        applied += 1;
        step(Math.min(years, Math.floor((years * applied) / calls)));
        return caseOf(apply(states.get(space) as SpaceState, given));
      },
    };
  });
  const ran = season.runCombinations(caseOf(found), engineRepairs, shared.site.weather);
  const titles = new Map(repairs.map(({ meaning }) => [meaning.id, meaning.title]));
  return {
    complete: ran.complete,
    yearsRun: ran.sets.length,
    effects: [...ran.effects].sort(byDryness).map((effect) => ({
      id: effect.name,
      title: titles.get(effect.name) ?? effect.name,
      alone: changeOf(effect.alone),
      last: changeOf(effect.last),
    })),
    best: ran.best.map((set) => setResult(set, titles)),
    sets: ran.sets.map((set) => setResult(set, titles)),
    notices: [
      ...ran.notices,
      ...(unpriced.length === 0
        ? []
        : [
            {
              code: 'repair-without-price',
              message: `No price is entered for: ${unpriced.join(', ')}. They count as free in the sets by budget.`,
            },
          ]),
    ],
  };
}
