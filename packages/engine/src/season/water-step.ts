import { asWaterMPerS, risingDampKgPerMS } from '../moisture/wall.ts';
import { balanceAir, humidityRatioOf, runMachines } from './air-balance.ts';
import { saturateSurfaces, setWoodHumidity } from './fast-tables.ts';
import { loopConstants } from './loop-constants.ts';
import { loopRoom } from './loop-room.ts';
import { MOLD_SURFACES } from './places.ts';
import { stepPlaces, surfacePlaces } from './step-values.ts';
import { waterPlaces } from './store-places.ts';
import { bookHeat, moveFilms, moveWood, prepareFilms, switchFilms } from './water-stores.ts';

const { VAPOR_GAS_CONSTANT, MASS_RATIO } = loopConstants;
const { AT_AIR, AT_GROUND, AT_WALL_ABOVE, AT_WALL_BELOW, AT_WALL_GROUND, AT_WOOD } = surfacePlaces;
const {
  FLOOR_SHARE,
  HUMIDITY_RATIO,
  MOLD_PA,
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
  WOOD_CORE,
  WOOD_G,
  WOOD_GIVE,
  WOOD_REST,
  WOOD_SLOPE,
  WOOD_STRIDE,
  WOOD_SURFACE,
  WOOD_SURFACE_SHARE,
} = waterPlaces;
const { air, balance: b, c, drive, film, parts, placesC, placesPa, step, values, wood } = loopRoom;
const WOOD_END = wood.length;
const FILM_END = film.length;
/** The walls among the surfaces whose mold is followed. */
const WALL = MOLD_SURFACES.indexOf('wall');
/** Films switch at most twice each: dry, exchanging, dried up. */
const MOST_SWITCHES = (2 * FILM_END) / FILM_STRIDE + 1;

/**
 * One step of the water: air, wood, films and machines, at the temperatures that `stepHeat` found. Every flow is
 * computed once and booked on both sides.
 */
