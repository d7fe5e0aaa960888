import type { Assessment, SeasonAssessment, SeasonCaseResult } from '@undercroft/assessment';
import { climate, units } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { humidityYear } from '../../drawing/chart/humidity-year.ts';
import { plain } from '../../words/names.ts';
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

const percent = (share: number, digits = 0) => units.formatQuantity(share, 'relativeHumidity', 'us', digits);
const dollars = (cents: number) => typeset(`${cents < 0 ? '-' : ''}$${(Math.abs(cents) / 100).toFixed(2)}`);
const signed = (value: number, digits: number) => typeset(`${value > 0 ? '+' : ''}${value.toFixed(digits)}`);
const figures = (text: string): Cell => cell({ text, look: 'figure' });

/** Paths of water as people name them; the wood, fog and what ran off are in the JSON. */
const PATH_NAMES: readonly (readonly [key: keyof SeasonCaseResult['waterKg'], name: string])[] = [
  ['openGround', 'Open ground'],
  ['sheet', 'Through the liner'],
  ['standingWater', 'Standing water'],
  ['walls', 'Walls, vapor'],
  ['capillary', 'Walls, drawn up'],
  ['outdoorAir', 'Outdoor air'],
  ['houseAir', 'House air'],
  ['supplyAir', 'Supply air'],
  ['floor', 'Through the floor'],
  ['other', 'Other sources'],
  ['wood', 'Wood'],
  ['condensate', 'Condensed on surfaces'],
  ['dehumidifiers', 'Dehumidifiers'],
];

/** As found, and with all repairs where there are any. */
function beforeAndAfter(season: SeasonAssessment): SeasonCaseResult[] {
  return season.cases.filter((c) => c.kind === 'as-found' || c.kind === 'all-repairs');
}

function monthTable(one: SeasonCaseResult): Table {
  return {
    kind: 'table',
    caption: `${one.name}: monthly means. Wood is the first 5 mm of the joists.`,
    columns: [
      { title: 'Month', weight: 18 },
      { title: 'RH', weight: 12, align: 'end' },
      { title: 'Temperature', weight: 26, align: 'end' },
      { title: 'Dew point', weight: 26, align: 'end' },
      { title: 'Wood', weight: 18, align: 'end' },
    ],
    compact: true,
    rows: one.months.map((m, i) => [
      cell({ text: climate.MONTH_NAMES[i] }),
      figures(percent(m.relativeHumidity)),
      figures(both(m.temperatureC, 'temperature')),
      figures(both(m.dewPointC, 'temperature')),
      figures(percent(m.woodMoistureSurface, 1)),
    ]),
  };
}

function waterTable(cases: readonly SeasonCaseResult[]): Table {
  const moved = PATH_NAMES.filter(([key]) => cases.some((c) => Math.abs(c.waterKg[key]) >= 0.5));
  return {
    kind: 'table',
    caption: 'Water by path over the year, kg; a path that carries water away is negative.',
    columns: [
      { title: 'Path', weight: 40 },
      ...cases.map((c) => ({ title: c.name, weight: 30, align: 'end' as const })),
    ],
    rows: moved.map(([key, name]) => [
      cell({ text: name }),
      ...cases.map((c) => figures(typeset(c.waterKg[key].toFixed(0)))),
    ]),
  };
}

function caseTable(cases: readonly SeasonCaseResult[]): Table {
  return {
    kind: 'table',
    caption:
      'Each state of the space through the year. Wood is the highest of any surface; electricity at the tariff of the job.',
    columns: [
      { title: 'State', weight: 34 },
      { title: 'days above 80 % RH', weight: 13, align: 'end' },
      { title: 'highest mold index', weight: 13, align: 'end' },
      { title: 'wettest wood', weight: 12, align: 'end' },
      { title: 'removed, kg', weight: 10, align: 'end' },
      { title: 'kWh', weight: 8, align: 'end' },
      { title: 'cost', weight: 10, align: 'end' },
    ],
    rows: cases.map((c) => [
      cell({ text: c.name }),
      figures(String(c.daysAbove80)),
      figures(c.peakMoldIndex.toFixed(1)),
      figures(percent(c.peakWoodMoisture, 1)),
      figures(c.waterRemovedKg.toFixed(0)),
      figures(c.energyKWh.toFixed(0)),
      figures(dollars(c.costCents)),
    ]),
  };
}

function failures(cases: readonly SeasonCaseResult[]): Block[] {
  return cases.flatMap(({ failure }) =>
    failure === undefined
      ? []
      : [
          paragraph(
            `Without ${failure.what === 'power' ? 'power' : 'its dehumidifier'} for ${failure.days} days from ${failure.from} the air rises from ${percent(failure.startRelativeHumidity)} to ${percent(failure.highestRelativeHumidity)} relative humidity, where it would have been ${percent(failure.usualRelativeHumidity)}.`,
          ),
        ],
  );
}

