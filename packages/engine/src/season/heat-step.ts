import { AIR_HEAT, type CompiledCase } from './compiled-case.ts';
import type { SpaceState, StepDrive, StepResult } from './state.ts';

/** Coefficients of the soil column for one length of step: its lower part is eliminated once for all steps. */
export interface SoilSolver {
  readonly seconds: number;
  /** 0.5 centered in time, 1 fully implicit. */
  readonly theta: number;
  /** Heat capacity over theta·dt, W/(m²·K). */
  readonly store: Float64Array;
  /** Diagonal after elimination from below, W/(m²·K); entry 0 without the air. */
  readonly pivot: Float64Array;
  readonly rhs: Float64Array;
  readonly mean: Float64Array;
}

/** Prepares the soil column of a case for steps of `seconds`. */
export function createSoilSolver(c: CompiledCase, seconds: number, theta: number): SoilSolver {
  const n = c.layers;
  const store = Float64Array.from(c.soilHeat, (heat) => heat / (theta * seconds));
  const pivot = new Float64Array(n);
  for (let i = n - 1; i >= 0; i--) {
    const up = i > 0 ? c.soilDown[i - 1]! : 0;
    const down = c.soilDown[i]!;
    const below = i === n - 1 ? down : down * (1 - down / pivot[i + 1]!);
    pivot[i] = store[i]! + up + below + c.soilLateral[i]!;
  }
  return { seconds, theta, store, pivot, rhs: new Float64Array(n), mean: new Float64Array(n) };
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
  const { store, pivot, rhs, mean, theta, seconds } = solver;
  const { soilDown, soilLateral, waveCos, waveSin } = c;
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
  const knownG = c.floorWPerK + c.wallAboveWPerK + c.wallBelowWPerK + outdoorG + houseG + supplyG + ductG;
  const knownW =
    (c.floorWPerK + houseG) * houseC +
    c.wallAboveWPerK * solAirC +
    c.wallBelowWPerK * wallGroundC +
    outdoorG * outdoorC +
    (supplyG + ductG) * supplyC +
    fanW +
    state.airHeatW;
  const g = knownG + soilG;
  const x = (g * seconds) / c.airHeatJPerK;
  const decay = Math.exp(-x);
  const held = x > 1e-9 ? (1 - decay) / x : 1 - 0.5 * x;
  // Mean air temperature of the step = base + follow · (mean of the top layer).
  const base = ((1 - held) * knownW) / g + held * state.airC;
  const follow = ((1 - held) * soilG) / g;

  for (let i = n - 1; i > 0; i--) {
    const around = c.waveMean - waveCos[i]! * yearCos - waveSin[i]! * yearSin;
    const below = i === n - 1 ? soilDown[i]! * c.deepC : (soilDown[i]! * rhs[i + 1]!) / pivot[i + 1]!;
    rhs[i] = store[i]! * soilC[i]! + soilLateral[i]! * around + below;
  }
  const around = c.waveMean - waveCos[0]! * yearCos - waveSin[0]! * yearSin;
  rhs[0] =
    store[0]! * soilC[0]! +
    soilLateral[0]! * around +
    (soilDown[0]! * rhs[1]!) / pivot[1]! +
    state.soilHeatW / c.planM2;
  const top = (rhs[0]! + c.airToSoil * base) / (pivot[0]! + c.airToSoil * (1 - follow));
  const airMean = base + follow * top;

  let lateralW = soilLateral[0]! * (around - top);
  let above = top;
  mean[0] = top;
  soilC[0] = soilC[0]! + (top - soilC[0]!) / theta;
  for (let i = 1; i < n; i++) {
    const here = (rhs[i]! + soilDown[i - 1]! * above) / pivot[i]!;
    mean[i] = here;
    soilC[i] = soilC[i]! + (here - soilC[i]!) / theta;
    lateralW += soilLateral[i]! * (c.waveMean - waveCos[i]! * yearCos - waveSin[i]! * yearSin - here);
    above = here;
  }
  const balanceC = (knownW + soilG * top) / g;
  state.airC = balanceC + (state.airC - balanceC) * decay;

  out.airC = airMean;
  out.topSoilC = top;
  out.surfaceC = top + c.surfaceShare * (airMean - top);
  out.wallAboveC = airMean - c.wallAboveShare * (airMean - solAirC);
  out.wallBelowC = airMean - c.wallBelowShare * (airMean - wallGroundC);
  out.wallGroundC = wallGroundC;
  out.floorW = c.floorWPerK * (houseC - airMean);
  const { heatW } = out;
  heatW[0] = outdoorG * (outdoorC - airMean);
  heatW[1] = houseG * (houseC - airMean);
  heatW[2] = supplyG * (supplyC - airMean);
  heatW[3] = out.floorW;
  heatW[4] = c.wallAboveWPerK * (solAirC - airMean);
  heatW[5] = c.wallBelowWPerK * (wallGroundC - airMean);
  heatW[6] = ductG * (supplyC - airMean);
  heatW[7] = lateralW * c.planM2;
  heatW[8] = soilDown[n - 1]! * (c.deepC - above) * c.planM2;
  heatW[9] = fanW;
}
