import { EngineError } from '../numerics/engine-error.ts';
import type { Notice } from '../numerics/notice.ts';
import type { Source } from '../sources/source.ts';
import { canonicalUnit } from '../units/dimensions.ts';
import type { Calculator, CalculatorIssue, InputValues, ResultValue } from './calculator.ts';
import { type RawInputs, readInputs } from './read-inputs.ts';
import { calculators, findCalculator } from './registry.ts';

/** A value with the name of its unit; choices, texts and flags have an empty one. */
export interface AnswerValue {
  readonly value: ResultValue;
  readonly unit: string;
}

/** The whole answer of a calculator, plain data. */
export interface CalculatorAnswer {
  readonly name: string;
  /** Every input as it was used, defaults included, in canonical units. */
  readonly inputs: Readonly<Record<string, AnswerValue>>;
  readonly results: Readonly<Record<string, AnswerValue>>;
  readonly notices: readonly Notice[];
  readonly sources: readonly Source[];
}

/** An answer, or everything that was wrong with the question. */
export type CalculatorRun =
  | { readonly ok: true; readonly answer: CalculatorAnswer }
  | { readonly ok: false; readonly issues: readonly CalculatorIssue[] };

/**
 * Runs a calculator by name. Texts are read with their units (`72F`, `65%`, `12' 6"`), numbers are taken in the
 * canonical unit of the input. Unknown names and keys, missing inputs, unreadable texts and values out of range come back
 * together as issues. Never throws for bad input.
 */
export function runCalculator(name: string, rawInputs: RawInputs): CalculatorRun {
  const calculator = findCalculator(name);
  if (!calculator) {
    const expected = `one of ${calculators.map((known) => known.name).join(', ')}`;
    return { ok: false, issues: [{ path: 'name', found: `"${name}"`, expected }] };
  }
  const read = readInputs(calculator, rawInputs);
  if (!read.ok) return read;
  try {
    return answer(calculator, read.values);
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    return {
      ok: false,
      issues: [{ path: 'inputs', found: 'values that do not go together', expected: error.message }],
    };
  }
}

function answer(calculator: Calculator, values: ReadonlyMap<string, number | string>): CalculatorRun {
  const outcome = calculator.run(inputValues(values));
  if ('issues' in outcome) return { ok: false, issues: outcome.issues };
  const results: Record<string, AnswerValue> = {};
  for (const { key, dimension } of calculator.results) {
    const value = outcome.results[key];
    if (value === undefined) throw new Error(`calculator ${calculator.name} gave no result "${key}"`);
    const plain = typeof value !== 'number' || dimension === 'flag' || dimension === 'any';
    results[key] = { value, unit: outcome.units?.[key] ?? (plain ? '' : canonicalUnit(dimension)) };
  }
  const inputs: Record<string, AnswerValue> = {};
  for (const { key, dimension } of calculator.inputs) {
    const unit = dimension === 'choice' || dimension === 'text' ? '' : canonicalUnit(dimension);
    inputs[key] = { value: values.get(key) as number | string, unit };
  }
  return {
    ok: true,
    answer: {
      name: calculator.name,
      inputs,
      results,
      notices: outcome.notices,
      sources: calculator.sources,
    },
  };
}

function inputValues(values: ReadonlyMap<string, number | string>): InputValues {
  return {
    number: (key) => values.get(key) as number,
    text: (key) => values.get(key) as string,
  };
}
