import type { Assessment, Assumption } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { PROVENANCE_TAGS, PROVENANCE_WORDS, plain } from '../../words/names.ts';
import { measureText } from '../../words/quantities.ts';
import {
  type Cell,
  cell,
  heading,
  type Inline,
  paragraph,
  type Section,
  soft,
  strong,
  words,
} from '../blocks.ts';

/** Cautions that belong to the steps of this job. */
export function cautions(_job: Job, assessment: Assessment): Section {
  return {
    id: 'cautions',
    title: 'Cautions',
    from: 'cautions',
    blocks: [
      heading(2, 'Cautions', 'cautions'),
      paragraph(
        'Nothing in this report says that it is safe to enter the space, or that a licensed trade can be passed over.',
      ),
      {
        kind: 'table',
        caption: 'Cautions and the step that each belongs to',
        columns: [
          { title: 'Caution', weight: 78 },
          { title: 'Shown for', weight: 22 },
        ],
        rows: assessment.cautions.map((c) => [
          [cautionLine(c.text)],
          cell(soft(c.because.replace(/^Step: /, ''))),
        ]),
        rowsFrom: assessment.cautions.map((c) => `cautions/${c.id}`),
      },
    ],
  };
}

/** The name of the caution is its first sentence. */
function cautionLine(text: string): Inline[] {
  const end = text.indexOf('. ');
  return end < 0 ? [{ text }] : [strong(text.slice(0, end + 1)), { text: plain(text.slice(end + 1)) }];
}

/** More than three digits would lend a guess a look of exactness. */
const guess = (value: number, unit: string) => measureText(value, unit, '', 3);

function valueText(value: Assumption['value'], unit: string): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return guess(value, unit);
  const asNumber = Number(value);
  if (value.trim() !== '' && Number.isFinite(asNumber) && unit !== '') return guess(asNumber, unit);
  return unit === '' ? value : `${value} ${unit}`;
}

function assumptionRow(a: Assumption): Cell[] {
  const range: Inline[] =
    a.low === undefined || a.high === undefined
      ? [soft('none given')]
      : [{ text: `${guess(a.low, a.unit)} to ${guess(a.high, a.unit)}`, look: 'figure' }];
  return [
    cell({ text: a.title }),
    cell({ text: valueText(a.value, a.unit), look: 'figure', assumed: true }),
    cell(...range),
    [words(plain(a.why))],
  ];
}

/** What nobody measured, what was taken instead, and what would replace it. */
export function assumptions(_job: Job, assessment: Assessment): Section {
  const list = assessment.assumptions;
  return {
    id: 'assumptions',
    title: 'What was assumed',
    from: 'headline',
    blocks: [
      heading(2, 'What was assumed', 'assumptions'),
      {
        kind: 'paragraph',
        text: [
          { text: 'Values with a ' },
          { text: 'dashed underline', assumed: true },
          {
            text: ' were not measured. Measuring one replaces it, and the figures that rest on it get narrower.',
          },
        ],
      },
      ...(list.length === 0
        ? [paragraph('Nothing was assumed.')]
        : [
            {
              kind: 'table' as const,
              caption: 'Assumptions with their range and reason',
              columns: [
                { title: 'What', weight: 27 },
                { title: 'Taken', weight: 19 },
                { title: 'Range', weight: 24 },
                { title: 'Why', weight: 30 },
              ],
              rows: list.map(assumptionRow),
              rowsFrom: list.map((a) => `assumptions/${a.key}`),
            },
          ]),
    ],
  };
}

/** Publications behind the calculations; those behind single criteria stand with them. */
export function sources(_job: Job, assessment: Assessment): Section {
  return {
    id: 'sources',
    title: 'Sources of the calculations',
    from: 'sources',
    blocks: [
      heading(2, 'Sources of the calculations', 'sources'),
      paragraph(
        `The source of each criterion stands beside it. These are behind the calculations. Second hand: ${PROVENANCE_WORDS.quoted}. From memory: ${PROVENANCE_WORDS.memory}.`,
        'note',
      ),
      {
        kind: 'list',
        items: assessment.sources.map((s) => {
          const known = PROVENANCE_TAGS[s.provenance];
          return [{ text: s.citation }, ...(known === '' ? [] : [soft(` (${known})`)])];
        }),
      },
    ],
  };
}

/** What the report defers to. */
export function standing(_job: Job, _assessment: Assessment): Section {
  return {
    id: 'standing',
    title: 'What this report is, and is not',
    from: 'job/header',
    blocks: [
      heading(2, 'What this report is, and is not', 'standing'),
      paragraph(
        'This report says what was seen, measured and computed on the day of the survey. It is not an approval, a permit, a design under seal, or a promise that nothing else is wrong.',
      ),
      paragraph(
        'It defers to the local code as adopted and to the authority having jurisdiction; to a licensed engineer for anything that carries load; to licensed electricians, plumbers, mechanical contractors and gas fitters for their trades; and to licensed mold, radon and pest professionals where the rules of the place ask for them. Where this report and the local code differ, the local code stands.',
      ),
      paragraph(
        'A rule marked as practice is the opinion of the trade. A source marked as second hand or from memory should be checked in its own text before anyone relies on it.',
      ),
    ],
  };
}
