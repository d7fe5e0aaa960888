import { loopConstants } from './loop-constants.ts';
import { loopRoom } from './loop-room.ts';
import { stepPlaces, surfacePlaces } from './step-values.ts';
import { waterPlaces } from './store-places.ts';

const { CONDENSATION_HEAT_J_PER_KG, VAPOR_GAS_CONSTANT } = loopConstants;
const { AT_AIR, AT_DUCTS, AT_GROUND, AT_WALL_ABOVE, AT_WALL_BELOW } = surfacePlaces;
const {
  CONDENSING,
  HEAT_GROSS_W,
  HEAT_NET_W,
  MACHINES_W,
  WATER,
  WATER_CONDENSATE,
  WATER_DRAINED,
  WATER_FOG,
  WATER_MACHINES,
  WATER_WOOD,
} = stepPlaces;
const {
  FILM_COLD_PA,
  FILM_G,
  FILM_KG,
  FILM_M3_PER_S,
  FILM_MODE,
  FILM_MOST_KG,
  FILM_PA,
  FILM_RATE,
  FILM_STRIDE,
  WOOD_BASE,
  WOOD_CORE,
  WOOD_CORE_G,
  WOOD_GIVE,
  WOOD_PER_CORE_KG,
  WOOD_PER_SURFACE_KG,
  WOOD_REST,
  WOOD_SLOPE,
  WOOD_STRIDE,
  WOOD_SURFACE,
  WOOD_SURFACE_KG,
} = waterPlaces;
const { air, c, drive, film, placesC, placesPa, step, values, wood } = loopRoom;
const WOOD_END = wood.length;
const FILM_END = film.length;
/** Free water above this leaves wood as drips, kg/kg. */
const WOOD_FULL = 0.6;

const LINER = 0;
const DUCTS = 3;
const DUCTS_AT = DUCTS * FILM_STRIDE;

/** Conductance and pressure of each film surface; ducts are cold only while the air handler runs. */
export function prepareFilms(): void {
  const perM3 = 1 / (VAPOR_GAS_CONSTANT * (placesC[AT_AIR]! + 273.15));
  prepareFilm(0, perM3, placesPa[AT_GROUND]!);
  prepareFilm(FILM_STRIDE, perM3, placesPa[AT_WALL_ABOVE]!);
  prepareFilm(2 * FILM_STRIDE, perM3, placesPa[AT_WALL_BELOW]!);
  const cold = placesPa[AT_DUCTS]!;
  const run = drive.runShare;
  // Wet ducts dry between runs at the temperature of the air; dry ones matter only while they are cold.
  if (film[DUCTS_AT + FILM_KG]! > 0) {
    prepareFilm(DUCTS_AT, perM3, run * cold + (1 - run) * placesPa[AT_AIR]!);
    film[DUCTS_AT + FILM_COLD_PA] = cold;
  } else prepareFilm(DUCTS_AT, perM3 * run, cold);
}

function prepareFilm(at: number, perM3: number, pa: number): void {
  const g = film[at + FILM_M3_PER_S]! * perM3;
  film[at + FILM_G] = g;
  film[at + FILM_PA] = pa;
  film[at + FILM_COLD_PA] = pa;
  film[at + FILM_MODE] = g > 0 && (pa < air.vaporPa || film[at + FILM_KG]! > 0) ? 1 : 0;
}

/** Lets surfaces start to condense, and films that would give more than they hold dry up. True when one changed. */
export function switchFilms(): boolean {
  const { vaporPa } = air;
  const { seconds } = step;
  let changed = false;
  for (let at = 0; at < FILM_END; at += FILM_STRIDE) {
    const mode = film[at + FILM_MODE]!;
    if (mode === 2) continue;
    const over = film[at + FILM_PA]! - vaporPa;
    if (mode === 0) {
      if (over < 0 && film[at + FILM_G]! > 0) {
        film[at + FILM_MODE] = 1;
        changed = true;
      }
    } else {
      const holds = film[at + FILM_KG]!;
      if (film[at + FILM_G]! * over * seconds > holds) {
        film[at + FILM_MODE] = 2;
        film[at + FILM_RATE] = holds / seconds;
        changed = true;
      }
    }
  }
  return changed;
}

