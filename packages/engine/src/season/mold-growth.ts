import type { MoldParameters } from '../mold/classes.ts';
import { weeksToFirstGrowth } from '../mold/growth.ts';

const HOURS_PER_WEEK = 168;
const PER_K = 50;
const WARM_CELLS = 2500;
const DRIEST_PERCENT = 79;
const PER_PERCENT = 50;
const DAMP_CELLS = 1050;
/** Air that both tables refer to. */
const MIDDLE_C = 20;
const MIDDLE_PERCENT = 90;

/** How much faster mold grows than at 20 °C, from 0 to 50 °C, and than at 90 %, from 79 %: a parabola for each cell. */
const byTemperature = new Float64Array(3 * WARM_CELLS);
const byHumidity = new Float64Array(3 * DAMP_CELLS);

/** Index per hour that mold grows at 20 °C and 90 %, far from its ceiling, on a surface of intensity 1. */
export function middleGrowthPerHour(p: MoldParameters): number {
  return 1 / (HOURS_PER_WEEK * weeksToFirstGrowth(MIDDLE_C, MIDDLE_PERCENT, p));
}

/**
 * Growth far from the ceiling relative to that at 20 °C and 90 %. Temperature and humidity are factors of their own in
 * the published rate, each of them a power, so each has a table; off by less than 1e-7 of it above 1 °C (held by a test).
 *
 * Kernel: unchecked. 0 to 50 °C and 79 to 100 %, `fillMoldTables` first.
 */
export function tableMoldGrowth(temperatureC: number, relativeHumidity: number): number {
  const x = PER_K * temperatureC;
  const i = Math.min(x | 0, WARM_CELLS - 1);
  const y = PER_PERCENT * (100 * relativeHumidity - DRIEST_PERCENT);
  const j = Math.min(y | 0, DAMP_CELLS - 1);
  return parabola(byTemperature, 3 * i, x - i) * parabola(byHumidity, 3 * j, y - j);
}

function parabola(table: Float64Array, at: number, x: number): number {
  return table[at]! + x * (table[at + 1]! + x * table[at + 2]!);
}

let filled = false;

/** Fills the tables of this file when they are first needed. */
export function fillMoldTables(p: MoldParameters): void {
  if (filled) return;
  filled = true;
  const middle = weeksToFirstGrowth(MIDDLE_C, MIDDLE_PERCENT, p);
  const atC = (t: number) => middle / weeksToFirstGrowth(t, MIDDLE_PERCENT, p);
  const atPercent = (h: number) => middle / weeksToFirstGrowth(MIDDLE_C, h, p);
  fill(byTemperature, (i) => atC(i / PER_K));
  fill(byHumidity, (i) => atPercent(DRIEST_PERCENT + i / PER_PERCENT));
}

function fill(table: Float64Array, value: (i: number) => number): void {
  for (let i = 0; 3 * i < table.length; i++) {
    const low = value(i);
    const rise = value(i + 1) - low;
    const bend = 2 * rise - 4 * (value(i + 0.5) - low);
    table[3 * i] = low;
    table[3 * i + 1] = rise - bend;
    table[3 * i + 2] = bend;
  }
}
