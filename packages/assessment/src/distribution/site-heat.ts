import type { distribution, season } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Conditions } from '../budget/conditions.ts';
import { BARE_FLOOR_W_PER_M2K, GROUND_FILM_W_PER_M2K, withInsulation } from '../budget/heat-paths.ts';
import type { SpaceGeometry } from '../geometry.ts';

/** Heat per volume of air and kelvin that flows of the field are counted at, J/(m³·K). */
const AIR_J_PER_M3K = 1.2 * 1006;
const FLOOR: distribution.FieldPlace = { kind: 'floor' };

/** What holds the temperature of the space. */
export interface SiteHeat {
  readonly heat: readonly distribution.HeatExchange[];
  readonly fixed: readonly distribution.FixedSource[];
}

/**
 * Heat of the space as the field takes it: ground, floor above and walls. Ducts, framing and what the day stores come as
 * one even source, such that air at rest without a machine is as warm as the conditions say.
 * @param walls as the year takes them
 * @param fansW heat of fans that stand in the space, which the conditions have in them
 */
export function siteHeat(
  job: SurveyedJob,
  space: SpaceGeometry,
  conditions: Conditions,
  walls: season.SeasonWalls,
  leaks: readonly distribution.AirLeak[],
  fansW: number,
): SiteHeat {
  const { floorAreaM2, edges } = space.result;
  const outdoors = edges.flatMap((edge, index) =>
    space.engine.walls.some((w) => w.outdoors && w.edge.id === edge.id) ? [index] : [],
  );
  const outside: distribution.FieldPlace = outdoors.length === 0 ? FLOOR : { kind: 'walls', edges: outdoors };
  const groundC = conditions.groundC.value;
  const floorUW = withInsulation(BARE_FLOOR_W_PER_M2K, job.house.floorInsulationRsi);
  const rows: readonly [what: string, place: distribution.FieldPlace, wPerK: number, celsius: number][] = [
    ['ground', FLOOR, floorAreaM2 * GROUND_FILM_W_PER_M2K, groundC],
    ['floor above', FLOOR, floorAreaM2 * floorUW, conditions.houseC],
    ['walls above grade', outside, walls.aboveGradeAreaM2 * walls.aboveGradeUWPerM2K, conditions.outdoorC],
    ['walls below grade', outside, walls.belowGradeAreaM2 * walls.belowGradeUWPerM2K, groundC],
  ];
  const heat = rows
    .filter(([, , wPerK]) => wPerK > 0)
    .map(([what, place, conductanceWPerK, temperatureC]) => ({
      what,
      place,
      conductanceWPerK,
      per: 'whole' as const,
      temperatureC,
    }));
  const crawlC = conditions.crawlC.value;
  const byExchange = heat.reduce((sum, e) => sum + e.conductanceWPerK * (e.temperatureC - crawlC), 0);
  const byAir = leaks
    .filter((leak) => leak.flowM3PerS > 0)
    .reduce((sum, leak) => sum + AIR_J_PER_M3K * leak.flowM3PerS * (leak.temperatureC - crawlC), 0);
  return {
    heat,
    fixed: [{ what: 'ducts, framing and stored heat', place: FLOOR, heatW: -byExchange - byAir - fansW }],
  };
}
