import type { Assessment } from '@undercroft/assessment';
import type { calculators } from '@undercroft/engine';
import type { Job } from '@undercroft/record';

/** A calculator as a form shows it: everything but the calculation. */
export type CalculatorForm = Omit<calculators.Calculator, 'run'>;

/** What an assessment gives, or why there can be none: texts for a person. */
export type AssessmentOutcome =
  | { readonly ok: true; readonly assessment: Assessment }
  | { readonly ok: false; readonly reason: string };

export interface PlanDrawingOptions {
  readonly widthPx: number;
  readonly ground: 'under' | 'daylight' | 'paper';
}

/** Everything that is computed, away from the thread that draws. */
export interface Compute {
  assess(job: Job): Promise<AssessmentOutcome>;
  planSvg(job: Job, assessment: Assessment, options: PlanDrawingOptions): Promise<string>;
  calculatorForms(): Promise<readonly CalculatorForm[]>;
  calculate(name: string, inputs: calculators.RawInputs): Promise<calculators.CalculatorRun>;
}
