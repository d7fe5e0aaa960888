import type { Comparison, Criterion, Limit } from './criterion.ts';
import type { CriteriaIssue } from './issue.ts';
import type { Overlay, OverlayChange } from './overlay.ts';
import { findQuantity } from './quantities.ts';

const COMPARISONS: readonly Comparison[] = ['>=', '<=', '>', '<', '=', 'within', 'yes', 'no'];

function limitProblem(
  comparison: Comparison,
  limit: Limit | undefined,
  yesNo: boolean,
): CriteriaIssue | undefined {
  const answered = comparison === 'yes' || comparison === 'no';
  if (!COMPARISONS.includes(comparison) || answered !== yesNo) {
    return {
      path: 'comparison',
      found: String(comparison),
      expected: yesNo ? 'yes or no, as the quantity is answered' : 'a comparison with a number',
    };
  }
  if (answered) return undefined;
  const value = limit?.value;
  const pair = typeof value === 'number' ? [value, value] : (value ?? []);
  const whole = pair.length === 2 && pair.every(Number.isFinite) && pair[0] <= pair[1];
  if (whole && (comparison === 'within') === (typeof value !== 'number')) return undefined;
  return {
    path: 'limit',
    found: value === undefined ? 'nothing' : JSON.stringify(value),
    expected: comparison === 'within' ? 'two numbers, the lower first' : 'one number',
  };
}

/** Why a change cannot be made, or undefined where it can. */
export function overlayProblem(
  overlay: Overlay,
  change: OverlayChange,
  before: Criterion | undefined,
): CriteriaIssue | undefined {
  if (change.change === 'add') {
    const { row } = change;
    if (before) return { path: 'row.id', found: row.id, expected: 'an id that no criterion has yet' };
    const quantity = findQuantity(row.quantity);
    if (!quantity) return { path: 'row.quantity', found: row.quantity, expected: 'a registered quantity' };
    if (overlay.origin === 'own-standard' && row.kind !== 'practice') {
      return {
        path: 'row.kind',
        found: row.kind,
        expected: 'practice, since a firm cannot make law or a standard',
      };
    }
    return limitProblem(row.comparison, row.limit, quantity.unit === 'yes-no');
  }
  if (!before) {
    return {
      path: 'criterionId',
      found: change.criterionId,
      expected: 'the id of a criterion in the catalogue',
    };
  }
  const kindAfter = change.change === 'replace' ? (change.fields.kind ?? before.kind) : before.kind;
  const binds = [before.kind, kindAfter].find((kind) => kind === 'code' || kind === 'standard');
  if (overlay.origin === 'own-standard' && binds) {
    return {
      path: 'criterionId',
      found: `${change.criterionId}, ${binds}`,
      expected: 'a guide or practice row; add a stricter row of its own beside one that binds',
    };
  }
  if (change.change === 'strike-out') return undefined;
  const { comparison, limit } = { ...before, ...change.fields };
  return limitProblem(comparison, limit, before.unit === 'yes-no');
}
