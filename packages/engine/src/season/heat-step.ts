import type { CompiledCase } from './compiled-case.ts';
import { decayOf } from './decay.ts';
import { loopConstants } from './loop-constants.ts';
import { loopRoom } from './loop-room.ts';
import { MOLD_SURFACES } from './places.ts';
import { stepPlaces, surfacePlaces } from './step-values.ts';
import { soilPlaces, waterPlaces } from './store-places.ts';

const { AIR_HEAT } = loopConstants;
const { AIR_C, FANS_W, FLOOR_W, GROUND_C, HEAT_GROSS_W, HEAT_NET_W, MOLD_C } = stepPlaces;
const { AT_AIR, AT_DUCTS, AT_GROUND, AT_WALL_ABOVE, AT_WALL_BELOW, AT_WALL_GROUND, AT_WOOD } = surfacePlaces;
const {
  SOIL_C,
  SOIL_COSINE,
  SOIL_GIVE,
  SOIL_LATERAL,
  SOIL_PASS,
  SOIL_RIGHT,
  SOIL_SINE,
  SOIL_STEADY,
  SOIL_STORE,
  SOIL_STRIDE,
} = soilPlaces;
const { WOOD_HOUSE_WEIGHT, WOOD_OUTDOOR_WEIGHT, WOOD_STRIDE } = waterPlaces;
const { air, c, drive, placesC, soil, step, values, wood } = loopRoom;
const WOOD_END = wood.length;
/** The walls among the surfaces whose mold is followed. */
const WALL = MOLD_SURFACES.indexOf('wall');

/**
 * Puts the soil column of a case into the working room, for steps of `seconds`. The column is linear and its lower part
 * does not change from step to step, so it is eliminated once: mean_i = give_i·right_i + pass_i·mean_(i−1).
 * @param theta 0.5 centered in time, 1 fully implicit
 */
export function loadSoil(compiled: CompiledCase, seconds: number, theta: number): void {
  const { layers, numbers, soilDown, soilHeat, soilLateral, waveCos, waveSin } = compiled;
  const { deepC, waveMean } = numbers;
  step.layers = layers;
  step.overTheta = 1 / theta;
  step.lateralSteady = 0;
  step.lateralCos = 0;
  step.lateralSin = 0;
  let giveBelow = 0;
  for (let i = layers - 1; i >= 0; i--) {
    const at = SOIL_STRIDE * i;
    const up = i > 0 ? soilDown[i - 1]! : 0;
    const down = soilDown[i]!;
    const below = i === layers - 1 ? down : down * (1 - down * giveBelow);
    const lateral = soilLateral[i]!;
    const store = soilHeat[i]! / (theta * seconds);
    const pivot = store + up + below + lateral;
    step.lateralSteady += lateral * waveMean;
    step.lateralCos -= lateral * waveCos[i]!;
    step.lateralSin -= lateral * waveSin[i]!;
    soil[at + SOIL_STORE] = store;
    soil[at + SOIL_STEADY] = lateral * waveMean + (i === layers - 1 ? down * deepC : 0);
    soil[at + SOIL_COSINE] = -lateral * waveCos[i]!;
    soil[at + SOIL_SINE] = -lateral * waveSin[i]!;
    soil[at + SOIL_GIVE] = 1 / pivot;
    soil[at + SOIL_PASS] = up / pivot;
    soil[at + SOIL_LATERAL] = lateral;
    giveBelow = 1 / pivot;
    step.topPivot = pivot;
  }
}

/**
 * One step of air and soil temperature. The air relaxes exponentially to its balance while the soil follows the
 * centered (or implicit) rule; both are solved together, so that each flow counts once on either side.
 */
