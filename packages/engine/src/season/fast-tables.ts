import { dewPointC } from '../psychrometrics/dew-point.ts';
import { saturationPressurePa } from '../psychrometrics/saturation-pressure.ts';
import { equilibriumRelativeHumidity } from '../wood/equilibrium.ts';
import { loopRoom } from './loop-room.ts';
import { stepPlaces } from './step-values.ts';
import { waterPlaces } from './store-places.ts';

const { DEW_POINT_C, VAPOR_PA } = stepPlaces;
const { WOOD_BASE, WOOD_SLOPE } = waterPlaces;
const { placesC, placesPa, values, wood } = loopRoom;
const SURFACES = placesC.length;

const PRESSURE_LOW_C = -80;
const PRESSURE_PER_K = 10;
const PRESSURE_CELLS = 2300;
const WOOD_CELLS = 160;
const WOOD_CELLS_PER_UNIT = 500;
const WOOD_LOW_C = -20;
const WOOD_STEP_C = 5;
const WOOD_ROWS = 17;
/** Values of one temperature. */
const WOOD_ROW = WOOD_CELLS + 1;
const DEW_CELLS_PER_ROOT = 50;
const DEW_CELLS = 800;
const DEW_LOWEST_C = -100;

/**
 * Saturation pressures every 0.1 K from −80 to 150 °C, with the slope to the next: [p0, s0, p1, s1, ...].
 * Between two points the straight line is at most 7e-6 of the value off above freezing and 3e-5 below (held by a test).
 */
const pressures = new Float64Array(2 * PRESSURE_CELLS);
/** Relative humidity in balance with wood, over moisture content 0..0.32 (step 0.002) and −20..60 °C (step 5 K), which hold beyond. */
const humidities = new Float64Array(WOOD_ROW * WOOD_ROWS);
/** Dew points over the fourth root of the vapor pressure, on which they lie nearly straight; −100 °C for less. */
const dewPoints = new Float64Array(DEW_CELLS + 1).fill(DEW_LOWEST_C);

let filled = false;

/** Fills the tables of this file when they are first needed; the functions below read them as they are. */
export function fillTables(): void {
  if (filled) return;
  filled = true;
  for (let i = 0; i < PRESSURE_CELLS; i++) {
    const here = saturationPressurePa(PRESSURE_LOW_C + i / PRESSURE_PER_K);
    pressures[2 * i] = here;
    pressures[2 * i + 1] = saturationPressurePa(PRESSURE_LOW_C + (i + 1) / PRESSURE_PER_K) - here;
  }
  for (let row = 0; row < WOOD_ROWS; row++) {
    for (let i = 0; i < WOOD_ROW; i++) {
      humidities[row * WOOD_ROW + i] = equilibriumRelativeHumidity(
        WOOD_LOW_C + row * WOOD_STEP_C,
        i / WOOD_CELLS_PER_UNIT,
      );
    }
  }
  for (let i = 1; i <= DEW_CELLS; i++) {
    const found = dewPointC((i / DEW_CELLS_PER_ROOT) ** 4);
    if (found > DEW_LOWEST_C) dewPoints[i] = found;
  }
}

/** Saturation pressure in Pa from the table; beyond its ends the last line goes on, never below 1e-3 Pa. */
export function tableSaturationPa(temperatureC: number): number {
  const x = (temperatureC - PRESSURE_LOW_C) * PRESSURE_PER_K;
  let i = x | 0;
  if (i < 0) i = 0;
  else if (i >= PRESSURE_CELLS) i = PRESSURE_CELLS - 1;
  const p = pressures[2 * i]! + (x - i) * pressures[2 * i + 1]!;
  return Math.max(p, 1e-3);
}

/** The same for all surfaces of the step. */
export function saturateSurfaces(): void {
  for (let k = 0; k < SURFACES; k++) {
    const x = (placesC[k]! - PRESSURE_LOW_C) * PRESSURE_PER_K;
    let i = x | 0;
    if (i < 0) i = 0;
    else if (i >= PRESSURE_CELLS) i = PRESSURE_CELLS - 1;
    const p = pressures[2 * i]! + (x - i) * pressures[2 * i + 1]!;
    placesPa[k] = Math.max(p, 1e-3);
  }
}

/**
 * Sets the relative humidity in balance with a piece of wood, and its slope d(humidity)/d(content), at the places
 * `WOOD_BASE` and `WOOD_SLOPE` of the site that begins at `at`. Off the exact inverse by less than 0.001 of relative
 * humidity (held by a test); 1 with slope 0 for wood that is wetter than any air makes it.
 */
export function setWoodHumidity(at: number, temperatureC: number, moistureContent: number): void {
  const x = moistureContent * WOOD_CELLS_PER_UNIT;
  if (x >= WOOD_CELLS) {
    wood[at + WOOD_BASE] = 1;
    wood[at + WOOD_SLOPE] = 0;
    return;
  }
  const i = x > 0 ? x | 0 : 0;
  let y = (temperatureC - WOOD_LOW_C) * (1 / WOOD_STEP_C);
  if (y < 0) y = 0;
  else if (y > WOOD_ROWS - 1.000001) y = WOOD_ROWS - 1.000001;
  const row = y | 0;
  const k = row * WOOD_ROW + i;
  const fy = y - row;
  const cold = humidities[k]!;
  const coldNext = humidities[k + 1]!;
  const low = cold + fy * (humidities[k + WOOD_ROW]! - cold);
  const high = coldNext + fy * (humidities[k + WOOD_ROW + 1]! - coldNext);
  wood[at + WOOD_BASE] = low + (x - i) * (high - low);
  wood[at + WOOD_SLOPE] = (high - low) * WOOD_CELLS_PER_UNIT;
}

/**
 * Sets the dew point (frost point below 0.01 °C) of the step from its vapor pressure; good to 0.01 K from −30 to 80 °C
 * (held by a test), at most 89 °C.
 */
export function setDewPoint(): void {
  const x = DEW_CELLS_PER_ROOT * Math.sqrt(Math.sqrt(Math.max(0, values[VAPOR_PA]!)));
  const i = Math.min(x | 0, DEW_CELLS - 1);
  const here = dewPoints[i]!;
  values[DEW_POINT_C] = here + Math.min(1, x - i) * (dewPoints[i + 1]! - here);
}
