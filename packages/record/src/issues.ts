import type * as z from 'zod';
import { canonicalJson } from './canonical.ts';

/** One thing that is wrong with a record: where, what was found, what was expected. None of the three is ever empty. */
export interface RecordIssue {
  /** Path in the record, e.g. `plan.piers[3].widthM`. */
  readonly path: string;
  /** The value found, shortened. */
  readonly found: string;
  readonly expected: string;
}

/** Readers stop looking after so many issues, so that a hostile file cannot fill the memory with them. */
export const ENOUGH_ISSUES = 1000;

/** The first issues, and one that says so when there are more. */
export function firstIssues(issues: readonly RecordIssue[], most = ENOUGH_ISSUES): RecordIssue[] {
  const first = issues.slice(0, most);
  if (issues.length > most) {
    const expected = 'fewer; what comes after them is not listed';
    first.push({ path: issues[most].path, found: `${most} faults before this one`, expected });
  }
  return first;
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
    text = canonicalJson(value);
  } catch {
    text = 'a value too deep to show';
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

const TYPES: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'text',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  nonoptional: 'a value',
};

function bound(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig): string {
  const least = issue.code === 'too_small';
  const limit = least ? issue.minimum : issue.maximum;
  if (issue.origin === 'array') return `${least ? 'at least' : 'at most'} ${limit} items`;
  if (issue.origin === 'string') return `${least ? 'at least' : 'at most'} ${limit} characters`;
  if (issue.inclusive === false) return `a value ${least ? 'above' : 'below'} ${limit}`;
  return `a value of ${least ? 'at least' : 'at most'} ${limit}`;
}

function expectation(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return TYPES[issue.expected] ?? `a value of type ${issue.expected}`;
    case 'too_small':
    case 'too_big':
      return bound(issue);
    case 'invalid_value':
      return issue.values.length === 1
        ? JSON.stringify(issue.values[0])
        : `one of ${issue.values.map((v) => String(v)).join(', ')}`;
    case 'unrecognized_keys': {
      const named = [...issue.keys].sort().slice(0, 5).map(shown).join(', ');
      const more = issue.keys.length > 5 ? ` and ${issue.keys.length - 5} more` : '';
      return `no field named ${named}${more}`;
    }
    case 'invalid_union':
      if ('options' in issue && issue.options !== undefined) return `one of ${issue.options.join(', ')}`;
      return issue.message === 'Invalid input' ? oneOf(issue.errors) : issue.message;
    default:
      return issue.message;
  }
}

/** What any of the branches of a union would have taken. */
function oneOf(branches: readonly (readonly z.core.$ZodIssue[])[]): string {
  return [...new Set(branches.map(([first]) => expectation(first)))].join(' or ');
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
