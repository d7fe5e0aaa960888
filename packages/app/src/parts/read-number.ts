import { units } from '@undercroft/engine';

/** The unit that a number without one has, as it is printed. */
export function unitSymbol(dimension: units.Dimension, system: units.UnitSystem): string {
  const { units: known, [system]: shown } = units.dimensions[dimension];
  return known.find((unit) => unit.name === shown.unit)?.symbol ?? '';
}

/**
 * Reads a number as typed on a pad, in the unit that people of the system use for it; a text with a unit of its own is
 * taken in that unit. Null for what is no number of this kind, and for nothing.
 */
export function readNumber(
  typed: string,
  dimension: units.Dimension,
  system: units.UnitSystem,
): number | null {
  const text = typed.trim().replace(/^−/, '-');
  if (text === '') return null;
  const hasUnit = !/^[-+]?[\d.,]*$/.test(text);
  const { unit } = units.dimensions[dimension][system];
  const read = units.parseQuantity(hasUnit || unit === '1' ? text : `${text} ${unit}`, dimension);
  return read.ok ? read.value : null;
}

/** The text after a key of the number pad was pressed. A key that makes no sense here changes nothing. */
export function pressNumberKey(typed: string, key: string): string {
  if (key === 'back') return typed.slice(0, -1);
  if (key === '±') return typed.startsWith('-') ? typed.slice(1) : `-${typed}`;
  if (key === '.')
    return typed.includes('.') ? typed : `${typed === '' || typed === '-' ? `${typed}0` : typed}.`;
  return /^-?0$/.test(typed) ? typed.replace('0', key) : typed + key;
}
