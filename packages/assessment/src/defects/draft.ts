import type { Point, SurveyedJob } from '@undercroft/record';
import type { ZoneArea } from '../assessment.ts';
import type { Assumptions } from '../assumptions.ts';
import type { SpaceGeometry } from '../geometry.ts';
import type { Origin } from '../origin.ts';
import type { About } from './about.ts';

type Plan = SurveyedJob['plan'];
type Ground = Plan['ground'];

/** The job and the parts of its floor while what is said is written into them. */
export interface Draft {
  readonly job: SurveyedJob;
  readonly zones: readonly ZoneArea[];
  /** Whose word a part of the draft is, by the id of the part. */
  readonly origins: ReadonlyMap<string, Origin>;
}

/** What a rule may look at and note. */
export interface RuleGiven {
  readonly space: SpaceGeometry;
  readonly assumptions: Assumptions;
  readonly about: About;
}

/** Writes what is said of one defect into a draft, where the drawing leaves it open. */
export type SaidRule = (draft: Draft, given: RuleGiven) => Draft;

/** The draft with another plan. */
export function withDraftPlan(draft: Draft, change: Partial<Plan>): Draft {
  return { ...draft, job: { ...draft.job, plan: { ...draft.job.plan, ...change } } };
}

/** The draft with the origin of some of its parts. */
export function saidBy(draft: Draft, ids: Iterable<string>, origin: Origin): Draft {
  const origins = new Map(draft.origins);
  for (const id of ids) origins.set(id, origin);
  return { ...draft, origins };
}

/** Takes a part of another condition out of the floor that no zone was drawn for, as much of it as there is. */
export function withPart(
  draft: Draft,
  { space, about }: RuleGiven,
  part: { readonly id: string; readonly name: string; readonly areaM2: number; readonly ground: Ground },
): Draft {
  const elsewhere = draft.zones.find((z) => z.id === 'elsewhere');
  const areaM2 = Math.min(part.areaM2, elsewhere?.areaM2 ?? 0);
  if (elsewhere === undefined || areaM2 <= 0) return draft;
  const { id, name, ground } = part;
  const outline = space.result.corners.slice(0, 3) as Point[];
  const { plan } = draft.job;
  const drawn = withDraftPlan(draft, { zones: [...plan.zones, { id, name, outline, ground }] });
  const zones = draft.zones.map((z) => (z === elsewhere ? { ...z, areaM2: z.areaM2 - areaM2 } : z));
  return saidBy(
    { ...drawn, zones: [...zones, { id, name, cover: ground.cover, areaM2 }] },
    [id],
    about.origin,
  );
}

/** True where the open ground of the liner was counted, or the liner is called torn or short: bare ground is in it then. */
export function openGroundCounted({ liner }: Ground): boolean {
  return (
    liner?.openAreaM2 !== undefined ||
    liner?.openFraction !== undefined ||
    liner?.workmanship === 'torn-or-short'
  );
}
