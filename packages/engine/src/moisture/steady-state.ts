import { runFraction } from '../dehumidifier/part-load.ts';
import type { Ending } from '../numerics/solution.ts';
import {
  humidityRatioFromRelativeHumidity,
  saturationHumidityRatio,
} from '../psychrometrics/humidity-ratio.ts';
import { fallingZero } from './balance-root.ts';
import { overCorners } from './band.ts';
import type { BudgetInput, Dehumidifier } from './budget-input.ts';
import { airAtHumidityRatio, type CrawlAir } from './crawl-air.ts';
import { machineFactor } from './machine-path.ts';
import type { PathModel } from './path-model.ts';

/** Which end of its range each input of a path takes. */
export type PathEnd = 'value' | 'low' | 'high';

/** The air at which the paths balance. */
export interface SteadyState {
  readonly air: CrawlAir;
  /** Water that a humidistat machine takes out, kg/s; 0 without one. */
  readonly machineKgPerS: number;
  /** What no path takes out of saturated air, kg/s. */
  readonly excessKgPerS: number;
  /** What the sinks ask for beyond completely dry air, kg/s. */
  readonly shortKgPerS: number;
  /** Share of the time a humidistat machine runs, part load included; undefined without one. */
  readonly machineShare: number | undefined;
  /** True where the machine runs through without reaching its setting. */
  readonly machineAtLimit: boolean;
  readonly ending: Ending;
}

const EXACT: Ending = { converged: true, reason: 'tolerance-met', residual: 0, iterations: 0 };

/** What a steady state is solved from. */
export interface SteadyProblem {
  readonly paths: readonly PathModel[];
  readonly pressurePa: number;
  readonly humidistat?: Extract<Dehumidifier, { kind: 'humidistat' }>;
}

/** The machine of a budget, when it is switched by a humidistat. */
export function humidistatOf(budget: BudgetInput): SteadyProblem['humidistat'] {
  return budget.dehumidifier?.kind === 'humidistat' ? budget.dehumidifier : undefined;
}

/** Flow of a path with its inputs at one end, kg/s, as a function of the air; what does not hang on the air is done once. */
function flowAt(path: PathModel, end: PathEnd): (air: CrawlAir) => number {
  const bands = path.inputs.map(({ band }) => band);
  if (end === 'value') {
    const middle = bands.map((band) => band.value);
    return (air) => path.kgPerS(middle, air);
  }
  return (air) => overCorners(bands, (values) => path.kgPerS(values, air))[end];
}

/**
 * Finds the humidity at which all paths balance at an air temperature: each flow falls as humidity rises, so there is one.
 * @param ends which end each path takes, in the order of the paths
 * @param machineEnd which capacity a humidistat machine has
 */
export function solveSteady(
  problem: SteadyProblem,
  temperatureC: number,
  ends: readonly PathEnd[],
  machineEnd: PathEnd = 'value',
): SteadyState {
  const { paths, pressurePa, humidistat } = problem;
  const flows = paths.map((path, i) => flowAt(path, ends[i]!));
  const airAt = (w: number) => airAtHumidityRatio(temperatureC, w, pressurePa);
  const passive = (w: number): number => {
    const air = airAt(w);
    let sum = 0;
    for (const flow of flows) sum += flow(air);
    return sum;
  };
  const capacity = (w: number): number =>
    humidistat ? (humidistat.ratedKgPerDay[machineEnd] * machineFactor(humidistat, airAt(w))) / 86_400 : 0;

  const saturated = saturationHumidityRatio(temperatureC, pressurePa);
  const set = humidistat
    ? humidityRatioFromRelativeHumidity(temperatureC, humidistat.setRelativeHumidity, pressurePa)
    : saturated;
  const needed = humidistat ? passive(set) : 0;
  if (needed > 0 && capacity(set) >= needed) {
    return {
      air: airAt(set),
      machineKgPerS: needed,
      machineShare: runFraction(needed, capacity(set)),
      excessKgPerS: 0,
      shortKgPerS: 0,
      machineAtLimit: false,
      ending: EXACT,
    };
  }
  const atLimit = needed > 0;
  const net = atLimit ? (w: number) => passive(w) - capacity(w) : passive;
  const [low, high] = atLimit ? [set, saturated] : [0, set];
  const gross = Math.abs(passive(0)) + Math.abs(passive(saturated));
  const { x, ending } = fallingZero(net, low, high, 1e-14 * gross);
  const left = ending.reason === 'no-bracket' ? net(x) : 0;
  return {
    air: airAt(x),
    machineKgPerS: atLimit ? capacity(x) : 0,
    machineShare: humidistat ? (atLimit ? 1 : 0) : undefined,
    excessKgPerS: Math.max(0, left),
    shortKgPerS: Math.max(0, -left),
    machineAtLimit: atLimit,
    // Saturated air is an answer: what is too much condenses.
    ending: left > 0 ? EXACT : ending,
  };
}
