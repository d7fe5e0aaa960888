import type { Figure, Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';

/** Surface resistance for heat flowing down to the ground, and outdoors, m²K/W: the values of ISO 13370 (quoted). */
const INSIDE_FILM = 0.17;
const OUTSIDE_FILM = 0.04;
/** The same for heat flowing sideways into a wall, m²K/W (recalled from ISO 6946). */
const WALL_FILM = 0.13;
/** Vent flow per m² of opening, m/s of wind and unit shielding factor: formula G.4. */
const VENT_FACTOR = 0.59;
/**
 * Heat carried by a m³ of air, J/(m³·K), as the 1450 of formula 11 implies (1450 = 2 · 0.59 · this), so that the floor's
 * transmittance and the temperature below it tell one story.
 */
const AIR_HEAT_J_PER_M3_K = 1450 / (2 * VENT_FACTOR);

/** Share of the wind that reaches the vents, formula 11. The labels `average` and `exposed` are from memory. */
const SHIELDING = { sheltered: 0.02, average: 0.05, exposed: 0.1 } as const;

/** A suspended floor over a shallow crawl space, as ISO 13370 takes it. */
export interface SuspendedFloor {
  readonly areaM2: number;
  /** Length of wall to outdoors or unheated rooms, m. */
  readonly exposedPerimeterM: number;
  readonly groundConductivityWPerMK: number;
  readonly wallThicknessM: number;
  /** Resistance of insulation on the ground, m²K/W; none when absent. */
  readonly groundInsulationM2KPerW?: number;
  /** Height of the floor over outside grade, m. */
  readonly floorHeightM: number;
  /** Depth of the crawl ground below outside grade, m; 0 when absent. Above 0.5 m the below-grade walls count too. */
  readonly depthBelowGradeM?: number;
  /** Resistance of the wall in the ground without films, m²K/W; 0 when absent. Counts with the depth. */
  readonly wallInGroundM2KPerW?: number;
  /** Transmittance of the wall above grade, W/(m²·K). */
  readonly wallWPerM2K: number;
  /** Transmittance of the floor between house and crawl, both surface films included, W/(m²·K). */
  readonly floorWPerM2K: number;
  /** Vent opening per length of perimeter, m²/m. */
  readonly ventM2PerM: number;
  /** Mean wind speed at 10 m height, m/s. */
  readonly windMPerS: number;
  readonly shielding: keyof typeof SHIELDING;
}

/** What ISO 13370 makes of a suspended floor. */
export interface SuspendedFloorResult {
  /** B, area over half the perimeter, m. */
  readonly characteristicDimensionM: number;
  /** d_g, ground thickness of the same resistance as wall and films, m. */
  readonly equivalentThicknessM: number;
  /** U_g of the ground, W/(m²·K), per m² of floor. */
  readonly groundWPerM2K: number;
  /** U_x of walls and vents, W/(m²·K), per m² of floor. */
  readonly sidesWPerM2K: number;
  /** U between house and outdoors, W/(m²·K). */
  readonly transmittanceWPerM2K: number;
  /** Air through the vents by the standard's formula, m³/s. */
  readonly ventilationM3PerS: number;
}

/** B in m: floor area over half the exposed perimeter (formula 2). Unchecked. */
export function characteristicDimensionM(areaM2: number, exposedPerimeterM: number): number {
  return (2 * areaM2) / exposedPerimeterM;
}

/**
 * Transmittance of the ground under a floor, formulas 4 and 10: logarithmic while the equivalent thickness is below B,
 * and 1/(0.457 B + d) beyond (formula 5; for suspended floors the standard prints the logarithm alone). Unchecked.
 */
function groundTransmittance(conductivity: number, b: number, thickness: number): number {
  if (thickness < b) {
    return ((2 * conductivity) / (Math.PI * b + thickness)) * Math.log((Math.PI * b) / thickness + 1);
  }
  return conductivity / (0.457 * b + thickness);
}

/** Transmittances of floor and walls of a space that lies `depth` below grade, formulas 13, 14 and 16. */
function belowGrade(conductivity: number, b: number, floorThickness: number, wall: number, depth: number) {
  // Where the walls are the thinner of the two, the wall thickness stands for both (recalled from the standard).
  const coupling = Math.min(floorThickness, wall);
  return {
    floor: groundTransmittance(conductivity, b, floorThickness + depth / 2),
    walls:
      depth > 0
        ? ((2 * conductivity) / (Math.PI * depth)) *
          (1 + (0.5 * coupling) / (coupling + depth)) *
          Math.log(depth / wall + 1)
        : 0,
  };
}

/** Equivalent thickness of the walls in the ground, m (formula 15); heat crosses them sideways, inside film 0.13 m²K/W. */
function wallThicknessInGround(
  floor: Pick<SuspendedFloor, 'groundConductivityWPerMK' | 'wallInGroundM2KPerW'>,
): number {
  return floor.groundConductivityWPerMK * (WALL_FILM + (floor.wallInGroundM2KPerW ?? 0) + OUTSIDE_FILM);
}

function checked(floor: SuspendedFloor) {
  const area = requireRange('floor area in m²', floor.areaM2, 0.1, 100_000);
  const perimeter = requireRange('exposed perimeter in m', floor.exposedPerimeterM, 0.1, 10_000);
  const conductivity = requireRange(
    'ground conductivity in W/(m·K)',
    floor.groundConductivityWPerMK,
    0.05,
    10,
  );
  requireRange('wall thickness in m', floor.wallThicknessM, 0, 5);
  requireRange('ground insulation in m²K/W', floor.groundInsulationM2KPerW ?? 0, 0, 20);
  requireRange('floor height in m', floor.floorHeightM, 0, 10);
  requireRange('depth below grade in m', floor.depthBelowGradeM ?? 0, 0, 10);
  requireRange('wall resistance in m²K/W', floor.wallInGroundM2KPerW ?? 0, 0, 20);
  requireRange('wall transmittance in W/(m²·K)', floor.wallWPerM2K, 0, 20);
  requireRange('floor transmittance in W/(m²·K)', floor.floorWPerM2K, 0.01, 20);
  requireRange('vent opening in m² per m', floor.ventM2PerM, 0, 1);
  requireRange('wind speed in m/s', floor.windMPerS, 0, 60);
  return { area, perimeter, conductivity };
}

/**
 * Steady transmittance of a floor over a crawl space by ISO 13370. For comparison and as the check of the hourly model,
 * which it does not replace.
 *
 * Source: ISO 13370:2017 formulas 2, 8 to 11 and G.2, G.4 (quoted). Beyond 0.5 m below grade the walls in the ground
 * count (G.2).
 * @returns a notice `vent-formula-low` when vents are open: the standard's ventilation term is far below measured rates
 * @throws EngineError `not-finite` or `out-of-range` naming the input
 */
export function suspendedFloor(floor: SuspendedFloor): Figure<SuspendedFloorResult> {
  const { area, perimeter, conductivity } = checked(floor);
  const b = characteristicDimensionM(area, perimeter);
  const films = INSIDE_FILM + (floor.groundInsulationM2KPerW ?? 0) + OUTSIDE_FILM;
  const thickness = floor.wallThicknessM + conductivity * films;
  const depth = floor.depthBelowGradeM ?? 0;
  let ground = groundTransmittance(conductivity, b, thickness);
  if (depth > 0.5) {
    const below = belowGrade(conductivity, b, thickness, wallThicknessInGround(floor), depth);
    ground = below.floor + (depth * perimeter * below.walls) / area;
  }
  const vent = floor.ventM2PerM * floor.windMPerS * SHIELDING[floor.shielding];
  const sides = (2 * floor.floorHeightM * floor.wallWPerM2K) / b + (1450 * vent) / b;
  return {
    value: {
      characteristicDimensionM: b,
      equivalentThicknessM: thickness,
      groundWPerM2K: ground,
      sidesWPerM2K: sides,
      transmittanceWPerM2K: 1 / (1 / floor.floorWPerM2K + 1 / (ground + sides)),
      ventilationM3PerS: VENT_FACTOR * vent * perimeter,
    },
    notices: floor.ventM2PerM > 0 ? [VENT_NOTICE] : [],
  };
}

const VENT_NOTICE: Notice = {
  code: 'vent-formula-low',
  message:
    'The ventilation term of ISO 13370 gives a few tenths of an air change per hour; measured vented crawl spaces run at ' +
    '3 to 13, so the real floor loses more heat and its crawl space follows outdoors more closely.',
};

/**
 * Mean temperature of the underfloor space, °C (formula G.1), by the same figures as `suspendedFloor`.
 *
 * @param houseC inside temperature, °C
 * @param outdoorC outside temperature, °C, also behind ground and walls
 * @param ventAirC temperature of the ventilation air, °C; outdoors when absent
 * @throws EngineError as `suspendedFloor`, and for temperatures outside −60 to 60 °C
 */
export function underfloorTemperatureC(
  floor: SuspendedFloor,
  houseC: number,
  outdoorC: number,
  ventAirC: number = outdoorC,
): Figure {
  requireRange('house temperature in °C', houseC, -60, 60);
  requireRange('outdoor temperature in °C', outdoorC, -60, 60);
  requireRange('vent air temperature in °C', ventAirC, -60, 60);
  const { value, notices } = suspendedFloor(floor);
  const house = floor.areaM2 * floor.floorWPerM2K;
  const air = value.ventilationM3PerS * AIR_HEAT_J_PER_M3_K;
  const outside =
    floor.areaM2 * value.groundWPerM2K + floor.floorHeightM * floor.exposedPerimeterM * floor.wallWPerM2K;
  return { value: (house * houseC + air * ventAirC + outside * outdoorC) / (house + air + outside), notices };
}

/** A deep crawl space or cellar without heat, ventilated at a known rate. */
export interface UnheatedBasement
  extends Omit<SuspendedFloor, 'ventM2PerM' | 'windMPerS' | 'shielding' | 'depthBelowGradeM'> {
  /** Depth of its floor below outside grade, m, above 0. */
  readonly depthBelowGradeM: number;
  readonly airChangesPerHour: number;
  readonly airVolumeM3: number;
}

/**
 * Transmittance between house and outdoors through an unheated, ventilated space below grade, W/(m²·K).
 *
 * Source: ISO 13370:2017 formulas 13 to 16 and 19 (quoted), with 0.33 Wh/(m³·K) for air.
 * @throws EngineError `not-finite` or `out-of-range` naming the input
 */
export function unheatedBasementWPerM2K(space: UnheatedBasement): number {
  const { area, perimeter, conductivity } = checked({
    ...space,
    ventM2PerM: 0,
    windMPerS: 0,
    shielding: 'average',
  });
  const depth = requireRange('depth below grade in m', space.depthBelowGradeM, 0.01, 10);
  const airChanges = requireRange('air changes per hour', space.airChangesPerHour, 0, 100);
  const volume = requireRange('air volume in m³', space.airVolumeM3, 0, 100_000);
  const floorThickness =
    space.wallThicknessM + conductivity * (INSIDE_FILM + (space.groundInsulationM2KPerW ?? 0) + OUTSIDE_FILM);
  const below = belowGrade(
    conductivity,
    characteristicDimensionM(area, perimeter),
    floorThickness,
    wallThicknessInGround(space),
    depth,
  );
  const lossWPerK =
    area * below.floor +
    depth * perimeter * below.walls +
    space.floorHeightM * perimeter * space.wallWPerM2K +
    0.33 * airChanges * volume;
  return 1 / (1 / space.floorWPerM2K + area / lossWPerK);
}
