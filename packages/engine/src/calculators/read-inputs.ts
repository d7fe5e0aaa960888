import type { Dimension } from '../units/dimensions.ts';
import { canonicalUnit } from '../units/dimensions.ts';
import { formatQuantity } from '../units/format-quantity.ts';
import { parseQuantity } from '../units/parse-quantity.ts';
import type { Calculator, CalculatorInput, CalculatorIssue, QuantityInput } from './calculator.ts';

/** Inputs as they were given: typed texts with units, or numbers in canonical units. */
export type RawInputs = Readonly<Record<string, string | number>>;

/** Values by key, or everything that is wrong with them. */
export type ReadInputs =
  | { readonly ok: true; readonly values: ReadonlyMap<string, number | string> }
  | { readonly ok: false; readonly issues: readonly CalculatorIssue[] };

/** Reads and checks all inputs of a calculator and collects every issue. Defaults fill what was left out. */
export function readInputs(calculator: Calculator, raw: RawInputs): ReadInputs {
  const keys = calculator.inputs.map((input) => input.key);
  const issues: CalculatorIssue[] = Object.keys(raw)
    .filter((key) => !keys.includes(key))
    .map((key) => ({
      path: key,
      found: `an input "${key}"`,
      expected: `one of the inputs ${keys.join(', ')}`,
    }));
  const values = new Map<string, number | string>();
  for (const input of calculator.inputs) {
    const given = Object.hasOwn(raw, input.key) ? raw[input.key] : undefined;
    const read = given === undefined ? absent(input) : readOne(input, given);
    if (typeof read === 'object') issues.push(read);
    else values.set(input.key, read);
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, values };
}

function absent(input: CalculatorInput): number | string | CalculatorIssue {
  if (input.dimension !== 'text' && input.default !== undefined) return input.default;
  return { path: input.key, found: 'nothing', expected: expectedOf(input) };
}

function readOne(input: CalculatorInput, given: string | number): number | string | CalculatorIssue {
  const found = typeof given === 'number' ? String(given) : `"${given}"`;
  if (input.dimension === 'text') return String(given);
  if (input.dimension === 'choice') {
    const chosen = String(given).trim();
    return input.choices.includes(chosen) ? chosen : { path: input.key, found, expected: expectedOf(input) };
  }
  let value: number;
  if (typeof given === 'number') {
    value = given;
  } else {
    const parsed = parseQuantity(given, input.dimension);
    if (!parsed.ok) {
      return { path: input.key, found, expected: `${expectedOf(input)}: ${parsed.problem}; ${parsed.hint}` };
    }
    value = parsed.value;
  }
  if (!(value >= input.min && value <= input.max)) {
    const unit = typeof given === 'number' ? ` ${canonicalUnit(input.dimension)}` : '';
    return { path: input.key, found: `${found}${unit}`, expected: expectedOf(input) };
  }
  return value;
}

function expectedOf(input: CalculatorInput): string {
  if (input.dimension === 'text') return input.title;
  if (input.dimension === 'choice') return `${input.title}, one of ${input.choices.join(', ')}`;
  const us = range(input, 'us');
  const si = range(input, 'si');
  return `${input.title} from ${us}${si === us ? '' : ` (${si})`}`;
}

function range(
  { min, max, dimension }: QuantityInput & { dimension: Dimension },
  system: 'us' | 'si',
): string {
  return `${formatQuantity(min, dimension, system)} to ${formatQuantity(max, dimension, system)}`;
}
