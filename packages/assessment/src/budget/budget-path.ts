import type { Source } from '@undercroft/engine';
import type { Origin } from '../origin.ts';

/** A figure that goes into a path, with where it came from. */
export interface PathInputShown {
  readonly name: string;
  readonly unit: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** True where nobody measured it. */
  readonly assumed: boolean;
  readonly origin: Origin;
}

/** A figure that the calculation works out on its way. */
export interface PathStep {
  readonly name: string;
  readonly unit: string;
  readonly value: number;
}

/** Water along one path [kg/day]; positive wets the air of the space. */
export interface BudgetPath {
  readonly key: string;
  readonly title: string;
  readonly kgPerDay: number;
  readonly low: number;
  readonly high: number;
  readonly assumed: boolean;
  /** The calculation in words; it gives kg per second unless its figures are per day. */
  readonly formula: string;
  readonly source: Source;
  /** What goes into it, at its middle values. */
  readonly inputs: readonly PathInputShown[];
  /** What is worked out from the inputs and from the air of the space before the formula is. */
  readonly steps: readonly PathStep[];
}
