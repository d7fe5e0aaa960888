import type { Assessment, CriterionResult } from '@undercroft/assessment';
import { columnsOf, heading, wrap } from './wrap.ts';

/** Width of an id and the gap after it. */
const ID = 10;

function brokenLines(c: CriterionResult, columns: number): string[] {
  const indent = ' '.repeat(ID + 2);
  // A long id, say of a criterion that a place added, only pushes its own title.
  const id = `  ${c.id.padEnd(ID - 1)} `;
  return [
    ...wrap(`${c.title}. ${c.reason}`, columns, id),
    ...wrap(`${c.kind}: ${c.source}`, columns, indent),
    ...(c.consequence === undefined ? [] : wrap(c.consequence, columns, indent)),
    ...(c.licensedTrade === undefined
      ? []
      : wrap(`Needs: ${c.licensedTrade.replaceAll('-', ' ')}`, columns, indent)),
  ];
}

function openLines(open: readonly CriterionResult[], columns: number): string[] {
  if (open.length === 0) return [];
  const subjects = [...new Set(open.map((c) => c.subject))];
  const rows = subjects.map((subject) => {
    const titles = open.filter((c) => c.subject === subject).map((c) => `${c.title} (${c.id})`);
    return [subject.replaceAll('-', ' '), titles.join('; ')] as const;
  });
  return ['', 'Not shown: nobody has measured or seen these yet.', ...columnsOf(rows, columns)];
}

/** Criteria that are broken, with the reason and source, and those that still lack evidence. */
export function criteriaLines({ criteria, criteriaCount: n }: Assessment, columns: number): string[] {
  const of = (verdict: CriterionResult['verdict']) => criteria.filter((c) => c.verdict === verdict);
  return [
    ...heading(`Criteria: ${n.met} met, ${n.notMet} not met, ${n.notShown} not shown`),
    ...of('not-met').flatMap((c) => brokenLines(c, columns)),
    ...openLines(of('not-shown'), columns),
  ];
}
