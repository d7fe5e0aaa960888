import { VAPOR_GAS_CONSTANT } from '../moisture/vapor-density.ts';
import { asWaterMPerS, risingDampKgPerMS } from '../moisture/wall.ts';
import { type AirBalance, balanceAir, createAirBalance, MASS_RATIO, runMachines } from './air-balance.ts';
import type { CompiledCase } from './compiled-case.ts';
import { saturationTable, tableSaturationPa, tableWoodHumidity, woodTable } from './fast-tables.ts';
import { WOOD_SITES } from './places.ts';
import type { SpaceState, StepDrive, StepResult } from './state.ts';
import { bookHeat, FILMS, moveFilms, moveWood, prepareFilms, switchFilms } from './water-stores.ts';

const SITES = WOOD_SITES.length;

/** Constants of the wood for one length of step, and working room. */
export interface WaterSolver {
  /** Surface-layer mass over theta·dt, core likewise reduced to its share, kg/s. */
  readonly surfaceStore: Float64Array;
  readonly coreStore: Float64Array;
  readonly coreShare: Float64Array;
  readonly balance: AirBalance;
  readonly pressures: Float64Array;
  readonly wood: Float64Array;
  /** Wood by site: flow = base − slope·(vapor pressure of the air); mean content = rest − flow·give. */
  readonly woodBase: Float64Array;
  readonly woodSlope: Float64Array;
  readonly woodRest: Float64Array;
  readonly sorption: Float64Array;
  readonly filmG: Float64Array;
  readonly filmPa: Float64Array;
  readonly filmColdPa: Float64Array;
  readonly filmRate: Float64Array;
  /** 0 dry and not condensing, 1 exchanging, 2 dries up within the step. */
  readonly filmMode: Uint8Array;
}

