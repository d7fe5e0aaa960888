/** One thing that is wrong with data from people: where it stands, what was found, what was expected. */
export interface CriteriaIssue {
  /** Where, e.g. `evidence o-17, value` or `overlay J-01, change 2, criterionId`. */
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}
