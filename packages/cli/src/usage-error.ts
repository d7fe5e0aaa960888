/** Bad usage or bad input: the person can mend it. Ends the command with exit code 2. */
export class UsageError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'UsageError';
  }
}

/** An issue in the words of the command: where, what was found, what to do. */
export interface InputIssue {
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

/** Nobody reads past the first screens. */
const MOST_SHOWN = 50;

/**
 * Everything that is wrong with one input as one error.
 * @param things one sentence each
 * @param count of all, those that were not kept included
 */
export function wrongThings(what: string, things: readonly string[], count = things.length): UsageError {
  const lines = things.slice(0, MOST_SHOWN).map((thing) => `  ${thing}`);
  const more = count > lines.length ? [`  and ${count - lines.length} more`] : [];
  const head = count === 1 ? 'one thing is' : `${count} things are`;
  return new UsageError(`${what}: ${head} wrong.\n${[...lines, ...more].join('\n')}`);
}

/** All issues of one input as one error. */
export function inputError(what: string, issues: readonly InputIssue[]): UsageError {
  return wrongThings(
    what,
    issues.map((i) => `${i.path}: found ${i.found}; expected ${i.expected}`),
  );
}