export function createWaterSolver(c: CompiledCase, seconds: number, theta: number): WaterSolver {
  const surfaceStore = Float64Array.from(c.woodSurfaceKg, (kg) => kg / (theta * seconds));
  const coreStore = Float64Array.from(c.woodCoreKg, (kg) => kg / (theta * seconds));
  return {
    surfaceStore,
    coreStore,
    coreShare: Float64Array.from(coreStore, (m, i) => {
      const k = c.woodExchangeKgPerS[i]!;
      return (m * k) / (m + k);
    }),
    balance: createAirBalance(c.machines.length),
    pressures: saturationTable(),
    wood: woodTable(),
    woodBase: new Float64Array(SITES),
    woodSlope: new Float64Array(SITES),
    woodRest: new Float64Array(SITES),
    sorption: new Float64Array(2),
    filmG: new Float64Array(FILMS),
    filmPa: new Float64Array(FILMS),
    filmColdPa: new Float64Array(FILMS),
    filmRate: new Float64Array(FILMS),
    filmMode: new Uint8Array(FILMS),
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
  const { waterKgPerS: water } = out;
  const { balance: b, pressures } = w;
  const { pressurePa } = drive;
  const airC = out.airC;
  const start = state.humidityRatio;
  // p = kappa·W with kappa held at the start of the step.
  const kappa = pressurePa / (MASS_RATIO + start);
  const startPa = kappa * start;
  const saturationPa = tableSaturationPa(pressures, airC);

  const groundPa = tableSaturationPa(pressures, out.surfaceC);
  const perM3 = 1 / (VAPOR_GAS_CONSTANT * (0.5 * (airC + out.surfaceC) + 273.15));
  const openG = c.openM3PerS * perM3;
  const standingG = c.standingM3PerS * perM3;
  const outdoorPa = (pressurePa * drive.outdoorHumidity) / (MASS_RATIO + drive.outdoorHumidity);
  const housePa = (pressurePa * drive.houseHumidity) / (MASS_RATIO + drive.houseHumidity);
  const wallGroundPa = tableSaturationPa(pressures, out.wallGroundC);
  const wallAbovePa = tableSaturationPa(pressures, out.wallAboveC);
  const wallBelowPa = tableSaturationPa(pressures, out.wallBelowC);
  const capillaryG = capillaryConductance(c, wallBelowPa, startPa, out.wallBelowC);
  const supply = c.supplyKgPerS * drive.runShare;

  const flow = drive.outdoorKgPerS + drive.houseKgPerS + supply;
  let source =
    drive.outdoorKgPerS * drive.outdoorHumidity +
    drive.houseKgPerS * drive.houseHumidity +
    supply * drive.supplyHumidity +
    c.otherKgPerS +
    (openG + standingG + c.sheetKgPerSPa) * groundPa +
    c.wallAbovePermeance * outdoorPa +
    c.wallBelowPermeance * wallGroundPa +
    capillaryG * wallBelowPa +
    c.floorPermeance * housePa;
  let perPa =
    openG +
    standingG +
    c.sheetKgPerSPa +
    c.wallAbovePermeance +
    c.wallBelowPermeance +
    capillaryG +
    c.floorPermeance;

  for (let i = 0; i < SITES; i++) {
    const woodC =
      airC +
      c.woodHouseWeight[i]! * (drive.houseC - airC) +
      c.woodOutdoorWeight[i]! * (drive.outdoorC - airC);
    out.woodC[i] = woodC;
    tableWoodHumidity(w.wood, woodC, state.woodSurface[i]!, w.sorption);
    const saturation = tableSaturationPa(pressures, woodC);
    const give = 1 / (w.surfaceStore[i]! + w.coreShare[i]!);
    const rest = give * (w.surfaceStore[i]! * state.woodSurface[i]! + w.coreShare[i]! * state.woodCore[i]!);
    const slopePa = saturation * w.sorption[1]!;
    const g = c.woodKgPerSPa[i]! / (1 + c.woodKgPerSPa[i]! * slopePa * give);
    const base = g * (saturation * w.sorption[0]! + slopePa * (rest - state.woodSurface[i]!));
    w.woodBase[i] = base;
    w.woodSlope[i] = g;
    w.woodRest[i] = rest;
    source += base;
    perPa += g;
  }
  w.filmPa[0] = groundPa;
  w.filmPa[1] = wallAbovePa;
  w.filmPa[2] = wallBelowPa;
  prepareFilms(c, w, drive, state, out, startPa, saturationPa);

  // Films switch at most twice each: dry, exchanging, dried up.
  let vaporPa = startPa;
  for (let pass = 0; pass < 2 * FILMS + 1; pass++) {
    let filmSource = 0;
    let filmPerPa = 0;
    for (let j = 0; j < FILMS; j++) {
      const mode = w.filmMode[j]!;
      if (mode === 1) {
        filmSource += w.filmG[j]! * w.filmPa[j]!;
        filmPerPa += w.filmG[j]!;
      } else if (mode === 2) filmSource += w.filmRate[j]!;
    }
    b.source = source + filmSource;
    b.conductance = flow + kappa * (perPa + filmPerPa);
    balanceAir(c, b, drive, airC, saturationPa, start);
    vaporPa = kappa * b.meanHumidity;
    if (!switchFilms(w, state, vaporPa, drive.seconds)) break;
  }

  const mean = b.meanHumidity;
  state.humidityRatio = b.endHumidity;
  out.humidityRatio = mean;
  out.vaporPa = vaporPa;
  out.relativeHumidity = Math.min(1, vaporPa / saturationPa);
  runMachines(c, b, airC, saturationPa, pressurePa, out);

  water[0] = drive.outdoorKgPerS * (drive.outdoorHumidity - mean);
  water[1] = drive.houseKgPerS * (drive.houseHumidity - mean);
  water[2] = supply * (drive.supplyHumidity - mean);
  water[3] = openG * (groundPa - vaporPa);
  water[4] = c.sheetKgPerSPa * (groundPa - vaporPa);
  water[5] = standingG * (groundPa - vaporPa);
  water[6] = c.wallAbovePermeance * (outdoorPa - vaporPa) + c.wallBelowPermeance * (wallGroundPa - vaporPa);
  water[7] = capillaryG * (wallBelowPa - vaporPa);
  water[8] = c.floorPermeance * (housePa - vaporPa);
  water[9] = c.otherKgPerS;
  water[12] = -b.fogKgPerS;
  water[13] = -b.machineKgPerS;
  const drips = moveWood(c, w, state, out, vaporPa, drive.seconds);
  moveFilms(c, w, state, out, vaporPa, drips + b.fogKgPerS * drive.seconds, drive.seconds);
  bookHeat(c, state, out);
}

/** Rising damp as a conductance for this step, kg/(s·Pa): the flow at its start over the pressure difference then. */
function capillaryConductance(c: CompiledCase, wallPa: number, airPa: number, wallC: number): number {
  if (c.capillaryLengthM === 0 || wallPa <= airPa) return 0;
  const drying = (c.massTransfer * (wallPa - airPa)) / (VAPOR_GAS_CONSTANT * (wallC + 273.15));
  const perM = risingDampKgPerMS(c.capillaryWall, c.capillaryHeightM, asWaterMPerS(drying));
  return (c.capillaryLengthM * perM) / (wallPa - airPa);
}
