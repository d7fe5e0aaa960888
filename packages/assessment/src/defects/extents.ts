import { type criteria, geometry as shapes } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import { bareStripsM2, drawnStripsM2 } from './bare-strips.ts';

/** Width of a usual roll of liner, 12 ft: one seam for each where none was drawn (common practice, no source) [m]. */
const ROLL_M = 3.6576;

const total = (lengths: readonly number[]): number => lengths.reduce((sum, one) => sum + one, 0);

/** Length of the seams as drawn; where none is, the length that the lined floor takes in usual rolls [m]. */
export function seamLengthM({ plan }: SurveyedJob, geometry: GeometryResult): number {
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
    seamM: seamLengthM(job, geometry),
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

function wallLengthM(geometry: GeometryResult, wallId: string): number {
  return geometry.edges.find((e) => e.id === wallId)?.lengthM ?? 0;
}

/** How far faults go by the drawing itself. A fact that the drawing leaves open counts as sound here. */
export function drawnExtents(job: SurveyedJob, geometry: GeometryResult): criteria.DrawnExtent[] {
  const { plan } = job;
  const { perimeterM } = geometry;
  const extents: criteria.DrawnExtent[] = [];
  const add = (defect: string, amount: number, whole?: number) => {
    if (amount > 0) extents.push({ defect, amount, ...(whole === undefined ? {} : { whole }) });
  };
  add('glued-edge-letting-go', total(plan.walls.map((w) => w.linerLooseM ?? 0)), perimeterM);
  const untaped = plan.seams.map((s) =>
    s.tapedM === undefined ? 0 : Math.max(0, shapes.pathLengthM(s.path) - s.tapedM),
  );
  add('seams-not-sealed', total(untaped), seamLengthM(job, geometry));
  const short = plan.seams.filter((s) => s.lapM !== undefined && s.lapM < GOOD_LAP_M);
  add('seams-under-lapped', total(short.map((s) => shapes.pathLengthM(s.path))), seamLengthM(job, geometry));
  const damp = plan.walls.filter((w) => w.dampness === 'damp' || w.dampness === 'wet');
  add('damp-walls', total(damp.map((w) => wallLengthM(geometry, w.wallId))), perimeterM);
  const strips = bareStripsM2(job);
  add('bare-strip-under-ducts', strips);
  // What lies under ducts is billed there.
  const opened = plan.ground.cover === 'liner' ? (plan.ground.liner?.openAreaM2 ?? 0) : 0;
  if (geometry.bareEarthM2 > 0 || opened > 0) {
    const amount = Math.max(0, geometry.bareEarthM2 - drawnStripsM2(job)) + opened;
    extents.push({ defect: 'exposed-earth', amount, whole: geometry.floorAreaM2 });
  }
  return extents;
}

/** 12 in, the lap of good work (DOE Standard Work Specifications 2017, 2.0403.1) [m]. */
const GOOD_LAP_M = 0.3048;
