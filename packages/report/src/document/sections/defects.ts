import type { Assessment, DefectNotShown, DefectResult } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import type { MarkName } from '../../drawing/marks.ts';
import { capital, plain, shortSource, tradeWords } from '../../words/names.ts';
import { both, tapeText } from '../../words/quantities.ts';
import {
  type Block,
  type Cell,
  cell,
  figure,
  heading,
  paragraph,
  type Rich,
  type Section,
  soft,
  strong,
  type Table,
  words,
} from '../blocks.ts';
import { defectPictures } from './defect-pictures.ts';

/** What the grades mean, gravest first. */
const GRADES: readonly (readonly [severity: number, words: string])[] = [
  [4, 'Life or structure: act now'],
  [3, 'The system is defeated, damage under way'],
  [2, 'Weakened, damage likely within seasons'],
  [1, 'Minor, or for the record'],
  [0, 'No defect, worth knowing'],
];

const STATES: Readonly<Record<DefectResult['state'], readonly [MarkName, string]>> = {
  shown: ['not-met', 'Shown'],
  claimed: ['watch', 'Said, not proved'],
  contradicted: ['watch', 'Said, and measured otherwise'],
  absent: ['met', 'Ruled out'],
  'not-shown': ['not-shown', 'Suspected'],
};

/** Places that are named; more are counted. */
const PLACES = 3;

const keyed = (key: string) => key.replaceAll('-', ' ');

function billWords({ value, range, unit, from, assumed }: DefectResult['bill']): string {
  if (value === undefined) return `Quantity not known: ${from}.`;
  const amount = (v: number) => {
    if (unit === 'm') return tapeText(v);
    if (unit === 'm2') return both(v, 'area', 0, 1);
    if (unit === 'm3') return both(v, 'volume', 0, 1);
    return `${v}${unit === 'each' ? '' : ` ${unit}`}`;
  };
  const most = range === undefined || assumed ? '' : ` (${amount(range[0])} to ${amount(range[1])})`;
  return `Quantity: ${assumed ? 'up to ' : ''}${amount(value)}${most}, ${from}.`;
}

function placeLines({ places }: DefectResult): Rich[] {
  const named = [...new Set(places.map((p) => p.words))];
  if (named.length === 0) return [[soft('The space as a whole')]];
  const more = named.length > PLACES ? ` and ${named.length - PLACES} more` : '';
  return [[{ text: named.slice(0, PLACES).join('; ') + more }]];
}

function brokenLines({ broken }: DefectResult, { criteria }: Assessment): Rich[] {
  if (broken.length === 0) return [[soft('no criterion')]];
  return broken.map((id) => {
    const found = criteria.find((c) => c.id === id);
    const source =
      found === undefined
        ? ''
        : found.sourceKnown === 'practice'
          ? ' practice'
          : ` ${found.kind}, ${shortSource(found.source).short}`;
    return [{ text: id }, soft(source)];
  });
}

function effectLines({ mended, mendedNot }: DefectResult): Rich[] {
  if (mended === undefined) return mendedNot === undefined ? [] : [[soft(mendedNot)]];
  const { waterKgPerDay, waterShare, year } = mended;
  const share = waterShare === undefined ? '' : `, ${Math.round(100 * waterShare)}% of what enters`;
  const days = year === undefined ? 0 : Math.round(-year.daysAbove80);
  return [
    [
      { text: 'Mended alone: ' },
      figure(`${both(waterKgPerDay, 'massFlow', 1, 2)}`),
      { text: ` less water in the design month${share}` },
      ...(days === 0
        ? [{ text: '.' }]
        : [
            { text: '; ' },
            figure(String(Math.abs(days))),
            { text: days > 0 ? ' fewer days above 80% in the year.' : ' more days above 80% in the year.' },
          ]),
    ],
  ];
}

function row(defect: DefectResult, assessment: Assessment): Cell[] {
  const [mark, word] = STATES[defect.state];
  return [
    [
      [{ mark }, soft(`${word}; ${keyed(defect.subject)}`)],
      [strong(defect.name)],
      [soft(defect.severityBecause.join('; '))],
    ],
    [
      ...placeLines(defect),
      ...defect.because.map((text): Rich => words(plain(text))),
      ...(defect.because.length === 0 ? [[soft(`Would show it: ${defect.proof}`)]] : []),
    ],
    brokenLines(defect, assessment),
    [
      ...(defect.consequences.length === 0 ? [] : [words(`${capital(defect.consequences.join('; '))}.`)]),
      words(defect.remedy),
      [soft(billWords(defect.bill))],
      ...effectLines(defect),
      ...(defect.licensedTrade === undefined ? [] : [[soft(tradeWords(defect.licensedTrade))]]),
    ],
  ];
}

function gradeTable(title: string, rows: readonly DefectResult[], assessment: Assessment): Table {
  return {
    kind: 'table',
    caption: title,
    columns: [
      { title: 'Defect', weight: 23 },
      { title: 'Where, and what shows it', weight: 29 },
      { title: 'Breaks', weight: 17 },
      { title: 'What follows, and mending', weight: 31 },
    ],
    rows: rows.map((d) => row(d, assessment)),
    rowsFrom: rows.map((d) => `defects/${d.key}`),
  };
}

function openTable(open: readonly DefectNotShown[]): Block[] {
  if (open.length === 0) return [];
  return [
    heading(3, 'Nobody has looked for these yet', 'defects-open'),
    {
      kind: 'table',
      caption: 'What nobody can rule out, and what would tell',
      compact: true,
      columns: [
        { title: 'Defect', weight: 36 },
        { title: 'What would show it', weight: 64 },
      ],
      rows: open.map(({ name, subject, proof }) => [
        cell({ text: name }, soft(`, ${keyed(subject)}`)),
        cell({ text: plain(proof) }),
      ]),
    },
  ];
}

/** Every defect by its grade: place, proof, criterion, what follows, how to mend it, what that does. */
export function defects(
  job: Job,
  assessment: Assessment,
  extras: Parameters<typeof defectPictures>[2],
): Section {
  const { defects: found, defectsNotShown: open, defectsCount: n } = assessment;
  const others = [
    ...(n.claimed > 0 ? [`${n.claimed} said and not proved`] : []),
    ...(n.contradicted > 0 ? [`${n.contradicted} said and measured otherwise`] : []),
    ...(n.suspected > 0 ? [`${n.suspected} suspected`] : []),
  ];
  return {
    id: 'defects',
    title: 'Defects',
    from: 'defects',
    blocks: [
      heading(2, 'Defects', 'defects'),
      paragraph(
        found.length === 0
          ? 'No defect was shown or said.'
          : `${n.shown} shown${others.map((o) => `, ${o}`).join('')}; ${n.absent} ruled out by what was measured.`,
      ),
      paragraph(
        'A grade rests on what was measured and seen, never on what is missing. Before the work of another contractor is opened or mended, ask whether contract, warranty or local law lets that contractor look and mend first; this is a reminder and no legal advice.',
        'note',
      ),
      ...GRADES.flatMap(([severity, title]) => {
        const graded = found.filter((d) => d.severity === severity);
        return graded.length === 0 ? [] : [gradeTable(title, graded, assessment)];
      }),
      ...defectPictures(job, assessment, extras),
      ...openTable(open),
    ],
  };
}
