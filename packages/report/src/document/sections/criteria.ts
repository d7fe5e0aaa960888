import type { Assessment, CriterionResult, EvidenceUsed, Verdict } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { MARK_WORDS } from '../../drawing/marks.ts';
import { day } from '../../words/dates.ts';
import {
  capital,
  KIND_WORDS,
  PROVENANCE_TAGS,
  PROVENANCE_WORDS,
  plain,
  shortSource,
  tradeWords,
} from '../../words/names.ts';
import { evidenceText } from '../../words/quantities.ts';
import {
  type Block,
  type Cell,
  heading,
  type Inline,
  paragraph,
  type Rich,
  type Section,
  soft,
  strong,
  type Table,
  words,
} from '../blocks.ts';

const KINDS = ['code', 'standard', 'guide', 'practice'] as const;

/** Who said it and when; for what follows from the plan or the house, that. */
function originWords({ origin }: EvidenceUsed): string {
  const about = [origin.who, origin.when === undefined ? undefined : day(origin.when)].filter(
    (p) => p !== undefined,
  );
  const from = {
    plan: 'from the plan',
    house: 'facts of the house',
    climate: 'climate',
    assumption: 'assumed',
  };
  if (about.length === 0) about.push(from[origin.kind as keyof typeof from] ?? origin.kind);
  return [...(origin.note === undefined ? [] : [origin.note]), ...about].join(', ');
}

/** Evidence with the same origin on one line, equal values counted, so that it can be read. */
function evidenceLines({ evidence, limit }: CriterionResult): Rich[] {
  const groups = new Map<string, Map<string, { readonly used: EvidenceUsed; count: number }>>();
  for (const used of evidence) {
    const origin = plain(originWords(used));
    const group = groups.get(origin) ?? new Map();
    groups.set(origin, group);
    const text = evidenceText(used.value, used.unit, limit);
    const same = group.get(`${used.assumed} ${text}`);
    if (same === undefined) group.set(`${used.assumed} ${text}`, { used, count: 1 });
    else same.count += 1;
  }
  return [...groups].map(([origin, values]) => [
    ...[...values.values()].flatMap(({ used, count }, i): Inline[] => [
      ...(i === 0 ? [] : [{ text: ', ' }]),
      {
        text: evidenceText(used.value, used.unit, limit),
        look: 'figure',
        ...(used.assumed ? { assumed: true } : {}),
      },
      ...(count === 1 ? [] : [{ text: ` × ${count}`, look: 'figure' } as const]),
    ]),
    soft(`  ${origin}`),
  ]);
}

function limitLines({ limit, limitSi }: CriterionResult): Rich[] {
  return limit === limitSi ? [words(plain(limit))] : [words(plain(limit)), [soft(plain(limitSi))]];
}

/** Kind and source of a criterion. A rule of practice says so and nothing else. */
function sourceLines({ kind, source, sourceKnown }: CriterionResult): Rich[] {
  const name = strong(KIND_WORDS[kind].name);
  if (sourceKnown === 'practice') return [[name], [soft('common practice, no published source')]];
  const known = PROVENANCE_TAGS[sourceKnown];
  const tag = known === '' ? [] : [soft(` (${known})`)];
  return [[name], [{ text: shortSource(source).short }, ...tag]];
}

function nameLines(criterion: CriterionResult, rest: readonly Rich[]): Rich[] {
  const { verdict, id, title } = criterion;
  return [[{ mark: verdict }, soft(`${MARK_WORDS[verdict]}  ${id}`)], [strong(title)], ...rest];
}

function notMetRow(criterion: CriterionResult): Cell[] {
  const { consequence, licensedTrade, reason } = criterion;
  const rest: Rich[] = [];
  if (consequence !== undefined) rest.push(words(consequence));
  if (licensedTrade !== undefined) rest.push([soft(tradeWords(licensedTrade))]);
  return [
    nameLines(criterion, rest),
    limitLines(criterion),
    [...reasonLines(reason, criterion.evidence.length), ...evidenceLines(criterion)],
    sourceLines(criterion),
  ];
}

/**
 * How the samples were judged together. The limit has a column of its own; of a single sample without doubt the evidence
 * says all.
 */
function reasonLines(reason: string, samples: number): Rich[] {
  if (samples === 1 && !reason.includes('±') && /^(Measured|The answer is)/.test(reason)) return [];
  return [words(plain(reason.replace(/; (it|each) should be .*$/, '.')))];
}

const pointer = ({ id }: CriterionResult): string => `criteria/${id}`;

function notMetTable(kind: CriterionResult['kind'], rows: readonly CriterionResult[]): Table {
  return {
    kind: 'table',
    caption: `Not met: ${KIND_WORDS[kind].name.toLowerCase()}`,
    columns: [
      { title: 'Criterion, and what follows', weight: 33 },
      { title: 'Limit', weight: 15 },
      { title: 'Found, by whom and when', weight: 28 },
      { title: 'Kind and source', weight: 24 },
    ],
    rows: rows.map(notMetRow),
    rowsFrom: rows.map(pointer),
  };
}

