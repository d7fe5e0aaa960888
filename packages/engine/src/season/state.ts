import type { CompiledCase } from './compiled-case.ts';
import { FILM_SURFACES, HEAT_PATHS, WATER_PATHS, WOOD_SITES } from './places.ts';

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
  seconds: number;
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

/** Means over one step that the water, the mold and the reports read. */
export interface StepResult {
  airC: number;
  surfaceC: number;
  wallAboveC: number;
  wallBelowC: number;
  wallGroundC: number;
  topSoilC: number;
  humidityRatio: number;
  vaporPa: number;
  relativeHumidity: number;
  /** Heat flow from the house down through the floor, W. */
  floorW: number;
  machineKgPerS: number;
  machineW: number;
  /** Sum over the machines of the share of time that they run. */
  runShare: number;
  startsPerHour: number;
  defrosting: boolean;
  belowRating: boolean;
  readonly woodC: Float64Array;
  /** 1 where water condenses during the step. */
  readonly condensing: Uint8Array;
  /** kg/s and W into the space by path. */
  readonly waterKgPerS: Float64Array;
  readonly heatW: Float64Array;
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
    seconds: 3600,
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
  return {
    airC: 0.5,
    surfaceC: 0.5,
    wallAboveC: 0.5,
    wallBelowC: 0.5,
    wallGroundC: 0.5,
    topSoilC: 0.5,
    humidityRatio: 0.005,
    vaporPa: 0.5,
    relativeHumidity: 0.5,
    floorW: 0.5,
    machineKgPerS: 0.5,
    machineW: 0.5,
    runShare: 0.5,
    startsPerHour: 0.5,
    defrosting: false,
    belowRating: false,
    woodC: new Float64Array(WOOD_SITES.length),
    condensing: new Uint8Array(FILM_SURFACES.length),
    waterKgPerS: new Float64Array(WATER_PATHS.length),
    heatW: new Float64Array(HEAT_PATHS.length),
  };
}
