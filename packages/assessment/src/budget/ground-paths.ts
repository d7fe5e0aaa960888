import { moisture } from '@undercroft/engine';
import type { Ground, SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import { type Assumptions, measured } from '../assumptions.ts';

type Part = { readonly id: string; readonly name: string; readonly areaM2: number; readonly ground: Ground };

/** Paths of water that rise from the ground. */
export interface GroundPaths {
  readonly openGround: moisture.OpenGround[];
  readonly linedGround: moisture.LinedGround[];
  readonly standingWater: moisture.WaterSurface[];
}

/** The floor in parts of one condition each. */
export function floorParts(job: SurveyedJob, geometry: GeometryResult): Part[] {
  return geometry.zones.flatMap(({ id, name, areaM2 }) => {
    const ground = id === 'elsewhere' ? job.plan.ground : job.plan.zones.find((z) => z.id === id)?.ground;
    return ground === undefined || areaM2 <= 0 ? [] : [{ id, name, areaM2, ground }];
  });
}

function dryLayer(part: Part, assumptions: Assumptions): moisture.Band {
  const { surface } = part.ground;
  const found = moisture.groundSurface(surface ?? 'average');
  const figures = { value: found.dryLayerSPerM, low: found.lowSPerM, high: found.highSPerM, unit: 's/m' };
  const why =
    surface === undefined
      ? 'Nobody said how wet the ground looks; average soil is taken.'
      : 'Dry layer of the soil as it looks; a guess until it is measured.';
  return assumptions.band(`dryLayer-${part.id}`, `Dry layer of the ground, ${part.name}`, figures, why);
}

/** Ground under a liner is damp, whatever it looked like before: nothing dries it (common practice, no source). */
const UNDER_LINER = { value: 500, low: 0, high: 1000, unit: 's/m' } as const;
const FLOODED = { value: 0, low: 0, high: 250, unit: 's/m' } as const;

function openFraction(part: Part, assumptions: Assumptions): moisture.Band {
  const { liner } = part.ground;
  if (liner?.openFraction !== undefined) return measured(liner.openFraction);
  if (liner?.openAreaM2 !== undefined && liner.openAreaM2 > 0)
    return measured(Math.min(1, liner.openAreaM2 / part.areaM2));
  const grade = moisture.workmanship(liner?.workmanship ?? 'laid-and-lapped');
  const why =
    liner?.workmanship === undefined
      ? 'Nobody judged how the liner was laid; laid and lapped is taken.'
      : 'From how the liner was laid; count open ground by area to replace it.';
  const figures = { value: grade.openFraction, low: grade.low, high: grade.high, unit: 'fraction' };
  return assumptions.band(`openFraction-${part.id}`, `Open share of the liner, ${part.name}`, figures, why);
}

/** Permeance where no test report is at hand: the class limit as the worst, good film as the best. */
const USUAL_SHEET = { value: 1.7e-12, low: 5e-13, high: 5.72e-12, unit: 'kg/(m²·s·Pa)' } as const;

function sheet(part: Part, assumptions: Assumptions): moisture.Band {
  const permeance = part.ground.liner?.permeanceKgPerM2SPa;
  if (permeance !== undefined) return measured(permeance);
  return assumptions.band(
    `sheet-${part.id}`,
    `Permeance of the liner, ${part.name}`,
    USUAL_SHEET,
    'No test report; up to the limit of 0.1 perm for a ground liner.',
  );
}

/** Paths from each part of the floor. Slabs count as open ground behind concrete only through their walls' path. */
export function groundPaths(
  parts: readonly Part[],
  groundC: moisture.Band,
  assumptions: Assumptions,
): GroundPaths {
  const paths: GroundPaths = { openGround: [], linedGround: [], standingWater: [] };
  for (const part of parts) {
    const common = { key: part.id, areaM2: measured(part.areaM2), groundTemperatureC: groundC };
    if (part.ground.surface === 'standing-water' && part.ground.cover !== 'liner') {
      const title = `Standing water, ${part.name}`;
      paths.standingWater.push({ key: part.id, title, areaM2: common.areaM2, temperatureC: groundC });
    } else if (part.ground.cover === 'liner') {
      paths.linedGround.push({
        ...common,
        title: part.id === 'elsewhere' ? 'Lined ground' : `Lined ground, ${part.name}`,
        sheetKgPerM2SPa: sheet(part, assumptions),
        openFraction: openFraction(part, assumptions),
        dryLayerSPerM:
          part.ground.liner?.waterBeneath === 'free-water'
            ? assumptions.band(
                'dryLayerFlooded',
                'Dry layer of the ground where water stands under the liner',
                FLOODED,
                'Free water was seen under the liner.',
              )
            : assumptions.band(
                'dryLayerUnderLiner',
                'Dry layer of the ground under the liner',
                UNDER_LINER,
                'Ground under a liner stays damp (common practice).',
              ),
      });
      if (part.ground.liner?.waterOnTop === 'pond') {
        const figures = {
          value: 0.02 * part.areaM2,
          low: 0.002 * part.areaM2,
          high: 0.1 * part.areaM2,
          unit: 'm²',
        };
        const areaM2 = assumptions.band(
          `pond-${part.id}`,
          'Area of water lying on the liner',
          figures,
          'A pond was seen and not measured; draw it as a zone to replace this.',
        );
        paths.standingWater.push({
          key: `pond-${part.id}`,
          title: 'Water on the liner',
          areaM2,
          temperatureC: groundC,
        });
      }
    } else if (part.ground.cover !== 'slab') {
      const title = part.id === 'elsewhere' ? 'Open ground' : `Open ground, ${part.name}`;
      paths.openGround.push({ ...common, title, dryLayerSPerM: dryLayer(part, assumptions) });
    }
  }
  return paths;
}

/** Area of a slab, which lets vapor through like a wall. */
export function slabAreaM2(parts: readonly Part[]): number {
  return parts.filter((p) => p.ground.cover === 'slab').reduce((sum, p) => sum + p.areaM2, 0);
}
