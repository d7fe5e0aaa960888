import type { Assessment } from '@undercroft/assessment';
import { noticeLines } from './notices.ts';
import { airLines, effectLines, failureLines, machineLines, monthLines } from './print-season-detail.ts';
import { table } from './print-season-table.ts';
import { shownBoth } from './quantities.ts';
import { heading, wrap } from './wrap.ts';

type Season = NonNullable<Assessment['season']>;

const percent = (share: number): string => `${Math.round(100 * share)}%`;
const dollars = (cents: number): string => `$${Math.round(cents / 100)}`;

function caseLines({ cases }: Season, columns: number): string[] {
  const rows = cases.map((c): [string, ...string[]] => [
    c.name,
    String(c.daysAbove80),
    percent(c.highestDayRelativeHumidity),
    c.peakMoldIndex.toFixed(1),
    percent(c.peakWoodMoisture),
    String(Math.round(c.energyKWh)),
    dollars(c.costCents),
  ]);
  return table(['days>80%', 'top RH', 'mold', 'wood', 'kWh', 'a year'], rows, columns);
}

function sizingLines({ sizing }: Season, columns: number): string[] {
  const { chosen, day } = sizing;
  const load = `To remove on the ${day.title} (${sizing.state}, held at ${percent(sizing.targetRelativeHumidity)} RH): ${shownBoth(sizing.steadyKgPerDay, 'massFlow')}, with the drying of wet wood ${shownBoth(sizing.withPullDownKgPerDay, 'massFlow')}.`;
  const labels = sizing.labels.map(
    (l) =>
      `label at ${l.ratingPoint.replace('F-', ' °F, ')} %: at least ${shownBoth(l.pullDownKgPerDay, 'massFlow')}`,
  );
  const machine = chosen === undefined ? 'No machine was chosen.' : `Machine: ${chosen.name}. ${chosen.why}`;
  return [
    '',
    ...wrap(load, columns),
    ...labels.flatMap((text) => wrap(text, columns, '  - ')),
    ...wrap(machine, columns),
    ...noticeLines(sizing.notices, columns),
  ];
}

function rankingLines({ ranking }: Season, columns: number): string[] {
  if (ranking === undefined) return [];
  const rows = ranking.best.map((set): [string, ...string[]] => [
    set.title,
    dollars(set.priceCents),
    String(set.daysAbove80),
    set.peakMoldIndex.toFixed(1),
    percent(set.peakWoodMoisture),
    dollars(set.yearlyCostCents),
  ]);
  return [
    '',
    'What the money buys: the best set of repairs for each budget',
    ...table(['price', 'days>80%', 'mold', 'wood', 'a year'], rows, columns),
    ...noticeLines(ranking.notices, columns),
  ];
}

function chanceLines({ chances }: Season, columns: number): string[] {
  if (chances === undefined) return [];
  const { staysBelow60, staysBelow70, staysBelow80, moldAtMost3, influences } = chances;
  const chance = (c: { readonly value: number }) => percent(c.value);
  const text = `How sure (${chances.name}, ${chances.count} years with other weather and other guesses): stays below 60 % in ${chance(staysBelow60)}, below 70 % in ${chance(staysBelow70)}, below 80 % in ${chance(staysBelow80)} of the years; mold index at most 3 in ${chance(moldAtMost3)}.`;
  const most = influences.slice(0, 3).map((i) => i.title);
  return [
    '',
    ...wrap(text, columns),
    ...(most.length > 0 ? wrap(`What to measure next: ${most.join('; ')}.`, columns) : []),
    ...noticeLines(chances.notices, columns),
  ];
}

/** The year by the hour: each state of the space, the machine, and where asked for what pays and how sure it is. */
export function seasonLines(season: Season, columns: number): string[] {
  const { weather } = season;
  return [
    ...heading(`The year by the hour: ${weather.name}`),
    ...caseLines(season, columns),
    ...wrap(
      'days>80%: days with a mean above 80 % RH. top RH: most humid day. mold: highest mold index, 0 to 6. wood: wettest wood. kWh and a year: electricity.',
      columns,
    ),
    ...failureLines(season, columns),
    ...monthLines(season, columns),
    ...airLines(season, columns),
    ...sizingLines(season, columns),
    ...machineLines(season, columns),
    ...effectLines(season, columns),
    ...rankingLines(season, columns),
    ...chanceLines(season, columns),
    ...noticeLines([...season.notices, ...weather.notices], columns),
  ];
}
