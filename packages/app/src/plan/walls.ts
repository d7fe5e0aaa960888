import { outlineInput } from '@undercroft/assessment';
import { plan } from '@undercroft/engine';
import type { Job, Outline } from '@undercroft/record';

const known = new WeakMap<Outline, plan.ResolvedOutline>();

/** Walls and corners as the engine resolves them, counter-clockwise. The same outline is resolved once. */
export function resolved(outline: Outline): plan.ResolvedOutline {
  const before = known.get(outline);
  if (before !== undefined) return before;
  const result = plan.resolveOutline(outlineInput(outline));
  known.set(outline, result);
  return result;
}

/** The walls of a job; null until they are drawn. */
export function wallsOf(job: Job | null): plan.ResolvedOutline | null {
  const outline = job?.plan.outline;
  return outline === undefined ? null : resolved(outline);
}
