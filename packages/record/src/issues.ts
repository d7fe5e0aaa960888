import type * as z from 'zod';

/** One thing that is wrong with a record: where, what was found, what was expected. */
export interface RecordIssue {
  /** Path in the record, e.g. `plan.piers[3].widthM`. */
  readonly path: string;
  /** The value found, shortened. */
  readonly found: string;
  readonly expected: string;
}

/** Writes a path as a person would look for it. */
export function pathText(path: readonly PropertyKey[]): string {
  let text = '';
  for (const part of path) {
    if (typeof part === 'number') text += `[${part}]`;
    else text += text === '' ? String(part) : `.${String(part)}`;
  }
  return text === '' ? 'the record' : text;
}

/** Shows a value in at most 60 characters. */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'number' || typeof value === 'bigint') return String(value);
  let text: string;
  try {
    text = JSON.stringify(value) ?? String(value);
  } catch {
    text = typeof value;
  }
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let value = root;
  for (const part of path) {
    if (value === null || typeof value !== 'object') return undefined;
    value = (value as Record<PropertyKey, unknown>)[part];
  }
  return value;
}

function expectation(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.expected === 'number' ? 'a number' : `a value of type ${issue.expected}`;
    case 'too_small':
      return issue.origin === 'array' || issue.origin === 'string'
        ? `at least ${issue.minimum} ${issue.origin === 'array' ? 'items' : 'characters'}`
        : `a value ${issue.inclusive === false ? 'above' : 'of at least'} ${issue.minimum}`;
    case 'too_big':
      return issue.origin === 'array' || issue.origin === 'string'
        ? `at most ${issue.maximum} ${issue.origin === 'array' ? 'items' : 'characters'}`
        : `a value ${issue.inclusive === false ? 'below' : 'of at most'} ${issue.maximum}`;
    case 'invalid_value':
      return issue.values.length === 1
        ? JSON.stringify(issue.values[0])
        : `one of ${issue.values.map((v) => String(v)).join(', ')}`;
    case 'unrecognized_keys':
      return `no field named ${issue.keys.map((k) => shown(k)).join(', ')}`;
    default:
      return issue.message;
  }
}

/** Turns what the schema says into issues, with the value found at each path. */
export function issuesOf(
  error: z.ZodError,
  root: unknown,
  prefix: readonly PropertyKey[] = [],
): RecordIssue[] {
  return error.issues.map((issue) => ({
    path: pathText([...prefix, ...issue.path]),
    found: shown(valueAt(root, issue.path)),
    expected: expectation(issue),
  }));
}
