import { moisture } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import { type Assumptions, measured } from '../assumptions.ts';

type WallFacts = SurveyedJob['plan']['walls'][number];

export interface WallPaths {
  readonly dampMasonry: moisture.DampMasonry[];
  readonly wickingMasonry: moisture.WickingMasonry[];
}

/** Sorptivity of masonry, 1 mm/min^0.5 in the middle (Hall and Hoff 2007, from memory) [m/s^0.5]. */
const SORPTIVITY = { value: 1.29e-4, low: 4e-5, high: 2.5e-4, unit: 'm/s^0.5' } as const;
const WET_POROSITY = { value: 0.2, low: 0.15, high: 0.3, unit: 'fraction' } as const;

/** Height of a wall's inside face that stands against soil and is not behind the liner [m]. */
function bareBelowGradeM(wall: WallFacts): number {
  const below = Math.min(wall.gradeAboveFloorM ?? 0, wall.heightM ?? Number.POSITIVE_INFINITY);
  const covered = wall.linerSealed === true ? (wall.linerHeightM ?? 0) : 0;
  return Math.max(0, below - covered);
}

const PERMEANCE_BY_MATERIAL = {
  'hollow-block': 'hollow-block-8-in',
  concrete: 'concrete-4-in',
  brick: 'brick-4-in',
} as const;

/** Permeances of the table in SI, worked out once. */
const LISTED = new Map(moisture.LAYERS.map((layer) => [layer.key, moisture.layerPermeance(layer).value]));

function permeanceOf(key: string): number {
  const listed = LISTED.get(key);
  if (listed === undefined) throw new Error(`no layer ${key} in the table of permeances`);
  return listed;
}

/**
 * Vapor permeance of a wall by its material [kg/(m²·s·Pa)]; undefined for a material without a listed value. Concrete
 * and brick are listed 100 mm thick; a thicker wall lets less through in proportion. Block is as listed.
 */
export function wallPermeance(wall: WallFacts): number | undefined {
  const key = PERMEANCE_BY_MATERIAL[wall.material as keyof typeof PERMEANCE_BY_MATERIAL];
  if (key === undefined) return undefined;
  const listed = permeanceOf(key);
  return key === 'hollow-block-8-in' ? listed : listed * (0.1 / (wall.thicknessM ?? 0.2));
}

/**
 * Vapor through walls that hold back soil, and water that damp walls draw up. A wall that looks damp or wet wicks; one
 * that looks dry only lets vapor through where soil stands behind it. Piers without a wrap wick like walls.
 */
export function wallPaths(
  job: SurveyedJob,
  geometry: GeometryResult,
  groundC: moisture.Band,
  assumptions: Assumptions,
): WallPaths {
  const paths: WallPaths = { dampMasonry: [], wickingMasonry: [] };
  for (const wall of job.plan.walls) {
    const edge = geometry.edges.find((e) => e.id === wall.wallId);
    if (edge === undefined || !wall.outdoors) continue;
    const title = `Wall ${wall.wallId}`;
    if (wall.dampness === 'damp' || wall.dampness === 'wet') {
      const covered = wall.linerSealed === true ? (wall.linerHeightM ?? 0) : 0;
      const faceHeightM = Math.max(0, (wall.dampHeightM ?? wall.heightM ?? 0.4) - covered);
      if (faceHeightM === 0) continue;
      paths.wickingMasonry.push({
        key: wall.id,
        title: `${title} draws up water`,
        lengthM: measured(edge.lengthM),
        faceHeightM: measured(faceHeightM),
        thicknessM: measured(wall.thicknessM ?? 0.2),
        sorptivityMPerRootS: assumptions.band(
          'sorptivity',
          'Sorptivity of the masonry',
          SORPTIVITY,
          'Not measured on site.',
        ),
        wetPorosity: assumptions.band(
          'wetPorosity',
          'Water held by wet masonry',
          WET_POROSITY,
          'Not measured on site.',
        ),
        surfaceTemperatureC: groundC,
      });
      continue;
    }
    const permeance = wallPermeance(wall);
    const heightM = bareBelowGradeM(wall);
    if (permeance === undefined || heightM === 0) continue;
    paths.dampMasonry.push({
      key: wall.id,
      title: `${title}, vapor from the soil behind`,
      areaM2: measured(edge.lengthM * heightM),
      permeanceKgPerM2SPa: { value: permeance, low: permeance / 2, high: permeance * 2, assumed: true },
      behindTemperatureC: groundC,
    });
  }
  return paths;
}

/** Permeance of a slab floor of usual thickness [kg/(m²·s·Pa)]. */
export const SLAB_KG_PER_M2SPA = permeanceOf('concrete-4-in');

/** Vapor through a slab floor, as through a wall of its thickness. */
export function slabPath(areaM2: number, groundC: moisture.Band): moisture.DampMasonry[] {
  if (areaM2 === 0) return [];
  const value = SLAB_KG_PER_M2SPA;
  return [
    {
      key: 'slab',
      title: 'Slab, vapor from the soil below',
      areaM2: measured(areaM2),
      permeanceKgPerM2SPa: { value, low: value / 2, high: value * 2, assumed: true },
      behindTemperatureC: groundC,
    },
  ];
}
