import { CONDENSATION_HEAT_J_PER_KG } from '../dehumidifier/heat.ts';
import { VAPOR_GAS_CONSTANT } from '../moisture/vapor-density.ts';
import { type CompiledCase, WOOD_FULL } from './compiled-case.ts';
import { tableSaturationPa } from './fast-tables.ts';
import { FILM_SURFACES, WOOD_SITES } from './places.ts';
import type { SpaceState, StepDrive, StepResult } from './state.ts';
import type { WaterSolver } from './water-step.ts';

const SITES = WOOD_SITES.length;
export const FILMS = FILM_SURFACES.length;
const LINER = 0;
const WALL_ABOVE = 1;
const WALL_BELOW = 2;
const DUCTS = 3;

/**
 * Conductance and pressure of each film surface. `filmPa` of liner and walls is set by the caller; the ducts are cold
 * only while the air handler runs.
 */
export function prepareFilms(
  c: CompiledCase,
  w: WaterSolver,
  drive: StepDrive,
  state: SpaceState,
  out: StepResult,
  startPa: number,
  airSaturationPa: number,
): void {
  const run = drive.runShare;
  const skinC = out.airC + c.ductSkinShare * (drive.supplyC - out.airC);
  const skinPa = run > 0 ? tableSaturationPa(w.pressures, skinC) : airSaturationPa;
  const ductsWet = state.filmKg[DUCTS]! > 0;
  w.filmColdPa[LINER] = w.filmPa[LINER]!;
  w.filmColdPa[WALL_ABOVE] = w.filmPa[WALL_ABOVE]!;
  w.filmColdPa[WALL_BELOW] = w.filmPa[WALL_BELOW]!;
  w.filmColdPa[DUCTS] = skinPa;
  w.filmPa[DUCTS] = ductsWet ? run * skinPa + (1 - run) * airSaturationPa : skinPa;
  w.filmG[LINER] = c.filmM3PerS[LINER]! / (VAPOR_GAS_CONSTANT * (out.surfaceC + 273.15));
  w.filmG[WALL_ABOVE] = c.filmM3PerS[WALL_ABOVE]! / (VAPOR_GAS_CONSTANT * (out.wallAboveC + 273.15));
  w.filmG[WALL_BELOW] = c.filmM3PerS[WALL_BELOW]! / (VAPOR_GAS_CONSTANT * (out.wallBelowC + 273.15));
  w.filmG[DUCTS] = ((ductsWet ? 1 : run) * c.filmM3PerS[DUCTS]!) / (VAPOR_GAS_CONSTANT * (skinC + 273.15));
  for (let j = 0; j < FILMS; j++) {
    w.filmMode[j] = w.filmG[j]! > 0 && (state.filmKg[j]! > 0 || w.filmPa[j]! < startPa) ? 1 : 0;
  }
}

/** Lets surfaces start to condense, and films that would give more than they hold dry up. True when one changed. */
export function switchFilms(w: WaterSolver, state: SpaceState, vaporPa: number, seconds: number): boolean {
  let changed = false;
  for (let j = 0; j < FILMS; j++) {
    const mode = w.filmMode[j]!;
    if (mode === 0) {
      if (w.filmG[j]! > 0 && w.filmPa[j]! < vaporPa) {
        w.filmMode[j] = 1;
        changed = true;
      }
    } else if (mode === 1) {
      const holds = state.filmKg[j]!;
      if (w.filmG[j]! * (w.filmPa[j]! - vaporPa) * seconds > holds) {
        w.filmMode[j] = 2;
        w.filmRate[j] = holds / seconds;
        changed = true;
      }
    }
  }
  return changed;
}

/** Moves water between air, wood surface and wood core; returns what drips from wood that can hold no more, kg. */
export function moveWood(
  c: CompiledCase,
  w: WaterSolver,
  state: SpaceState,
  out: StepResult,
  vaporPa: number,
  seconds: number,
): number {
  let total = 0;
  let drips = 0;
  for (let i = 0; i < SITES; i++) {
    const flow = w.woodBase[i]! - w.woodSlope[i]! * vaporPa;
    const k = c.woodExchangeKgPerS[i]!;
    const surfaceMean = w.woodRest[i]! - flow / (w.surfaceStore[i]! + w.coreShare[i]!);
    const store = w.coreStore[i]!;
    const coreMean = (store * state.woodCore[i]! + k * surfaceMean) / (store + k);
    const fromCore = k * (coreMean - surfaceMean);
    const surface = state.woodSurface[i]! + ((fromCore - flow) * seconds) / c.woodSurfaceKg[i]!;
    state.woodCore[i] = state.woodCore[i]! - (fromCore * seconds) / c.woodCoreKg[i]!;
    total += flow;
    if (surface > WOOD_FULL) {
      drips += (surface - WOOD_FULL) * c.woodSurfaceKg[i]!;
      state.woodSurface[i] = WOOD_FULL;
    } else state.woodSurface[i] = surface;
  }
  out.waterKgPerS[10] = total;
  return drips;
}

/** Moves water between air and films; what a surface can't hold runs to the liner, and from there away. */
export function moveFilms(
  c: CompiledCase,
  w: WaterSolver,
  state: SpaceState,
  out: StepResult,
  vaporPa: number,
  fallingKg: number,
  seconds: number,
): void {
  let total = 0;
  let falling = fallingKg;
  for (let j = FILMS - 1; j >= 0; j--) {
    const mode = w.filmMode[j]!;
    const flow = mode === 1 ? w.filmG[j]! * (w.filmPa[j]! - vaporPa) : mode === 2 ? w.filmRate[j]! : 0;
    total += flow;
    out.condensing[j] = w.filmG[j]! > 0 && w.filmColdPa[j]! < vaporPa ? 1 : 0;
    let holds = mode === 2 ? 0 : state.filmKg[j]! - flow * seconds;
    if (j === LINER) {
      holds += falling;
      falling = 0;
    }
    const most = c.filmCapacityKg[j]!;
    if (holds > most) {
      falling += holds - most;
      holds = most;
    }
    // Rounding may leave a film a hair below nothing.
    state.filmKg[j] = holds;
  }
  out.waterKgPerS[11] = total;
  out.waterKgPerS[14] = -falling / seconds;
}

/** Heat that this step's water and machines hand to the next step, and the year's books of it. */
export function bookHeat(c: CompiledCase, state: SpaceState, out: StepResult): void {
  const { waterKgPerS: water, heatW } = out;
  const machineHeat = out.machineKgPerS * CONDENSATION_HEAT_J_PER_KG;
  const fromGround = water[3]! + water[5]!;
  const fromAir = water[7]! + water[9]! + water[10]! + water[11]!;
  const latent = c.latentOn * CONDENSATION_HEAT_J_PER_KG;
  state.airHeatW = out.machineW + machineHeat - latent * fromAir;
  // Fog settles on the ground and gives its heat there.
  state.soilHeatW = -latent * (fromGround + water[12]!);
  heatW[9] = heatW[9]! + out.machineW;
  heatW[10] = machineHeat;
  heatW[11] = -latent * (fromGround + fromAir + water[12]!);
}