function rankingBlocks({ ranking }: SeasonAssessment): Block[] {
  if (ranking === undefined) return [];
  const columns = [
    { title: 'Repair', weight: 36 },
    { title: 'days above 80 %, alone', weight: 14, align: 'end' as const },
    { title: 'added last', weight: 12, align: 'end' as const },
    { title: 'mold index, alone', weight: 13, align: 'end' as const },
    { title: 'wettest wood, alone', weight: 13, align: 'end' as const },
    { title: 'cost a year, alone', weight: 12, align: 'end' as const },
  ];
  return [
    heading(3, 'Which repairs buy dryness', 'year-ranking'),
    paragraph(
      `From ${ranking.yearsRun} years${ranking.complete ? ', every combination of the repairs' : ', each repair alone and each left out'}. A change below nothing is less.`,
    ),
    {
      kind: 'table',
      caption: 'Change of the year by each repair.',
      columns,
      rows: ranking.effects.map((e) => [
        cell({ text: e.title }),
        figures(signed(e.alone.daysAbove80, 0)),
        figures(signed(e.last.daysAbove80, 0)),
        figures(signed(e.alone.peakMoldIndex, 1)),
        figures(`${signed(100 * e.alone.peakWoodMoisture, 1)} points`),
        figures(dollars(e.alone.yearlyCostCents)),
      ]),
    },
    {
      kind: 'table',
      caption: 'The best set for each budget, cheapest first.',
      columns: [
        { title: 'Set', weight: 52 },
        { title: 'price', weight: 16, align: 'end' },
        { title: 'days above 80 % RH', weight: 16, align: 'end' },
        { title: 'highest mold index', weight: 16, align: 'end' },
      ],
      rows: ranking.best.map((s) => [
        cell({ text: s.title }),
        figures(dollars(s.priceCents)),
        figures(String(s.daysAbove80)),
        figures(s.peakMoldIndex.toFixed(1)),
      ]),
    },
    ...ranking.notices.map((n) => paragraph(plain(n.message), 'note')),
  ];
}

function chanceBlocks({ chances }: SeasonAssessment): Block[] {
  if (chances === undefined) return [];
  const rows = [
    ['Every day below 60 % RH', chances.staysBelow60],
    ['Every day below 70 % RH', chances.staysBelow70],
    ['Every day below 80 % RH', chances.staysBelow80],
    ['Mold index at most 3', chances.moldAtMost3],
  ] as const;
  const next = chances.influences.slice(0, 3).map((i) => i.title);
  return [
    heading(3, 'How sure that is', 'year-chances'),
    paragraph(`${chances.name}, ${chances.count} years drawn over the ranges of what nobody measured.`),
    {
      kind: 'table',
      caption: 'Chances, with the range that so many years leave open.',
      columns: [
        { title: 'The space stays', weight: 50 },
        { title: 'chance', weight: 20, align: 'end' },
        { title: 'range', weight: 30, align: 'end' },
      ],
      rows: rows.map(([name, chance]) => [
        cell({ text: name }),
        cell({ text: percent(chance.value), look: 'figure', assumed: true }),
        figures(`${percent(chance.low)} to ${percent(chance.high)}`),
      ]),
    },
    ...(next.length === 0
      ? []
      : [paragraph(`What to measure next, the most telling first: ${next.join('; ')}.`)]),
  ];
}

function sizingBlocks({ sizing }: SeasonAssessment): Block[] {
  const perDay = (kg: number) => both(kg, 'massFlow', 1, 1);
  return [
    heading(3, 'What machine it needs', 'year-sizing'),
    paragraph(
      `${sizing.day.title}: ${perDay(sizing.steadyKgPerDay)} to hold ${percent(sizing.targetRelativeHumidity)} relative humidity (likely ${perDay(sizing.steadyLowKgPerDay)} to ${perDay(sizing.steadyHighKgPerDay)}), ${perDay(sizing.withPullDownKgPerDay)} while wood and walls dry down over ${sizing.pullDown.days} days.`,
    ),
    {
      kind: 'table',
      caption: 'The ways that the residential code allows, against the same load.',
      columns: [
        { title: 'Way', weight: 34 },
        { title: 'covers the load', weight: 16 },
        { title: 'Mind', weight: 50 },
      ],
      rows: sizing.codeOptions.map((o) => [
        cell(strong(o.title)),
        cell({ text: o.coversLoad === undefined ? 'not known' : o.coversLoad ? 'yes' : 'no' }),
        cell({ text: o.warnings.map((w) => plain(w.message)).join(' ') }),
      ]),
    },
    ...(sizing.chosen === undefined
      ? []
      : [paragraph(`The years are run with: ${sizing.chosen.name}. ${sizing.chosen.why}`)]),
    ...sizing.notices.map((n) => paragraph(plain(n.message), 'note')),
  ];
}

/** The year under the floor by the hour; undefined where it was not run. */
export function year(_job: Job, assessment: Assessment): Section | undefined {
  const { season } = assessment;
  if (season === undefined) return undefined;
  const cases = beforeAndAfter(season);
  const worst = Math.max(...season.cases.map((c) => Math.max(c.closure.water, c.closure.energy)));
  return {
    id: 'year',
    title: 'The year under the floor',
    from: 'season',
    blocks: [
      heading(2, 'The year under the floor', 'year'),
      paragraph(
        `Hour by hour in the weather of ${season.weather.name} (${plain(season.weather.kind)}), as found and repaired.`,
      ),
      {
        kind: 'figure',
        id: 'year-chart',
        caption: 'Relative humidity of the space, monthly means, with the thresholds of 60, 70 and 80 %.',
        placement: 'inline',
        onScreen: (room) => humidityYear(cases, room),
        onPaper: (room) => humidityYear(cases, { width: room.width, textSize: room.textSize }),
      },
      caseTable(season.cases),
      ...failures(season.cases),
      ...cases.map(monthTable),
      heading(3, 'Where the water comes from over the year', 'year-water'),
      waterTable(cases),
      ...rankingBlocks(season),
      ...chanceBlocks(season),
      ...sizingBlocks(season),
      ...season.notices.map((n) => paragraph(plain(n.message), 'note')),
      paragraph(
        `Water and heat in these years are accounted for to ${worst.toExponential(0)} of all that moved.`,
        'note',
      ),
    ],
  };
}
