import type { FieldChange } from './comparison.ts';

/** Ends of field names that tell a unit, with how their values read. */
const UNITS: readonly (readonly [RegExp, (value: number) => string])[] = [
  [/M2$/, (v) => `${v.toFixed(2)} m²`],
  [/M3PerS$/, (v) => `${(1000 * v).toFixed(0)} L/s`],
  [/KgPerDay$/, (v) => `${v.toFixed(1)} kg/day`],
  [/KgPerM2SPa$/, (v) => `${(1e12 * v).toPrecision(3)} ng/(s·m²·Pa)`],
  [/LitersPerKWh$/, (v) => `${v.toFixed(2)} L/kWh`],
  [/Deg$/, (v) => `${v.toFixed(0)}°`],
  [/Rsi$/, (v) => `${v.toFixed(2)} m²·K/W`],
  [/W$/, (v) => `${v.toFixed(0)} W`],
  [/M$/, (v) => `${v.toFixed(2)} m`],
];

const SHARES = new Set(['openFraction', 'setRelativeHumidity', 'runShare']);

function unitOf(field: string): (typeof UNITS)[number] | undefined {
  return UNITS.find(([end]) => end.test(field));
}

/** A field as people call it: `wrapHeightM` is `wrap height`. */
export function fieldWords(field: string): string {
  const last = field.slice(field.lastIndexOf('.') + 1);
  const unit = unitOf(last);
  const bare = unit === undefined ? last : last.replace(unit[0], '');
  return bare.replace(/([a-z0-9])([A-Z])/g, '$1 $2').toLowerCase();
}

function valueWords(field: string, value: FieldChange['before']): string {
  if (value === undefined) return 'not noted';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value.replaceAll('-', ' ');
  const last = field.slice(field.lastIndexOf('.') + 1);
  if (SHARES.has(last)) return `${Math.round(100 * value)} %`;
  return unitOf(last)?.[1](value) ?? `${Number(value.toPrecision(4))}`;
}

/** What is not as it was, one sentence: `pier 3: wrap height 0.00 m, now 0.20 m.` */
export function changeWords(name: string, fields: readonly FieldChange[]): string {
  const parts = fields.map(
    (f) => `${fieldWords(f.field)} ${valueWords(f.field, f.before)}, now ${valueWords(f.field, f.after)}`,
  );
  return `${name}: ${parts.join('; ')}.`;
}
