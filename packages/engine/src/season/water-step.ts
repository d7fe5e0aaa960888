import { asWaterMPerS, risingDampKgPerMS } from '../moisture/wall.ts';
import { balanceAir, humidityRatioOf, runMachines } from './air-balance.ts';
import type { CompiledCase } from './compiled-case.ts';
import { tableSaturations, tableWoodHumidities } from './fast-tables.ts';
import { loopConstants } from './loop-constants.ts';
import { FILM_SURFACES } from './places.ts';
import type { SpaceState, StepDrive, StepResult } from './state.ts';
import { stepPlaces, surfacePlaces } from './step-values.ts';
import { type WaterSolver, waterPlaces } from './water-solver.ts';
import { bookHeat, moveFilms, moveWood, prepareFilms, switchFilms } from './water-stores.ts';

const { VAPOR_GAS_CONSTANT, MASS_RATIO } = loopConstants;
const { AT_AIR, AT_GROUND, AT_WALL_BELOW, AT_WALL_GROUND, AT_WOOD } = surfacePlaces;
const {
  FLOOR_SHARE,
  HUMIDITY_RATIO,
  OUTDOOR_KG_PER_S,
  RELATIVE_HUMIDITY,
  VAPOR_PA,
  WATER,
  WATER_FOG,
  WATER_MACHINES,
} = stepPlaces;
const {
  FILM_G,
  FILM_MODE,
  FILM_PA,
  FILM_RATE,
  FILM_STRIDE,
  WOOD_BASE,
  WOOD_G,
  WOOD_GIVE,
  WOOD_REST,
  WOOD_SLOPE,
  WOOD_STRIDE,
  WOOD_SURFACE_SHARE,
} = waterPlaces;

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
  const { site, film } = w;
  linearizeWood(w, state, out);
  for (let at = 0; at < site.length; at += WOOD_STRIDE) {
    source += site[at + WOOD_BASE]!;
    perPa += site[at + WOOD_SLOPE]!;
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
    for (let at = 0; at < film.length; at += FILM_STRIDE) {
      const mode = film[at + FILM_MODE]!;
      if (mode === 1) {
        filmSource += film[at + FILM_G]! * film[at + FILM_PA]!;
        filmPerPa += film[at + FILM_G]!;
      } else if (mode === 2) filmSource += film[at + FILM_RATE]!;
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
  moveWood(c, w, state, values);
  moveFilms(c, w, state, values);
  bookHeat(c, state, values);
}

/** Flow from each piece of wood as a straight line in the vapor pressure, with its core eliminated. */
function linearizeWood(w: WaterSolver, state: SpaceState, out: StepResult): void {
  const { site, placesPa } = w;
  const { woodSurface, woodCore } = state;
  tableWoodHumidities(w.wood, out.placesC, AT_WOOD, woodSurface, site, WOOD_BASE, WOOD_STRIDE);
  for (let i = 0, at = 0; at < site.length; i++, at += WOOD_STRIDE) {
    const saturation = placesPa[AT_WOOD + i]!;
    const surface = woodSurface[i]!;
    const core = woodCore[i]!;
    const rest = core + site[at + WOOD_SURFACE_SHARE]! * (surface - core);
    const slopePa = saturation * site[at + WOOD_SLOPE]!;
    const whole = site[at + WOOD_G]!;
    const g = whole / (1 + whole * slopePa * site[at + WOOD_GIVE]!);
    site[at + WOOD_BASE] = g * (saturation * site[at + WOOD_BASE]! + slopePa * (rest - surface));
    site[at + WOOD_SLOPE] = g;
    site[at + WOOD_REST] = rest;
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
