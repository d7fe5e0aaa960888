import { type CompiledCase, WOOD_FULL } from './compiled-case.ts';
import { loopConstants } from './loop-constants.ts';
import type { SpaceState, StepDrive, StepResult } from './state.ts';
import { stepPlaces, surfacePlaces } from './step-values.ts';
import { type WaterSolver, waterPlaces } from './water-solver.ts';

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
  FILM_MODE,
  FILM_PA,
  FILM_RATE,
  FILM_STRIDE,
  WOOD_BASE,
  WOOD_CORE_G,
  WOOD_GIVE,
  WOOD_PER_CORE_KG,
  WOOD_PER_SURFACE_KG,
  WOOD_REST,
  WOOD_SLOPE,
  WOOD_STRIDE,
} = waterPlaces;

const LINER = 0;
const DUCTS = 3;
const PLACE_OF_FILM = [AT_GROUND, AT_WALL_ABOVE, AT_WALL_BELOW, AT_DUCTS] as const;

/** Conductance and pressure of each film surface; ducts are cold only while the air handler runs. */
export function prepareFilms(
  c: CompiledCase,
  w: WaterSolver,
  drive: StepDrive,
  state: SpaceState,
  out: StepResult,
): void {
  const { film, placesPa, vaporPa } = w;
  const { filmM3PerS } = c;
  const { filmKg } = state;
  const perM3 = 1 / (VAPOR_GAS_CONSTANT * (out.placesC[AT_AIR]! + 273.15));
  for (let j = 0, at = 0; at < film.length; j++, at += FILM_STRIDE) {
    const cold = placesPa[PLACE_OF_FILM[j]!]!;
    let pa = cold;
    let g = filmM3PerS[j]! * perM3;
    if (j === DUCTS) {
      const run = drive.runShare;
      // Wet ducts dry between runs at the temperature of the air; dry ones matter only while they are cold.
      if (filmKg[DUCTS]! > 0) pa = run * cold + (1 - run) * placesPa[AT_AIR]!;
      else g *= run;
    }
    film[at + FILM_G] = g;
    film[at + FILM_PA] = pa;
    film[at + FILM_COLD_PA] = cold;
    film[at + FILM_MODE] = g > 0 && (pa < vaporPa || filmKg[j]! > 0) ? 1 : 0;
  }
}

/** Lets surfaces start to condense, and films that would give more than they hold dry up. True when one changed. */
export function switchFilms(w: WaterSolver, state: SpaceState): boolean {
  const { film, vaporPa, seconds } = w;
  let changed = false;
  for (let j = 0, at = 0; at < film.length; j++, at += FILM_STRIDE) {
    const mode = film[at + FILM_MODE]!;
    if (mode === 2) continue;
    const over = film[at + FILM_PA]! - vaporPa;
    if (mode === 0) {
      if (over < 0 && film[at + FILM_G]! > 0) {
        film[at + FILM_MODE] = 1;
        changed = true;
      }
    } else {
      const holds = state.filmKg[j]!;
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
export function moveWood(c: CompiledCase, w: WaterSolver, state: SpaceState, values: Float64Array): void {
  const { woodSurface, woodCore } = state;
  const { site, vaporPa } = w;
  let total = 0;
  for (let i = 0, at = 0; at < site.length; i++, at += WOOD_STRIDE) {
    const flow = site[at + WOOD_BASE]! - site[at + WOOD_SLOPE]! * vaporPa;
    const core = woodCore[i]!;
    const surfaceMean = site[at + WOOD_REST]! - flow * site[at + WOOD_GIVE]!;
    const fromCore = site[at + WOOD_CORE_G]! * (core - surfaceMean);
    const surface = woodSurface[i]! + (fromCore - flow) * site[at + WOOD_PER_SURFACE_KG]!;
    woodCore[i] = core - fromCore * site[at + WOOD_PER_CORE_KG]!;
    total += flow;
    if (surface > WOOD_FULL) {
      w.fallingKg += (surface - WOOD_FULL) * c.woodSurfaceKg[i]!;
      woodSurface[i] = WOOD_FULL;
    } else woodSurface[i] = surface;
  }
  values[WATER_WOOD] = total;
}

/** Moves water between air and films; what a surface can't hold runs to the liner, and from there away. */
export function moveFilms(c: CompiledCase, w: WaterSolver, state: SpaceState, values: Float64Array): void {
  const { filmKg } = state;
  const { film, seconds, vaporPa } = w;
  let total = 0;
  let falling = w.fallingKg;
  for (let j = DUCTS; j >= LINER; j--) {
    const at = j * FILM_STRIDE;
    values[CONDENSING + j] = film[at + FILM_COLD_PA]! < vaporPa && film[at + FILM_G]! > 0 ? 1 : 0;
    const mode = film[at + FILM_MODE]!;
    // Most surfaces are dry most of the time.
    if (mode === 0 && (j > LINER || falling === 0)) continue;
    let flow = 0;
    let holds = filmKg[j]!;
    if (mode === 1) {
      flow = film[at + FILM_G]! * (film[at + FILM_PA]! - vaporPa);
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
    const most = c.filmCapacityKg[j]!;
    if (holds > most) {
      falling += holds - most;
      holds = most;
    }
    filmKg[j] = holds;
  }
  values[WATER_CONDENSATE] = total;
  values[WATER_DRAINED] = -falling / seconds;
}

/** Heat that this step's water and machines hand to the next step, and the books of it. */
export function bookHeat(c: CompiledCase, state: SpaceState, values: Float64Array): void {
  const machineHeat = -values[WATER_MACHINES]! * CONDENSATION_HEAT_J_PER_KG;
  const machineW = values[MACHINES_W]!;
  const latent = c.latentOn * CONDENSATION_HEAT_J_PER_KG;
  const fromAir =
    latent * (values[WATER + 7]! + values[WATER + 9]! + values[WATER_WOOD]! + values[WATER_CONDENSATE]!);
  // Fog settles on the ground and gives its heat there.
  const fromGround = latent * (values[WATER + 3]! + values[WATER + 5]! + values[WATER_FOG]!);
  state.airHeatW = machineW + machineHeat - fromAir;
  state.soilHeatW = -fromGround;
  values[HEAT_NET_W] = values[HEAT_NET_W]! + machineW + machineHeat - fromAir - fromGround;
  values[HEAT_GROSS_W] =
    values[HEAT_GROSS_W]! + machineW + machineHeat + Math.abs(fromAir) + Math.abs(fromGround);
}
