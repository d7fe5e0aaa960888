import type { CompiledCase } from './compiled-case.ts';
import { FILM_SURFACES, WOOD_SITES } from './places.ts';
import { stepPlaces, surfacePlaces } from './step-values.ts';

const { PLACES } = surfacePlaces;
const { VALUES } = stepPlaces;

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

/** What acts on the space during one step. */
export interface StepDrive {
  outdoorC: number;
  outdoorHumidity: number;
  pressurePa: number;
  solarWPerM2: number;
  windMPerS: number;
  /** Cosine and sine of the yearly angle. */
  yearCos: number;
  yearSin: number;
  houseC: number;
  houseHumidity: number;
  cooled: boolean;
  runShare: number;
  supplyC: number;
  supplyHumidity: number;
  outdoorKgPerS: number;
  houseKgPerS: number;
  /** Share of all air entering the house that came up through the floor. */
  floorShare: number;
  powerOn: boolean;
  machinesOn: boolean;
}

/** What one step finds: its means (`step-values.ts` says where), and the temperatures of all surfaces. */
export interface StepResult {
  readonly values: Float64Array;
  readonly placesC: Float64Array;
}

/** A state to start a spin-up from: soil at the yearly mean, wood and air at 70 % relative humidity or so. */
export function createState(compiled: CompiledCase, airC: number, humidityRatio: number): SpaceState {
  const soilC = new Float64Array(compiled.layers).fill(compiled.waveMean);
  for (let i = 0; i < compiled.layers; i++) {
    soilC[i] = 0.5 * (airC + compiled.waveMean - compiled.waveCos[i]!);
  }
  return {
    airC,
    humidityRatio,
    soilC,
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

export function createDrive(): StepDrive {
  return {
    outdoorC: 0.5,
    outdoorHumidity: 0.005,
    pressurePa: 101325.5,
    solarWPerM2: 0.5,
    windMPerS: 0.5,
    yearCos: 0.5,
    yearSin: 0.5,
    houseC: 20.5,
    houseHumidity: 0.005,
    cooled: false,
    runShare: 0.5,
    supplyC: 14.5,
    supplyHumidity: 0.005,
    outdoorKgPerS: 0.5,
    houseKgPerS: 0.5,
    floorShare: 0.5,
    powerOn: true,
    machinesOn: true,
  };
}

export function createStepResult(): StepResult {
  return { values: new Float64Array(VALUES), placesC: new Float64Array(PLACES) };
}
