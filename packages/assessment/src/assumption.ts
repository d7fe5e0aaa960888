/** A value that nobody measured, with the range it may have and why it was taken. */
export interface Assumption {
  readonly key: string;
  readonly title: string;
  readonly value: number | string | boolean;
  readonly unit: string;
  readonly low?: number;
  readonly high?: number;
  /** Why this value, and what would replace it. */
  readonly why: string;
}
