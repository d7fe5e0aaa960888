import type { BudgetResult } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { noticeLines } from './notices.ts';
import { shownBoth } from './quantities.ts';
import { heading, wrap } from './wrap.ts';

/** Columns right of the title: pints, kilograms, the range in pints, and the word "assumed". */
const FIGURES = 43;
const NARROWEST_TITLE = 32;
const WIDEST_TITLE = 56;

const pints = (kgPerDay: number): string => {
  const text = units.convert(kgPerDay, 'kg/day', 'pint/day').toFixed(1);
  return Number(text) === 0 ? text.replace('-', '') : text;
};

const kilograms = (kgPerDay: number): string => {
  const text = kgPerDay.toFixed(2);
  return Number(text) === 0 ? text.replace('-', '') : text;
};

/** A title in its column with the figures beside its first line. */
function row(title: string, figures: string, columns: number): string[] {
  const width = Math.max(NARROWEST_TITLE, Math.min(WIDEST_TITLE, columns - FIGURES));
  const [first, ...others] = wrap(title, width - 1, '  ');
  return [`${first.padEnd(width)}${figures}`.trimEnd(), ...others.map((line) => `  ${line}`)];
}

/** One balance as a table: each path by itself, water in as plus. */
export function budgetLines(budget: BudgetResult, columns: number): string[] {
  const { crawl, relativeHumidityRange: range } = budget;
  const percent = (share: number) => `${Math.round(100 * share)}%`;
  const spread =
    range === undefined
      ? ''
      : `, ${percent(range.low)} to ${percent(range.high)} with the guesses at their ends`;
  const state = `Space at ${shownBoth(crawl.temperatureC, 'temperature')}, ${percent(crawl.relativeHumidity)} RH${spread}; ${budget.airChangesPerHour.toFixed(2)} air changes per hour.`;
  const figures = (kg: number, low?: number, high?: number, assumed = false) => {
    const between = low === undefined || high === undefined ? '' : `${pints(low)} to ${pints(high)}`;
    return `${pints(kg).padStart(8)} ${kilograms(kg).padStart(8)}  ${between.padStart(15)}${assumed ? '  assumed' : ''}`;
  };
  return [
    ...heading(`Where the water comes from: ${budget.title}`),
    ...wrap(state, columns),
    ...row('', `${'pint/day'.padStart(8)} ${'kg/day'.padStart(8)}  ${'pint/day from'.padStart(15)}`, columns),
    ...budget.paths.flatMap((p) => row(p.title, figures(p.kgPerDay, p.low, p.high, p.assumed), columns)),
    ...(budget.unexplainedKgPerDay === 0
      ? []
      : row('Not explained, or stored', figures(budget.unexplainedKgPerDay), columns)),
    ...noticeLines(budget.notices, columns),
  ];
}
