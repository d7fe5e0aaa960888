import type { RecordIssue } from '@undercroft/record';

/** Thrown when a job is well formed but no assessment can be made of it. The issues say what to mend. */
export class JobError extends Error {
  readonly issues: readonly RecordIssue[];

  constructor(issues: readonly RecordIssue[]) {
    super(issues.map((i) => `${i.path}: found ${i.found}; expected ${i.expected}`).join('\n'));
    this.name = 'JobError';
    this.issues = issues;
  }
}
