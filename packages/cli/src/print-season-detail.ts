import type { Assessment } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { table } from './print-season-table.ts';
import { shownBoth } from './quantities.ts';
import { wrap } from './wrap.ts';

type Season = NonNullable<Assessment['season']>;
type Case = Season['cases'][number];
type Change = NonNullable<Season['ranking']>['effects'][number]['alone'];

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

const percent = (share: number): string => `${Math.round(100 * share)}%`;
const fahrenheit = (c: number): string => String(Math.round(units.convert(c, 'C', 'F')));
/** A change with its sign; nothing where it rounds to nothing. */
const signed = (value: number, digits = 0): string => {
  const text = value.toFixed(digits);
  if (Number(text) === 0) return '0';
  return value > 0 ? `+${text}` : text;
};

function monthTable(one: Case): string[] {
  const row = (title: string, pick: (m: Case['months'][number]) => string): string =>
    `  ${title.padEnd(12)}${one.months.map((m) => pick(m).padStart(5)).join('')}`;
  return [
    '',
    `Month by month, ${one.name}`,
    `  ${' '.repeat(12)}${MONTHS.map((m) => m.padStart(5)).join('')}`,
    row('air °F', (m) => fahrenheit(m.temperatureC)),
    row('RH %', (m) => String(Math.round(100 * m.relativeHumidity))),
    row('dew °F', (m) => fahrenheit(m.dewPointC)),
    row('wood %', (m) => String(Math.round(100 * m.woodMoistureSurface))),
    row('core %', (m) => String(Math.round(100 * m.woodMoistureCore))),
    ...(one.waterRemovedKg > 0
      ? [
          row('liters', (m) => String(Math.round(m.waterRemovedKg))),
          row('kWh', (m) => String(Math.round(m.energyKWh))),
          row('hours run', (m) => String(Math.round(m.runHours))),
        ]
      : []),
  ];
}

function wetHours({ condensationHours: hours }: Case): string {
  const wet = [
    ['liner', hours.liner],
    ['walls', Math.max(hours.wallAboveGrade, hours.wallBelowGrade)],
    ['ducts', hours.ducts],
    ['wood', Math.max(hours.joists, hours.girder, hours.sill)],
  ] as const;
  const shown = wet.filter(([, h]) => h >= 1).map(([where, h]) => `${where} ${Math.round(h)}`);
  return shown.length === 0 ? 'none' : shown.join(', ');
}

/** Tables by the month of the space as found and as it ends, and the hours in which water condenses. */
export function monthLines({ cases }: Season, columns: number): string[] {
  const ends = cases.filter((c) => c.kind === 'as-found' || c.kind === 'all-repairs');
  const wet = ends.map((c) => `${c.name}: ${wetHours(c)}`).join('; ');
  return [...ends.flatMap(monthTable), '', ...wrap(`Hours in which water condenses: ${wet}.`, columns)];
}

/** How each failure went. */
export function failureLines({ cases }: Season, columns: number): string[] {
  return cases.flatMap(({ failure, name }) => {
    if (failure === undefined) return [];
    const after = [
      ['60 %', failure.hoursUntilAbove60],
      ['70 %', failure.hoursUntilAbove70],
      ['80 %', failure.hoursUntilAbove80],
    ] as const;
    const passed = after.filter(([, hours]) => hours !== undefined);
    const reached =
      passed.length === 0
        ? 'stays at 60 % or below'
        : `passes ${passed.map(([limit, hours]) => `${limit} after ${hours} hours`).join(', ')}`;
    const back =
      failure.daysToRecover === undefined
        ? ''
        : `; back to usual ${failure.daysToRecover.toFixed(1)} days after its end`;
    const text = `${name}, from ${failure.from}: ${reached}; at its highest ${percent(failure.highestRelativeHumidity)} in place of ${percent(failure.usualRelativeHumidity)}${back}.`;
    return wrap(text, columns, '  - ');
  });
}

const WAY = { up: 'up into the house', down: 'down from the house', none: 'hardly any' } as const;

/** Outdoor air and the way of the air through the floor, by quarters. */
export function airLines({ airExchange }: Season, columns: number): string[] {
  return airExchange.flatMap(({ name, quarters }) => {
    const rows = quarters.map((q): [string, ...string[]] => [
      q.months,
      q.airChangesPerHour.toFixed(2),
      percent(q.floorShare),
      WAY[q.floorDirection],
    ]);
    return [
      '',
      ...wrap(`Air, ${name}: changes per hour; share of the house air that came through the floor`, columns),
      ...table(['changes/h', 'floor share', 'air through the floor'], rows, columns),
    ];
  });
}

/** Machines against the most humid day, and the ways of the code beside it. */
export function machineLines({ sizing }: Season, columns: number): string[] {
  const rows = sizing.machines.map((m): [string, ...string[]] => [
    m.name,
    shownBoth(m.capacityHereKgPerDay, 'massFlow'),
    percent(m.steadyRunFraction),
    percent(m.pullDownRunFraction),
    m.holdsSteady ? 'yes' : 'no',
  ]);
  const options = sizing.codeOptions.map((o): [string, ...string[]] => [
    o.title,
    o.removesKgPerDay === undefined ? 'not known' : shownBoth(o.removesKgPerDay, 'massFlow'),
    o.coversLoad === undefined ? 'not known' : o.coversLoad ? 'yes' : 'no',
  ]);
  const warnings = sizing.codeOptions.flatMap((o) => o.warnings.map((w) => w.message));
  return [
    ...(rows.length === 0
      ? []
      : ['', ...table(['removes there', 'runs', 'at first', 'holds it'], rows, columns)]),
    '',
    ...wrap('Ways of the residential code to keep a closed space dry, against the same load', columns),
    ...table(['removes', 'covers it'], options, columns),
    ...[...new Set(warnings)].flatMap((text) => wrap(text, columns, '  - ')),
  ];
}

/** What each repair changes, alone and on top of all others. */
export function effectLines({ ranking }: Season, columns: number): string[] {
  if (ranking === undefined || ranking.effects.length === 0) return [];
  const cells = (c: Change): string[] => [
    signed(c.daysAbove80),
    signed(c.peakMoldIndex, 1),
    signed(100 * c.peakWoodMoisture, 1),
    signed(c.yearlyCostCents / 100),
  ];
  const rows = ranking.effects.map((e): [string, ...string[]] => [
    e.title,
    ...cells(e.alone),
    ...cells(e.last),
  ]);
  return [
    '',
    ...wrap(
      'What each repair changes, done alone and (right half) on top of all others: days above 80 %, mold index, points of wood moisture, dollars a year',
      columns,
    ),
    ...table(['days', 'mold', 'wood', '$', '| days', 'mold', 'wood', '$'], rows, columns),
  ];
}
