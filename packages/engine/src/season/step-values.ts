import { FILM_SURFACES, MOLD_SURFACES, WATER_PATHS, WOOD_SITES } from './places.ts';

const WATER = 13;
const SUMMED = WATER + WATER_PATHS.length;
const MOLD_C = SUMMED + 4;
const MOLD_PA = MOLD_C + MOLD_SURFACES.length;
const CONDENSING = MOLD_PA + MOLD_SURFACES.length;
const AT_WOOD = 6;

/**
 * Means over one step stand in one flat array, so that the sums of hour, month and year are plain loops. These are the
 * places of single values and the first places of runs. The first `SUMMED` are summed by the month.
 *
 * Files take what they need out of this object into constants of their own: compiled code then holds the numbers
 * themselves, while a name that is imported is read from its module, checked and unpacked in every use, which took a
 * quarter of the time of a year.
 */
export const stepPlaces = {
  AIR_C: 0,
  RELATIVE_HUMIDITY: 1,
  HUMIDITY_RATIO: 2,
  OUTDOOR_KG_PER_S: 3,
  /** Share of all air entering the house that came up through the floor. */
  FLOOR_SHARE: 4,
  /** Sum over the machines of the share of time that they run. */
  RUN_SHARE: 5,
  STARTS_PER_HOUR: 6,
  DEW_POINT_C: 7,
  /** Heat from the house down through the floor, electricity of fans and machines, W. */
  FLOOR_W: 8,
  FANS_W: 9,
  MACHINES_W: 10,
  /** All heat into air and soil: with its sign, and each flow by its size, W. */
  HEAT_NET_W: 11,
  HEAT_GROSS_W: 12,
  /** Water by path, kg/s. */
  WATER,
  WATER_WOOD: WATER + WATER_PATHS.indexOf('wood'),
  WATER_CONDENSATE: WATER + WATER_PATHS.indexOf('condensate'),
  WATER_FOG: WATER + WATER_PATHS.indexOf('fog'),
  WATER_MACHINES: WATER + WATER_PATHS.indexOf('dehumidifiers'),
  WATER_DRAINED: WATER + WATER_PATHS.indexOf('drained'),
  SUMMED,
  VAPOR_PA: SUMMED,
  GROUND_C: SUMMED + 1,
  DEFROSTING: SUMMED + 2,
  BELOW_RATING: SUMMED + 3,
  /**
   * Runs: temperature and saturation pressure of each surface whose mold is followed, the wood sites first, then the
   * colder of the inside faces of the walls; and whether water condenses on each film surface.
   */
  MOLD_C,
  MOLD_PA,
  CONDENSING,
  VALUES: CONDENSING + FILM_SURFACES.length,
} as const;

/**
 * Surfaces whose saturation pressure a step needs, in the order of one flat array of temperatures. Taken out as
 * `stepPlaces` are.
 */
export const surfacePlaces = {
  AT_AIR: 0,
  AT_GROUND: 1,
  AT_WALL_GROUND: 2,
  AT_WALL_ABOVE: 3,
  AT_WALL_BELOW: 4,
  AT_DUCTS: 5,
  AT_WOOD,
  PLACES: AT_WOOD + WOOD_SITES.length,
} as const;
