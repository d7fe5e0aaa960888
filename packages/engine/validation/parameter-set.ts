import { crawlNetwork } from '../src/airflow/build.ts';
import type { CrawlFacts } from '../src/airflow/crawl-facts.ts';
import { groundSurface } from '../src/moisture/ground-evaporation.ts';
import { workmanship } from '../src/moisture/liner.ts';
import { seriesPermeance } from '../src/moisture/permeance.ts';
import { defaultSeasonCase } from '../src/season/default-case.ts';
import type { SeasonCase, SeasonMachine, SeasonWeather, SeasonWood } from '../src/season/season-case.ts';
import { convert } from '../src/units/convert.ts';

/** Exposed perimeter that the default case counts its walls along, m. */
const DEFAULT_PERIMETER_M = 44;
const WALL_ABOVE_GRADE_M = 0.6;

/** U of a floor with R-19 batts as built (ASHRAE Fundamentals, from memory: 0.3 to 0.4), W/(m²·K). */
const BATTS_R19 = 0.35;
/** R-30 batts, as much worse than their label as those (computed), W/(m²·K). */
const BATTS_R30 = 0.24;
/** Ducts in the space: the order of ASHRAE 152, from memory, m². */
export const DUCT_AREA_M2 = 20;

/** The default case, with its walls and framing scaled to another plan. */
export function space(
  weather: SeasonWeather,
  planAreaM2?: number,
  perimeterM = DEFAULT_PERIMETER_M,
): SeasonCase {
  const base = defaultSeasonCase(weather);
  const area = planAreaM2 ?? base.planAreaM2;
  const plan = area / base.planAreaM2;
  const edge = perimeterM / DEFAULT_PERIMETER_M;
  return {
    ...base,
    planAreaM2: area,
    cover: {
      ...base.cover,
      zones: base.cover.zones.map((zone) => ({ ...zone, areaM2: zone.areaM2 * plan })),
    },
    walls: {
      ...base.walls,
      aboveGradeAreaM2: base.walls.aboveGradeAreaM2 * edge,
      belowGradeAreaM2: base.walls.belowGradeAreaM2 * edge,
    },
    wood: {
      joists: scaled(base.wood.joists, plan),
      girder: scaled(base.wood.girder, plan),
      sill: scaled(base.wood.sill, edge),
    },
  };
}

function scaled(wood: SeasonWood, by: number): SeasonWood {
  return {
    ...wood,
    areaM2: wood.areaM2 * by,
    surfaceMassKg: wood.surfaceMassKg * by,
    coreMassKg: wood.coreMassKg * by,
  };
}

/** Facts of the space for the pressure network; all that is not said here takes the network's usual value. */
export function crawlFacts(
  { planAreaM2, heightM }: Pick<SeasonCase, 'planAreaM2' | 'heightM'>,
  perimeterM = DEFAULT_PERIMETER_M,
): CrawlFacts {
  return {
    floorAreaM2: planAreaM2,
    crawlHeightM: heightM,
    exposedPerimeterM: perimeterM,
    exposedWallHeightM: WALL_ABOVE_GRADE_M,
    vents: [],
    walls: 'as-built',
    floor: 'as-built',
    house: {},
  };
}

/** Air by the network of these facts. */
export function withAir(base: SeasonCase, facts: CrawlFacts): SeasonCase {
  return { ...base, airExchange: { kind: 'network', network: crawlNetwork(facts).network } };
}

/** Vents open, `share` of the plan as net free area: 1/150 is what the US residential code asks for. */
export function vented(base: SeasonCase, share = 1 / 150, perimeterM?: number): SeasonCase {
  const vents = [{ netFreeAreaM2: base.planAreaM2 * share, state: 'open' as const }];
  return withAir(base, { ...crawlFacts(base, perimeterM), vents });
}

/**
 * Closed as the field studies describe it: vents and walls sealed, access door weatherstripped, sheet sealed over the
 * ground and up the walls.
 */
export function closed(base: SeasonCase, perimeterM?: number): SeasonCase {
  const vents = [{ netFreeAreaM2: base.planAreaM2 / 150, state: 'sealed' as const }];
  return withAir(linedAndSealed(base), {
    ...crawlFacts(base, perimeterM),
    vents,
    walls: 'sealed',
    accessDoors: [{ fit: 'weatherstripped' }],
  });
}

/** Sheet sealed over the ground and up the walls. */
export function linedAndSealed(base: SeasonCase): SeasonCase {
  const sheet = base.cover.zones[0]!.sheetPermeanceKgPerM2SPa;
  const permeance = seriesPermeance([base.walls.permeanceKgPerM2SPa, sheet]);
  return { ...lined(base, 'sealed'), walls: { ...base.walls, permeanceKgPerM2SPa: permeance } };
}

/** A sheet on all of the ground, with the open share that its workmanship leaves. */
export function lined(base: SeasonCase, how: 'sealed' | 'laid-and-lapped'): SeasonCase {
  return withGround(base, { openFraction: workmanship(how).openFraction });
}

/** Uncovered ground that has dried to sand or gravel over a capillary break. */
export function dryGround(base: SeasonCase): SeasonCase {
  return withGround(base, { dryLayerResistanceSPerM: groundSurface('dry-gravel').dryLayerSPerM });
}

function withGround(base: SeasonCase, change: Partial<SeasonCase['cover']['zones'][number]>): SeasonCase {
  const zones = base.cover.zones.map((zone) => ({ ...zone, ...change }));
  return { ...base, cover: { ...base.cover, zones } };
}

/** Batts between the joists. */
export function floorInsulated(base: SeasonCase, batts: 'R-19' | 'R-30' = 'R-19'): SeasonCase {
  const floorUWPerM2K = batts === 'R-19' ? BATTS_R19 : BATTS_R30;
  return { ...base, house: { ...base.house, floorUWPerM2K } };
}

/** Foam of this R-value (ft²·h·°F/Btu) on the inside of the foundation walls. */
export function wallsInsulated(base: SeasonCase, rValue: number): SeasonCase {
  const resistance = convert(rValue, 'ft2 F h/Btu', 'm2 K/W');
  const { aboveGradeUWPerM2K: above, belowGradeUWPerM2K: below } = base.walls;
  return {
    ...base,
    walls: {
      ...base.walls,
      aboveGradeUWPerM2K: 1 / (1 / above + resistance),
      belowGradeUWPerM2K: 1 / (1 / below + resistance),
    },
  };
}

/** A register that blows 1 cfm for each 30 ft² of ground while the air handler runs, as the field studies had it. */
export function withSupplyAir(base: SeasonCase): SeasonCase {
  const flow = convert(1, 'cfm', 'm3/s') / convert(30, 'ft2', 'm2');
  return { ...base, ducts: { ...base.ducts, supplyFlowM3PerS: flow * base.planAreaM2 } };
}

export function withDucts(base: SeasonCase): SeasonCase {
  return { ...base, ducts: { ...base.ducts, areaM2: DUCT_AREA_M2 } };
}

/** A dehumidifier sold as 70 pint/day at 80 °F and 60 %, set to 55 % (common practice, no source). */
export function withDehumidifier(base: SeasonCase): SeasonCase {
  const machine: SeasonMachine = {
    ratedKgPerDay: convert(70, 'pint/day', 'kg/day'),
    ratedLPerKWh: 2,
    setPoint: 0.55,
    cold: 'low-temperature',
    planCoefficient: 1,
  };
  return { ...base, machines: [machine] };
}
