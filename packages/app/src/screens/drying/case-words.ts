import type { SeasonAssessment, SeasonCaseResult } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { moneyText, typeset } from '../../parts/measure.ts';
import type { Settings } from '../../settings/settings.ts';
import type { Say } from '../../text/texts.ts';
import type { dryingTexts } from './drying-texts.ts';
import { repairTitle } from './repair-words.ts';

export type SayDrying = Say<(typeof dryingTexts)['en']>;
export type Show = Pick<Settings, 'units' | 'language'>;

/** Figures of a year that are compared, with their words and the publications that they rest on. */
export const YEAR_FIGURES = [
  'daysAbove80',
  'highestDay',
  'moldIndex',
  'wood',
  'water',
  'energy',
  'cost',
] as const;
export type YearFigure = (typeof YEAR_FIGURES)[number];

/** Ids of publications in the assessment by what rests on them. A test holds that they are there. */
export const SOURCES_OF: Readonly<
  Record<YearFigure | 'year' | 'sizing' | 'code' | 'chances', readonly string[]>
> = {
  daysAbove80: ['hukka-viitanen-1999', 'ashrae-fundamentals-2017-ch1'],
  highestDay: ['ashrae-fundamentals-2017-ch1'],
  moldIndex: ['hukka-viitanen-1999', 'ojanen-viitanen-2010', 'ashrae-160-2016'],
  wood: ['wood-handbook-2021-ch4', 'wood-vapor-permeability', 'season-wood-mass'],
  water: ['winkler-2011-surfaces', 'dehumidifier-practice'],
  energy: ['winkler-2011-surfaces', 'dehumidifier-practice'],
  cost: [],
  year: ['zone-pressure-network', 'lewis-analogy', 'season-soil-column', 'ashrae-fundamentals-materials'],
  sizing: ['winkler-2011-generic-surface', 'doe-appendix-x1', 'aham-dh-1-2008', 'dehumidifier-practice'],
  code: ['irc-2018-r408-3'],
  chances: ['season-common-practice'],
};

/** Water of a year: gallons or liters. */
export function waterText(kg: number, { units: system }: Show): string {
  const shown = system === 'us' ? units.convert(kg / 1000, 'm3', 'gal') : kg;
  return typeset(`${shown.toFixed(0)} ${system === 'us' ? 'gal' : 'L'}`);
}

export function energyText(kWh: number): string {
  return typeset(`${kWh.toFixed(0)} kWh`);
}

export function percentText(share: number, digits = 0): string {
  return units.formatQuantity(share, 'relativeHumidity', 'us', digits);
}

/** One figure of a year in words. */
export function figureText(of: SeasonCaseResult, figure: YearFigure, show: Show): string {
  if (figure === 'daysAbove80') return String(of.daysAbove80);
  if (figure === 'highestDay') return percentText(of.highestDayRelativeHumidity);
  if (figure === 'moldIndex') return of.peakMoldIndex.toFixed(1);
  if (figure === 'wood') return percentText(of.peakWoodMoisture, 1);
  if (figure === 'water') return waterText(of.waterRemovedKg, show);
  if (figure === 'energy') return energyText(of.energyKWh);
  return moneyText(of.costCents, show.language);
}

/** The space as found, and with all repairs where there are any. */
export function beforeAndAfter(season: SeasonAssessment): readonly SeasonCaseResult[] {
  return season.cases.filter((c) => c.kind === 'as-found' || c.kind === 'all-repairs');
}

/** What a case is called, in a language. */
export function caseTitle(
  of: SeasonCaseResult,
  season: SeasonAssessment,
  say: SayDrying,
  language: Settings['language'],
): string {
  if (of.kind === 'as-found') return say('asFound');
  if (of.kind === 'all-repairs') return say('allRepairs');
  if (of.failure !== undefined) return say(of.failure.what);
  return setTitle(of.repairIds, season, say, language);
}

/** Repairs of a set by name, in the order of the job. */
export function setTitle(
  ids: readonly string[],
  season: SeasonAssessment,
  say: SayDrying,
  language: Settings['language'],
): string {
  const titles = ids.map((id) => {
    const found = season.repairs.find((repair) => repair.id === id);
    return found === undefined ? id : repairTitle(found.repair, language);
  });
  return titles.length === 0 ? say('nothingDone') : titles.join(' + ');
}
