import type { CriteriaIssue } from './issue.ts';
import type { Quantity } from './quantity.ts';

/** One sample: something measured, answered, or assumed about one quantity. */
export interface Evidence {
  /** Unique among the evidence of a job. */
  readonly id: string;
  /** Key of the quantity. */
  readonly quantity: string;
  /** In the unit of the quantity; true or false where it is answered. */
  readonly value: number | boolean;
  /** Doubt of a number, plus or minus, same unit. Absent means that the reading is taken as it stands. */
  readonly uncertainty?: number;
  /** Id of the pier, wall, seam, vent or other item that was looked at. */
  readonly item?: string;
  readonly who?: string;
  /** Time of the reading, ISO 8601. */
  readonly when?: string;
  /** True for a typical value or estimate that nobody measured: it can never show a criterion as met. */
  readonly assumed?: boolean;
}

/** Samples of one quantity that can be judged, and what was refused. */
export interface SortedEvidence {
  /** Measured or answered, in an order that does not depend on the order given. */
  readonly measured: readonly Evidence[];
  readonly assumed: readonly Evidence[];
  readonly issues: readonly CriteriaIssue[];
}

function problemOf(sample: Evidence, quantity: Quantity): CriteriaIssue | undefined {
  const { id, value, uncertainty } = sample;
  const at = `evidence ${id}, value`;
  if (quantity.unit === 'yes-no') {
    return typeof value === 'boolean'
      ? undefined
      : { path: at, found: String(value), expected: `true or false for ${quantity.key}` };
  }
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return { path: at, found: String(value), expected: `a number in ${quantity.unit} for ${quantity.key}` };
  }
  const [low, high] = quantity.range ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  if (value < low || value > high) {
    return {
      path: at,
      found: String(value),
      expected: `${quantity.key} from ${low} to ${high} in ${quantity.unit}`,
    };
  }
  if (uncertainty !== undefined && !(Number.isFinite(uncertainty) && uncertainty >= 0)) {
    return {
      path: `evidence ${id}, uncertainty`,
      found: String(uncertainty),
      expected: 'a number of 0 or more',
    };
  }
  return undefined;
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function sameSample(a: Evidence, b: Evidence): boolean {
  return (
    a.value === b.value &&
    (a.uncertainty ?? 0) === (b.uncertainty ?? 0) &&
    a.item === b.item &&
    (a.assumed ?? false) === (b.assumed ?? false)
  );
}

/**
 * Sorts the samples of one quantity by id, refuses what cannot be judged, and counts a sample that came twice once.
 * Samples that share an id but differ are all refused, since nobody can tell which holds.
 * @param samples all of one quantity
 */
export function sortEvidence(samples: readonly Evidence[], quantity: Quantity): SortedEvidence {
  const issues: CriteriaIssue[] = [];
  const good: Evidence[] = [];
  for (const sample of samples) {
    const problem = problemOf(sample, quantity);
    if (problem) issues.push(problem);
    else good.push(sample);
  }
  if (good.length > 1) good.sort((a, b) => compareText(a.id, b.id));
  const measured: Evidence[] = [];
  const assumed: Evidence[] = [];
  for (let start = 0; start < good.length; ) {
    const first = good[start]!;
    let end = start + 1;
    let alike = true;
    for (; end < good.length && good[end]!.id === first.id; end++) alike &&= sameSample(first, good[end]!);
    if (alike) (first.assumed ? assumed : measured).push(first);
    else {
      issues.push({
        path: `evidence ${first.id}, id`,
        found: `${end - start} different samples with this id`,
        expected: 'an id of its own for each sample',
      });
    }
    start = end;
  }
  if (issues.length > 1) {
    issues.sort((a, b) => compareText(a.path, b.path) || compareText(a.found, b.found));
  }
  return { measured, assumed, issues };
}
