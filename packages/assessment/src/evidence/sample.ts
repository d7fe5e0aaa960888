import type { Origin } from '../assessment.ts';

/** One piece of evidence for a criterion: a value of a quantity and where it came from. */
export interface Sample {
  readonly id: string;
  /** The engine's name of the quantity. */
  readonly quantity: string;
  /** In the SI unit of the quantity, or yes and no as true and false. */
  readonly value: number | boolean;
  /** Id of the pier, wall, duct or the like that it is about. */
  readonly item?: string;
  readonly uncertainty?: number;
  /** True where nobody measured it. */
  readonly assumed: boolean;
  readonly origin: Origin;
}
