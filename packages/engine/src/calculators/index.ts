export type {
  Calculator,
  CalculatorInput,
  CalculatorIssue,
  CalculatorResult,
  ChoiceInput,
  QuantityInput,
  ResultValue,
  TextInput,
} from './calculator.ts';
export type { RawInputs } from './read-inputs.ts';
export { calculators, findCalculator } from './registry.ts';
export type { AnswerValue, CalculatorAnswer, CalculatorRun } from './run-calculator.ts';
export { runCalculator } from './run-calculator.ts';
