import { VAPOR_GAS_CONSTANT } from '../moisture/vapor-density.ts';
import { asWaterMPerS, risingDampKgPerMS } from '../moisture/wall.ts';
import {
  type AirBalance,
  balanceAir,
  createAirBalance,
  humidityRatioOf,
  MASS_RATIO,
  runMachines,
} from './air-balance.ts';
import type { CompiledCase } from './compiled-case.ts';
import { saturationTable, tableSaturations, tableWoodHumidities, woodTable } from './fast-tables.ts';
import { FILM_SURFACES, WOOD_SITES } from './places.ts';
import type { SpaceState, StepDrive, StepResult } from './state.ts';
import {
  AT_AIR,
  AT_GROUND,
  AT_WALL_BELOW,
  AT_WALL_GROUND,
  AT_WOOD,
  FLOOR_SHARE,
  HUMIDITY_RATIO,
  OUTDOOR_KG_PER_S,
  PLACES,
  RELATIVE_HUMIDITY,
  VAPOR_PA,
  WATER,
  WATER_FOG,
  WATER_MACHINES,
} from './step-values.ts';
import { bookHeat, moveFilms, moveWood, prepareFilms, switchFilms } from './water-stores.ts';

/** Constants of the wood for one length of step, and working room. */
export interface WaterSolver {
  readonly seconds: number;
  /** Surface-layer and core mass over theta·dt, and the core behind its resistance, kg/s. */
  readonly surfaceStore: Float64Array;
  readonly coreStore: Float64Array;
  readonly coreShare: Float64Array;
  /** Rise of the mean surface content by 1 kg/s, s/kg. */
  readonly give: Float64Array;
  readonly balance: AirBalance;
  readonly pressures: Float64Array;
  readonly wood: Float64Array;
  /** Saturation pressure at each place, Pa. */
  readonly placesPa: Float64Array;
  /** Wood by site: flow = base − slope·(vapor pressure of the air); mean content = rest − flow·give. */
  readonly woodBase: Float64Array;
  readonly woodSlope: Float64Array;
  readonly woodRest: Float64Array;
  readonly filmG: Float64Array;
  readonly filmPa: Float64Array;
  readonly filmColdPa: Float64Array;
  readonly filmRate: Float64Array;
  /** 0 dry and not condensing, 1 exchanging, 2 dries up within the step. */
  readonly filmMode: Uint8Array;
  /** Vapor pressure of the air, mean of the step, Pa. */
  vaporPa: number;
  /** Water on its way to the liner, kg. */
  fallingKg: number;
}

export function createWaterSolver(c: CompiledCase, seconds: number, theta: number): WaterSolver {
  const surfaceStore = c.woodSurfaceKg.map((kg) => kg / (theta * seconds));
  const coreStore = c.woodCoreKg.map((kg) => kg / (theta * seconds));
  const coreShare = coreStore.map((m, i) => (m * c.woodExchangeKgPerS[i]!) / (m + c.woodExchangeKgPerS[i]!));
  const sites = () => new Float64Array(WOOD_SITES.length);
  const films = () => new Float64Array(FILM_SURFACES.length);
  return {
    seconds,
    surfaceStore,
    coreStore,
    coreShare,
    give: surfaceStore.map((m, i) => 1 / (m + coreShare[i]!)),
    balance: createAirBalance(c, seconds),
    pressures: saturationTable(),
    wood: woodTable(),
    placesPa: new Float64Array(PLACES),
    woodBase: sites(),
    woodSlope: sites(),
    woodRest: sites(),
    filmG: films(),
    filmPa: films(),
    filmColdPa: films(),
    filmRate: films(),
    filmMode: new Uint8Array(FILM_SURFACES.length),
    vaporPa: 0.5,
    fallingKg: 0.5,
  };
}

/**
 * One step of the water: air, wood, films and machines, at the temperatures that `stepHeat` found. Every flow is
 * computed once and booked on both sides.
 */
