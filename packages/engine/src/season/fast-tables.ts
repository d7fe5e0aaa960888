import { dewPointC } from '../psychrometrics/dew-point.ts';
import { saturationPressurePa } from '../psychrometrics/saturation-pressure.ts';
import { equilibriumRelativeHumidity } from '../wood/equilibrium.ts';

const PRESSURE_LOW_C = -80;
const PRESSURE_PER_K = 10;
const PRESSURE_CELLS = 2300;

let pressures: Float64Array | undefined;

/**
 * Saturation pressures every 0.1 K from −80 to 150 °C, with the slope to the next: [p0, s0, p1, s1, ...].
 * Between two points the straight line is at most 7e-6 of the value off above freezing and 3e-5 below (held by a test).
 */
export function saturationTable(): Float64Array {
  if (pressures === undefined) {
    const table = new Float64Array(2 * PRESSURE_CELLS);
    for (let i = 0; i < PRESSURE_CELLS; i++) {
      const here = saturationPressurePa(PRESSURE_LOW_C + i / PRESSURE_PER_K);
      table[2 * i] = here;
      table[2 * i + 1] = saturationPressurePa(PRESSURE_LOW_C + (i + 1) / PRESSURE_PER_K) - here;
    }
    pressures = table;
  }
  return pressures;
}

/** Saturation pressure in Pa from the table; beyond its ends the last line goes on, never below 1e-3 Pa. */
export function tableSaturationPa(table: Float64Array, temperatureC: number): number {
  const x = (temperatureC - PRESSURE_LOW_C) * PRESSURE_PER_K;
  let i = x | 0;
  if (i < 0) i = 0;
  else if (i >= PRESSURE_CELLS) i = PRESSURE_CELLS - 1;
  const p = table[2 * i]! + (x - i) * table[2 * i + 1]!;
  return Math.max(p, 1e-3);
}

/** The same for many temperatures at once. */
export function tableSaturations(table: Float64Array, temperaturesC: Float64Array, out: Float64Array): void {
  for (let k = 0; k < out.length; k++) {
    const x = (temperaturesC[k]! - PRESSURE_LOW_C) * PRESSURE_PER_K;
    let i = x | 0;
    if (i < 0) i = 0;
    else if (i >= PRESSURE_CELLS) i = PRESSURE_CELLS - 1;
    const p = table[2 * i]! + (x - i) * table[2 * i + 1]!;
    out[k] = Math.max(p, 1e-3);
  }
}

const WOOD_CELLS = 160;
const WOOD_CELLS_PER_UNIT = 500;
const WOOD_LOW_C = -20;
const WOOD_STEP_C = 5;
const WOOD_ROWS = 17;
/** Values of one temperature. */
const WOOD_ROW = WOOD_CELLS + 1;

let humidities: Float64Array | undefined;

/** Relative humidity in balance with wood, over moisture content 0..0.32 (step 0.002) and −20..60 °C (step 5 K), which hold beyond. */
export function woodTable(): Float64Array {
  if (humidities === undefined) {
    const table = new Float64Array(WOOD_ROW * WOOD_ROWS);
    for (let row = 0; row < WOOD_ROWS; row++) {
      for (let i = 0; i < WOOD_ROW; i++) {
        table[row * WOOD_ROW + i] = equilibriumRelativeHumidity(
          WOOD_LOW_C + row * WOOD_STEP_C,
          i / WOOD_CELLS_PER_UNIT,
        );
      }
    }
    humidities = table;
  }
  return humidities;
}

/**
 * Relative humidity in balance with wood of a moisture content, and its slope, for each of several pieces. Off the exact
 * inverse by less than 0.001 of relative humidity (held by a test); 1 with slope 0 for wood that is wetter than any air
 * makes it.
 * @param temperaturesC read from place `first` on
 * @param out receives the humidity at `to`, then `stride` on for each piece; the slope d(humidity)/d(content) follows it
 */
export function tableWoodHumidities(
  table: Float64Array,
  temperaturesC: Float64Array,
  first: number,
  moistureContents: Float64Array,
  out: Float64Array,
  to: number,
  stride: number,
): void {
  for (let site = 0, at = to; site < moistureContents.length; site++, at += stride) {
    const x = moistureContents[site]! * WOOD_CELLS_PER_UNIT;
    if (x >= WOOD_CELLS) {
      out[at] = 1;
      out[at + 1] = 0;
      continue;
    }
    const i = x > 0 ? x | 0 : 0;
    let y = (temperaturesC[first + site]! - WOOD_LOW_C) * (1 / WOOD_STEP_C);
    if (y < 0) y = 0;
    else if (y > WOOD_ROWS - 1.000001) y = WOOD_ROWS - 1.000001;
    const row = y | 0;
    const k = row * WOOD_ROW + i;
    const fy = y - row;
    const cold = table[k]!;
    const coldNext = table[k + 1]!;
    const low = cold + fy * (table[k + WOOD_ROW]! - cold);
    const high = coldNext + fy * (table[k + WOOD_ROW + 1]! - coldNext);
    out[at] = low + (x - i) * (high - low);
    out[at + 1] = (high - low) * WOOD_CELLS_PER_UNIT;
  }
}

const DEW_CELLS_PER_ROOT = 50;
const DEW_CELLS = 800;
const DEW_LOWEST_C = -100;

let dewPoints: Float64Array | undefined;

/** Dew points over the fourth root of the vapor pressure, on which they lie nearly straight; −100 °C for less. */
export function dewPointTable(): Float64Array {
  if (dewPoints === undefined) {
    const table = new Float64Array(DEW_CELLS + 1).fill(DEW_LOWEST_C);
    for (let i = 1; i <= DEW_CELLS; i++) {
      const found = dewPointC((i / DEW_CELLS_PER_ROOT) ** 4);
      if (found > DEW_LOWEST_C) table[i] = found;
    }
    dewPoints = table;
  }
  return dewPoints;
}

/**
 * Dew point (frost point below 0.01 °C) of the vapor pressure at place `from`, put at place `to`; good to 0.01 K from −30 to
 * 80 °C (held by a test), at most 89 °C.
 */
export function tableDewPoint(table: Float64Array, values: Float64Array, from: number, to: number): void {
  const x = DEW_CELLS_PER_ROOT * Math.sqrt(Math.sqrt(Math.max(0, values[from]!)));
  const i = Math.min(x | 0, DEW_CELLS - 1);
  const here = table[i]!;
  values[to] = here + Math.min(1, x - i) * (table[i + 1]! - here);
}
