import { plan as planning } from '@undercroft/engine';
import type { RecordIssue, SurveyedJob } from '@undercroft/record';
import type { ClosureResult, GeometryResult, ZoneArea } from './assessment.ts';
import type { Assumptions } from './assumptions.ts';
import { JobError } from './job-error.ts';

const METERS_PER_NANOMETER = 1e-9;

/** Clear height where none was taken: low crawl spaces of houses lie about here (common practice, no source). */
const USUAL_HEIGHT = { value: 0.9, low: 0.5, high: 1.4, unit: 'm' } as const;

/** Sizes of the space with the engine's own result, which later steps build on. */
export interface SpaceGeometry {
  readonly result: GeometryResult;
  readonly engine: planning.PlanGeometry;
  readonly heightM: {
    readonly value: number;
    readonly low: number;
    readonly high: number;
    readonly assumed: boolean;
  };
}

/** The walls of a record as the engine takes them. */
export function outlineInput(outline: SurveyedJob['plan']['outline']): planning.OutlineInput {
  if (outline.kind === 'corners') return { kind: 'corners', corners: outline.corners };
  const azimuths = planning.azimuthsFromTurns(
    outline.firstAzimuthDeg,
    outline.legs.slice(1).map((leg) => leg.turnDeg),
  );
  return {
    kind: 'traverse',
    start: outline.start,
    adjustment: outline.adjustment,
    directions: 'turned',
    legs: outline.legs.map((leg, i) => ({
      id: leg.id,
      lengthM: leg.length.nm * METERS_PER_NANOMETER,
      azimuthDeg: azimuths[i],
    })),
  };
}

function resultOf(job: SurveyedJob): planning.PlanResult {
  const { plan } = job;
  return planning.planGeometry({
    outline: outlineInput(plan.outline),
    northDeg: plan.northDeg,
    heights: plan.heights,
    walls: plan.walls,
    piers: plan.piers,
    zones: plan.zones,
    vents: plan.vents.map((v) => (v.state === 'sealed' ? { ...v, netFreeAreaM2: 0 } : v)),
  });
}

/** Everything about the drawing that a person should mend, in the record's own paths. Empty for a sound plan. */
export function planIssues(job: SurveyedJob): RecordIssue[] {
  const list = job.plan.outline.kind === 'traverse' ? 'legs' : 'corners';
  return resultOf(job).issues.map(({ path, found, expected }) => ({
    path: path.startsWith(list) ? `plan.outline.${path}` : `plan.${path}`,
    found,
    expected,
  }));
}

function closureOf(job: SurveyedJob, outline: planning.ResolvedOutline): ClosureResult | undefined {
  if (outline.traverse === null || job.plan.outline.kind !== 'traverse') return undefined;
  const { closure, verdict, notices } = outline.traverse;
  const hint = notices.find((n) => n.code.includes('hint') || n.code.includes('blunder'))?.message;
  return {
    misclosureM: closure.linearM,
    precision: closure.precisionDenominator ?? Number.POSITIVE_INFINITY,
    verdict,
    adjustment: job.plan.outline.adjustment,
    ...(hint === undefined ? {} : { hint }),
  };
}

function wallEdgesOf(outline: planning.ResolvedOutline): GeometryResult['edges'] {
  return outline.edges.map((e) => ({
    id: e.id ?? String(e.index),
    from: e.from,
    to: e.to,
    lengthM: e.lengthM,
    bearingDeg: e.bearingDeg,
  }));
}

/**
 * Corners, walls and areas of the floor, and nothing else, for whoever draws while a plan is being made. Areas are zero
 * and zones missing where the outline encloses no single area; a drawing can still show it.
 */
export function drawnGeometry(
  job: SurveyedJob,
): Pick<GeometryResult, 'corners' | 'edges' | 'zones' | 'floorAreaM2'> {
  const { geometry, outline } = resultOf(job);
  return {
    corners: outline.corners,
    edges: wallEdgesOf(outline),
    zones: geometry === null ? [] : zonesOf(job, geometry),
    floorAreaM2: geometry?.floorM2 ?? 0,
  };
}

function zonesOf(job: SurveyedJob, floor: planning.PlanGeometry): ZoneArea[] {
  const zones = floor.zones.map((z): ZoneArea => {
    const drawn = job.plan.zones[z.index];
    return { id: drawn.id, name: drawn.name, cover: drawn.ground.cover, areaM2: z.areaM2 };
  });
  return [
    ...zones,
    { id: 'elsewhere', name: 'Elsewhere', cover: job.plan.ground.cover, areaM2: floor.elsewhereM2 },
  ];
}

/** Open area of vents that let air through: sealed and shut ones count nothing, loose boards their leak if known. */
function openVentAreaM2(job: SurveyedJob): number {
  return job.plan.vents
    .filter((v) => v.state !== 'sealed' && v.state !== 'louver-shut' && v.state !== 'loose-board')
    .reduce((sum, v) => sum + (v.netFreeAreaM2 ?? 0), 0);
}

/**
 * Sizes of the surveyed space.
 * @throws JobError when the outline encloses no single area
 */
export function geometryOf(job: SurveyedJob, assumptions: Assumptions): SpaceGeometry {
  const { geometry, outline, notices } = resultOf(job);
  if (geometry === null) throw new JobError(planIssues(job));
  const clear = geometry.clearHeight;
  const heightM =
    clear === null
      ? assumptions.band(
          'clearHeight',
          'Clear height of the space',
          USUAL_HEIGHT,
          'No height was taken; take three or more.',
        )
      : { value: clear.meanM, low: clear.minM, high: clear.maxM, assumed: false };
  const zones = zonesOf(job, geometry);
  const bare = zones.filter((z) => z.cover === 'bare-earth').reduce((sum, z) => sum + z.areaM2, 0);
  const closure = closureOf(job, outline);
  const result: GeometryResult = {
    corners: outline.corners,
    edges: wallEdgesOf(outline),
    ...(closure === undefined ? {} : { closure }),
    floorAreaM2: geometry.floorM2,
    perimeterM: geometry.perimeterM,
    volumeM3: geometry.floorM2 * heightM.value,
    clearHeightM: {
      minimum: heightM.low,
      mean: heightM.value,
      maximum: heightM.high,
      assumed: heightM.assumed,
    },
    zones,
    bareEarthM2: bare,
    pierCount: geometry.pierCount,
    openVentAreaM2: openVentAreaM2(job),
    notices,
  };
  return { result, engine: geometry, heightM };
}
