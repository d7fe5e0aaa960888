import type { CompiledCase } from './compiled-case.ts';
import { loopRoom } from './loop-room.ts';
import { FILM_SURFACES, WOOD_SITES } from './places.ts';
import { soilPlaces, waterPlaces } from './store-places.ts';

const { air, film, soil, wood } = loopRoom;
const { SOIL_C, SOIL_STRIDE } = soilPlaces;
const { FILM_KG, FILM_STRIDE, WOOD_CORE, WOOD_STRIDE, WOOD_SURFACE } = waterPlaces;

/** What the space holds: everything that one step hands to the next. */
export interface SpaceState {
  airC: number;
  humidityRatio: number;
  readonly soilC: Float64Array;
  /** Moisture content by site. */
  readonly woodSurface: Float64Array;
  readonly woodCore: Float64Array;
  /** Liquid water by film surface, kg. */
  readonly filmKg: Float64Array;
  /** Heat that the last step left to the next, W: from machines and evaporation to the air, and to the soil. */
  airHeatW: number;
  soilHeatW: number;
}

/** A state to start a spin-up from: soil at the yearly mean, wood and air at 70 % relative humidity or so. */
export function createState(compiled: CompiledCase, airC: number, humidityRatio: number): SpaceState {
  const { waveMean } = compiled.numbers;
  return {
    airC,
    humidityRatio,
    soilC: compiled.waveCos.map((cosine) => 0.5 * (airC + waveMean - cosine)),
    woodSurface: new Float64Array(WOOD_SITES.length).fill(0.13),
    woodCore: new Float64Array(WOOD_SITES.length).fill(0.13),
    filmKg: new Float64Array(FILM_SURFACES.length),
    airHeatW: 0,
    soilHeatW: 0,
  };
}

export function copyState(state: SpaceState): SpaceState {
  return {
    ...state,
    soilC: state.soilC.slice(),
    woodSurface: state.woodSurface.slice(),
    woodCore: state.woodCore.slice(),
    filmKg: state.filmKg.slice(),
  };
}

/** Puts a state into the working room. */
export function loadState(state: SpaceState): void {
  air.airC = state.airC;
  air.humidityRatio = state.humidityRatio;
  air.airHeatW = state.airHeatW;
  air.soilHeatW = state.soilHeatW;
  state.soilC.forEach((value, i) => {
    soil[i * SOIL_STRIDE + SOIL_C] = value;
  });
  for (let i = 0; i < WOOD_SITES.length; i++) {
    wood[i * WOOD_STRIDE + WOOD_SURFACE] = state.woodSurface[i]!;
    wood[i * WOOD_STRIDE + WOOD_CORE] = state.woodCore[i]!;
  }
  state.filmKg.forEach((value, i) => {
    film[i * FILM_STRIDE + FILM_KG] = value;
  });
}

/** Takes the state of the working room back into `state`. */
export function keepState(state: SpaceState): void {
  state.airC = air.airC;
  state.humidityRatio = air.humidityRatio;
  state.airHeatW = air.airHeatW;
  state.soilHeatW = air.soilHeatW;
  for (let i = 0; i < state.soilC.length; i++) state.soilC[i] = soil[i * SOIL_STRIDE + SOIL_C]!;
  for (let i = 0; i < WOOD_SITES.length; i++) {
    state.woodSurface[i] = wood[i * WOOD_STRIDE + WOOD_SURFACE]!;
    state.woodCore[i] = wood[i * WOOD_STRIDE + WOOD_CORE]!;
  }
  for (let i = 0; i < FILM_SURFACES.length; i++) state.filmKg[i] = film[i * FILM_STRIDE + FILM_KG]!;
}
