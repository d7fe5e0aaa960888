import { moisture, geometry as shapes } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { type Assumptions, measured } from '../assumptions.ts';

/** Gap of a wall edge that has come loose, and round a pier that was not wrapped [m]: estimates of the trade, no source. */
const LOOSE_EDGE = { value: 0.02, low: 0.005, high: 0.05, unit: 'm' } as const;
const BARE_PIER = { value: 0.015, low: 0.005, high: 0.03, unit: 'm' } as const;
/** Opening of an untaped lap where nobody measured it [m]. */
const LAP_GAP = { value: 0.003, low: 0.001, high: 0.01, unit: 'm' } as const;
const DAMP_SOIL = { value: 500, low: 0, high: 1000, assumed: true } as const;

/** A run of tape is not read closer than this [m]. */
const TAPE_DOUBT_M = 0.05;

export interface LinerPaths {
  readonly seams: moisture.LinerSeam[];
  readonly edges: moisture.LinerGap[];
  readonly piers: moisture.LinerGap[];
}

/**
 * True where loose seams, edges and piers are not in the open share already: it was counted by area, or the liner is
 * called sealed, which speaks of none of them.
 */
function openGroundLeavesThemOut(job: SurveyedJob): boolean {
  const liner = job.plan.ground.liner;
  return (
    liner?.openAreaM2 !== undefined || liner?.openFraction !== undefined || liner?.workmanship === 'sealed'
  );
}

function seams(job: SurveyedJob, groundC: moisture.Band, assumptions: Assumptions): moisture.LinerSeam[] {
  return job.plan.seams.flatMap((seam) => {
    const lengthM = shapes.pathLengthM(seam.path);
    const untapedM = Math.max(0, lengthM - (seam.tapedM ?? 0));
    if (untapedM < TAPE_DOUBT_M) return [];
    const { value, low, high } = moisture.SEAM_PUMPING;
    return [
      {
        key: seam.id,
        title: `Seam ${seam.id}, ${untapedM.toFixed(1)} m without tape`,
        lengthM: measured(untapedM),
        gapM:
          seam.gapM === undefined
            ? assumptions.band(
                'lapGap',
                'Opening of an untaped lap',
                LAP_GAP,
                'Not measured; lift the lap and gauge it.',
              )
            : measured(seam.gapM),
        lapM: measured(Math.max(seam.lapM ?? 0.15, 0.01)),
        pumpingFactor: assumptions.band(
          'seamPumping',
          'Air pumped through seams, times diffusion',
          { value, low, high, unit: '' },
          'Footsteps and wind pump air through laps (common practice).',
        ),
        groundTemperatureC: groundC,
      },
    ];
  });
}

function edges(job: SurveyedJob, groundC: moisture.Band, assumptions: Assumptions): moisture.LinerGap[] {
  const walls = job.plan.walls.filter((w) => (w.linerLooseM ?? 0) > 0);
  const frames = job.plan.doors.filter((d) => d.kind === 'wall' && d.linerSealedToFrame === false);
  return [
    ...walls.map((w) => ({
      key: w.id,
      title: `Loose liner edge at wall ${w.wallId}`,
      lengthM: w.linerLooseM as number,
    })),
    ...frames.map((d) => ({
      key: d.id,
      title: `Open liner edge at the frame of ${d.id}`,
      lengthM: d.widthM,
    })),
  ].map(({ lengthM, ...edge }) => ({
    ...edge,
    lengthM: measured(lengthM),
    gapM: assumptions.band(
      'looseEdge',
      'Gap of a loose liner edge',
      LOOSE_EDGE,
      'Length was measured, the gap was not.',
    ),
    groundTemperatureC: groundC,
    dryLayerSPerM: DAMP_SOIL,
  }));
}

function piers(job: SurveyedJob, groundC: moisture.Band, assumptions: Assumptions): moisture.LinerGap[] {
  const bare = job.plan.piers.filter((p) => p.wrapHeightM === 0 || p.wrapSealed === false);
  if (bare.length === 0) return [];
  const aroundM = bare.reduce((sum, p) => sum + 2 * (p.widthM + p.depthM), 0);
  return [
    {
      key: 'bare-piers',
      title: `Around ${bare.length} piers without a sealed wrap`,
      lengthM: measured(aroundM),
      gapM: assumptions.band(
        'barePier',
        'Gap round a pier without a sealed wrap',
        BARE_PIER,
        'Seen, not measured.',
      ),
      groundTemperatureC: groundC,
      dryLayerSPerM: DAMP_SOIL,
    },
  ];
}

/** Seams, edges and piers of a liner whose open share leaves them out; otherwise the workmanship covers them. */
export function linerPaths(job: SurveyedJob, groundC: moisture.Band, assumptions: Assumptions): LinerPaths {
  if (job.plan.ground.cover !== 'liner' || !openGroundLeavesThemOut(job))
    return { seams: [], edges: [], piers: [] };
  return {
    seams: seams(job, groundC, assumptions),
    edges: edges(job, groundC, assumptions),
    piers: piers(job, groundC, assumptions),
  };
}
