import type { BudgetPath, BudgetResult } from '@undercroft/assessment';
import { monthNames, shownDay } from '../../parts/measure.ts';
import type { Settings } from '../../settings/settings.ts';

/** The day or month of a balance, in a language: the part of its title behind the comma. */
export function budgetTime({ title }: BudgetResult, language: Settings['language']): string {
  const time = title.split(/, (.*)/s)[1] ?? title;
  const month = monthNames('en', 'long').indexOf(time);
  return month >= 0 ? monthNames(language, 'long')[month] : shownDay(time, language);
}

/** The path that brings most water; undefined where none brings any. */
export function mainPath({ paths }: BudgetResult): BudgetPath | undefined {
  const wetting = paths.filter((path) => path.kgPerDay > 0);
  return wetting.reduce<BudgetPath | undefined>(
    (best, path) => (best === undefined || path.kgPerDay > best.kgPerDay ? path : best),
    undefined,
  );
}

/** Paths below this, also at the ends of their ranges, are named instead of drawn [kg/day]. */
const SMALLEST = 0.05;

/** Whether a path is worth a bar of its own. */
export function isDrawn({ kgPerDay, low, high }: BudgetPath): boolean {
  return Math.max(Math.abs(kgPerDay), Math.abs(low), Math.abs(high)) >= SMALLEST;
}

/** A path first by what it brings, those that carry water away last. */
export function byFlow(paths: readonly BudgetPath[]): BudgetPath[] {
  return [...paths].sort((a, b) => b.kgPerDay - a.kgPerDay);
}