/** Moves water between air, wood surface and wood core; wood that can hold no more drips. */
export function moveWood(): void {
  const { vaporPa } = air;
  let total = 0;
  for (let at = 0; at < WOOD_END; at += WOOD_STRIDE) {
    const flow = wood[at + WOOD_BASE]! - wood[at + WOOD_SLOPE]! * vaporPa;
    const core = wood[at + WOOD_CORE]!;
    const surfaceMean = wood[at + WOOD_REST]! - flow * wood[at + WOOD_GIVE]!;
    const fromCore = wood[at + WOOD_CORE_G]! * (core - surfaceMean);
    const surface = wood[at + WOOD_SURFACE]! + (fromCore - flow) * wood[at + WOOD_PER_SURFACE_KG]!;
    wood[at + WOOD_CORE] = core - fromCore * wood[at + WOOD_PER_CORE_KG]!;
    total += flow;
    if (surface > WOOD_FULL) {
      air.fallingKg += (surface - WOOD_FULL) * wood[at + WOOD_SURFACE_KG]!;
      wood[at + WOOD_SURFACE] = WOOD_FULL;
    } else wood[at + WOOD_SURFACE] = surface;
  }
  values[WATER_WOOD] = total;
}

/** Moves water between air and films; what a surface can't hold runs to the liner, and from there away. */
export function moveFilms(): void {
  const { vaporPa } = air;
  const { seconds } = step;
  let total = 0;
  let falling = air.fallingKg;
  for (let j = DUCTS; j >= LINER; j--) {
    const at = j * FILM_STRIDE;
    const g = film[at + FILM_G]!;
    values[CONDENSING + j] = film[at + FILM_COLD_PA]! < vaporPa && g > 0 ? 1 : 0;
    const mode = film[at + FILM_MODE]!;
    // Most surfaces are dry most of the time.
    if (mode === 0 && (j > LINER || falling === 0)) continue;
    let flow = 0;
    let holds = film[at + FILM_KG]!;
    if (mode === 1) {
      flow = g * (film[at + FILM_PA]! - vaporPa);
      holds -= flow * seconds;
    } else if (mode === 2) {
      flow = film[at + FILM_RATE]!;
      holds = 0;
    }
    total += flow;
    if (j === LINER) {
      holds += falling;
      falling = 0;
    }
    const most = film[at + FILM_MOST_KG]!;
    if (holds > most) {
      falling += holds - most;
      holds = most;
    }
    film[at + FILM_KG] = holds;
  }
  values[WATER_CONDENSATE] = total;
  values[WATER_DRAINED] = -falling / seconds;
}

/** Heat that this step's water and machines hand to the next step, and the books of it. */
export function bookHeat(): void {
  const machineHeat = -values[WATER_MACHINES]! * CONDENSATION_HEAT_J_PER_KG;
  const machineW = values[MACHINES_W]!;
  const latent = c.latentOn * CONDENSATION_HEAT_J_PER_KG;
  const fromAir =
    latent * (values[WATER + 7]! + values[WATER + 9]! + values[WATER_WOOD]! + values[WATER_CONDENSATE]!);
  // Fog settles on the ground and gives its heat there.
  const fromGround = latent * (values[WATER + 3]! + values[WATER + 5]! + values[WATER_FOG]!);
  air.airHeatW = machineW + machineHeat - fromAir;
  air.soilHeatW = -fromGround;
  values[HEAT_NET_W] = values[HEAT_NET_W]! + machineW + machineHeat - fromAir - fromGround;
  values[HEAT_GROSS_W] =
    values[HEAT_GROSS_W]! + machineW + machineHeat + Math.abs(fromAir) + Math.abs(fromGround);
}
