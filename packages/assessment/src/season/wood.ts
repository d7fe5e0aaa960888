import { season, geometry as shapes } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Assumptions } from '../assumptions.ts';
import { BARE_FLOOR_W_PER_M2K } from '../budget/heat-paths.ts';
import type { SpaceGeometry } from '../geometry.ts';

/** Sawn 2-by lumber and subfloor, m, and softwood, kg/m³ (nominal sizes; common practice). */
const JOIST_M = 0.038;
const SUBFLOOR_M = 0.018;
const GIRDER_DEPTH_M = 0.235;
const WOOD_KG_PER_M3 = 500;
/** Core time of a girder of three plies, 114 mm; grows with the square of the width [days]. */
const GIRDER_DAYS = 100;
const GIRDER_WIDTH_M = 0.114;
/** Share of the way from the air to the house at which joists of a bare floor lie (common practice). */
const JOIST_HOUSE_WEIGHT = 0.1;

interface Timber {
  readonly areaM2: number;
  readonly massKg: number;
}

function joistsOf(job: SurveyedJob, floorM2: number, base: Timber): Timber {
  const [joists] = job.plan.joists;
  if (joists === undefined) return base;
  const { spacingM, depthM } = joists;
  const perM2 = (2 * depthM + JOIST_M) / spacingM + Math.max(0, 1 - JOIST_M / spacingM);
  const massPerM2 = WOOD_KG_PER_M3 * ((JOIST_M * depthM) / spacingM + SUBFLOOR_M);
  return { areaM2: perM2 * floorM2, massKg: massPerM2 * floorM2 };
}

function girdersOf(
  job: SurveyedJob,
  base: Timber & { readonly coreDays: number },
): Timber & { coreDays: number } {
  const { girders } = job.plan;
  const lengths = girders.map((g) => shapes.pathLengthM([g.from, g.to]));
  const lengthM = lengths.reduce((sum, l) => sum + l, 0);
  if (lengthM === 0) return base;
  const widthM = girders.reduce((sum, g, i) => sum + g.widthM * lengths[i], 0) / lengthM;
  const days = GIRDER_DAYS * (widthM / GIRDER_WIDTH_M) ** 2;
  return {
    areaM2: lengthM * (2 * GIRDER_DEPTH_M + widthM),
    massKg: lengthM * widthM * GIRDER_DEPTH_M * WOOD_KG_PER_M3,
    coreDays: Math.min(400, Math.max(10, days)),
  };
}

/** Framing as the year takes it: sizes of the drawing where they are there, usual ones elsewhere. */
export function seasonWood(
  job: SurveyedJob,
  space: SpaceGeometry,
  floorUWPerM2K: number,
  assumptions: Assumptions,
): season.SeasonCase['wood'] {
  const { floorAreaM2, perimeterM } = space.result;
  const usual = { areaM2: 2.4 * floorAreaM2, massKg: 18.5 * floorAreaM2 };
  if (job.plan.joists.length === 0) {
    assumptions.note(
      'joistSizes',
      'Joists',
      'as usual, 18.5 kg of wood per m² of floor',
      'No joists were drawn; depth and spacing replace this.',
    );
  }
  const joists = joistsOf(job, floorAreaM2, usual);
  const girder = girdersOf(job, {
    areaM2: 0.1 * floorAreaM2,
    massKg: 1.2 * floorAreaM2,
    coreDays: GIRDER_DAYS,
  });
  const houseWeight = (JOIST_HOUSE_WEIGHT * floorUWPerM2K) / BARE_FLOOR_W_PER_M2K;
  const parts = {
    joists: season.woodPart(joists.areaM2, joists.massKg, 12, { houseWeight, outdoorWeight: 0 }),
    girder: season.woodPart(girder.areaM2, girder.massKg, girder.coreDays, {
      houseWeight: 0,
      outdoorWeight: 0,
    }),
    sill: season.woodPart(0.2 * perimeterM, 3 * perimeterM, 15, { houseWeight: 0, outdoorWeight: 0.25 }),
  };
  const usualPermeance = parts.joists.permeanceKgPerM2SPa;
  const permeanceKgPerM2SPa = assumptions.band(
    'woodPermeance',
    'Vapor permeance from air into wood',
    { value: usualPermeance, low: usualPermeance / 2, high: 2 * usualPermeance, unit: 'kg/(m²·s·Pa)' },
    'Film and 2.5 mm of softwood (from memory); paint and dirt lower it.',
  ).value;
  return {
    joists: { ...parts.joists, permeanceKgPerM2SPa },
    girder: { ...parts.girder, permeanceKgPerM2SPa },
    sill: { ...parts.sill, permeanceKgPerM2SPa },
  };
}
