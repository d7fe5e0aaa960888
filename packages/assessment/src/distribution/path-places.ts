import { type distribution, geometry as shapes } from '@undercroft/engine';
import type { Point, SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import { doorPlace } from '../coverage/subjects.ts';

/** A place that takes its part of a path. */
export interface PathPlace {
  readonly place: distribution.FieldPlace;
  /** 0..1; the parts of one path add up to 1. */
  readonly part: number;
}

/** What places of paths are found by. */
export interface PlacedPlan {
  /** The job as the balances take it: the drawing with what findings say where it is silent. */
  readonly job: SurveyedJob;
  /** The drawing itself. Zones and seams that only the other has lie nowhere for certain. */
  readonly drawn: SurveyedJob['plan'];
  readonly geometry: Pick<GeometryResult, 'corners' | 'edges'>;
}

/** A place this far outside the walls still is one that the floor beside it stands for, m. */
const SLIP_M = 0.5;

/** Whether a place lies on the floor, or so near it that the floor beside it stands for it. */
function isOnFloor({ corners }: PlacedPlan['geometry'], at: Point): boolean {
  return (
    shapes.pointInPolygon(at, corners) !== 'outside' || shapes.distanceToBoundaryM(at, corners) <= SLIP_M
  );
}

const whole = (place: distribution.FieldPlace): PathPlace[] => [{ place, part: 1 }];

/** The floor that no zone was drawn for. */
function elsewhere({ drawn }: PlacedPlan): distribution.FieldPlace {
  const except = drawn.zones.map((z) => z.outline);
  return except.length === 0 ? { kind: 'floor' } : { kind: 'floor', except };
}

function zonePlace(plan: PlacedPlan, id: string): distribution.FieldPlace {
  const zone = plan.drawn.zones.find((z) => z.id === id);
  return zone === undefined ? elsewhere(plan) : { kind: 'floor', within: zone.outline };
}

/** Places along a path, each with its share of the length; those off the floor take no part. */
function alongPath(plan: PlacedPlan, path: readonly Point[]): PathPlace[] {
  const legs = path.slice(1).flatMap((to, i) => {
    const from = path[i];
    const middle = { xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 };
    const lengthM = shapes.distanceM(from, to);
    return lengthM > 0 && isOnFloor(plan.geometry, middle) ? [{ from, to, lengthM }] : [];
  });
  const totalM = legs.reduce((sum, leg) => sum + leg.lengthM, 0);
  return legs.map(({ from, to, lengthM }) => ({
    place: { kind: 'line', from, to },
    part: lengthM / totalM,
  }));
}

function atPlaces(
  plan: PlacedPlan,
  places: readonly { readonly at: Point; readonly part: number }[],
): PathPlace[] {
  const known = places.filter(({ at }) => isOnFloor(plan.geometry, at));
  const total = known.reduce((sum, { part }) => sum + part, 0);
  return known.map(({ at, part }) => ({ place: { kind: 'at', at }, part: part / total }));
}

function wallPlace({ job, geometry }: PlacedPlan, factsId: string): PathPlace[] {
  const facts = job.plan.walls.find((w) => w.id === factsId);
  const edge = geometry.edges.findIndex((e) => e.id === facts?.wallId);
  return edge < 0 ? [] : whole({ kind: 'walls', edges: [edge] });
}

function edgePlace(plan: PlacedPlan, id: string): PathPlace[] {
  const { job, geometry } = plan;
  const door = job.plan.doors.find((d) => d.id === id);
  if (door === undefined) return wallPlace(plan, id);
  const edgeOf = new Map(geometry.edges.map((edge, index) => [edge.id, index]));
  const at = doorPlace(door, { scene: { outline: geometry.corners }, edgeOf });
  return at === undefined ? [] : atPlaces(plan, [{ at, part: 1 }]);
}

/** Piers as the balance takes them for bare; each counts by its girth. */
function pierPlaces(plan: PlacedPlan): PathPlace[] {
  const bare = plan.job.plan.piers.filter((p) => p.wrapHeightM === 0 || p.wrapSealed === false);
  return atPlaces(
    plan,
    bare.map(({ at, widthM, depthM }) => ({ at, part: widthM + depthM })),
  );
}

function enteredPlace(plan: PlacedPlan, id: string): PathPlace[] {
  const { readings, findings, plan: drawn } = plan.job;
  const quantity = id === 'dryer' ? 'exhaustEndsInCrawl' : 'plumbingLeakPresent';
  const seen = readings.observations.find((o) => o.quantity === quantity && o.value === true)?.place?.at;
  const claimed =
    id === 'leak'
      ? findings.find((f) => f.defect === 'water-let-in-from-plumbing-or-dryer')?.place.at
      : drawn.ducts.find((d) => d.carries === 'dryer')?.path.at(-1);
  const at = seen ?? claimed;
  return at === undefined ? [] : atPlaces(plan, [{ at, part: 1 }]);
}

/** The kind of source that a path of the balance is. */
export function kindOfPath(key: string): distribution.SourceKind {
  const [kind] = key.split(':');
  if (key === 'damp-masonry:slab') return 'ground';
  if (kind === 'damp-masonry' || kind === 'wicking-masonry') return 'wall';
  return kind === 'entered' ? 'other' : 'ground';
}

/**
 * Where on the plan a path of the steady balance gives its water; the parts of it add up to one. What has no place of its
 * own, or one off the floor, is spread over the whole floor.
 */
export function placesOfPath(plan: PlacedPlan, key: string): readonly PathPlace[] {
  const [kind, id = ''] = key.split(/:(.*)/s);
  const found = ((): PathPlace[] => {
    switch (kind) {
      case 'open-ground':
      case 'liner-sheet':
      case 'liner-open':
        return whole(zonePlace(plan, id));
      case 'standing-water':
        return whole(zonePlace(plan, id.replace(/^pond-/, '')));
      case 'seam':
        return alongPath(plan, plan.drawn.seams.find((s) => s.id === id)?.path ?? []);
      case 'edge':
        return edgePlace(plan, id);
      case 'pier':
        return pierPlaces(plan);
      case 'wicking-masonry':
        return wallPlace(plan, id);
      case 'damp-masonry':
        return id === 'slab' ? slabPlaces(plan) : wallPlace(plan, id);
      case 'entered':
        return enteredPlace(plan, id);
      default:
        return [];
    }
  })();
  return found.length === 0 ? whole({ kind: 'floor' }) : found;
}

/** Slabs by zone, each with its share of the area. */
function slabPlaces(plan: PlacedPlan): PathPlace[] {
  const slabs = plan.drawn.zones.filter((z) => z.ground.cover === 'slab');
  if (plan.job.plan.ground.cover === 'slab') return slabs.length === 0 ? whole(elsewhere(plan)) : [];
  const areas = slabs.map((z) => shapes.polygonAreaM2(z.outline));
  const total = areas.reduce((sum, a) => sum + a, 0);
  return slabs.map((z, i) => ({ place: { kind: 'floor', within: z.outline }, part: areas[i] / total }));
}
