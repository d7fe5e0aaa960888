import { calculators } from '@undercroft/engine';
import type { CalculatorForm } from './api.ts';

/** Every calculator without its calculation, which no message can carry. */
export function forms(): readonly CalculatorForm[] {
  return calculators.calculators.map(({ run: _, ...form }) => form);
}

export const { runCalculator } = calculators;