export function stepHeat(): void {
  const { overTheta } = step;
  const { outdoorC, houseC, supplyC, runShare, yearCos, yearSin, fanW } = drive;
  const { floorWPerK, planM2, wallAboveWPerK, wallBelowWPerK, airToSoil } = c;
  const solAirC = outdoorC + c.solarFactor * drive.solarWPerM2;
  const wallGroundC = c.waveMean - c.wallWaveCos * yearCos - c.wallWaveSin * yearSin;
  const outdoorG = drive.outdoorKgPerS * AIR_HEAT;
  const houseG = drive.houseKgPerS * AIR_HEAT;
  const supplyG = (c.supplyKgPerS * AIR_HEAT + c.ductWPerK) * runShare;
  const soilG = airToSoil * planM2;
  const g = floorWPerK + wallAboveWPerK + wallBelowWPerK + outdoorG + houseG + supplyG + soilG;
  const knownW =
    (floorWPerK + houseG) * houseC +
    wallAboveWPerK * solAirC +
    wallBelowWPerK * wallGroundC +
    outdoorG * outdoorC +
    supplyG * supplyC +
    fanW +
    air.airHeatW;
  const x = (g * step.seconds) / c.airHeatJPerK;
  const decay = decayOf(x);
  const held = x > 1e-9 ? (1 - decay) / x : 1 - 0.5 * x;
  const overG = 1 / g;
  // Mean air temperature of the step = base + follow · (mean of the top layer).
  const moved = (1 - held) * overG;
  const base = moved * knownW + held * air.airC;
  const follow = moved * soilG;

  const last = SOIL_STRIDE * (step.layers - 1);
  let below = 0;
  for (let at = last; at > 0; at -= SOIL_STRIDE) {
    const here =
      soil[at + SOIL_STORE]! * soil[at + SOIL_C]! +
      soil[at + SOIL_STEADY]! +
      soil[at + SOIL_COSINE]! * yearCos +
      soil[at + SOIL_SINE]! * yearSin +
      below;
    soil[at + SOIL_RIGHT] = here;
    below = soil[at + SOIL_PASS]! * here;
  }
  const topBefore = soil[SOIL_C]!;
  const topRight =
    soil[SOIL_STORE]! * topBefore +
    soil[SOIL_STEADY]! +
    soil[SOIL_COSINE]! * yearCos +
    soil[SOIL_SINE]! * yearSin +
    below +
    air.soilHeatW / planM2;
  const top = (topRight + airToSoil * base) / (step.topPivot + airToSoil * (1 - follow));
  const airMean = base + follow * top;
  let lateralW =
    step.lateralSteady + step.lateralCos * yearCos + step.lateralSin * yearSin - soil[SOIL_LATERAL]! * top;
  soil[SOIL_C] = topBefore + (top - topBefore) * overTheta;
  let above = top;
  for (let at = SOIL_STRIDE; at <= last; at += SOIL_STRIDE) {
    const before = soil[at + SOIL_C]!;
    above = soil[at + SOIL_GIVE]! * soil[at + SOIL_RIGHT]! + soil[at + SOIL_PASS]! * above;
    soil[at + SOIL_C] = before + (above - before) * overTheta;
    lateralW -= soil[at + SOIL_LATERAL]! * above;
  }
  const balanceC = (knownW + soilG * top) * overG;
  air.airC = balanceC + (air.airC - balanceC) * decay;

  const groundC = top + c.surfaceShare * (airMean - top);
  const wallAboveC = airMean - c.wallAboveShare * (airMean - solAirC);
  const wallBelowC = airMean - c.wallBelowShare * (airMean - wallGroundC);
  values[AIR_C] = airMean;
  values[GROUND_C] = groundC;
  placesC[AT_AIR] = airMean;
  placesC[AT_GROUND] = groundC;
  placesC[AT_WALL_GROUND] = wallGroundC;
  placesC[AT_WALL_ABOVE] = wallAboveC;
  placesC[AT_WALL_BELOW] = wallBelowC;
  placesC[AT_DUCTS] = runShare > 0 ? airMean + c.ductSkinShare * (supplyC - airMean) : airMean;
  const toHouseK = houseC - airMean;
  const toOutdoorK = outdoorC - airMean;
  for (let i = 0, at = 0; at < WOOD_END; i++, at += WOOD_STRIDE) {
    const woodC =
      airMean + wood[at + WOOD_HOUSE_WEIGHT]! * toHouseK + wood[at + WOOD_OUTDOOR_WEIGHT]! * toOutdoorK;
    values[MOLD_C + i] = woodC;
    placesC[AT_WOOD + i] = woodC;
  }
  values[MOLD_C + WALL] = Math.min(wallAboveC, wallBelowC);
  const floorW = floorWPerK * toHouseK;
  const airW = outdoorG * toOutdoorK + houseG * toHouseK;
  const ductsW = supplyG * (supplyC - airMean);
  const wallsW = wallAboveWPerK * (solAirC - airMean) + wallBelowWPerK * (wallGroundC - airMean);
  const groundW = (lateralW + c.deepWPerM2K * (c.deepC - above)) * planM2;
  values[FLOOR_W] = floorW;
  values[FANS_W] = fanW;
  values[HEAT_NET_W] = floorW + airW + ductsW + wallsW + groundW + fanW;
  values[HEAT_GROSS_W] =
    Math.abs(floorW) + Math.abs(airW) + Math.abs(ductsW) + Math.abs(wallsW) + Math.abs(groundW) + fanW;
}
