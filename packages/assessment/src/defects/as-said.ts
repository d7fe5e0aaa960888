import type { criteria } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Assumptions } from '../assumptions.ts';
import type { Sample } from '../evidence/sample.ts';
import type { SpaceGeometry } from '../geometry.ts';
import type { Origin } from '../origin.ts';
import { aboutDefect } from './about.ts';
import type { Draft, SaidRule } from './draft.ts';
import { planItems } from './place-of-item.ts';
import { SAID_OF_LINER } from './said-liner.ts';
import { SAID_OF_SPACE } from './said-of-space.ts';

/** The space as the balances take it: the drawing, and what findings and observations say where it is silent. */
export interface SaidSpace {
  readonly job: SurveyedJob;
  readonly space: SpaceGeometry;
  /** Whose word a part is that the drawing does not have, by the id of the part. */
  readonly origins: ReadonlyMap<string, Origin>;
}

/** In this order, since a liner that is called torn holds its bare ground and loose edges already. */
const RULES: readonly (readonly [key: string, rule: SaidRule])[] = [
  ...Object.entries(SAID_OF_LINER),
  ...Object.entries(SAID_OF_SPACE),
];

function originOf(
  found: criteria.DetectedDefect,
  job: SurveyedJob,
  samples: ReadonlyMap<string, Sample>,
): Origin {
  const claim = job.findings.find((f) => found.claims.includes(f.id));
  if (claim !== undefined) {
    return { kind: 'finding', id: claim.id, who: claim.who, when: claim.when, note: claim.title };
  }
  for (const id of found.samples) {
    const origin = samples.get(id)?.origin;
    if (origin !== undefined) return origin;
  }
  return { kind: 'assumption' };
}

/**
 * Writes what is said of defects that were shown or claimed into the drawing, where the drawing leaves it open. What was
 * drawn stands, and nothing is counted twice.
 */
export function asSaid(
  job: SurveyedJob,
  space: SpaceGeometry,
  detected: readonly criteria.DetectedDefect[],
  samples: readonly Sample[],
  assumptions: Assumptions,
): SaidSpace {
  const there = new Map(
    detected.filter((d) => d.state === 'shown' || d.state === 'claimed').map((d) => [d.key, d]),
  );
  const byId = new Map(samples.map((s) => [s.id, s]));
  const items = planItems(job, space.result);
  let draft: Draft = { job, zones: space.result.zones, origins: new Map() };
  for (const [key, rule] of RULES) {
    const found = there.get(key);
    if (found === undefined) continue;
    const about = aboutDefect(found, job, items, originOf(found, job, byId));
    draft = rule(draft, { space, assumptions, about });
  }
  const zones = draft.zones;
  const said = zones === space.result.zones ? space : { ...space, result: { ...space.result, zones } };
  return { job: draft.job, space: said, origins: draft.origins };
}
