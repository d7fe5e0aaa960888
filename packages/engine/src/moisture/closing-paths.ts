import type { BudgetPath } from './budget-result.ts';
import { type Range, spreadOfSum } from './budget-spread.ts';
import { DEHUMIDIFIER_KEY, machineFactor } from './machine-path.ts';
import { moistureSources } from './sources.ts';
import type { SteadyProblem, SteadyState } from './steady-state.ts';

/** A path as a figure with its extremes. */
export const asRange = (path: BudgetPath): Range => ({
  value: path.kgPerDay,
  low: path.low,
  high: path.high,
});

/** The paths whose flow follows from the balance: a machine under its humidistat, and what saturated air sheds. */
export function closingPaths(
  { humidistat }: SteadyProblem,
  steady: SteadyState,
  paths: readonly BudgetPath[],
): BudgetPath[] {
  const net = spreadOfSum(paths.map(asRange));
  const closing: BudgetPath[] = [];
  if (humidistat) {
    const factor = machineFactor(humidistat, steady.air);
    const { low, high } = humidistat.ratedKgPerDay;
    const value = 86_400 * steady.machineKgPerS;
    closing.push(
      remainder(
        DEHUMIDIFIER_KEY,
        'Dehumidifier',
        steady.machineAtLimit
          ? '- capacity at the air, running all the time'
          : '- what the other paths bring at the setting of the humidistat',
        {
          value: value === 0 ? 0 : -value,
          low: -Math.max(value, Math.min(high * factor, Math.max(0, net.high))),
          high: -Math.min(value, low * factor, Math.max(0, net.low)) || 0,
        },
      ),
    );
  }
  if (steady.excessKgPerS > 0) {
    const value = -86_400 * steady.excessKgPerS;
    const formula = '- what the other paths bring to saturated air';
    closing.push(
      remainder('excess', 'Condenses out of saturated air', formula, { value, low: value, high: value }),
    );
  }
  if (steady.shortKgPerS > 0) {
    const value = 86_400 * steady.shortKgPerS;
    const formula = 'what the entered sinks take beyond what is there';
    closing.push(
      remainder('shortfall', 'Asked for by sinks, not there', formula, { value, low: value, high: value }),
    );
  }
  return closing;
}

/** A path without inputs of its own: it carries what the others leave over. */
function remainder(key: string, title: string, formula: string, range: Range): BudgetPath {
  return {
    key,
    title,
    kgPerDay: range.value,
    low: range.low,
    high: range.high,
    assumed: true,
    formula,
    sourceId: moistureSources.massBalance.id,
    inputs: [],
  };
}
