import { EngineError } from '../numerics/engine-error.ts';
import { dimensionNames, unitNames } from './dimensions.ts';
import { unitsNamed } from './find-unit.ts';
import { fromCanonical, toCanonical } from './unit.ts';

/**
 * A value converted between two units of the same kind of quantity.
 *
 * Where both names fit several kinds, the first in `dimensionNames` counts: `C` and `F` are temperatures, a difference
 * is `K` and `F-difference`. Water flows by volume and by mass convert at 1 kg per liter.
 * @param value in `fromUnit`
 * @throws EngineError `not-finite` for a value that is no number; `bad-input` for an unknown unit or for units of
 *   different kinds, naming the units that are valid
 */
export function convert(value: number, fromUnit: string, toUnit: string): number {
  if (!Number.isFinite(value)) {
    throw new EngineError('not-finite', `the value to convert must be a number; got ${value}`);
  }
  const from = unitsNamed(fromUnit);
  const to = unitsNamed(toUnit);
  if (from.length === 0) throw unknown(fromUnit, dimensionNames.flatMap(unitNames));
  const partners = [...new Set(from.flatMap(({ dimension }) => unitNames(dimension)))];
  if (to.length === 0) throw unknown(toUnit, partners);
  for (const start of from) {
    const end = to.find(({ dimension }) => dimension === start.dimension);
    if (end) return fromCanonical(end.unit, toCanonical(start.unit, value));
  }
  throw new EngineError(
    'bad-input',
    `${fromUnit} cannot be converted to ${toUnit}; it converts to ${partners.join(', ')}`,
  );
}

function unknown(name: string, valid: readonly string[]): EngineError {
  return new EngineError(
    'bad-input',
    `"${name}" is not a known unit here; valid are ${[...new Set(valid)].join(', ')}`,
  );
}
