import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import { dewPointC } from '../psychrometrics/dew-point.ts';
import { type Band, requireBand, type Spread } from './band.ts';
import type { BudgetInput } from './budget-input.ts';
import { budgetNotices } from './budget-notices.ts';
import type { BudgetPath, MoistureBudget } from './budget-result.ts';
import { humiditySpread, readingDeviation, spreadOfSum } from './budget-spread.ts';
import { asRange, closingPaths } from './closing-paths.ts';
import { airAtRelativeHumidity, type CrawlAir } from './crawl-air.ts';
import { SURFACE_TRANSFER_M_PER_S } from './ground-evaporation.ts';
import { groundPaths } from './ground-paths.ts';
import { machinePath } from './machine-path.ts';
import { otherPaths } from './other-paths.ts';
import { endsKgPerDay, isAssumed, middleKgPerDay, type PathModel, pathInput } from './path-model.ts';
import { humidistatOf, type SteadyState, solveSteady } from './steady-state.ts';

const ASSUMED_TRANSFER: Band = { ...SURFACE_TRANSFER_M_PER_S, assumed: true };

function result(path: PathModel, air: CrawlAir): BudgetPath {
  return {
    key: path.key,
    title: path.title,
    kgPerDay: middleKgPerDay(path, air),
    ...endsKgPerDay(path, air),
    assumed: isAssumed(path),
    formula: path.formula,
    sourceId: path.sourceId,
    inputs: path.inputs,
  };
}

/** All paths of a budget, and the machine's too where its removal does not hang on a setting. */
function pathModels(budget: BudgetInput): PathModel[] {
  const band = budget.surfaceTransferMPerS ?? ASSUMED_TRANSFER;
  const film = pathInput('surfaces', 'vapor transfer coefficient', 'm/s', band, 1e-5, 0.1);
  const paths = [...groundPaths(budget, film), ...otherPaths(budget, film)];
  const machine = budget.dehumidifier;
  if (machine && !(machine.kind === 'humidistat' && budget.state.kind === 'steady')) {
    paths.push(machinePath(machine, runFractionWhenRead(budget)));
  }
  const seen = new Set<string>();
  for (const { key } of paths) {
    if (seen.has(key)) {
      throw new EngineError('bad-input', `two paths of the budget have the key "${key}"; give each its own`);
    }
    seen.add(key);
  }
  return paths;
}

/** Guess at the run share of a humidistat machine on a survey day: on above its band, off below, unknown within. */
function runFractionWhenRead(budget: BudgetInput): Band | undefined {
  if (budget.dehumidifier?.kind !== 'humidistat' || budget.state.kind !== 'read') return undefined;
  const over = budget.state.relativeHumidity.value - budget.dehumidifier.setRelativeHumidity;
  const value = over > 0.03 ? 1 : over < -0.03 ? 0 : 0.5;
  return { value, low: 0, high: 1, assumed: true };
}

/**
 * Level 0: where the water in the air of a crawl space comes from and goes to, in one steady state.
 *
 * With state `read`, every path is computed at the air as it was read and the rest is reported as unexplained or storage.
 * With state `steady`, the humidity is found at which all paths balance at the given air temperature; heat is not
 * balanced. Air flows count at 1.2 kg/m³ at sea level, in proportion to the barometer.
 *
 * Ranges: `low` and `high` of a path are its extremes over the corners of its own inputs. Of sums, `low`/`high` add the
 * extremes of all paths, and `likelyLow`/`likelyHigh` add the single deviations as root of squares, which holds for guesses
 * that do not hang together. A ground temperature or surface coefficient that several paths share does hang together:
 * then the truth lies between the two.
 *
 * Source: surface film by the Lewis analogy, permeance, sharp-front rising damp and mass balance, each named in its path.
 * @throws EngineError `not-finite`, `out-of-range` or `bad-input` naming the input; `bad-input` when there is no path
 */
