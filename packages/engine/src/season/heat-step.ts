import type { CompiledCase } from './compiled-case.ts';
import { decayOf } from './decay.ts';
import { loopConstants } from './loop-constants.ts';
import type { SpaceState, StepDrive, StepResult } from './state.ts';
import { stepPlaces, surfacePlaces } from './step-values.ts';

const { AIR_HEAT } = loopConstants;
const { AIR_C, FANS_W, FLOOR_W, GROUND_C, HEAT_GROSS_W, HEAT_NET_W, WALL_C, WOOD_C } = stepPlaces;
const { AT_AIR, AT_DUCTS, AT_GROUND, AT_WALL_ABOVE, AT_WALL_BELOW, AT_WALL_GROUND, AT_WOOD } = surfacePlaces;

const STRIDE = 8;
const STORE = 0;
const STEADY = 1;
const COSINE = 2;
const SINE = 3;
const GIVE = 4;
const PASS = 5;
const LATERAL = 6;

/**
 * Coefficients of the soil column for one length of step. The column is linear and its lower part does not change from
 * step to step, so it is eliminated once: mean_i = give_i·rhs_i + pass_i·mean_(i−1).
 */
export interface SoilSolver {
  readonly seconds: number;
  /** 1/theta: 2 centered in time, 1 fully implicit. */
  readonly overTheta: number;
  /**
   * By layer, `STRIDE` places: heat capacity over theta·dt, then the steady, cosine and sine parts of lateral and deep heat
   * (W/m²), give, pass, and the lateral coupling. One array, because each array read in a loop costs its own checks.
   */
  readonly layer: Float64Array;
  /** What stands against the top layer, the air left out, W/(m²·K). */
  readonly topPivot: number;
  readonly lateralSteady: number;
  readonly lateralCos: number;
  readonly lateralSin: number;
  readonly rhs: Float64Array;
}

/** Prepares the soil column of a case for steps of `seconds`. */
export function createSoilSolver(c: CompiledCase, seconds: number, theta: number): SoilSolver {
  const n = c.layers;
  const layer = new Float64Array(STRIDE * n);
  let topPivot = 0;
  let giveBelow = 0;
  let lateralSteady = 0;
  let lateralCos = 0;
  let lateralSin = 0;
  for (let i = n - 1; i >= 0; i--) {
    const at = STRIDE * i;
    const up = i > 0 ? c.soilDown[i - 1]! : 0;
    const down = c.soilDown[i]!;
    const below = i === n - 1 ? down : down * (1 - down * giveBelow);
    const lateral = c.soilLateral[i]!;
    const store = c.soilHeat[i]! / (theta * seconds);
    const pivot = store + up + below + lateral;
    lateralSteady += lateral * c.waveMean;
    lateralCos -= lateral * c.waveCos[i]!;
    lateralSin -= lateral * c.waveSin[i]!;
    layer[at + STORE] = store;
    layer[at + STEADY] = lateral * c.waveMean + (i === n - 1 ? down * c.deepC : 0);
    layer[at + COSINE] = -lateral * c.waveCos[i]!;
    layer[at + SINE] = -lateral * c.waveSin[i]!;
    layer[at + GIVE] = 1 / pivot;
    layer[at + PASS] = up / pivot;
    layer[at + LATERAL] = lateral;
    giveBelow = 1 / pivot;
    topPivot = pivot;
  }
  const rhs = new Float64Array(n);
  return { seconds, overTheta: 1 / theta, layer, topPivot, lateralSteady, lateralCos, lateralSin, rhs };
}

/**
 * One step of air and soil temperature. The air relaxes exponentially to its balance while the soil follows the
 * centered (or implicit) rule; both are solved together, so that each flow counts once on either side.
 */
