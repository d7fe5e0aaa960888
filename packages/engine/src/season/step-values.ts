import { FILM_SURFACES, HEAT_PATHS, WATER_PATHS, WOOD_SITES } from './places.ts';

/**
 * Means over one step, in one flat array, so that the sums of hour, month and year are plain loops. These are the places
 * of single values and the first places of runs.
 */
export const AIR_C = 0;
export const VAPOR_PA = 1;
export const RELATIVE_HUMIDITY = 2;
export const HUMIDITY_RATIO = 3;
export const GROUND_C = 4;
export const OUTDOOR_KG_PER_S = 5;
/** Share of all air entering the house that came up through the floor. */
export const FLOOR_SHARE = 6;
export const MACHINE_KG_PER_S = 7;
/** Sum over the machines of the share of time that they run. */
export const RUN_SHARE = 8;
export const STARTS_PER_HOUR = 9;
/** The colder of the inside faces of the walls. */
export const WALL_C = 10;
export const DEFROSTING = 11;
export const BELOW_RATING = 12;
export const DEW_POINT_C = 13;
/** Runs: one place for each wood site, film surface, water path (kg/s) and heat path (W). */
export const WOOD_C = 14;
export const CONDENSING = WOOD_C + WOOD_SITES.length;
export const WATER = CONDENSING + FILM_SURFACES.length;
export const HEAT = WATER + WATER_PATHS.length;
export const VALUES = HEAT + HEAT_PATHS.length;

/** Places of single paths within the runs. */
export const WATER_WOOD = WATER + WATER_PATHS.indexOf('wood');
export const WATER_CONDENSATE = WATER + WATER_PATHS.indexOf('condensate');
export const WATER_FOG = WATER + WATER_PATHS.indexOf('fog');
export const WATER_MACHINES = WATER + WATER_PATHS.indexOf('dehumidifiers');
export const WATER_DRAINED = WATER + WATER_PATHS.indexOf('drained');
export const HEAT_FLOOR = HEAT + HEAT_PATHS.indexOf('floor');
export const HEAT_FANS = HEAT + HEAT_PATHS.indexOf('fans');
export const HEAT_MACHINES = HEAT + HEAT_PATHS.indexOf('machines');
export const HEAT_CONDENSING = HEAT + HEAT_PATHS.indexOf('condensing');
export const HEAT_EVAPORATING = HEAT + HEAT_PATHS.indexOf('evaporating');

/** Surfaces whose saturation pressure a step needs, in the order of one flat array of temperatures. */
export const AT_AIR = 0;
export const AT_GROUND = 1;
export const AT_WALL_GROUND = 2;
export const AT_WALL_ABOVE = 3;
export const AT_WALL_BELOW = 4;
export const AT_DUCTS = 5;
export const AT_WOOD = 6;
export const PLACES = AT_WOOD + WOOD_SITES.length;
