import { moisture, type season } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { type Assumptions, measured } from '../assumptions.ts';
import { floorParts, groundPaths } from '../budget/ground-paths.ts';
import { linerPaths } from '../budget/liner-paths.ts';
import { SLAB_KG_PER_M2SPA } from '../budget/wall-paths.ts';
import type { SpaceGeometry } from '../geometry.ts';

/** The paths of the steady balance ask for a ground temperature that the year works out by itself. */
const ANY_GROUND_C = measured(15);
const FILM = { ...moisture.SURFACE_TRANSFER_M_PER_S, unit: 'm/s' } as const;

type Zone = season.GroundZone;

function covered(areaM2: number, openFraction: number, sheet: number, dryLayer: number): Zone {
  return {
    areaM2,
    openFraction,
    sheetPermeanceKgPerM2SPa: sheet,
    dryLayerResistanceSPerM: dryLayer,
  };
}

/** Laps without tape as one seam that lets as much through as all of them. */
function oneSeam(seams: readonly moisture.LinerSeam[]): season.SeasonGroundCover['seams'] {
  const lengthM = seams.reduce((sum, s) => sum + s.lengthM.value, 0);
  if (lengthM === 0) return { lengthM: 0, gapM: 0, lapM: 0.3, pumpingFactor: 1 };
  const mean = (pick: (seam: moisture.LinerSeam) => number) =>
    seams.reduce((sum, s) => sum + s.lengthM.value * pick(s), 0) / lengthM;
  const lapM = mean((s) => s.lapM.value);
  const pumpingFactor = mean((s) => s.pumpingFactor.value);
  const passes = mean((s) => (s.gapM.value * s.pumpingFactor.value) / s.lapM.value);
  return { lengthM, gapM: (passes * lapM) / pumpingFactor, lapM, pumpingFactor };
}

/**
 * Ground and liner as the year takes them, from the same paths as the steady balance. Gaps at edges and piers count as
 * open ground of the part that has the most liner.
 */
export function groundCover(
  job: SurveyedJob,
  space: SpaceGeometry,
  assumptions: Assumptions,
): season.SeasonGroundCover {
  const parts = floorParts(job, space.result);
  const ground = groundPaths(parts, ANY_GROUND_C, assumptions);
  const liner = linerPaths(job, ANY_GROUND_C, assumptions);
  const gapsM2 = [...liner.edges, ...liner.piers].reduce(
    (sum, gap) => sum + moisture.edgeGapAreaM2(gap.lengthM.value, gap.gapM.value),
    0,
  );
  const most = ground.linedGround.reduce<moisture.LinedGround | undefined>(
    (best, one) => (best === undefined || one.areaM2.value > best.areaM2.value ? one : best),
    undefined,
  );
  const zones = [
    ...ground.openGround.map((g) => covered(g.areaM2.value, 1, 0, g.dryLayerSPerM.value)),
    ...ground.linedGround.map((g) => {
      const gaps = g === most ? gapsM2 / g.areaM2.value : 0;
      const open = Math.min(1, g.openFraction.value + gaps);
      return covered(g.areaM2.value, open, g.sheetKgPerM2SPa.value, g.dryLayerSPerM.value);
    }),
    ...parts.filter((p) => p.ground.cover === 'slab').map((p) => covered(p.areaM2, 0, SLAB_KG_PER_M2SPA, 0)),
    ...ground.standingWater
      .filter((w) => parts.some((p) => p.id === w.key))
      .map((w) => covered(w.areaM2.value, 1, 0, 0)),
  ];
  const pondsM2 = ground.standingWater
    .filter((w) => !parts.some((p) => p.id === w.key))
    .reduce((sum, w) => sum + w.areaM2.value, 0);
  return {
    zones,
    seams: oneSeam(liner.seams),
    standingWaterAreaM2: pondsM2,
    puddleKgPerM2: 1,
    massTransferMPerS: assumptions.band(
      'surfaceTransfer',
      'Vapor transfer of ground, walls and ducts to the air',
      FILM,
      'Still air (Lewis analogy, from memory); it cannot be measured on site.',
    ).value,
  };
}
