import type { Origin } from './origin.ts';

/** A sample that a judgement rests on. */
export interface EvidenceUsed {
  readonly value: number | boolean;
  readonly unit: string;
  readonly assumed: boolean;
  readonly origin: Origin;
}
