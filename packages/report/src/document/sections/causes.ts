import type {
  Assessment,
  CauseArrow,
  CauseEvidenceShown,
  CauseObservation,
  CausesAssessment,
  NextMeasurementShown,
} from '@undercroft/assessment';
import { causes as engine } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { chainDrawing } from '../../drawing/chain/chain-drawing.ts';
import { ENGLISH_CHAIN_WORDS } from '../../drawing/chain/chain-words.ts';
import { percent } from '../../drawing/chain/percent.ts';
import { day } from '../../words/dates.ts';
import { ISO_DAY, PROVENANCE_TAGS, plain } from '../../words/names.ts';
import { evidenceText, measureText, typeset } from '../../words/quantities.ts';
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

const titleOf = (key: string) => ENGLISH_CHAIN_WORDS.nodes[key] ?? key;

/** How much likelier something is, as people say it. */
function timesText({ times, says }: CauseEvidenceShown): string {
  const rounded = times < 3 ? times.toFixed(1) : times.toFixed(0);
  return `${rounded} times ${says === 'for' ? 'likelier' : 'less likely'}`;
}

/** A value with no more digits than its doubt leaves. */
function valueText(value: number | boolean, unit: string): string {
  if (typeof value === 'number' && unit === 'fraction') {
    const percents = 100 * value;
    return typeset(`${Number(Math.abs(percents) >= 1 ? percents.toPrecision(2) : percents.toFixed(2))}%`);
  }
  if (typeof value === 'number' && unit === 'kg/day') return measureText(value, unit, '', 2);
  return evidenceText(value, unit, '');
}

/** One piece of evidence: what it showed, how much it counts, and the criteria that were judged on it. */
function evidenceLine(e: CauseEvidenceShown): Rich {
  const value =
    e.value === undefined || e.basis === 'seen' ? '' : `: ${plain(valueText(e.value, e.unit ?? ''))}`;
  const found = e.basis === 'seen' ? (e.value === true ? ' was found' : ' was looked for and not found') : '';
  const criteria = e.criteria.length === 0 ? '' : ` (${e.criteria.join(', ')})`;
  return [
    strong(e.says === 'for' ? 'For: ' : 'Against: '),
    { text: `${plain(e.title.replace(ISO_DAY, (iso) => day(iso)))}${found}` },
    figure(value),
    soft(`  ${timesText(e)}${e.basis === 'year' || e.basis === 'balance' ? ', computed' : ''}${criteria}`),
  ];
}

function evidenceCell(arrow: CauseArrow, byId: ReadonlyMap<string, CauseEvidenceShown>): Cell {
  const lines = [...arrow.supports, ...arrow.contradicts].flatMap((id) => {
    const e = byId.get(id);
    return e === undefined ? [] : [evidenceLine(e)];
  });
  const known = PROVENANCE_TAGS[arrow.source.provenance];
  const why: Rich = [{ text: plain(arrow.reason) }, soft(known === '' ? '' : `  ${known}`)];
  return lines.length === 0 ? [why, [soft('Nothing was shown for or against it.')]] : [why, ...lines];
}

/** In place of the number of an arrow, for what is not drawn. */
const NOT_DRAWN = '\u2013';

/** Explanations that are too light to draw, those that something speaks against named so. */
function lighter(of: CausesAssessment, key: string, unlisted: number): string {
  const small = of.arrows.filter((a) => a.to === key && a.number === undefined);
  const told = small.map((a) => {
    const standing =
      a.standing === 'not-shown' ? ', not shown' : a.contradicts.length > 0 ? ', spoken against' : '';
    return `${titleOf(a.from).toLowerCase()} ${percent(a.weight)}${standing}`;
  });
  return `${[...told, `something not listed ${percent(unlisted)}`].join('; ')}.`;
}

/** Explanations of one finding that are drawn, with their evidence. */
function findingTable(
  of: CausesAssessment,
  { key, unlisted }: CauseObservation,
  byId: ReadonlyMap<string, CauseEvidenceShown>,
): Table {
  const drawn = of.arrows.filter((a) => a.to === key && a.number !== undefined);
  const rest = 1 - drawn.reduce((sum, a) => sum + a.weight, 0);
  return {
    kind: 'table',
    caption: `What explains it: ${titleOf(key)}. The number is that of the arrow.`,
    columns: [
      { title: 'No.', weight: 7, align: 'end' },
      { title: 'Explanation', weight: 22 },
      { title: 'Share', weight: 9, align: 'end' },
      { title: 'Why, and what speaks for and against it', weight: 62 },
    ],
    rows: [
      ...drawn.map((a) => [
        cell(figure(String(a.number))),
        cell(strong(titleOf(a.from))),
        cell(figure(percent(a.weight))),
        evidenceCell(a, byId),
      ]),
      [
        cell(soft(NOT_DRAWN)),
        cell(soft('Less likely')),
        cell(figure(percent(Math.max(0, rest)))),
        cell(soft(lighter(of, key, unlisted))),
      ],
    ],
    rowsFrom: [...drawn, key].map(() => `causes/of/${key}`),
  };
}

function findingBlocks(of: CausesAssessment, byId: ReadonlyMap<string, CauseEvidenceShown>): Block[] {
  return of.observations.flatMap((o): Block[] => [
    heading(3, o.title, `causes-${o.key}`),
    paragraph(plain(o.because), undefined, `causes/of/${o.key}`),
    findingTable(of, o, byId),
  ]);
}

