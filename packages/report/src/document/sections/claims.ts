import type { CoverageAssessment, ProofShown } from '@undercroft/assessment';
import { ranges } from '../../drawing/coverage/stations.ts';
import type { MarkName } from '../../drawing/marks.ts';
import { day } from '../../words/dates.ts';
import { plain } from '../../words/names.ts';
import {
  type Block,
  type Cell,
  cell,
  figure,
  heading,
  paragraph,
  soft,
  strong,
  type Table,
} from '../blocks.ts';

const MARKS: Readonly<Record<ProofShown['verdict'], readonly [MarkName, string]>> = {
  proved: ['met', 'Shown'],
  partly: ['watch', 'Partly'],
  'no-picture': ['not-shown', 'In none'],
  unplaced: ['not-shown', 'Unclear'],
};

/** Numbers of pictures by their ids. */
function numbersOf({ pictures }: CoverageAssessment, ids: readonly string[]): string {
  return ranges(pictures.filter((p) => ids.includes(p.id)).map((p) => p.number));
}

function row(coverage: CoverageAssessment, proof: ProofShown): Cell[] {
  const [mark, word] = MARKS[proof.verdict];
  const who = [proof.who, proof.when === undefined ? undefined : day(proof.when)].filter(
    (w) => w !== undefined,
  );
  const numbers = numbersOf(coverage, proof.pictures);
  return [
    [[strong(proof.title)], ...(who.length === 0 ? [] : [[soft(who.join(', '))]])],
    cell({ mark }, { text: word }),
    cell({ text: plain(proof.says) }),
    cell(figure(numbers === '' ? 'none' : numbers)),
  ];
}

const table = (
  caption: string,
  first: string,
  coverage: CoverageAssessment,
  proofs: readonly ProofShown[],
): Table => ({
  kind: 'table',
  caption,
  columns: [
    { title: first, weight: 34 },
    { title: 'In pictures', weight: 14 },
    { title: 'What they show', weight: 36 },
    { title: 'Pictures', weight: 16, align: 'end' },
  ],
  rows: proofs.map((p) => row(coverage, p)),
  rowsFrom: proofs.map((p) => `coverage/proofs/${p.id}`),
});

/** What was claimed as done, and what was found, each with the pictures that show it or the part that none shows. */
export function claims(coverage: CoverageAssessment): Block[] {
  const done = coverage.proofs.filter((p) => p.of !== 'finding');
  const found = coverage.proofs.filter((p) => p.of === 'finding');
  if (done.length + found.length === 0) return [];
  return [
    heading(3, 'Claims and findings in the pictures', 'claims'),
    paragraph(
      'That a picture shows something does not say that it is right: somebody has to look at it.',
      'note',
    ),
    ...(done.length === 0 ? [] : [table('Claimed as done', 'Claim', coverage, done)]),
    ...(found.length === 0 ? [] : [table('Findings', 'Finding', coverage, found)]),
  ];
}
