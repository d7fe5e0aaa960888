import { type FactKey, type FactValue, isFactValue, type JobFacts } from './facts.ts';

/** A condition on job facts, as data. */
export type Condition =
  | { readonly fact: FactKey; readonly isOneOf: readonly (string | boolean)[] }
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition };

/** Holds when the fact has one of the values. */
export function is<K extends FactKey>(fact: K, ...values: readonly FactValue<K>[]): Condition {
  return { fact, isOneOf: values as readonly (string | boolean)[] };
}

/** Holds when every part holds; with no part it always holds. */
export function all(...parts: readonly Condition[]): Condition {
  return { all: parts };
}

/** Holds when at least one part holds; with no part it never holds. */
export function any(...parts: readonly Condition[]): Condition {
  return { any: parts };
}

/** Holds when the part does not. */
export function not(part: Condition): Condition {
  return { not: part };
}

/** Holds whatever the facts are. */
export const always: Condition = { all: [] };

/**
 * Whether a condition holds, in three values: a fact that is absent, or has a value the fact does not allow, is
 * unknown, and makes the whole unknown unless the known facts decide it alone (Kleene's strong logic).
 */
export function holds(condition: Condition, facts: JobFacts): boolean | 'unknown' {
  if ('fact' in condition) {
    const value = facts[condition.fact];
    if (value === undefined || !isFactValue(condition.fact, value)) return 'unknown';
    return condition.isOneOf.includes(value);
  }
  if ('not' in condition) {
    const inner = holds(condition.not, facts);
    return inner === 'unknown' ? inner : !inner;
  }
  const parts = 'all' in condition ? condition.all : condition.any;
  const deciding = !('all' in condition);
  let unknown = false;
  for (const part of parts) {
    const held = holds(part, facts);
    if (held === deciding) return deciding;
    if (held === 'unknown') unknown = true;
  }
  return unknown ? 'unknown' : !deciding;
}

/** The facts that would have to be known before the condition can be decided, sorted by name; empty when decided. */
export function openFacts(condition: Condition, facts: JobFacts): readonly FactKey[] {
  if (holds(condition, facts) !== 'unknown') return [];
  const found = new Set<FactKey>();
  collectOpen(condition, facts, found);
  return [...found].sort();
}

function collectOpen(condition: Condition, facts: JobFacts, found: Set<FactKey>): void {
  if (holds(condition, facts) !== 'unknown') return;
  if ('fact' in condition) found.add(condition.fact);
  else if ('not' in condition) collectOpen(condition.not, facts, found);
  else for (const part of 'all' in condition ? condition.all : condition.any) collectOpen(part, facts, found);
}
