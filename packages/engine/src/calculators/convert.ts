import { EngineError } from '../numerics/engine-error.ts';
import { convert } from '../units/convert.ts';
import { unitsNamed } from '../units/find-unit.ts';
import { parseLength } from '../units/length.ts';
import { metersFromNanometers } from '../units/length-format.ts';
import { numberWithUnit } from '../units/parse-quantity.ts';
import { unitsSources } from '../units/sources.ts';
import type { Calculator, CalculatorOutcome } from './calculator.ts';

/** A value in another unit. */
export const convertCalculator: Calculator = {
  name: 'convert',
  title: 'Unit conversion',
  answers: 'What is this value in another unit?',
  inputs: [
    { key: 'value', title: `a number with its unit, e.g. 50cfm, 72F or 12' 6 1/2"`, dimension: 'text' },
    { key: 'to', title: 'the unit wanted, e.g. L/s', dimension: 'text' },
  ],
  results: [{ key: 'value', title: 'converted value', dimension: 'any' }],
  sources: [unitsSources.nistSp811, unitsSources.ashraeWaterColumn, unitsSources.astmE96Perm],
  run(inputs): CalculatorOutcome {
    const typed = inputs.text('value');
    const to = inputs.text('to').trim();
    const from = startingValue(typed);
    if ('expected' in from) {
      return { issues: [{ path: 'value', found: `"${typed}"`, expected: from.expected }] };
    }
    try {
      const value = convert(from.number, from.unit, to);
      const shared = unitsNamed(to).find((found) =>
        unitsNamed(from.unit).some(({ dimension }) => dimension === found.dimension),
      );
      return { results: { value }, units: { value: shared?.unit.name ?? to }, notices: [] };
    } catch (error) {
      if (!(error instanceof EngineError)) throw error;
      return { issues: [{ path: 'to', found: `"${to}"`, expected: error.message }] };
    }
  },
};

/** A number and a known unit; feet, inches and fractions come as meters. */
function startingValue(typed: string): { number: number; unit: string } | { expected: string } {
  const read = numberWithUnit(typed);
  if (read.ok && unitsNamed(read.unit).length > 0) return read;
  const length = parseLength(typed);
  if (length.ok) return { number: metersFromNanometers(length.nanometers), unit: 'm' };
  if (!read.ok) return { expected: `${read.hint} (${read.problem})` };
  const missing = read.unit === '' ? 'it has no unit' : `"${read.unit}" is not a known unit`;
  return { expected: `a number with its unit, e.g. 50cfm or 72F; ${missing}` };
}
