import type { ClimateYear } from './year.ts';

/** One fault of a weather file. */
export interface ReadIssue {
  /** Line of the file, first line 1; 0 when the file as a whole is at fault. */
  readonly line: number;
  /** Column counted by commas, first column 1, where one field is at fault. */
  readonly column?: number;
  /** What stands there, shortened. */
  readonly found: string;
  readonly expected: string;
  /** A whole sentence: what is wrong, where, and what to do where that is known. */
  readonly message: string;
}

/** A climate year, or everything that keeps a file from being one. */
export type ReadResult =
  | { readonly ok: true; readonly year: ClimateYear }
  | {
      readonly ok: false;
      /** In the order of the lines; at most 20. */
      readonly issues: readonly ReadIssue[];
      /** How many faults there were, those beyond the list included. */
      readonly issueCount: number;
    };

/** Issues kept of one file; a wholly wrong file has one per line and nobody reads past the first screen. */
const ISSUES_KEPT = 20;

/** Collects issues while a file is read. */
export interface IssueLog {
  readonly kept: ReadIssue[];
  count: number;
}

/** An empty log. */
export function issueLog(): IssueLog {
  return { kept: [], count: 0 };
}

/** Adds an issue; the first 20 are kept and the rest only counted. */
export function report(log: IssueLog, issue: ReadIssue): void {
  log.count++;
  if (log.kept.length < ISSUES_KEPT) log.kept.push(issue);
}

/** The failed result of a log. */
export function failed(log: IssueLog): ReadResult {
  return { ok: false, issues: [...log.kept].sort((a, b) => a.line - b.line), issueCount: log.count };
}

/** A piece of a file as it can be shown in a message: one line, printable, at most 60 characters. */
export function excerpt(text: string): string {
  const short = text.length > 60 ? `${text.slice(0, 57)}...` : text;
  return short.replace(/[^\x20-\x7e\u00a0-\uffff]/g, '?').trim();
}
