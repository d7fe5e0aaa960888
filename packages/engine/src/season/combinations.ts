import { EngineError } from '../numerics/engine-error.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { runNear } from './run.ts';
import type { SeasonCase, SeasonWeather } from './season-case.ts';
import type { SeasonResult } from './season-result.ts';
import type { SettledSpace } from './spin-up.ts';
import type { FlowTables } from './step-drive.ts';
import { prepareWeather } from './weather-series.ts';

/** A repair as a change of the case, and what it costs to do. */
export interface SeasonRepair {
  readonly name: string;
  /** Whole cents. */
  readonly costCents: number;
  /** The case with this repair done, whatever was done before; must not change its argument. */
  readonly apply: (space: SeasonCase) => SeasonCase;
}

/** What a year came to, as far as repairs are judged by it. */
export interface SeasonOutcome {
  readonly daysAbove80: number;
  readonly peakMoldIndex: number;
  /** Highest moisture content of any wood surface, kg/kg. */
  readonly peakWoodMoisture: number;
  readonly yearlyCostCents: number;
  readonly energyKWh: number;
  readonly waterRemovedKg: number;
}

/** One set of repairs and its year. */
export interface RepairSet {
  /** Names in the order of the repairs. */
  readonly repairs: readonly string[];
  readonly costCents: number;
  readonly outcome: SeasonOutcome;
  readonly settled: boolean;
}

/** Changes of the outcome; negative is less. */
export interface RepairEffect {
  readonly name: string;
  /** This repair alone, against the space as found. */
  readonly alone: SeasonOutcome;
  /** What it adds to all the others: all repairs, against all without it. */
  readonly last: SeasonOutcome;
}

/** Years of many sets of repairs. */
export interface RepairCombinations {
  /** Whether every combination was run; otherwise none, each alone, each left out, and all. */
  readonly complete: boolean;
  readonly sets: readonly RepairSet[];
  readonly effects: readonly RepairEffect[];
  /** The best set for each budget, cheapest first: each is better than all that cost no more. */
  readonly best: readonly RepairSet[];
  readonly notices: readonly Notice[];
}

/** With more repairs than this not every combination is run: 2^8 years are about three seconds. */
const COMPLETE_UP_TO = 8;
/** Differences of mold index and wood moisture below these are not worth money. */
const MOLD_STEP = 0.01;
const WOOD_STEP = 0.0005;

/**
 * Runs every combination of up to eight repairs; of more, each alone and each left out of all.
 *
 * Sets are compared by days above 80 %, then peak mold index, then peak wood moisture.
 * @throws EngineError `bad-input` for more than 64 repairs or two of one name; what `runSeason` throws
 */
export function runCombinations(
  asFound: SeasonCase,
  repairs: readonly SeasonRepair[],
  weather: SeasonWeather,
): RepairCombinations {
  checkRepairs(repairs);
  const prepared = prepareWeather(weather);
  const tables: FlowTables = new WeakMap();
  const n = repairs.length;
  const complete = n <= COMPLETE_UP_TO;
  const sets = new Map<string, RepairSet>();
  // A set begins where the set without its last repair settled: that one was run before, and differs least. Single
  // repairs and all of them begin as a year by itself does, so that they come to the same figures as it.
  const settledWith = new Map<string, SettledSpace>();
  for (const chosen of complete ? everySet(n) : aloneAndLeftOut(n)) {
    const done = repairs.filter((_, i) => chosen[i]);
    const space = done.reduce((before, repair) => repair.apply(before), asFound);
    const names = done.map((repair) => repair.name);
    const named = { ...space, name: names.join(' + ') || asFound.name };
    const near = done.length > 1 && done.length < n ? settledWith.get(key(withoutLast(chosen))) : undefined;
    const { result, settled } = runNear(named, prepared, tables, {}, near);
    settledWith.set(key(chosen), settled);
    sets.set(key(chosen), {
      repairs: names,
      costCents: done.reduce((sum, repair) => sum + repair.costCents, 0),
      outcome: outcomeOf(result),
      settled: result.ending.converged,
    });
  }
  const all = [...sets.values()];
  const none = key(new Array<boolean>(n).fill(false));
  const every = key(new Array<boolean>(n).fill(true));
  const effects = repairs.map((repair, i) => ({
    name: repair.name,
    alone: less(sets.get(key(only(n, i)))!.outcome, sets.get(none)!.outcome),
    last: less(sets.get(every)!.outcome, sets.get(key(allBut(n, i)))!.outcome),
  }));
  const unsettled = all.filter((set) => !set.settled).length;
  const notices: Notice[] = [];
  if (!complete) {
    notices.push({
      code: 'not-every-combination',
      message: `With ${n} repairs only each alone and each left out were run; a better set may lie between.`,
    });
  }
  if (unsettled > 0) {
    notices.push({
      code: 'year-not-settled',
      message: `${unsettled} of ${all.length} years had not settled.`,
    });
  }
  return { complete, sets: all, effects, best: bestByBudget(all), notices };
}