export function stepWater(
  c: CompiledCase,
  w: WaterSolver,
  drive: StepDrive,
  state: SpaceState,
  out: StepResult,
): void {
  const { values, placesC } = out;
  const { balance: b, placesPa } = w;
  const { pressurePa, outdoorHumidity, houseHumidity, outdoorKgPerS, houseKgPerS } = drive;
  tableSaturations(w.pressures, placesC, placesPa);
  const start = state.humidityRatio;
  // p = kappa·W with kappa held at the start of the step.
  const kappa = pressurePa / (MASS_RATIO + start);
  w.vaporPa = kappa * start;
  const groundPa = placesPa[AT_GROUND]!;
  const wallBelowPa = placesPa[AT_WALL_BELOW]!;
  const perM3 = 1 / (VAPOR_GAS_CONSTANT * (0.5 * (placesC[AT_AIR]! + placesC[AT_GROUND]!) + 273.15));
  const openG = c.openM3PerS * perM3;
  const standingG = c.standingM3PerS * perM3;
  const outdoorPa = (pressurePa * outdoorHumidity) / (MASS_RATIO + outdoorHumidity);
  const housePa = (pressurePa * houseHumidity) / (MASS_RATIO + houseHumidity);
  const capillaryG = c.capillaryLengthM > 0 ? capillaryConductance(c, w, out) : 0;
  const supply = c.supplyKgPerS * drive.runShare;
  const flow = outdoorKgPerS + houseKgPerS + supply;
  const wallG = c.wallAbovePermeance + c.wallBelowPermeance;
  let source =
    outdoorKgPerS * outdoorHumidity +
    houseKgPerS * houseHumidity +
    supply * drive.supplyHumidity +
    c.otherKgPerS +
    (openG + standingG + c.sheetKgPerSPa) * groundPa +
    c.wallAbovePermeance * outdoorPa +
    c.wallBelowPermeance * placesPa[AT_WALL_GROUND]! +
    capillaryG * wallBelowPa +
    c.floorPermeance * housePa;
  let perPa = openG + standingG + c.sheetKgPerSPa + wallG + capillaryG + c.floorPermeance;
  linearizeWood(c, w, state, out);
  for (let i = 0; i < w.woodBase.length; i++) {
    source += w.woodBase[i]!;
    perPa += w.woodSlope[i]!;
  }
  prepareFilms(c, w, drive, state, out);

  b.airC = placesC[AT_AIR]!;
  b.saturationPa = placesPa[AT_AIR]!;
  b.pressurePa = pressurePa;
  b.kappa = kappa;
  b.start = start;
  b.saturated = humidityRatioOf(b.saturationPa, pressurePa);
  b.machinesOn = drive.machinesOn;
  // Films switch at most twice each: dry, exchanging, dried up.
  for (let pass = 0; pass < 2 * FILM_SURFACES.length + 1; pass++) {
    let filmSource = 0;
    let filmPerPa = 0;
    for (let j = 0; j < w.filmMode.length; j++) {
      const mode = w.filmMode[j]!;
      if (mode === 1) {
        filmSource += w.filmG[j]! * w.filmPa[j]!;
        filmPerPa += w.filmG[j]!;
      } else if (mode === 2) filmSource += w.filmRate[j]!;
    }
    b.source = source + filmSource;
    b.conductance = flow + kappa * (perPa + filmPerPa);
    balanceAir(c, b);
    w.vaporPa = kappa * b.mean;
    if (!switchFilms(w, state)) break;
  }

  const mean = b.mean;
  const vaporPa = w.vaporPa;
  state.humidityRatio = b.end;
  values[HUMIDITY_RATIO] = mean;
  values[VAPOR_PA] = vaporPa;
  values[RELATIVE_HUMIDITY] = vaporPa < b.saturationPa ? vaporPa / b.saturationPa : 1;
  values[OUTDOOR_KG_PER_S] = outdoorKgPerS;
  values[FLOOR_SHARE] = drive.floorShare;
  runMachines(c, b, values);
  values[WATER] = outdoorKgPerS * (outdoorHumidity - mean);
  values[WATER + 1] = houseKgPerS * (houseHumidity - mean);
  values[WATER + 2] = supply * (drive.supplyHumidity - mean);
  values[WATER + 3] = openG * (groundPa - vaporPa);
  values[WATER + 4] = c.sheetKgPerSPa * (groundPa - vaporPa);
  values[WATER + 5] = standingG * (groundPa - vaporPa);
  values[WATER + 6] =
    c.wallAbovePermeance * (outdoorPa - vaporPa) +
    c.wallBelowPermeance * (placesPa[AT_WALL_GROUND]! - vaporPa);
  values[WATER + 7] = capillaryG * (wallBelowPa - vaporPa);
  values[WATER + 8] = c.floorPermeance * (housePa - vaporPa);
  values[WATER + 9] = c.otherKgPerS;
  values[WATER_FOG] = -b.fogKgPerS;
  values[WATER_MACHINES] = -b.machineKgPerS;
  w.fallingKg = b.fogKgPerS * w.seconds;
  moveWood(c, w, state, out);
  moveFilms(c, w, state, out);
  bookHeat(c, state, values);
}

/** Flow from each piece of wood as a straight line in the vapor pressure, with its core eliminated. */
function linearizeWood(c: CompiledCase, w: WaterSolver, state: SpaceState, out: StepResult): void {
  const { woodBase, woodSlope, woodRest, surfaceStore, coreShare, give, placesPa } = w;
  const { woodSurface, woodCore } = state;
  tableWoodHumidities(w.wood, out.placesC, AT_WOOD, woodSurface, woodBase, woodSlope);
  for (let i = 0; i < woodBase.length; i++) {
    const saturation = placesPa[AT_WOOD + i]!;
    const rest = give[i]! * (surfaceStore[i]! * woodSurface[i]! + coreShare[i]! * woodCore[i]!);
    const slopePa = saturation * woodSlope[i]!;
    const g = c.woodKgPerSPa[i]! / (1 + c.woodKgPerSPa[i]! * slopePa * give[i]!);
    woodBase[i] = g * (saturation * woodBase[i]! + slopePa * (rest - woodSurface[i]!));
    woodSlope[i] = g;
    woodRest[i] = rest;
  }
}

/** Rising damp as a conductance for this step, kg/(s·Pa): the flow at its start over the pressure difference then. */
function capillaryConductance(c: CompiledCase, w: WaterSolver, out: StepResult): number {
  const difference = w.placesPa[AT_WALL_BELOW]! - w.vaporPa;
  if (difference <= 0) return 0;
  const wallK = out.placesC[AT_WALL_BELOW]! + 273.15;
  const drying = (c.massTransfer * difference) / (VAPOR_GAS_CONSTANT * wallK);
  const perM = risingDampKgPerMS(c.capillaryWall, c.capillaryHeightM, asWaterMPerS(drying));
  return (c.capillaryLengthM * perM) / difference;
}
