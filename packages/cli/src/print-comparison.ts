import type { Comparison } from '@undercroft/assessment';
import { noticeLines } from './notices.ts';
import { heading, wrap } from './wrap.ts';

const TURNS: Readonly<Record<Comparison['criteria'][number]['turn'], string>> = {
  broken: 'met before, not met now',
  'now-not-met': 'not met now',
  mended: 'mended',
  'now-met': 'met now',
  'no-longer-shown': 'no longer shown',
  'no-longer-asked': 'no longer asked',
};

function claimLines({ claims }: Comparison, columns: number): string[] {
  if (claims.length === 0) return [];
  const words = { holds: 'holds', 'is-not': 'is not', 'not-shown': 'open' } as const;
  return [
    ...heading('What was claimed as done'),
    ...claims.flatMap((c) => {
      const who = [c.who, c.when?.slice(0, 10)].filter((w) => w !== undefined).join(', ');
      return wrap(
        `${c.title}${who === '' ? '' : ` (${who})`}. ${c.says}`,
        columns,
        `  ${words[c.state].padEnd(8)}`,
      );
    }),
  ];
}

function readingLines({ readings, unpaired }: Comparison, columns: number): string[] {
  const lone = unpaired.before.length + unpaired.after.length;
  if (readings.length + lone === 0) return [];
  return [
    ...heading('Readings side by side'),
    ...readings.flatMap((r) => [
      ...wrap(`${r.shown.before}; now ${r.shown.after} (${r.place})`, columns, `  ${r.turn.padEnd(8)}`),
      ...wrap(r.means, columns, ' '.repeat(10)),
    ]),
    ...(lone === 0
      ? []
      : wrap(
          `${unpaired.before.length} readings of the earlier and ${unpaired.after.length} of the later survey have none at their place to be set beside.`,
          columns,
          '  ',
        )),
  ];
}

function criterionLines({ criteria, stillNotMet }: Comparison, columns: number): string[] {
  return [
    ...heading('Criteria'),
    ...criteria
      .filter((c) => c.turn !== 'no-longer-shown' && c.turn !== 'no-longer-asked')
      .flatMap((c) => wrap(`${c.title} (${c.id}). ${c.reason}`, columns, `  ${TURNS[c.turn]}: `)),
    ...wrap(`Not met in both: ${stillNotMet.length === 0 ? 'none' : stillNotMet.join(', ')}.`, columns, '  '),
    ...(['no-longer-shown', 'no-longer-asked'] as const).flatMap((turn) => {
      const ids = criteria.filter((c) => c.turn === turn).map((c) => c.id);
      return ids.length === 0 ? [] : wrap(`${ids.join(', ')}.`, columns, `  ${TURNS[turn]}: `);
    }),
  ];
}

/** Two surveys side by side, for people at a terminal. */
export function comparisonLines(comparison: Comparison, columns: number): string[] {
  const { before, after, items, findings } = comparison;
  const dated = (s: Comparison['before']) =>
    s.surveyedOn === undefined ? s.title : `${s.title} (${s.surveyedOn})`;
  return [
    ...wrap(dated(before), columns, 'Before: '),
    ...wrap(dated(after), columns, 'After:  '),
    ...wrap(comparison.headline, columns),
    ...noticeLines(comparison.notices, columns),
    ...claimLines(comparison, columns),
    ...(findings.length === 0
      ? []
      : [...heading('Findings'), ...findings.flatMap((f) => wrap(f.says, columns, '  - '))]),
    ...readingLines(comparison, columns),
    ...criterionLines(comparison, columns),
    ...(items.length === 0
      ? []
      : [...heading('What is drawn otherwise'), ...items.flatMap((i) => wrap(i.says, columns, '  - '))]),
  ];
}
