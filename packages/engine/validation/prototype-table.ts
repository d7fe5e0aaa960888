import { runSeason } from '../src/season/run.ts';
import type { SeasonResult } from '../src/season/season-result.ts';
import { prototypeCases, prototypeWeather } from '../test/season/prototype-year.ts';
import { fixed } from './figures.ts';

/** A row of the prototype year: monthly relative humidity in whole percent, wood surface, yearly sums. */
interface PrototypeRow {
  readonly name: keyof ReturnType<typeof prototypeCases>;
  readonly what: string;
  readonly monthlyPercent: readonly number[];
  /** Lowest and highest surface moisture of the wood, %. */
  readonly wood?: readonly [number, number];
  readonly liters?: number;
  readonly kWh?: number;
}

/** What the rough prototype of the same equations gave (computed separately, whole percent). */
const ROWS: readonly PrototypeRow[] = [
  {
    name: 'a',
    what: 'vented 3 air changes, bare soil',
    monthlyPercent: [70, 69, 71, 75, 81, 87, 90, 90, 85, 80, 75, 72],
    wood: [12.9, 20.4],
  },
  {
    name: 'b',
    what: 'vented 3 air changes, sheet with 2 % open',
    monthlyPercent: [40, 41, 47, 57, 69, 81, 85, 84, 74, 61, 50, 44],
    wood: [7.9, 17.9],
  },
  {
    name: 'b2',
    what: 'as b, floor insulated to 0.35 W/(m²·K)',
    monthlyPercent: [49, 50, 56, 65, 76, 85, 88, 85, 77, 65, 55, 51],
    wood: [9.2, 18.8],
  },
  {
    name: 'c',
    what: 'closed, sheet with 0.5 % open',
    monthlyPercent: [47, 44, 45, 50, 57, 66, 73, 78, 78, 74, 66, 56],
    wood: [8.4, 15.3],
  },
  {
    name: 'c2',
    what: 'closed, sheet with 5 % open',
    monthlyPercent: [70, 67, 68, 73, 78, 83, 87, 89, 89, 87, 82, 76],
    wood: [12.7, 19.9],
  },
  {
    name: 'd',
    what: 'as c with supply air, 1 cfm for 30 ft² at 35 % of the time',
    monthlyPercent: [45, 42, 44, 49, 57, 63, 65, 66, 65, 64, 59, 51],
    wood: [8.1, 12.3],
  },
  {
    name: 'e',
    what: 'as c with a dehumidifier of 33 L/day at 55 %',
    monthlyPercent: [43, 41, 43, 49, 55, 55, 55, 55, 55, 55, 53, 47],
    wood: [7.9, 10.2],
    liters: 233,
    kWh: 144,
  },
  {
    name: 'f',
    what: 'closed, sheet with 10 % open, the same dehumidifier',
    monthlyPercent: [55, 55, 55, 55, 55, 55, 55, 55, 55, 55, 55, 55],
    liters: 2419,
    kWh: 1542,
  },
];

/** The prototype year beside ours, as lines of a page. */
export function prototypeTable(): string[] {
  const cases = prototypeCases();
  const results = runSeason(
    ROWS.map(({ name }) => cases[name]),
    prototypeWeather(),
    { hourly: true },
  );
  const pairs = ROWS.map((row, i) => [row, results[i]!] as const);
  return [
    '| case | | Jan | Feb | Mar | Apr | May | Jun | Jul | Aug | Sep | Oct | Nov | Dec | largest difference |',
    '|---|---|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|--:|',
    ...pairs.flatMap(([row, result]) => humidityLines(row, result)),
    '',
    '| case | wood surface, lowest and highest, prototype | ours | water removed, prototype | ours | energy, prototype | ours |',
    '|---|---|---|--:|--:|--:|--:|',
    ...pairs.map(([row, result]) => sumLine(row, result)),
  ];
}

function humidityLines({ name, what, monthlyPercent }: PrototypeRow, { months }: SeasonResult): string[] {
  const ours = months.map((month) => 100 * month.relativeHumidity);
  const off = Math.max(...ours.map((rh, m) => Math.abs(rh - monthlyPercent[m]!)));
  return [
    `| ${name} | prototype: ${what} | ${monthlyPercent.join(' | ')} | |`,
    `| | ours | ${ours.map((rh) => fixed(rh, 1)).join(' | ')} | ${fixed(off, 1)} points |`,
  ];
}

function sumLine({ name, wood, liters, kWh }: PrototypeRow, result: SeasonResult): string {
  const surface = result.hourly!.woodMoistureSurface;
  const ours = `${fixed(100 * Math.min(...surface), 1)} to ${fixed(100 * Math.max(...surface), 1)} %`;
  const shown = (value: number | undefined, unit: string) => (value === undefined ? '' : `${value} ${unit}`);
  return [
    `| ${name}`,
    wood === undefined ? 'not given' : `${fixed(wood[0], 1)} to ${fixed(wood[1], 1)} %`,
    ours,
    shown(liters, 'L'),
    liters === undefined ? '' : `${fixed(result.waterRemovedKg, 0)} L`,
    shown(kWh, 'kWh'),
    kWh === undefined ? '' : `${fixed(result.energyKWh, 0)} kWh`,
  ]
    .join(' | ')
    .concat(' |');
}
