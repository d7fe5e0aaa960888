import { FILM_SURFACES, WATER_PATHS, WOOD_SITES } from './places.ts';

/**
 * Means over one step, in one flat array, so that the sums of hour, month and year are plain loops. These are the places
 * of single values and the first places of runs. The first `SUMMED` are summed by the month.
 */
export const AIR_C = 0;
export const RELATIVE_HUMIDITY = 1;
export const HUMIDITY_RATIO = 2;
export const OUTDOOR_KG_PER_S = 3;
/** Share of all air entering the house that came up through the floor. */
export const FLOOR_SHARE = 4;
/** Sum over the machines of the share of time that they run. */
export const RUN_SHARE = 5;
export const STARTS_PER_HOUR = 6;
export const DEW_POINT_C = 7;
/** Heat from the house down through the floor, electricity of fans and machines, W. */
export const FLOOR_W = 8;
export const FANS_W = 9;
export const MACHINES_W = 10;
/** All heat into air and soil: with its sign, and each flow by its size, W. */
export const HEAT_NET_W = 11;
export const HEAT_GROSS_W = 12;
/** Water by path, kg/s. */
export const WATER = 13;
export const SUMMED = WATER + WATER_PATHS.length;

export const VAPOR_PA = SUMMED + 0;
export const GROUND_C = SUMMED + 1;
/** The colder of the inside faces of the walls. */
export const WALL_C = SUMMED + 2;
export const DEFROSTING = SUMMED + 3;
export const BELOW_RATING = SUMMED + 4;
/** Runs: one place for each wood site and film surface. */
export const WOOD_C = SUMMED + 5;
export const CONDENSING = WOOD_C + WOOD_SITES.length;
export const VALUES = CONDENSING + FILM_SURFACES.length;

/** Places of single paths within the run of water. */
export const WATER_WOOD = WATER + WATER_PATHS.indexOf('wood');
export const WATER_CONDENSATE = WATER + WATER_PATHS.indexOf('condensate');
export const WATER_FOG = WATER + WATER_PATHS.indexOf('fog');
export const WATER_MACHINES = WATER + WATER_PATHS.indexOf('dehumidifiers');
export const WATER_DRAINED = WATER + WATER_PATHS.indexOf('drained');

/** Surfaces whose saturation pressure a step needs, in the order of one flat array of temperatures. */
export const AT_AIR = 0;
export const AT_GROUND = 1;
export const AT_WALL_GROUND = 2;
export const AT_WALL_ABOVE = 3;
export const AT_WALL_BELOW = 4;
export const AT_DUCTS = 5;
export const AT_WOOD = 6;
export const PLACES = AT_WOOD + WOOD_SITES.length;
