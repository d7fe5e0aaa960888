import { convert } from '../units/convert.ts';
import type { Criterion } from './criterion.ts';
import type { QuantityUnit } from './quantity.ts';

const WORDS = {
  '>=': 'at least',
  '>': 'more than',
  '<=': 'at most',
  '<': 'less than',
  '=': 'exactly',
} as const;

/** The limit of a criterion in words with US and with SI units, e.g. "at least 6 in" and "at least 152 mm". */
export function limitText(criterion: Pick<Criterion, 'comparison' | 'limit'>): {
  readonly us: string;
  readonly si: string;
} {
  const { comparison, limit } = criterion;
  if (comparison === 'yes' || comparison === 'no') return { us: comparison, si: comparison };
  const words = comparison === 'within' ? 'within' : WORDS[comparison];
  return { us: `${words} ${limit?.us}`, si: `${words} ${limit?.si}` };
}

/** Trade units that a limit may be written in, each with its count per unit that values are kept in. */
const TRADE_UNITS: Partial<Record<QuantityUnit, Readonly<Record<string, number>>>> = {
  m: { in: convert(1, 'm', 'in'), ft: convert(1, 'm', 'ft'), mil: convert(1, 'm', 'mil') },
  'm²': { 'ft²': convert(1, 'm2', 'ft2') },
  'ng/(s·m²·Pa)': { perm: convert(1, 'ng/(s m2 Pa)', 'perm') },
  'Bq/m³': { 'pCi/L': convert(1, 'Bq/m3', 'pCi/L') },
};

/** At most four digits, no trailing zeros. */
function short(value: number): string {
  return String(Number(value.toPrecision(4)));
}

/** A share in the manner of its limit: percent, points, one part in so many, rise per length. */
function shareText(value: number, us: string): string {
  if (us.endsWith('%') || us.endsWith('in 10 ft')) return `${short(value * 100)} %`;
  if (us.endsWith('points')) return `${short(value * 100)} points`;
  if (us.endsWith('in per ft')) return `${short(value * 1000)} mm/m`;
  return us.startsWith('1/') && value > 0 ? `1/${short(1 / value)}` : short(value);
}

function siText(value: number, unit: QuantityUnit, us: string): string {
  if (unit === 'fraction') return shareText(value, us);
  if (unit === 'm' && Math.abs(value) < 1) return `${short(value * 1000)} mm`;
  return unit === 'count' || unit === 'index' ? short(value) : `${short(value)} ${unit}`;
}

/**
 * A measured value as the sentence of a judgement shows it: in the trade unit of the limit, where it has one, and in
 * metric units, to four digits, so that a near miss does not look like the limit itself.
 */
export function valueText(value: number, criterion: Pick<Criterion, 'unit' | 'limit'>): string {
  const us = criterion.limit?.us ?? '';
  const si = siText(value, criterion.unit, us);
  const written = us.slice(us.lastIndexOf(' ') + 1);
  const perUnit = TRADE_UNITS[criterion.unit]?.[written];
  return perUnit === undefined ? si : `${short(value * perUnit)} ${written} (${si})`;
}
