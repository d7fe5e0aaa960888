import { units } from '@undercroft/engine';

/** Fractions of an inch as on a tape, and the key that adds a sixteenth. */
export const FRACTIONS = ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8', '1/16', '+1/16'] as const;

export const METRIC_UNITS = ['mm', 'cm', 'm'] as const;

const SIXTEENTH_NM = 1_587_500;

/** The text after a key of the pad was pressed. A key that makes no sense here changes nothing. */
export function pressKey(typed: string, key: string): string {
  if (key === 'back') return typed.replace(/( ?\d+\/\d+"?|.)\s*$/, '');
  if (key === '+1/16') {
    const read = units.parseLength(typed === '' ? '0"' : typed, 'in');
    return read.ok
      ? units.formatFeetInches(units.metersFromNanometers(read.nanometers + SIXTEENTH_NM))
      : typed;
  }
  if (key.includes('/')) {
    const whole = typed.replace(/\s*\d+\/\d+"?\s*$/, '').replace(/"\s*$/, '');
    return `${whole}${whole === '' || whole.endsWith(' ') ? '' : ' '}${key}"`;
  }
  if (key === 'ft') return /\d$/.test(typed) && !typed.includes("'") ? `${typed}' ` : typed;
  if (key === 'in') return /\d$/.test(typed) ? `${typed}"` : typed;
  if ((METRIC_UNITS as readonly string[]).includes(key)) return /\d$/.test(typed) ? `${typed} ${key}` : typed;
  // A digit after a finished length starts a new one.
  if (/("|m)\s*$/.test(typed)) return key;
  return typed + key;
}
