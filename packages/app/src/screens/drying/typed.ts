import { units } from '@undercroft/engine';
import { parseMoney } from '../../parts/measure.ts';
import type { Typed } from './draft-field.tsx';

const NONE: Typed = { ok: true, value: null };
const NOT: Typed = { ok: false };

/** A price in dollars as cents; nothing for none. */
export function typedPrice(text: string): Typed {
  if (text === '') return NONE;
  const cents = parseMoney(text);
  return cents === undefined ? NOT : { ok: true, value: cents };
}

/** Words; nothing for none. */
export function typedWords(text: string): Typed {
  return text === '' ? NONE : { ok: true, value: text };
}

/** Words that must be there. */
export function typedName(text: string): Typed {
  return text === '' ? NOT : { ok: true, value: text };
}

/** A plain number within limits; nothing for none where it may be missing. */
export function typedNumber(text: string, low: number, high: number, mayBeMissing: boolean): Typed {
  if (text === '') return mayBeMissing ? NONE : NOT;
  const value = /^\d*\.?\d+$/.test(text) ? Number(text) : Number.NaN;
  return value >= low && value <= high ? { ok: true, value } : NOT;
}

/** A humidity in percent as a fraction. A machine holds 20 to 95 %. */
export function typedHumidity(text: string): Typed {
  const percent = typedNumber(text.replace(/\s*%$/, ''), 20, 95, false);
  return percent.ok ? { ok: true, value: Number(((percent.value as number) / 100).toFixed(4)) } : NOT;
}

/** Water per day in kilograms; liters are kilograms, and a number alone has the unit that the person set. */
export function typedCapacity(text: string, system: units.UnitSystem): Typed {
  const bare = /^\d*\.?\d+$/.test(text);
  const liters = /^(\d*\.?\d+)\s*(l|liters?|litros?)(\/(day|d[ií]a)|\s*al d[ií]a)?$/i.exec(text);
  const written = liters !== null ? `${liters[1]} kg/day` : bare ? `${text} ${UNIT[system]}` : text;
  const read = units.parseQuantity(
    written.replace(/d[ií]a$/i, 'day').replace(/pintas?/i, 'pint'),
    'massFlow',
  );
  return read.ok && read.value > 0 && read.value <= 1000 ? { ok: true, value: read.value } : NOT;
}

const UNIT = { us: 'pint/day', si: 'kg/day' } as const;
