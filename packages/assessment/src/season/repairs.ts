import type { SurveyedJob } from '@undercroft/record';
import type { RepairGiven, RepairKey, RepairRule } from './repair-rule.ts';
import { GROUND_REPAIRS } from './repairs-ground.ts';
import { MACHINE_REPAIRS } from './repairs-machines.ts';
import { SHELL_REPAIRS } from './repairs-shell.ts';
import type { RepairMeaning } from './season-assessment.ts';
import type { SpaceState } from './space-state.ts';

const RULES: Readonly<Record<RepairKey, RepairRule>> = {
  ...GROUND_REPAIRS,
  ...SHELL_REPAIRS,
  ...MACHINE_REPAIRS,
};

/** A repair that was chosen, with its rule. */
export interface ChosenRepair {
  readonly meaning: RepairMeaning;
  readonly apply: (state: SpaceState, given: RepairGiven) => SpaceState;
}

/** Repairs of the job that were chosen, in its order; a kind that was chosen twice is done once, for both prices. */
export function chosenRepairs(job: SurveyedJob): ChosenRepair[] {
  const byKind = new Map<RepairKey, RepairMeaning>();
  for (const { id, repair, chosen, priceCents } of job.design.repairs) {
    if (!chosen) continue;
    const before = byKind.get(repair);
    const price = (before?.priceCents ?? 0) + (priceCents ?? 0);
    const priced = priceCents !== undefined || before?.priceCents !== undefined;
    const { title, does, apply } = RULES[repair];
    byKind.set(repair, {
      ...(before ?? { id, repair, title, does, changesTheYear: apply !== undefined }),
      ...(priced ? { priceCents: price } : {}),
    });
  }
  return [...byKind.values()].map((meaning) => ({
    meaning,
    apply: (state, given) => RULES[meaning.repair].apply?.(state, given) ?? state,
  }));
}

/** The space with repairs done, one after the other in the order of the job. */
export function repaired(
  found: SpaceState,
  repairs: readonly ChosenRepair[],
  given: RepairGiven,
): SpaceState {
  return repairs.reduce((state, repair) => repair.apply(state, given), found);
}
