import type { Assessment, CriterionResult } from '../assessment.ts';
import type { CriterionTurn } from './comparison.ts';

type Shown = CriterionTurn['before'];

/** What a change of verdict amounts to. What is not shown says nothing, either way. */
function turnOf(before: Shown, after: Shown): CriterionTurn['turn'] | undefined {
  if (before === after) return undefined;
  if (after === 'not-asked') return before === 'not-shown' ? undefined : 'no-longer-asked';
  if (after === 'not-shown') return before === 'not-asked' ? undefined : 'no-longer-shown';
  if (before === 'not-met' && after === 'met') return 'mended';
  if (before === 'met' && after === 'not-met') return 'broken';
  return after === 'met' ? 'now-met' : 'now-not-met';
}

const ORDER: Readonly<Record<CriterionTurn['turn'], number>> = {
  broken: 0,
  'now-not-met': 1,
  mended: 2,
  'now-met': 3,
  'no-longer-shown': 4,
  'no-longer-asked': 5,
};

/** Criteria whose verdict is not what it was, what turned to the worse first. */
export function criterionTurns(before: Assessment, after: Assessment): CriterionTurn[] {
  const was = new Map(before.criteria.map((c) => [c.id, c]));
  const is = new Map(after.criteria.map((c) => [c.id, c]));
  return [...new Set([...was.keys(), ...is.keys()])]
    .flatMap((id): CriterionTurn[] => {
      const [a, b] = [was.get(id), is.get(id)];
      const verdicts = { before: a?.verdict ?? 'not-asked', after: b?.verdict ?? 'not-asked' } as const;
      const turn = turnOf(verdicts.before, verdicts.after);
      if (turn === undefined) return [];
      const { title, kind, reason } = (b ?? a) as CriterionResult;
      return [{ id, title, kind, ...verdicts, turn, reason }];
    })
    .sort((a, b) => ORDER[a.turn] - ORDER[b.turn] || (a.id < b.id ? -1 : 1));
}

/** Criteria that are not met in both. */
export function stillNotMet(before: Assessment, after: Assessment): string[] {
  const was = new Set(before.criteria.filter((c) => c.verdict === 'not-met').map((c) => c.id));
  return after.criteria.filter((c) => c.verdict === 'not-met' && was.has(c.id)).map((c) => c.id);
}
