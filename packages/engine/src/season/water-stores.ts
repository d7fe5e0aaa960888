import { CONDENSATION_HEAT_J_PER_KG } from '../dehumidifier/heat.ts';
import { VAPOR_GAS_CONSTANT } from '../moisture/vapor-density.ts';
import { type CompiledCase, WOOD_FULL } from './compiled-case.ts';
import type { SpaceState, StepDrive, StepResult } from './state.ts';
import {
  AT_AIR,
  AT_DUCTS,
  AT_GROUND,
  AT_WALL_ABOVE,
  AT_WALL_BELOW,
  CONDENSING,
  HEAT_CONDENSING,
  HEAT_EVAPORATING,
  HEAT_MACHINES,
  MACHINE_KG_PER_S,
  WATER,
  WATER_CONDENSATE,
  WATER_DRAINED,
  WATER_FOG,
  WATER_WOOD,
} from './step-values.ts';
import type { WaterSolver } from './water-step.ts';

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
  const { filmG, filmPa, filmColdPa, filmMode, placesPa } = w;
  const { filmM3PerS } = c;
  const { filmKg } = state;
  const { placesC } = out;
  for (let j = 0; j < filmG.length; j++) {
    const place = PLACE_OF_FILM[j]!;
    const area = filmM3PerS[j]!;
    const pa = placesPa[place]!;
    filmPa[j] = pa;
    filmColdPa[j] = pa;
    if (area === 0) {
      filmG[j] = 0;
      filmMode[j] = 0;
      continue;
    }
    let g = area / (VAPOR_GAS_CONSTANT * (placesC[place]! + 273.15));
    if (j === DUCTS) {
      const run = drive.runShare;
      // Wet ducts dry between runs at the temperature of the air; dry ones matter only while they are cold.
      if (filmKg[DUCTS]! > 0) filmPa[DUCTS] = run * pa + (1 - run) * placesPa[AT_AIR]!;
      else g *= run;
    }
    filmG[j] = g;
    filmMode[j] = g > 0 && (filmKg[j]! > 0 || filmPa[j]! < w.vaporPa) ? 1 : 0;
  }
}

/** Lets surfaces start to condense, and films that would give more than they hold dry up. True when one changed. */
export function switchFilms(w: WaterSolver, state: SpaceState): boolean {
  const { filmG, filmPa, filmMode, filmRate, vaporPa, seconds } = w;
  let changed = false;
  for (let j = 0; j < filmG.length; j++) {
    const mode = filmMode[j]!;
    if (mode === 0) {
      if (filmG[j]! > 0 && filmPa[j]! < vaporPa) {
        filmMode[j] = 1;
        changed = true;
      }
    } else if (mode === 1) {
      const holds = state.filmKg[j]!;
      if (filmG[j]! * (filmPa[j]! - vaporPa) * seconds > holds) {
        filmMode[j] = 2;
        filmRate[j] = holds / seconds;
        changed = true;
      }
    }
  }
  return changed;
}

/** Moves water between air, wood surface and wood core; wood that can hold no more drips. */
export function moveWood(c: CompiledCase, w: WaterSolver, state: SpaceState, out: StepResult): void {
  const { woodSurface, woodCore } = state;
  const { woodBase, woodSlope, woodRest, coreStore, give, seconds, vaporPa } = w;
  let total = 0;
  for (let i = 0; i < woodBase.length; i++) {
    const flow = woodBase[i]! - woodSlope[i]! * vaporPa;
    const k = c.woodExchangeKgPerS[i]!;
    const surfaceMean = woodRest[i]! - flow * give[i]!;
    const store = coreStore[i]!;
    const fromCore = (k * store * (woodCore[i]! - surfaceMean)) / (store + k);
    const surface = woodSurface[i]! + ((fromCore - flow) * seconds) / c.woodSurfaceKg[i]!;
    woodCore[i] = woodCore[i]! - (fromCore * seconds) / c.woodCoreKg[i]!;
    total += flow;
    if (surface > WOOD_FULL) {
      w.fallingKg += (surface - WOOD_FULL) * c.woodSurfaceKg[i]!;
      woodSurface[i] = WOOD_FULL;
    } else woodSurface[i] = surface;
  }
  out.values[WATER_WOOD] = total;
}

/** Moves water between air and films; what a surface can't hold runs to the liner, and from there away. */
export function moveFilms(c: CompiledCase, w: WaterSolver, state: SpaceState, out: StepResult): void {
  const { filmKg } = state;
  const { filmG, filmPa, filmColdPa, filmMode, filmRate, seconds, vaporPa } = w;
  const { values } = out;
  let total = 0;
  let falling = w.fallingKg;
  for (let j = DUCTS; j >= LINER; j--) {
    const mode = filmMode[j]!;
    const flow = mode === 1 ? filmG[j]! * (filmPa[j]! - vaporPa) : mode === 2 ? filmRate[j]! : 0;
    total += flow;
    values[CONDENSING + j] = filmG[j]! > 0 && filmColdPa[j]! < vaporPa ? 1 : 0;
    let holds = mode === 2 ? 0 : filmKg[j]! - flow * seconds;
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
  const machineHeat = values[MACHINE_KG_PER_S]! * CONDENSATION_HEAT_J_PER_KG;
  const fromGround = values[WATER + 3]! + values[WATER + 5]!;
  const fromAir = values[WATER + 7]! + values[WATER + 9]! + values[WATER_WOOD]! + values[WATER_CONDENSATE]!;
  const latent = c.latentOn * CONDENSATION_HEAT_J_PER_KG;
  const fog = values[WATER_FOG]!;
  state.airHeatW = values[HEAT_MACHINES]! + machineHeat - latent * fromAir;
  // Fog settles on the ground and gives its heat there.
  state.soilHeatW = -latent * (fromGround + fog);
  values[HEAT_CONDENSING] = machineHeat;
  values[HEAT_EVAPORATING] = -latent * (fromGround + fromAir + fog);
}
