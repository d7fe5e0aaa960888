import { dehumidifier, type season, wood } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Assumptions } from '../assumptions.ts';
import { waterInBattsKg } from '../defects/wet-batts.ts';
import type { SpaceGeometry } from '../geometry.ts';
import { corrected } from '../readings/wood.ts';

/** Joists of usual lumber hold most of the water [m]. */
const JOIST_M = 0.038;

function meanRead(job: SurveyedJob): number | undefined {
  const read = job.readings.wood.map((r) => corrected(r).moistureContent);
  return read.length === 0 ? undefined : read.reduce((sum, m) => sum + m, 0) / read.length;
}

/** Face of walls that look damp or wet [m²]. */
function wetWallM2(job: SurveyedJob, space: SpaceGeometry): number {
  return job.plan.walls
    .filter((w) => w.outdoors && (w.dampness === 'damp' || w.dampness === 'wet'))
    .reduce((sum, wall) => {
      const edge = space.result.edges.find((e) => e.id === wall.wallId);
      return sum + (edge?.lengthM ?? 0) * (wall.dampHeightM ?? wall.heightM ?? space.heightM.value);
    }, 0);
}

/**
 * Water that framing, walls and wet floor batts give off once after the space is closed, down to the target.
 * @param found the year as found: its wettest month stands in where no wood was read
 */
export function pullDownOf(
  job: SurveyedJob,
  space: SpaceGeometry,
  timber: season.SeasonCase['wood'],
  found: season.SeasonResult,
  crawlC: number,
  target: number,
  assumptions: Assumptions,
): dehumidifier.PullDown & { readonly days: number } {
  const read = meanRead(job);
  const wettest = Math.max(...found.months.map((m) => m.woodMoistureCore));
  const from = read ?? wettest;
  if (read === undefined) {
    assumptions.note(
      'woodBeforeClosing',
      'Wood moisture before closing',
      Number(wettest.toFixed(3)),
      'No pin readings; wettest month of the year as found.',
      'kg/kg',
    );
  }
  const to = wood.equilibriumMoistureContent(crawlC, target);
  const woodKg = Object.values(timber).reduce((sum, w) => sum + w.surfaceMassKg + w.coreMassKg, 0);
  const fromWood = Math.max(0, dehumidifier.storedWaterKg(woodKg, from, to));
  const faceM2 = wetWallM2(job, space);
  const perM2 =
    faceM2 === 0
      ? 0
      : assumptions.band(
          'wetWallWater',
          'Water that wet walls give off once',
          { ...dehumidifier.WET_BLOCK_KG_PER_M2, unit: 'kg/m²' },
          'Common practice; nobody weighs a wall.',
        ).value;
  const fromBatts = waterInBattsKg(job, space.result.floorAreaM2, assumptions);
  const days = dehumidifier.PULL_DOWN_DAYS.value;
  const time = dehumidifier.slabDryingTimeS(JOIST_M, dehumidifier.WOOD_DIFFUSIVITY_M2_PER_S.value);
  return { ...dehumidifier.pullDown(fromWood + perM2 * faceM2 + fromBatts, days, time), days };
}
