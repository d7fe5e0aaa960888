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