export function stepWater(): void {
  const { pressurePa, outdoorHumidity, outdoorVaporPa, houseHumidity, outdoorKgPerS, houseKgPerS } = drive;
  const { sheetKgPerSPa, wallAbovePermeance, wallBelowPermeance, floorPermeance, otherKgPerS } = c;
  saturateSurfaces();
  const start = air.humidityRatio;
  // p = kappa·W with kappa held at the start of the step.
  const kappa = pressurePa / (MASS_RATIO + start);
  air.vaporPa = kappa * start;
  const groundPa = placesPa[AT_GROUND]!;
  const wallBelowPa = placesPa[AT_WALL_BELOW]!;
  const wallGroundPa = placesPa[AT_WALL_GROUND]!;
  const perM3 = 1 / (VAPOR_GAS_CONSTANT * (0.5 * (placesC[AT_AIR]! + placesC[AT_GROUND]!) + 273.15));
  const openG = c.openM3PerS * perM3;
  const standingG = c.standingM3PerS * perM3;
  const housePa = (pressurePa * houseHumidity) / (MASS_RATIO + houseHumidity);
  const capillaryG = c.capillaryLengthM > 0 ? capillaryConductance() : 0;
  const supply = c.supplyKgPerS * drive.runShare;
  const flow = outdoorKgPerS + houseKgPerS + supply;
  let source =
    outdoorKgPerS * outdoorHumidity +
    houseKgPerS * houseHumidity +
    supply * drive.supplyHumidity +
    otherKgPerS +
    (openG + standingG + sheetKgPerSPa) * groundPa +
    wallAbovePermeance * outdoorVaporPa +
    wallBelowPermeance * wallGroundPa +
    capillaryG * wallBelowPa +
    floorPermeance * housePa;
  let perPa =
    openG + standingG + sheetKgPerSPa + wallAbovePermeance + wallBelowPermeance + capillaryG + floorPermeance;
  linearizeWood();
  values[MOLD_PA + WALL] = Math.min(placesPa[AT_WALL_ABOVE]!, wallBelowPa);
  for (let at = 0; at < WOOD_END; at += WOOD_STRIDE) {
    source += wood[at + WOOD_BASE]!;
    perPa += wood[at + WOOD_SLOPE]!;
  }
  prepareFilms();

  const saturationPa = placesPa[AT_AIR]!;
  b.airC = placesC[AT_AIR]!;
  b.saturationPa = saturationPa;
  b.pressurePa = pressurePa;
  b.kappa = kappa;
  b.start = start;
  b.saturated = humidityRatioOf(saturationPa, pressurePa);
  b.machinesOn = drive.machinesOn;
  for (let pass = 0; pass < MOST_SWITCHES; pass++) {
    let filmSource = 0;
    let filmPerPa = 0;
    for (let at = 0; at < FILM_END; at += FILM_STRIDE) {
      const mode = film[at + FILM_MODE]!;
      if (mode === 1) {
        filmSource += film[at + FILM_G]! * film[at + FILM_PA]!;
        filmPerPa += film[at + FILM_G]!;
      } else if (mode === 2) filmSource += film[at + FILM_RATE]!;
    }
    b.source = source + filmSource;
    b.conductance = flow + kappa * (perPa + filmPerPa);
    balanceAir();
    air.vaporPa = kappa * b.mean;
    if (!switchFilms()) break;
  }

  const { mean } = b;
  const vaporPa = kappa * mean;
  air.humidityRatio = b.end;
  values[HUMIDITY_RATIO] = mean;
  values[VAPOR_PA] = vaporPa;
  values[RELATIVE_HUMIDITY] = vaporPa < saturationPa ? vaporPa / saturationPa : 1;
  values[OUTDOOR_KG_PER_S] = outdoorKgPerS;
  values[FLOOR_SHARE] = drive.floorShare;
  runMachines();
  values[WATER] = outdoorKgPerS * (outdoorHumidity - mean);
  values[WATER + 1] = houseKgPerS * (houseHumidity - mean);
  values[WATER + 2] = supply * (drive.supplyHumidity - mean);
  values[WATER + 3] = openG * (groundPa - vaporPa);
  values[WATER + 4] = sheetKgPerSPa * (groundPa - vaporPa);
  values[WATER + 5] = standingG * (groundPa - vaporPa);
  values[WATER + 6] =
    wallAbovePermeance * (outdoorVaporPa - vaporPa) + wallBelowPermeance * (wallGroundPa - vaporPa);
  values[WATER + 7] = capillaryG * (wallBelowPa - vaporPa);
  values[WATER + 8] = floorPermeance * (housePa - vaporPa);
  values[WATER + 9] = otherKgPerS;
  values[WATER_FOG] = -b.fogKgPerS;
  values[WATER_MACHINES] = -b.machineKgPerS;
  air.fallingKg = b.fogKgPerS * step.seconds;
  moveWood();
  moveFilms();
  bookHeat();
}

/** Flow from each piece of wood as a straight line in the vapor pressure, with its core eliminated. */
function linearizeWood(): void {
  for (let i = 0, at = 0; at < WOOD_END; i++, at += WOOD_STRIDE) {
    const surface = wood[at + WOOD_SURFACE]!;
    const core = wood[at + WOOD_CORE]!;
    setWoodHumidity(at, placesC[AT_WOOD + i]!, surface);
    const saturation = placesPa[AT_WOOD + i]!;
    values[MOLD_PA + i] = saturation;
    const rest = core + wood[at + WOOD_SURFACE_SHARE]! * (surface - core);
    const slopePa = saturation * wood[at + WOOD_SLOPE]!;
    const whole = wood[at + WOOD_G]!;
    const g = whole / (1 + whole * slopePa * wood[at + WOOD_GIVE]!);
    wood[at + WOOD_BASE] = g * (saturation * wood[at + WOOD_BASE]! + slopePa * (rest - surface));
    wood[at + WOOD_SLOPE] = g;
    wood[at + WOOD_REST] = rest;
  }
}

/** Rising damp as a conductance for this step, kg/(s·Pa): the flow at its start over the pressure difference then. */
function capillaryConductance(): number {
  const difference = placesPa[AT_WALL_BELOW]! - air.vaporPa;
  if (difference <= 0) return 0;
  const wallK = placesC[AT_WALL_BELOW]! + 273.15;
  const drying = (c.massTransfer * difference) / (VAPOR_GAS_CONSTANT * wallK);
  const perM = risingDampKgPerMS(parts.capillaryWall, c.capillaryHeightM, asWaterMPerS(drying));
  return (c.capillaryLengthM * perM) / difference;
}
