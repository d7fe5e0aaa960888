import { type criteria, geometry as shapes } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';

/** Width of a usual roll of liner, 12 ft: one seam for each where none was drawn (common practice, no source) [m]. */
const ROLL_M = 3.6576;

const total = (lengths: readonly number[]): number => lengths.reduce((sum, one) => sum + one, 0);

/** Length of the seams as drawn; where none is, the length that the lined floor takes in usual rolls [m]. */
function seamM({ plan }: SurveyedJob, geometry: GeometryResult): number {
  if (plan.seams.length > 0) return total(plan.seams.map((s) => shapes.pathLengthM(s.path)));
  return total(geometry.zones.filter((z) => z.cover === 'liner').map((z) => z.areaM2)) / ROLL_M;
}

/** Sizes that bills are worked out from. */
export function extentsOf(job: SurveyedJob, geometry: GeometryResult): criteria.BillExtents {
  const { plan } = job;
  const count = (kind: SurveyedJob['plan']['equipment'][number]['kind']) =>
    plan.equipment.filter((e) => e.kind === kind).length;
  return {
    floorM2: geometry.floorAreaM2,
    perimeterM: geometry.perimeterM,
    bareEarthM2: geometry.bareEarthM2,
    seamM: seamM(job, geometry),
    drainM: total(plan.drains.map((d) => shapes.pathLengthM(d.path.map((p) => p.at)))),
    ductM: total(plan.ducts.map((d) => shapes.pathLengthM(d.path))),
    doorFrameM: total(plan.doors.map((d) => 2 * (d.widthM + d.heightM))),
    girderM: total(plan.girders.map((g) => shapes.pathLengthM([g.from, g.to]))),
    doors: plan.doors.length,
    vents: plan.vents.length,
    piers: geometry.pierCount,
    sumps: count('sump'),
    dehumidifiers: count('dehumidifier'),
  };
}
