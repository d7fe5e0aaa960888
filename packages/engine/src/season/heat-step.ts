import { AIR_HEAT, type CompiledCase } from './compiled-case.ts';
import type { SpaceState, StepDrive, StepResult } from './state.ts';
import {
  AIR_C,
  AT_AIR,
  AT_DUCTS,
  AT_GROUND,
  AT_WALL_ABOVE,
  AT_WALL_BELOW,
  AT_WALL_GROUND,
  AT_WOOD,
  GROUND_C,
  HEAT,
  WALL_C,
  WOOD_C,
} from './step-values.ts';

/**
 * Coefficients of the soil column for one length of step. The column is linear and its lower part does not change from
 * step to step, so it is eliminated once: mean_i = give_i·rhs_i + pass_i·mean_(i−1).
 */
export interface SoilSolver {
  readonly seconds: number;
  /** 1/theta: 2 centered in time, 1 fully implicit. */
  readonly overTheta: number;
  /** Heat capacity over theta·dt, W/(m²·K). */
  readonly store: Float64Array;
  readonly give: Float64Array;
  readonly pass: Float64Array;
  /** Resistance below the first layer's own node is folded in here, W/(m²·K), without the air. */
  readonly topPivot: number;
  /** Lateral and deep heat: steady part, cosine and sine part of each layer, W/m². */
  readonly steady: Float64Array;
  readonly cosine: Float64Array;
  readonly sine: Float64Array;
  readonly lateralSteady: number;
  readonly lateralCos: number;
  readonly lateralSin: number;
  readonly rhs: Float64Array;
}

/** Prepares the soil column of a case for steps of `seconds`. */
export function createSoilSolver(c: CompiledCase, seconds: number, theta: number): SoilSolver {
  const n = c.layers;
  const store = Float64Array.from(c.soilHeat, (heat) => heat / (theta * seconds));
  const give = new Float64Array(n);
  const pass = new Float64Array(n);
  const steady = Float64Array.from(c.soilLateral, (u) => u * c.waveMean);
  let topPivot = 0;
  for (let i = n - 1; i >= 0; i--) {
    const up = i > 0 ? c.soilDown[i - 1]! : 0;
    const down = c.soilDown[i]!;
    const below = i === n - 1 ? down : down * (1 - down * give[i + 1]!);
    const pivot = store[i]! + up + below + c.soilLateral[i]!;
    give[i] = 1 / pivot;
    pass[i] = up / pivot;
    topPivot = pivot;
  }
  const lateralSteady = steady.reduce((sum, w) => sum + w, 0);
  const cosine = c.soilLateral.map((u, i) => -u * c.waveCos[i]!);
  const sine = c.soilLateral.map((u, i) => -u * c.waveSin[i]!);
  steady[n - 1] = steady[n - 1]! + c.soilDown[n - 1]! * c.deepC;
  return {
    seconds,
    overTheta: 1 / theta,
    store,
    give,
    pass,
    topPivot,
    steady,
    cosine,
    sine,
    lateralSteady,
    lateralCos: cosine.reduce((sum, w) => sum + w, 0),
    lateralSin: sine.reduce((sum, w) => sum + w, 0),
    rhs: new Float64Array(n),
  };
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
  const { store, give, pass, steady, cosine, sine, rhs, seconds, overTheta } = solver;
  const { soilDown, soilLateral } = c;
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
  // Past 40 the exponential is below rounding.
  const decay = x > 40 ? 0 : Math.exp(-x);
  const held = x > 1e-9 ? (1 - decay) / x : 1 - 0.5 * x;
  // Mean air temperature of the step = base + follow · (mean of the top layer).
  const moved = (1 - held) / g;
  const base = moved * knownW + held * state.airC;
  const follow = moved * soilG;

  let below = 0;
  for (let i = n - 1; i > 0; i--) {
    const here = store[i]! * soilC[i]! + steady[i]! + cosine[i]! * yearCos + sine[i]! * yearSin + below;
    rhs[i] = here;
    below = pass[i]! * here;
  }
  const topRhs =
    store[0]! * soilC[0]! +
    steady[0]! +
    cosine[0]! * yearCos +
    sine[0]! * yearSin +
    below +
    state.soilHeatW / c.planM2;
  const top = (topRhs + c.airToSoil * base) / (solver.topPivot + c.airToSoil * (1 - follow));
  const airMean = base + follow * top;
  let lateralW =
    solver.lateralSteady + solver.lateralCos * yearCos + solver.lateralSin * yearSin - soilLateral[0]! * top;
  soilC[0] = soilC[0]! + (top - soilC[0]!) * overTheta;
  let above = top;
  for (let i = 1; i < n; i++) {
    above = give[i]! * rhs[i]! + pass[i]! * above;
    soilC[i] = soilC[i]! + (above - soilC[i]!) * overTheta;
    lateralW -= soilLateral[i]! * above;
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
  values[HEAT] = outdoorG * (outdoorC - airMean);
  values[HEAT + 1] = houseG * (houseC - airMean);
  values[HEAT + 2] = supplyG * (supplyC - airMean);
  values[HEAT + 3] = c.floorWPerK * (houseC - airMean);
  values[HEAT + 4] = c.wallAboveWPerK * (solAirC - airMean);
  values[HEAT + 5] = c.wallBelowWPerK * (wallGroundC - airMean);
  values[HEAT + 6] = ductG * (supplyC - airMean);
  values[HEAT + 7] = lateralW * c.planM2;
  values[HEAT + 8] = soilDown[n - 1]! * (c.deepC - above) * c.planM2;
  values[HEAT + 9] = fanW;
}