export function moistureBudget(budget: BudgetInput): MoistureBudget {
  const temperature = requireBand('air temperature in °C', budget.airTemperatureC, -40, 50);
  requireRange('pressure in Pa', budget.pressurePa, 50_000, 110_000);
  if (budget.dehumidifier?.kind === 'humidistat') {
    requireRange('humidistat setting as a fraction', budget.dehumidifier.setRelativeHumidity, 0.01, 1);
    requireBand('capacity at 80 °F/60 % in kg/day', budget.dehumidifier.ratedKgPerDay, 0, 1000);
  }
  const paths = pathModels(budget);
  if (paths.length === 0) {
    throw new EngineError('bad-input', 'a moisture budget needs at least one path of water; none was given');
  }
  return budget.state.kind === 'read'
    ? readBudget(budget, paths, temperature, budget.state.relativeHumidity)
    : steadyBudget(budget, paths, temperature);
}

function readBudget(
  budget: BudgetInput,
  models: readonly PathModel[],
  temperature: Band,
  reading: Band,
): MoistureBudget {
  requireBand('relative humidity as a fraction', reading, 0, 1);
  const air = airAtRelativeHumidity(temperature.value, reading.value, budget.pressurePa);
  const paths = models.map((model) => result(model, air));
  const net = spreadOfSum([
    ...paths.map(asRange),
    readingDeviation(models, temperature, reading, budget.pressurePa),
  ]);
  const unexplained: Spread = {
    value: -net.value,
    low: -net.high,
    high: -net.low,
    likelyLow: -net.likelyHigh,
    likelyHigh: -net.likelyLow,
  };
  return report(budget, air, paths, { unexplained });
}

function steadyBudget(budget: BudgetInput, models: readonly PathModel[], temperature: Band): MoistureBudget {
  const problem = { paths: models, pressurePa: budget.pressurePa, humidistat: humidistatOf(budget) };
  const steady = solveSteady(
    problem,
    temperature.value,
    models.map(() => 'value'),
  );
  const paths = models.map((model) => result(model, steady.air));
  paths.push(...closingPaths(problem, steady, paths));
  if (budget.state.kind === 'steady' && budget.state.range === false) {
    return report(budget, steady.air, paths, { steady });
  }
  return report(budget, steady.air, paths, {
    steady,
    humidity: humiditySpread(problem, temperature, steady.air.relativeHumidity),
  });
}

/** Puts a budget together from its paths. */
function report(
  budget: BudgetInput,
  air: CrawlAir,
  paths: readonly BudgetPath[],
  solved: { readonly unexplained?: Spread; readonly steady?: SteadyState; readonly humidity?: Spread },
): MoistureBudget {
  const { unexplained, steady, humidity } = solved;
  const positive = (x: number) => Math.max(0, x);
  const totalIn = spreadOfSum(
    paths.map(({ kgPerDay, low, high }) => ({
      value: positive(kgPerDay),
      low: positive(low),
      high: positive(high),
    })),
  );
  let removed = 0;
  let sum = unexplained?.value ?? 0;
  for (const { kgPerDay } of paths) {
    removed += positive(-kgPerDay);
    sum += kgPerDay;
  }
  const house = budget.houseAir;
  const up = house ? positive(-house.flowM3PerS.value) : 0;
  return {
    state: budget.state.kind,
    paths,
    totalInKgPerDay: totalIn.value,
    removedKgPerDay: removed,
    totalIn,
    unexplainedKgPerDay: unexplained?.value ?? 0,
    ...(unexplained && { unexplained }),
    airTemperatureC: air.temperatureC,
    humidityRatio: air.humidityRatio,
    relativeHumidity: air.relativeHumidity,
    dewPointC: dewPointC(air.vaporPressurePa),
    ...(steady && { steadyHumidityRatio: air.humidityRatio, ending: steady.ending }),
    ...(humidity && { relativeHumiditySpread: humidity }),
    ...(steady?.machineShare !== undefined && { machineRunFraction: steady.machineShare }),
    toHouseKgPerDay: house
      ? 86_400 * air.airKgPerM3 * up * (air.humidityRatio - house.humidityRatio.value)
      : 0,
    closureKgPerDay: sum,
    notices: budgetNotices(budget, air, paths, totalIn.value, solved),
  };
}
