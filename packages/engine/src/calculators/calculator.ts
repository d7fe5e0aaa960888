import type { Notice } from '../numerics/notice.ts';
import type { Source } from '../sources/source.ts';
import type { Dimension } from '../units/dimensions.ts';

interface NamedInput {
  /** camelCase, unique within the calculator. */
  readonly key: string;
  /** In plain words, as a form or an error names it. */
  readonly title: string;
}

/** A number with a unit. Bounds and default are in the canonical unit of the dimension; without default it is required. */
export interface QuantityInput extends NamedInput {
  readonly dimension: Dimension;
  readonly min: number;
  readonly max: number;
  readonly default?: number;
}

/** One of a list of words. Without default it is required. */
export interface ChoiceInput extends NamedInput {
  readonly dimension: 'choice';
  readonly choices: readonly string[];
  readonly default?: string;
}

/** A text that the calculator reads itself. Always required. */
export interface TextInput extends NamedInput {
  readonly dimension: 'text';
}

/** What a calculator asks for. */
export type CalculatorInput = QuantityInput | ChoiceInput | TextInput;

/**
 * What a calculator answers: a quantity in its canonical unit, a yes or no (`flag`), or a number whose unit the inputs
 * decide (`any`).
 */
export interface CalculatorResult {
  readonly key: string;
  readonly title: string;
  readonly dimension: Dimension | 'flag' | 'any';
}

/** Checked inputs: quantities in canonical units, choices among their words. */
export interface InputValues {
  number(key: string): number;
  text(key: string): string;
}

/** Something wrong with what was given. */
export interface CalculatorIssue {
  /** Key of the input, `name` for the calculator's name, `inputs` for values that do not go together. */
  readonly path: string;
  /** What was given. */
  readonly found: string;
  /** What would be accepted. */
  readonly expected: string;
}

/**
 * A value of an answer. A quantity that has no number comes as a word with a notice: `never`, or `none` for the dew point
 * of dry air.
 */
export type ResultValue = number | boolean | string;

/** What a run gives: results by key, or what is wrong with inputs that only the calculator can judge. */
export type CalculatorOutcome =
  | {
      readonly results: Readonly<Record<string, ResultValue>>;
      readonly notices: readonly Notice[];
      /** Units of results whose unit the inputs decide. */
      readonly units?: Readonly<Record<string, string>>;
    }
  | { readonly issues: readonly CalculatorIssue[] };

/** One small calculation of the trade that can be asked for by name. */
export interface Calculator {
  /** kebab-case. */
  readonly name: string;
  readonly title: string;
  /** The question it answers, one sentence. */
  readonly answers: string;
  readonly inputs: readonly CalculatorInput[];
  readonly results: readonly CalculatorResult[];
  readonly sources: readonly Source[];
  /** Pure; may throw an EngineError where values do not go together, which `runCalculator` turns into an issue. */
  run(inputs: InputValues): CalculatorOutcome;
}
