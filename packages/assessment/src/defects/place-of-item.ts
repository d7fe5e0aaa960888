import type { Point, SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import { namesOf } from '../coverage/names.ts';

/** A point along the wall that starts at a corner, so far from it. */
function alongWall(geometry: GeometryResult, wallId: string, offsetM?: number): Point | undefined {
  const edge = geometry.edges.find((e) => e.id === wallId);
  if (edge === undefined || edge.lengthM === 0) return undefined;
  const t = offsetM === undefined ? 0.5 : Math.min(1, offsetM / edge.lengthM);
  return {
    xM: edge.from.xM + t * (edge.to.xM - edge.from.xM),
    yM: edge.from.yM + t * (edge.to.yM - edge.from.yM),
  };
}

const middle = (path: readonly Point[]): Point | undefined => path[Math.floor(path.length / 2)];

/** An item of the plan: what it is called, and where it is. */
export interface PlanItem {
  readonly what: string;
  readonly at?: Point;
}

/** Every item of the plan that evidence may be about, by its id. */
export function planItems(job: SurveyedJob, geometry: GeometryResult): ReadonlyMap<string, PlanItem> {
  const { plan } = job;
  const items = new Map<string, PlanItem>();
  const nameOf = namesOf(job, geometry);
  const add = (kind: string, id: string, at: Point | undefined, named = id) => {
    if (!items.has(id)) items.set(id, { what: nameOf(kind, named), ...(at === undefined ? {} : { at }) });
  };
  for (const w of plan.walls) add('wall', w.id, alongWall(geometry, w.wallId), w.wallId);
  for (const e of geometry.edges) add('wall', e.id, alongWall(geometry, e.id));
  for (const p of plan.piers) add('pier', p.id, p.at);
  for (const { id, from, to } of plan.girders) {
    add('girder', id, { xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 });
  }
  for (const d of plan.ducts) add('duct', d.id, middle(d.path));
  for (const v of plan.vents) add('vent', v.id, alongWall(geometry, v.wallId, v.offsetM));
  for (const d of plan.doors) {
    const at = d.at ?? (d.wallId === undefined ? undefined : alongWall(geometry, d.wallId, d.offsetM));
    add('door', d.id, at);
  }
  for (const e of plan.equipment) add('equipment', e.id, e.at);
  for (const o of plan.obstacles) add('obstacle', o.id, o.outline[0]);
  for (const z of plan.zones) add('zone', z.id, middle(z.outline));
  for (const d of plan.drains) add('drain', d.id, middle(d.path.map((p) => p.at)));
  for (const s of plan.seams) add('seam', s.id, middle(s.path));
  return items;
}