function notShownTable(kind: CriterionResult['kind'], rows: readonly CriterionResult[]): Table {
  return {
    kind: 'table',
    caption: `Not shown: ${KIND_WORDS[kind].name.toLowerCase()}`,
    columns: [
      { title: 'Criterion', weight: 34 },
      { title: 'What would show it', weight: 26 },
      { title: 'Kind and source', weight: 40 },
    ],
    rows: rows.map((c) => [
      nameLines(c, []),
      [words(plain(neededWords(c))), ...evidenceLines(c)],
      sourceLines(c),
    ]),
    rowsFrom: rows.map(pointer),
  };
}

/** What evidence is missing. Where nobody looked at all, what to look for is all there is to say. */
function neededWords({ reason, evidence, limit, limitSi }: CriterionResult): string {
  if (evidence.length > 0) return reason;
  if (limit === 'yes' || limit === 'no') return `Look, and answer: ${limit}.`;
  return `Measure it: ${limit === limitSi ? limit : `${limit} (${limitSi})`}.`;
}

function metTable(kind: CriterionResult['kind'], rows: readonly CriterionResult[]): Table {
  return {
    kind: 'table',
    caption: `Met: ${KIND_WORDS[kind].name.toLowerCase()}`,
    columns: [
      { title: 'Criterion', weight: 36 },
      { title: 'Found', weight: 32 },
      { title: 'Kind and source', weight: 32 },
    ],
    rows: rows.map((c) => {
      const [[name], ...rest] = sourceLines(c);
      return [
        [[{ mark: 'met' }, soft(`${MARK_WORDS.met}  ${c.id}  `), { text: c.title }]],
        [words(plain(c.reason)), ...assumedLines(c)],
        [[name, { text: '  ' }, ...rest.flat()]],
      ];
    }),
    rowsFrom: rows.map(pointer),
  };
}

/** In the short table of what is met, only evidence that nobody measured needs a line of its own. */
function assumedLines(criterion: CriterionResult): Rich[] {
  return evidenceLines({ ...criterion, evidence: criterion.evidence.filter((e) => e.assumed) });
}

interface Part {
  readonly verdict: Verdict;
  readonly id: string;
  readonly title: string;
  readonly intro: string;
  readonly none: string;
  readonly table: (kind: CriterionResult['kind'], rows: readonly CriterionResult[]) => Table;
}

const PARTS: readonly Part[] = [
  {
    verdict: 'not-met',
    id: 'not-met',
    title: 'Not met',
    intro:
      'What was measured or answered breaks these. Rules that bind come first; the kind of each rule says how far it binds.',
    none: 'Nothing that was measured or answered breaks a criterion.',
    table: notMetTable,
  },
  {
    verdict: 'not-shown',
    id: 'not-shown',
    title: 'Not shown yet',
    intro:
      'These apply here, but the evidence is missing or too little. They are neither met nor broken until someone looks.',
    none: 'Every criterion that applies was looked at.',
    table: notShownTable,
  },
  {
    verdict: 'met',
    id: 'met',
    title: 'Met',
    intro: 'What was measured or answered keeps these.',
    none: 'No criterion was shown to be met.',
    table: metTable,
  },
];

/** Spells out what the last column of the tables shortens: publications, and how well they are known. */
function shortNames(found: readonly CriterionResult[]): Block[] {
  const names = new Map<string, string>();
  for (const { source, sourceKnown } of found) {
    const { name } = shortSource(source);
    if (name !== undefined) names.set(name.short, name.full);
    const tag = PROVENANCE_TAGS[sourceKnown];
    if (tag !== '') names.set(tag, PROVENANCE_WORDS[sourceKnown]);
  }
  if (names.size === 0) return [];
  const list = [...names]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([short, full]) => `${capital(short)}: ${full}`);
  return [paragraph(`${list.join('. ')}.`, 'note')];
}

function criteriaSection(part: Part, assessment: Assessment): Section {
  const found = assessment.criteria.filter((c) => c.verdict === part.verdict);
  const blocks: Block[] = [heading(2, `${part.title}: ${found.length}`, part.id)];
  blocks.push(paragraph(found.length === 0 ? part.none : part.intro), ...shortNames(found));
  for (const kind of KINDS) {
    const rows = found.filter((c) => c.kind === kind);
    if (rows.length === 0) continue;
    const { name, binds } = KIND_WORDS[kind];
    blocks.push(
      heading(3, `${name}: ${rows.length}`, `${part.id}-${kind}`),
      paragraph(`${name}: ${binds}.`, 'note'),
      part.table(kind, rows),
    );
  }
  return { id: part.id, title: part.title, from: found.length === 0 ? 'headline' : 'criteria', blocks };
}

export const notMet = (_job: Job, assessment: Assessment): Section => criteriaSection(PARTS[0], assessment);
export const notShown = (_job: Job, assessment: Assessment): Section => criteriaSection(PARTS[1], assessment);
export const met = (_job: Job, assessment: Assessment): Section => criteriaSection(PARTS[2], assessment);
