import type { Assessment, BudgetResult } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { budgetChart } from '../../drawing/chart/budget-chart.ts';
import { day } from '../../words/dates.ts';
import { capital, ISO_DAY, plain } from '../../words/names.ts';
import { both, typeset } from '../../words/quantities.ts';
import {
  type Block,
  type Cell,
  cell,
  heading,
  paragraph,
  type Section,
  strong,
  type Table,
} from '../blocks.ts';

const perDay = (kgPerDay: number) => both(kgPerDay, 'massFlow', 1, 2);
const usPerDay = (kgPerDay: number) =>
  typeset(units.formatQuantity(kgPerDay, 'massFlow', 'us', 1).replace(/ pint\/day$/, ''));
const siPerDay = (kgPerDay: number) =>
  typeset(units.formatQuantity(kgPerDay, 'massFlow', 'si', 2).replace(/ kg\/day$/, ''));

const percent = (share: number) => units.formatQuantity(share, 'relativeHumidity', 'us');

function state(budget: BudgetResult): string {
  const { crawl, outdoor, relativeHumidityRange: range } = budget;
  const temperature = (c: number) => both(c, 'temperature');
  const spread =
    range === undefined
      ? ''
      : `, ${percent(range.low)} to ${percent(range.high)} when the guesses are at their ends`;
  return (
    `Air of the space ${temperature(crawl.temperatureC)} at ${percent(crawl.relativeHumidity)} relative humidity${spread}; ` +
    `dew point ${temperature(crawl.dewPointC)}. Outdoors ${temperature(outdoor.temperatureC)} at ` +
    `${percent(outdoor.relativeHumidity)}, dew point ${temperature(outdoor.dewPointC)}. Ground ` +
    `${temperature(budget.groundTemperatureC)}. Outdoor air ${budget.airChangesPerHour.toFixed(2)} changes per hour.`
  );
}

function table(budget: BudgetResult, from: string): Table {
  const flow = (kgPerDay: number, assumed: boolean): readonly [us: Cell, si: Cell] => [
    cell({ text: usPerDay(kgPerDay), look: 'figure', assumed }),
    cell({ text: siPerDay(kgPerDay), look: 'figure', assumed }),
  ];
  const none = cell({ text: '' });
  const rows = budget.paths.map(({ title, kgPerDay, low, high, assumed }): Cell[] => {
    const [us, si] = flow(kgPerDay, assumed);
    const range = (text: (kg: number) => string) =>
      cell({ text: `${text(low)} to ${text(high)}`, look: 'figure', assumed });
    return [cell({ text: title }), us, range(usPerDay), si, range(siPerDay)];
  });
  const sum = (title: string, kgPerDay: number): Cell[] => {
    const [us, si] = flow(kgPerDay, false);
    return [cell(strong(title)), us, none, si, none];
  };
  const left = budget.unexplainedKgPerDay;
  return {
    kind: 'table',
    caption: `Water by each path, ${titleOf(budget)}. Figures with a dashed underline have guesses in them.`,
    columns: [
      { title: 'Path', weight: 40 },
      { title: 'pint/day', weight: 11, align: 'end' },
      { title: 'range', weight: 19, align: 'end' },
      { title: 'kg/day', weight: 11, align: 'end' },
      { title: 'range', weight: 19, align: 'end' },
    ],
    rows: [
      ...rows,
      sum('All that bring water', budget.totalInKgPerDay),
      ...(left === 0 ? [] : [sum('Not explained, or stored', left)]),
    ],
    rowsFrom: [...budget.paths.map((p) => `${from}/${p.key}`), from, ...(left === 0 ? [] : [from])],
  };
}

const titleOf = (budget: BudgetResult) => budget.title.replace(ISO_DAY, (iso) => day(iso));

function budgetBlocks(budget: BudgetResult, id: string, from: string): Block[] {
  const title = capital(titleOf(budget));
  const left = budget.unexplainedKgPerDay;
  const told = budget.notices.some((n) => n.code.endsWith('-not-found'));
  const open =
    left === 0 || told
      ? []
      : [
          paragraph(
            `The paths bring ${perDay(Math.abs(left))} ${left > 0 ? 'less' : 'more'} than the air carries off, which lies within the doubt of the guesses.`,
            undefined,
            from,
          ),
        ];
  return [
    heading(3, title, id),
    paragraph(state(budget), undefined, from),
    {
      kind: 'figure',
      id: `${id}-chart`,
      from,
      caption: `${title}. Bars to the right bring water, bars to the left carry it away; the thin line is the range. A dashed outline has guesses in it.`,
      placement: 'inline',
      onScreen: (room) => budgetChart(budget, titleOf(budget), room),
      onPaper: (room) => budgetChart(budget, titleOf(budget), { width: room.width, textSize: room.textSize }),
    },
    ...open,
    ...budget.notices.map((n) =>
      paragraph(plain(n.message), told && n.code.endsWith('-not-found') ? undefined : 'note', from),
    ),
    table(budget, from),
  ];
}

/** Where the water comes from, for each state that was balanced. */
export function water(_job: Job, assessment: Assessment): Section {
  const { surveyDay, designMonth } = assessment.budgets;
  const notices = assessment.climate.notices.map((n) => paragraph(plain(n.message), 'note', 'climate'));
  return {
    id: 'water',
    title: 'Where the water comes from',
    from: 'budgets/designMonth',
    blocks: [
      heading(2, 'Where the water comes from', 'water'),
      paragraph(
        'Each path is water into the air of the space per day as far as it can be told from what was seen. A path that carries water away is negative.',
      ),
      ...(surveyDay === undefined
        ? [paragraph('The air of the space was not read on the survey day, so that day cannot be balanced.')]
        : budgetBlocks(surveyDay, 'water-survey-day', 'budgets/surveyDay')),
      ...budgetBlocks(designMonth, 'water-design-month', 'budgets/designMonth'),
      paragraph(`Weather: ${assessment.climate.source}.`, 'note', 'climate'),
      ...notices,
    ],
  };
}
