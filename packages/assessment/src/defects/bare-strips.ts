import { geometry as shapes } from '@undercroft/engine';
import type { Point, SurveyedJob } from '@undercroft/record';

type Plan = SurveyedJob['plan'];

/** Points along a path are looked at this close [m]. */
const STEP_M = 0.25;
/** A strip that was drawn beside a duct belongs to it when it is as near as this [m]. */
const BESIDE_M = 0.3;

function along(path: readonly Point[]): Point[] {
  return path.slice(1).flatMap((to, i) => {
    const from = path[i];
    const steps = Math.max(1, Math.ceil(shapes.pathLengthM([from, to]) / STEP_M));
    return Array.from({ length: steps }, (_, k) => {
      const t = (k + 0.5) / steps;
      return { xM: from.xM + t * (to.xM - from.xM), yM: from.yM + t * (to.yM - from.yM) };
    });
  });
}

/** Zones of bare earth that lie under or close beside a duct. */
export function bareZonesUnder(plan: Plan, duct: Plan['ducts'][number]): Plan['zones'] {
  const points = along(duct.path);
  const reachM = duct.widthM / 2 + BESIDE_M;
  return plan.zones.filter(
    (zone) =>
      zone.ground.cover === 'bare-earth' &&
      points.some((p) => shapes.distanceToPolygonM(p, zone.outline) <= reachM),
  );
}

/** Ground under a duct where the liner was cut short and no zone was drawn for it: length times width [m²]. */
function undrawnM2(plan: Plan, duct: Plan['ducts'][number]): number {
  if (duct.linerBeneath !== false || bareZonesUnder(plan, duct).length > 0) return 0;
  return shapes.pathLengthM(duct.path) * duct.widthM;
}

/** Bare ground under ducts that no zone of the plan holds yet [m²]. */
export function undrawnStripsM2({ plan }: SurveyedJob): number {
  if (plan.ground.cover !== 'liner') return 0;
  return plan.ducts.reduce((sum, duct) => sum + undrawnM2(plan, duct), 0);
}

/** Bare ground under ducts that was drawn as zones [m²]. */
export function drawnStripsM2({ plan }: SurveyedJob): number {
  const drawn = new Set(plan.ducts.flatMap((duct) => bareZonesUnder(plan, duct)));
  return [...drawn].reduce((sum, zone) => sum + shapes.polygonAreaM2(zone.outline), 0);
}

/** Bare ground under ducts: as drawn in zones, and where the liner was cut short and no zone was drawn [m²]. */
export function bareStripsM2(job: SurveyedJob): number {
  return job.plan.ground.cover === 'liner' ? drawnStripsM2(job) + undrawnStripsM2(job) : 0;
}