function checkRepairs(repairs: readonly SeasonRepair[]): void {
  if (repairs.length > 64) {
    throw new EngineError('bad-input', `at most 64 repairs can be compared; got ${repairs.length}`);
  }
  const names = new Set<string>();
  for (const { name, costCents } of repairs) {
    if (names.has(name)) throw new EngineError('bad-input', `two repairs are named ${name}`);
    names.add(name);
    requireRange(`cost of ${name} in cents`, costCents, 0, 1e12);
  }
}

function* everySet(n: number): Generator<boolean[]> {
  for (let mask = 0; mask < 2 ** n; mask++)
    yield Array.from({ length: n }, (_, i) => (mask & (1 << i)) !== 0);
}

function* aloneAndLeftOut(n: number): Generator<boolean[]> {
  yield new Array<boolean>(n).fill(false);
  for (let i = 0; i < n; i++) yield only(n, i);
  for (let i = 0; i < n; i++) yield allBut(n, i);
  yield new Array<boolean>(n).fill(true);
}

function only(n: number, i: number): boolean[] {
  return Array.from({ length: n }, (_, k) => k === i);
}

function allBut(n: number, i: number): boolean[] {
  return Array.from({ length: n }, (_, k) => k !== i);
}

/** A set without the last of its repairs. */
function withoutLast(chosen: readonly boolean[]): boolean[] {
  const last = chosen.lastIndexOf(true);
  return chosen.map((c, i) => c && i !== last);
}

function key(chosen: readonly boolean[]): string {
  return chosen.map((c) => (c ? '1' : '0')).join('');
}

function outcomeOf(result: SeasonResult): SeasonOutcome {
  return {
    daysAbove80: result.daysAbove80,
    peakMoldIndex: result.peakMoldIndex,
    peakWoodMoisture: Math.max(...Object.values(result.peakWoodMoisture).map((wood) => wood.surface)),
    yearlyCostCents: result.costCents,
    energyKWh: result.energyKWh,
    waterRemovedKg: result.waterRemovedKg,
  };
}

function less(a: SeasonOutcome, b: SeasonOutcome): SeasonOutcome {
  return {
    daysAbove80: a.daysAbove80 - b.daysAbove80,
    peakMoldIndex: a.peakMoldIndex - b.peakMoldIndex,
    peakWoodMoisture: a.peakWoodMoisture - b.peakWoodMoisture,
    yearlyCostCents: a.yearlyCostCents - b.yearlyCostCents,
    energyKWh: a.energyKWh - b.energyKWh,
    waterRemovedKg: a.waterRemovedKg - b.waterRemovedKg,
  };
}

/** Below zero when `a` is the drier space. */
function compare(a: SeasonOutcome, b: SeasonOutcome): number {
  if (a.daysAbove80 !== b.daysAbove80) return a.daysAbove80 - b.daysAbove80;
  const mold = a.peakMoldIndex - b.peakMoldIndex;
  if (Math.abs(mold) > MOLD_STEP) return mold;
  const wood = a.peakWoodMoisture - b.peakWoodMoisture;
  return Math.abs(wood) > WOOD_STEP ? wood : 0;
}

function bestByBudget(sets: readonly RepairSet[]): RepairSet[] {
  const byCost = [...sets].sort(
    (a, b) =>
      a.costCents - b.costCents || compare(a.outcome, b.outcome) || a.repairs.length - b.repairs.length,
  );
  const best: RepairSet[] = [];
  for (const set of byCost) {
    const last = best.at(-1);
    if (last === undefined || compare(set.outcome, last.outcome) < 0) best.push(set);
  }
  return best;
}
