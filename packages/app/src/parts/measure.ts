import { units } from '@undercroft/engine';
import { LOCALES } from '../text/texts.ts';

/** Units that the assessment gives figures in: the kind of quantity, and the unit's name in the engine. */
const UNITS: Readonly<Record<string, readonly [units.Dimension, unit: string]>> = {
  m: ['length', 'm'],
  'm²': ['area', 'm2'],
  '°C': ['temperature', 'C'],
  K: ['temperatureDifference', 'K'],
  fraction: ['share', 'fraction'],
  Pa: ['pressure', 'Pa'],
  'm³/s': ['flow', 'm3/s'],
  'kg/kg': ['humidityRatio', 'kg/kg'],
  'kg/day': ['massFlow', 'kg/day'],
  'kg/m³': ['density', 'kg/m3'],
  'kg/m²': ['massPerArea', 'kg/m2'],
  'W/(m·K)': ['thermalConductivity', 'W/(m K)'],
  'L/kWh': ['dehumidifierEfficiency', 'L/kWh'],
};

/** Digits that count in a figure that nobody reads off an instrument. */
const DIGITS = 3;

/** Trade units that a unit of calculation has, but in which nobody thinks of it: those stay metric. */
const METRIC: ReadonlySet<string> = new Set(['Pa', 'kg/m³', 'kg/kg', 'W/(m·K)', 'kg/m²']);

function counted(value: number): string {
  if (value === 0) return '0';
  const short = Number(value.toPrecision(DIGITS));
  const size = Math.abs(short);
  return size < 1e-4 || size >= 1e6 ? short.toExponential(DIGITS - 1).replace('e+', 'e') : String(short);
}

/** A figure of the assessment as people of a system of units write it, e.g. `0.5 in`, `72 °F`, `0.0137 kg/m³`. */
export function measureText(value: number, unit: string, system: units.UnitSystem): string {
  if (unit === 'kg/(m²·s·Pa)') {
    const perms = units.convert(value * 1e12, 'ng/(s m2 Pa)', system === 'us' ? 'perm' : 'ng/(s m2 Pa)');
    return `${counted(perms)} ${system === 'us' ? 'perm' : 'ng/(s·m²·Pa)'}`;
  }
  const [dimension, name] = UNITS[unit] ?? [];
  if (dimension === undefined || name === undefined || METRIC.has(unit)) {
    return `${counted(value)} ${unit === '1' || unit === 'index' ? '' : unit}`.trim();
  }
  if (unit === 'm' && Math.abs(value) < 0.02) {
    return system === 'us' ? `${counted(units.convert(value, 'm', 'in'))} in` : `${counted(1000 * value)} mm`;
  }
  if (unit === 'fraction') return `${counted(100 * value)}%`;
  const canonical = units.convert(value, name, units.canonicalUnit(dimension));
  if (unit === 'm' || unit === '°C') return units.formatQuantity(canonical, dimension, system);
  const shown = units.formatQuantity(canonical, dimension, system, 6);
  const [number, ...rest] = shown.split(' ');
  return `${counted(Number(number))} ${rest.join(' ')}`.trim();
}

/** A true minus, no space before a percent sign, and no break between a number and its unit. */
export function typeset(text: string): string {
  return text
    .replace(/(?<![\w.])-(?=\d)/g, '−')
    .replace(/(?<=\d) %/g, '%')
    .replace(/(?<=\d) (?=[°A-Za-z])/g, '\u00a0');
}

/** Water per day; `bare` leaves the day to the words around it. */
export function flowText(kgPerDay: number, system: units.UnitSystem, bare?: 'bare'): string {
  const text = typeset(units.formatQuantity(kgPerDay, 'massFlow', system));
  return bare === undefined ? text : text.replace('/day', '');
}

/** A title in the middle of a sentence. */
export function midSentence(title: string): string {
  return title.charAt(0).toLowerCase() + title.slice(1);
}

/** Money in dollars and cents; a minus stands before the sign. */
export function moneyText(cents: number, language: keyof typeof LOCALES): string {
  return new Intl.NumberFormat(LOCALES[language], {
    style: 'currency',
    currency: 'USD',
    maximumFractionDigits: cents % 100 === 0 ? 0 : 2,
    minimumFractionDigits: cents % 100 === 0 ? 0 : 2,
  }).format(cents / 100);
}

/** Cents of a price as typed: `4150`, `$4,150.50`. Undefined for what is no price; a price has two decimals at most. */
export function parseMoney(typed: string): number | undefined {
  const text = typed.replace(/[$\s]/g, '');
  if (!/^(\d+|\d{1,3}(,\d{3})+)(\.\d{1,2})?$/.test(text)) return undefined;
  const [whole, part = ''] = text.replaceAll(',', '').split('.');
  const cents = Number(whole) * 100 + Number(part.padEnd(2, '0'));
  return Number.isSafeInteger(cents) ? cents : undefined;
}

/** A day or a moment as people write it. A day without a time stays the day that it is, wherever it is read. */
export function shownDay(iso: string, language: keyof typeof LOCALES): string {
  const dayOnly = /^\d{4}-\d{2}-\d{2}$/.test(iso);
  const date = new Date(dayOnly ? `${iso}T12:00:00Z` : iso);
  if (Number.isNaN(date.getTime())) return iso;
  return new Intl.DateTimeFormat(LOCALES[language], {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    ...(dayOnly ? { timeZone: 'UTC' } : {}),
  }).format(date);
}

/** Names of the months in a language, January first. */
export function monthNames(
  language: keyof typeof LOCALES,
  width: 'long' | 'short' | 'narrow',
): readonly string[] {
  const format = new Intl.DateTimeFormat(LOCALES[language], { month: width, timeZone: 'UTC' });
  return Array.from({ length: 12 }, (_, month) => format.format(new Date(Date.UTC(2026, month, 15))));
}
