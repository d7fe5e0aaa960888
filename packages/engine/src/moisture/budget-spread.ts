import { type Band, overCorners, type Spread } from './band.ts';
import { airAtRelativeHumidity } from './crawl-air.ts';
import { middleKgPerDay, type PathModel } from './path-model.ts';
import { type PathEnd, type SteadyProblem, solveSteady } from './steady-state.ts';

/** A figure with its extremes. */
export type Range = Pick<Spread, 'value' | 'low' | 'high'>;

/** Sum of figures that vary by themselves: extremes add, single deviations add as root of squares. */
export function spreadOfSum(parts: readonly Range[]): Spread {
  let [value, low, high, down, up] = [0, 0, 0, 0, 0];
  for (const part of parts) {
    value += part.value;
    low += part.low;
    high += part.high;
    down += (part.value - part.low) ** 2;
    up += (part.high - part.value) ** 2;
  }
  return { value, low, high, likelyLow: value - Math.sqrt(down), likelyHigh: value + Math.sqrt(up) };
}

/** How much the doubt in the reading of the air alone moves the sum of all paths, kg/day, around 0. */
export function readingDeviation(
  paths: readonly PathModel[],
  temperature: Band,
  reading: Band,
  pressurePa: number,
): Range {
  const sum = (t: number, rh: number) => {
    const air = airAtRelativeHumidity(t, rh, pressurePa);
    return paths.reduce((total, path) => total + middleKgPerDay(path, air), 0);
  };
  const middle = sum(temperature.value, reading.value);
  const ends = overCorners([temperature, reading], ([t, rh]) => sum(t!, rh!));
  return { value: 0, low: ends.low - middle, high: ends.high - middle };
}

/**
 * Range of the steady relative humidity. Extremes: all paths, the machine and the air temperature at their worst ends
 * together. Likely: the balance is solved anew with one of them at an end at a time.
 */
export function humiditySpread(problem: SteadyProblem, temperature: Band, middle: number): Spread {
  const count = problem.paths.length;
  const all = (end: PathEnd) => new Array<PathEnd>(count).fill(end);
  const solve = (t: number, ends: readonly PathEnd[], machine: PathEnd = 'value') =>
    solveSteady(problem, t, ends, machine).air.relativeHumidity;

  let low = middle;
  let high = middle;
  for (const t of [temperature.low, temperature.high]) {
    low = Math.min(low, solve(t, all('low'), 'high'));
    high = Math.max(high, solve(t, all('high'), 'low'));
  }

  let down = 0;
  let up = 0;
  const alone = (rhs: readonly number[]) => {
    down += Math.max(0, middle - Math.min(...rhs)) ** 2;
    up += Math.max(0, Math.max(...rhs) - middle) ** 2;
  };
  const one = (i: number, end: PathEnd) => all('value').with(i, end);
  for (let i = 0; i < count; i++) {
    const loose = problem.paths[i]!.inputs.some(({ band }) => band.low < band.high);
    if (loose) {
      alone([solve(temperature.value, one(i, 'low')), solve(temperature.value, one(i, 'high'))]);
    }
  }
  if (temperature.low < temperature.high) {
    alone([solve(temperature.low, all('value')), solve(temperature.high, all('value'))]);
  }
  const rated = problem.humidistat?.ratedKgPerDay;
  if (rated && rated.low < rated.high) {
    alone([solve(temperature.value, all('value'), 'high'), solve(temperature.value, all('value'), 'low')]);
  }
  return {
    value: middle,
    low,
    high,
    likelyLow: Math.max(low, middle - Math.sqrt(down)),
    likelyHigh: Math.min(high, middle + Math.sqrt(up)),
  };
}