export function stepHeat(
  c: CompiledCase,
  solver: SoilSolver,
  drive: StepDrive,
  state: SpaceState,
  out: StepResult,
): void {
  const n = c.layers;
  const { layer, rhs, seconds, overTheta } = solver;
  const { soilC } = state;
  const { outdoorC, houseC, supplyC, yearCos, yearSin } = drive;
  const solAirC = outdoorC + c.solarFactor * drive.solarWPerM2;
  const wallGroundC = c.waveMean - c.wallWaveCos * yearCos - c.wallWaveSin * yearSin;
  const outdoorG = drive.outdoorKgPerS * AIR_HEAT;
  const houseG = drive.houseKgPerS * AIR_HEAT;
  const supplyG = c.supplyKgPerS * drive.runShare * AIR_HEAT;
  const ductG = c.ductWPerK * drive.runShare;
  const fanW = drive.powerOn ? c.fanW : 0;
  const soilG = c.airToSoil * c.planM2;
  const g = c.floorWPerK + c.wallAboveWPerK + c.wallBelowWPerK + outdoorG + houseG + supplyG + ductG + soilG;
  const knownW =
    (c.floorWPerK + houseG) * houseC +
    c.wallAboveWPerK * solAirC +
    c.wallBelowWPerK * wallGroundC +
    outdoorG * outdoorC +
    (supplyG + ductG) * supplyC +
    fanW +
    state.airHeatW;
  const x = (g * seconds) / c.airHeatJPerK;
  const decay = decayOf(x);
  const held = x > 1e-9 ? (1 - decay) / x : 1 - 0.5 * x;
  // Mean air temperature of the step = base + follow · (mean of the top layer).
  const moved = (1 - held) / g;
  const base = moved * knownW + held * state.airC;
  const follow = moved * soilG;

  let below = 0;
  for (let i = n - 1; i > 0; i--) {
    const at = STRIDE * i;
    const here =
      layer[at + STORE]! * soilC[i]! +
      layer[at + STEADY]! +
      layer[at + COSINE]! * yearCos +
      layer[at + SINE]! * yearSin +
      below;
    rhs[i] = here;
    below = layer[at + PASS]! * here;
  }
  const topRhs =
    layer[STORE]! * soilC[0]! +
    layer[STEADY]! +
    layer[COSINE]! * yearCos +
    layer[SINE]! * yearSin +
    below +
    state.soilHeatW / c.planM2;
  const top = (topRhs + c.airToSoil * base) / (solver.topPivot + c.airToSoil * (1 - follow));
  const airMean = base + follow * top;
  let lateralW =
    solver.lateralSteady + solver.lateralCos * yearCos + solver.lateralSin * yearSin - layer[LATERAL]! * top;
  soilC[0] = soilC[0]! + (top - soilC[0]!) * overTheta;
  let above = top;
  for (let i = 1; i < n; i++) {
    const at = STRIDE * i;
    above = layer[at + GIVE]! * rhs[i]! + layer[at + PASS]! * above;
    soilC[i] = soilC[i]! + (above - soilC[i]!) * overTheta;
    lateralW -= layer[at + LATERAL]! * above;
  }
  const balanceC = (knownW + soilG * top) / g;
  state.airC = balanceC + (state.airC - balanceC) * decay;

  const { values, placesC } = out;
  const groundC = top + c.surfaceShare * (airMean - top);
  const wallAboveC = airMean - c.wallAboveShare * (airMean - solAirC);
  const wallBelowC = airMean - c.wallBelowShare * (airMean - wallGroundC);
  values[AIR_C] = airMean;
  values[GROUND_C] = groundC;
  values[WALL_C] = Math.min(wallAboveC, wallBelowC);
  placesC[AT_AIR] = airMean;
  placesC[AT_GROUND] = groundC;
  placesC[AT_WALL_GROUND] = wallGroundC;
  placesC[AT_WALL_ABOVE] = wallAboveC;
  placesC[AT_WALL_BELOW] = wallBelowC;
  placesC[AT_DUCTS] = drive.runShare > 0 ? airMean + c.ductSkinShare * (supplyC - airMean) : airMean;
  const { woodHouseWeight, woodOutdoorWeight } = c;
  for (let i = 0; i < woodHouseWeight.length; i++) {
    const woodC =
      airMean + woodHouseWeight[i]! * (houseC - airMean) + woodOutdoorWeight[i]! * (outdoorC - airMean);
    values[WOOD_C + i] = woodC;
    placesC[AT_WOOD + i] = woodC;
  }
  const floorW = c.floorWPerK * (houseC - airMean);
  const airW = outdoorG * (outdoorC - airMean) + houseG * (houseC - airMean);
  const ductsW = (supplyG + ductG) * (supplyC - airMean);
  const wallsW = c.wallAboveWPerK * (solAirC - airMean) + c.wallBelowWPerK * (wallGroundC - airMean);
  const groundW = (lateralW + c.soilDown[n - 1]! * (c.deepC - above)) * c.planM2;
  values[FLOOR_W] = floorW;
  values[FANS_W] = fanW;
  values[HEAT_NET_W] = floorW + airW + ductsW + wallsW + groundW + fanW;
  values[HEAT_GROSS_W] =
    Math.abs(floorW) + Math.abs(airW) + Math.abs(ductsW) + Math.abs(wallsW) + Math.abs(groundW) + fanW;
}
