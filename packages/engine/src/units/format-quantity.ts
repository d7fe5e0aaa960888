import { EngineError } from '../numerics/engine-error.ts';
import { type Dimension, dimensions } from './dimensions.ts';
import { unitOf } from './find-unit.ts';
import { formatFeetInches, formatMetric } from './length-format.ts';
import { fromCanonical, type Unit } from './unit.ts';

/** Trade units of the United States, or metric ones. */
export type UnitSystem = 'us' | 'si';

/**
 * A value as people of one system write it, e.g. `72 °F`, `65%`, `50 cfm`, `12' 6 1/2"`. `parseQuantity` reads it back.
 *
 * @param value in the canonical unit of the dimension
 * @param digits decimals; without it the usual number for the unit. A length without `digits` is shown as on a tape
 *   (1/16 in, or 1 mm), with `digits` in decimal feet or meters
 * @throws EngineError `not-finite` for a value that is no number, `out-of-range` for digits outside 0..12
 */
export function formatQuantity(
  value: number,
  dimension: Dimension,
  system: UnitSystem,
  digits?: number,
): string {
  const definition = dimensions[dimension];
  if (!Number.isFinite(value)) {
    throw new EngineError('not-finite', `a ${definition.title} to be shown must be a number; got ${value}`);
  }
  if (digits !== undefined && !(Number.isInteger(digits) && digits >= 0 && digits <= 12)) {
    throw new EngineError('out-of-range', `decimals must be a whole number from 0 to 12; got ${digits}`);
  }
  if (dimension === 'length' && digits === undefined) {
    return system === 'us' ? formatFeetInches(value) : formatMetric(value);
  }
  const shown = definition[system];
  const unit = unitOf(dimension, shown.unit) as Unit;
  const rounded = fromCanonical(unit, value).toFixed(digits ?? shown.digits);
  const number = Number(rounded) === 0 ? rounded.replace('-', '') : rounded;
  if (unit.symbol === '') return number;
  return unit.symbol === '%' || unit.symbol === '°' ? `${number}${unit.symbol}` : `${number} ${unit.symbol}`;
}
