/** Something wrong with a surveyed plan that a person has to look at. Paths are those of the input. */
export interface PlanIssue {
  /** Short stable name, kebab-case. */
  readonly code:
    | 'too-few-corners'
    | 'no-area'
    | 'repeated-corner'
    | 'crosses-itself'
    | 'touches-itself'
    | 'bad-length'
    | 'does-not-close'
    | 'unknown-wall'
    | 'wall-described-twice'
    | 'bad-size'
    | 'outside-outline';
  /** Where in the input, e.g. `legs[3].lengthM`. */
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

/** How a wall is called in messages: its place in the input, counted from 1, and its id where it has one. */
export function wallName(index: number, id: string | undefined): string {
  return id === undefined ? `wall ${index + 1}` : `wall ${index + 1} (${id})`;
}