function consequenceBlocks(of: CausesAssessment): Block[] {
  const drawn = of.arrows.filter(
    (a) => a.number !== undefined && of.consequences.some((c) => c.key === a.to),
  );
  if (drawn.length === 0) return [];
  return [
    heading(3, 'What may follow if nothing is done', 'causes-follow'),
    {
      kind: 'table',
      caption: 'What may follow, from what, and why. None of it was seen yet.',
      columns: [
        { title: 'No.', weight: 7, align: 'end' },
        { title: 'May follow', weight: 22 },
        { title: 'From', weight: 22 },
        { title: 'Why', weight: 49 },
      ],
      rows: drawn.map((a) => [
        cell(figure(String(a.number))),
        cell(strong(titleOf(a.to))),
        cell({ text: titleOf(a.from) }),
        cell({ text: plain(a.reason) }),
      ]),
    },
  ];
}

/** An outcome in words, e.g. "yes", "below 3 ft", "from 0.05 to 0.1". */
function outcomeWords({ unit }: NextMeasurementShown, o: NextMeasurementShown['outcomes'][number]): string {
  if (o.answer !== undefined) return o.answer ? 'Yes' : 'No';
  const value = (v: number) => plain(unit === 'fraction' ? valueText(v, unit) : measureText(v, unit, '', 2));
  if (o.from === undefined) return o.below === undefined ? 'Any value' : `Below ${value(o.below)}`;
  return o.below === undefined ? `From ${value(o.from)} up` : `${value(o.from)} to ${value(o.below)}`;
}

function takesWords({ minutes, waitDays }: NextMeasurementShown): string {
  const wait = waitDays === undefined ? '' : `, known after ${waitDays} ${waitDays === 1 ? 'day' : 'days'}`;
  return `About ${minutes} minutes${wait}.`;
}

function nextBlocks(of: CausesAssessment): Block[] {
  if (of.next.length === 0) return [];
  return [
    heading(3, 'What to measure next', 'causes-next'),
    paragraph(
      'Of all that could still be measured, the outcome of the first is expected to change the ranking of the explanations most.',
    ),
    {
      kind: 'table',
      caption: 'What to measure next, the most telling first.',
      columns: [
        { title: 'Measure', weight: 26 },
        { title: 'How', weight: 40 },
        { title: 'What it would tell', weight: 34 },
      ],
      rows: of.next.map((n) => [
        [[strong(plain(n.title))], [soft(`about: ${titleOf(n.about).toLowerCase()}`)]],
        [words(plain(n.how)), [soft(takesWords(n))]],
        [
          ...n.outcomes.map(
            (o): Rich => [
              strong(`${outcomeWords(n, o)}: `),
              {
                text:
                  o.leads.key === 'unlisted' ? 'something not listed' : titleOf(o.leads.key).toLowerCase(),
              },
              figure(` ${percent(o.leads.weight)}`),
            ],
          ),
          [soft(plain(n.reason))],
        ],
      ]),
    },
  ];
}

function openBlocks(of: CausesAssessment): Block[] {
  const ruledOut = of.ruledOut.filter((r) => engine.causeNode(r.key).kind === 'cause');
  return [
    ...(ruledOut.length === 0
      ? []
      : [
          paragraph(
            `Ruled out: ${ruledOut.map((r) => `${r.title.toLowerCase()} (${plain(r.because).replace(/\.$/, '')})`).join('; ')}.`,
            'note',
          ),
        ]),
    ...(of.notShown.length === 0
      ? []
      : [
          paragraph(
            `Not looked for, so neither found nor excluded: ${of.notShown.map((n) => n.title.toLowerCase()).join('; ')}.`,
            'note',
          ),
        ]),
  ];
}

/** Why the space is as it was found: the chain as a drawing, every arrow with its evidence, and what to measure next. */
export function causes(_job: Job, { causes: of }: Assessment): Section {
  const byId = new Map(of.evidence.map((e) => [e.id, e]));
  const head: Block[] = [heading(2, 'Why it is so', 'causes'), paragraph(plain(of.headline))];
  if (of.observations.length === 0) {
    return { id: 'causes', title: 'Why it is so', from: 'causes', blocks: [...head, ...openBlocks(of)] };
  }
  return {
    id: 'causes',
    title: 'Why it is so',
    from: 'causes',
    blocks: [
      ...head,
      {
        kind: 'figure',
        id: 'causes-chain',
        caption:
          'Causes first, on the left or at the top, then what was found, then what may follow. An arrow is as wide as its share among the explanations of what it points at; its number leads to its evidence below. The share in the box of a cause is its share in all that was found.',
        placement: 'sheet',
        onScreen: (room) => chainDrawing(of, room, ENGLISH_CHAIN_WORDS),
        onPaper: (room) => chainDrawing(of, room, ENGLISH_CHAIN_WORDS),
      },
      paragraph(
        'A share says how likely an explanation is the main one among those listed: how common it is, times how much likelier each thing that was found is if it holds (the "times" below). How common and how much likelier are judgment of the trade where no source is named, so a share ranks and does not measure.',
        'note',
      ),
      ...findingBlocks(of, byId),
      ...consequenceBlocks(of),
      ...nextBlocks(of),
      ...openBlocks(of),
    ],
  };
}
