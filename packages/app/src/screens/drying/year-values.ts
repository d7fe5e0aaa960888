import type { SeasonCaseResult } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import type { SeriesName, YearSeries } from '../../worker/api.ts';

/** What of a year is drawn, each on a chart of its own. */
export const QUANTITIES = ['humidity', 'temperature', 'wood', 'mold', 'water', 'energy'] as const;
export type Quantity = (typeof QUANTITIES)[number];

interface QuantityRule {
  /** One line for each state of the space and each of these; the second is drawn finer. */
  readonly series: readonly SeriesName[];
  /** A value as it is drawn in a system of units. */
  readonly shown: (value: number, system: units.UnitSystem) => number;
  /** Unit at the axis and in the head of the table. */
  readonly unit: (system: units.UnitSystem) => string;
  readonly digits: number;
  /** Limits that are drawn, as shown. */
  readonly limits: readonly number[];
  /** Lowest and highest value that the axis shows at least, as shown. */
  readonly range: (system: units.UnitSystem) => readonly [number, number];
}

const percent = (value: number) => 100 * value;
const zeroUp = (most: number) => (): readonly [number, number] => [0, most];

export const QUANTITY_RULES: Readonly<Record<Quantity, QuantityRule>> = {
  humidity: {
    series: ['relativeHumidity'],
    shown: percent,
    unit: () => '%',
    digits: 0,
    limits: [60, 70, 80],
    range: () => [30, 100],
  },
  temperature: {
    series: ['temperatureC', 'dewPointC'],
    shown: (value, system) => (system === 'us' ? units.convert(value, 'C', 'F') : value),
    unit: (system) => (system === 'us' ? '°F' : '°C'),
    digits: 0,
    limits: [],
    range: (system) => (system === 'us' ? [40, 80] : [5, 25]),
  },
  wood: {
    series: ['woodMoistureSurface'],
    shown: percent,
    unit: () => '%',
    digits: 1,
    limits: [16, 20],
    range: () => [6, 22],
  },
  mold: {
    series: ['moldIndex'],
    shown: (value) => value,
    unit: () => '',
    digits: 1,
    limits: [3],
    range: zeroUp(3.5),
  },
  water: {
    series: ['waterRemovedKg'],
    shown: (value, system) => (system === 'us' ? units.convert(value, 'kg/day', 'pint/day') : value),
    unit: (system) => (system === 'us' ? 'pint' : 'L'),
    digits: 1,
    limits: [],
    range: zeroUp(1),
  },
  energy: {
    series: ['energyKWh'],
    shown: (value) => value,
    unit: () => 'kWh',
    digits: 1,
    limits: [],
    range: zeroUp(1),
  },
};

/** Days of the months of a year without a leap day, January first. */
export const MONTH_DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Months of a case as a series of twelve values; water and energy are means of a day. */
export function monthSeries({ kind, months }: SeasonCaseResult): YearSeries {
  const of = (pick: (month: SeasonCaseResult['months'][number], days: number) => number) =>
    months.map((month, i) => pick(month, MONTH_DAYS[i]));
  return {
    kind: kind === 'all-repairs' ? 'all-repairs' : 'as-found',
    values: {
      relativeHumidity: of((m) => m.relativeHumidity),
      temperatureC: of((m) => m.temperatureC),
      dewPointC: of((m) => m.dewPointC),
      woodMoistureSurface: of((m) => m.woodMoistureSurface),
      moldIndex: of((m) => m.moldIndex),
      waterRemovedKg: of((m, days) => m.waterRemovedKg / days),
      energyKWh: of((m, days) => m.energyKWh / days),
    },
  };
}
