import type { SurveyedJob } from '@undercroft/record';
import type { BudgetResult } from '../assessment.ts';
import type { SeasonCaseResult } from '../season/season-assessment.ts';
import type { DefectResult, MendedEffect } from './defect-result.ts';
import { mended } from './mend.ts';

/** A defect with the job in which only it is mended. */
export interface Mend {
  readonly key: string;
  readonly job: SurveyedJob;
}

/** Jobs in which one defect each is mended, for the defects whose mending changes the balance of water. */
export function mendsOf(job: SurveyedJob, defects: readonly DefectResult[]): Mend[] {
  return defects.flatMap(({ key, state }) => {
    const changed = state === 'contradicted' ? undefined : mended(job, key);
    return changed === undefined ? [] : [{ key, job: changed }];
  });
}

/** What mending each defect alone does to the balance of the design month. */
export function monthEffects(
  mends: readonly Mend[],
  found: BudgetResult,
  budget: (job: SurveyedJob) => BudgetResult,
): Map<string, MendedEffect> {
  return new Map(
    mends.map(({ key, job }) => {
      const after = budget(job);
      const waterKgPerDay = found.totalInKgPerDay - after.totalInKgPerDay;
      return [
        key,
        {
          waterKgPerDay,
          waterShare: found.totalInKgPerDay > 0 ? waterKgPerDay / found.totalInKgPerDay : 0,
          relativeHumidity: after.crawl.relativeHumidity - found.crawl.relativeHumidity,
        },
      ];
    }),
  );
}

/** Most defects whose mending is run through a year, by depth of the season. */
export const YEARS_FOR_DEFECTS = { none: 0, quick: 0, cases: 6, full: 12 } as const;

/** The mends that take away the most water, as many as are run through a year. */
export function heaviest(
  mends: readonly Mend[],
  effects: ReadonlyMap<string, MendedEffect>,
  most: number,
): Mend[] {
  const water = ({ key }: Mend) => Math.abs(effects.get(key)?.waterKgPerDay ?? 0);
  return [...mends].sort((a, b) => water(b) - water(a) || (a.key < b.key ? -1 : 1)).slice(0, most);
}

type Year = Pick<SeasonCaseResult, 'daysAbove80' | 'peakMoldIndex' | 'peakWoodMoisture'>;

/** The effects with what the year by the hour says, for those that were run. */
export function withYears(
  effects: ReadonlyMap<string, MendedEffect>,
  found: Year,
  years: ReadonlyMap<string, Year>,
): Map<string, MendedEffect> {
  return new Map(
    [...effects].map(([key, effect]) => {
      const year = years.get(key);
      if (year === undefined) return [key, effect];
      return [
        key,
        {
          ...effect,
          year: {
            daysAbove80: year.daysAbove80 - found.daysAbove80,
            peakMoldIndex: year.peakMoldIndex - found.peakMoldIndex,
            peakWoodMoisture: year.peakWoodMoisture - found.peakWoodMoisture,
          },
        },
      ];
    }),
  );
}
