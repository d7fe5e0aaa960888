import type { Caution, WorkStep } from './caution.ts';
import { entryCautions } from './cautions/entry.ts';
import { houseAndGasCautions } from './cautions/house-and-gas.ts';
import { substanceCautions } from './cautions/substances.ts';
import { workCautions } from './cautions/work.ts';
import { holds } from './condition.ts';
import type { JobFacts } from './facts.ts';

/** The standing safety cautions, by hazard. */
export const cautions: readonly Caution[] = [
  ...entryCautions,
  ...substanceCautions,
  ...workCautions,
  ...houseAndGasCautions,
];

/**
 * Cautions to show next to a step. A caution is left out only where the known facts rule its hazard out; a fact that
 * nobody has answered never hides one.
 */
export function cautionsFor(step: WorkStep, facts: JobFacts): readonly Caution[] {
  return cautions.filter(({ steps, showsWhen }) => steps.includes(step) && holds(showsWhen, facts) !== false);
}
