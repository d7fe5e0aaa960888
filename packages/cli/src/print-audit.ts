import type { Assessment, CoverageAssessment, DefectResult } from '@undercroft/assessment';
import { criteria, units } from '@undercroft/engine';
import { noticeLines } from './notices.ts';
import { percent } from './print-coverage.ts';
import { shownBoth } from './quantities.ts';
import { columnsOf, heading, wrap } from './wrap.ts';

/** By what the defects of an audit are put together. */
export const GROUPINGS = ['severity', 'subject', 'step'] as const;
export type Grouping = (typeof GROUPINGS)[number];

type Audited = Assessment & { readonly coverage: CoverageAssessment };
type Bill = DefectResult['bill'];

const SEVERITIES: Readonly<Record<number, string>> = {
  4: '4: life or structure, act now',
  3: '3: the system is defeated, damage under way',
  2: '2: weakened, damage likely within seasons',
  1: '1: minor, or for the record',
  0: '0: no defect, worth knowing',
};

const STATES: Readonly<Record<DefectResult['state'], string>> = {
  shown: 'shown',
  claimed: 'said, not proved',
  contradicted: 'said, and what was measured speaks against it',
  absent: 'not there',
  'not-shown': 'suspected',
};

/** Places that are named; more are counted. */
const PLACES = 3;

const plain = (key: string) => key.replaceAll('-', ' ');

function amount(value: number, unit: Bill['unit']): string {
  if (unit === 'm') return shownBoth(value, 'length');
  if (unit === 'm2') return shownBoth(value, 'area');
  if (unit === 'm3') return shownBoth(value, 'volume');
  return `${value} ${unit === 'each' ? '' : unit}`.trim();
}

function billText({ value, range, unit, from, assumed }: Bill): string {
  if (value === undefined) return `not known (${from})`;
  if (assumed) return `up to ${amount(value, unit)} (${from})`;
  const most = range === undefined ? '' : `, ${amount(range[0], unit)} to ${amount(range[1], unit)}`;
  return `${amount(value, unit)}${most} (${from})`;
}

/** Where it is, and whether a picture shows the finding. */
function placeText({ places, findings }: DefectResult, { proofs }: CoverageAssessment): string {
  const named = [...new Set(places.map(({ words }) => words))];
  const more = named.length > PLACES ? ` and ${named.length - PLACES} more` : '';
  const where = named.length === 0 ? 'the space as a whole' : named.slice(0, PLACES).join('; ') + more;
  const verdicts = findings.map((f) => proofs.find((p) => p.id === f.id)?.verdict);
  const shown = verdicts.filter((v) => v === 'proved').length;
  const pictures =
    verdicts.length === 0
      ? ''
      : `. ${shown} of ${verdicts.length} ${verdicts.length === 1 ? 'finding is' : 'findings are'} wholly in a picture`;
  return `${where}${pictures}`;
}

function effectText({ mended, mendedNot }: DefectResult, nameOf: (key: string) => string): string {
  if (mended === undefined) return mendedNot ?? 'Not worked out.';
  const { waterKgPerDay, waterShare, relativeHumidity, sharesWith, year } = mended;
  const share = waterShare === undefined ? '' : `, ${percent(waterShare)} of what enters`;
  const points = (100 * relativeHumidity).toFixed(1);
  const days =
    year === undefined
      ? ''
      : `; over the year ${Math.round(year.daysAbove80)} days above 80 % RH, peak mold index ${year.peakMoldIndex.toFixed(2)}`;
  const same =
    sharesWith.length === 0 ? '' : `. The same water as: ${sharesWith.map(nameOf).join(', ').toLowerCase()}`;
  return `${shownBoth(waterKgPerDay, 'massFlow')} less water in the design month${share}; ${points} points of RH${days}${same}.`;
}

/** Criteria that it breaks, each with its kind and source: a rule of practice is never told as code. */
function brokenText({ broken }: DefectResult, { criteria: all }: Assessment): string {
  return broken
    .map((id) => {
      const found = all.find((c) => c.id === id);
      return found === undefined ? id : `${id} (${found.kind}: ${found.source})`;
    })
    .join('; ');
}

function defectLines(defect: DefectResult, audit: Audited, columns: number): string[] {
  const nameOf = (key: string) => audit.defects.find((d) => d.key === key)?.name ?? plain(key);
  const caution = criteria.cautions.find((c) => c.id === defect.caution);
  const rows: (readonly [string, string])[] = [
    ['Where', placeText(defect, audit.coverage)],
    ['Proof', defect.because.length === 0 ? `Open: ${defect.proof}` : defect.because.join(' ')],
    ...(defect.broken.length === 0 ? [] : [['Breaks', brokenText(defect, audit)] as const]),
    ...(defect.consequences.length === 0 ? [] : [['Leads to', defect.consequences.join('; ')] as const]),
    ['Mend', `${defect.remedy} Quantity: ${billText(defect.bill)}.`],
    ['Alone', effectText(defect, nameOf)],
    ...(defect.licensedTrade === undefined
      ? []
      : [['Ask', `in most places work for a licensed trade: ${plain(defect.licensedTrade)}`] as const]),
    ...(caution === undefined ? [] : [['Caution', caution.text] as const]),
  ];
  const grade = `  ${defect.severity}  `;
  return [
    '',
    ...wrap(`${defect.name}: ${STATES[defect.state]}; ${defect.severityBecause.join('; ')}`, columns, grade),
    ...columnsOf(rows, columns - grade.length).map((line) => `   ${line}`),
  ];
}

function groupsOf(defects: readonly DefectResult[], by: Grouping): (readonly [string, DefectResult[]])[] {
  const keyOf = (d: DefectResult) =>
    by === 'severity' ? (SEVERITIES[d.severity] as string) : plain(by === 'step' ? d.step : d.subject);
  const order = by === 'step' ? criteria.REPAIR_ORDER.map(plain) : [...new Set(defects.map(keyOf))].sort();
  if (by === 'severity') order.reverse();
  return order
    .map((name) => [name, defects.filter((d) => keyOf(d) === name)] as const)
    .filter(([, group]) => group.length > 0);
}

/** Defects that nobody can rule out, by subject, each with what would tell. */
function openLines({ defectsNotShown: open }: Assessment, columns: number): string[] {
  if (open.length === 0) return [];
  const subjects = [...new Set(open.map((d) => d.subject))];
  return [
    ...heading('Nobody has looked for these yet'),
    ...subjects.flatMap((subject) => [
      `  ${plain(subject)}`,
      ...open
        .filter((d) => d.subject === subject)
        .flatMap((d) => wrap(`${d.name}. ${d.proof}`, columns, '    - ')),
    ]),
  ];
}

/** The audit of a space for people: what the pictures leave open first, then each defect, then what nobody looked for. */
export function auditLines(audit: Audited, by: Grouping, columns: number): string[] {
  const { defects, defectsCount: n, coverage } = audit;
  const count = [
    `${n.shown} shown`,
    ...(n.claimed > 0 ? [`${n.claimed} said and not proved`] : []),
    ...(n.contradicted > 0 ? [`${n.contradicted} contradicted`] : []),
    ...(n.suspected > 0 ? [`${n.suspected} suspected`] : []),
    `${n.absent} ruled out`,
    `${n.notShown} not looked for`,
  ];
  const floor = units.formatQuantity(coverage.floor.areaM2, 'area', 'us', 0);
  return [
    ...heading(`Defects: ${count.join(', ')}`),
    ...wrap(
      `${percent(coverage.floor.share)} of ${floor} of floor is in a picture. Severity rests on what was measured and seen; what nobody looked at is not known to be bad, and not known to be good.`,
      columns,
    ),
    ...noticeLines(coverage.notices, columns),
    ...groupsOf(defects, by).flatMap(([name, group]) => [
      ...heading(name.charAt(0).toUpperCase() + name.slice(1)),
      ...group.flatMap((d) => defectLines(d, audit, columns)),
    ]),
    ...openLines(audit, columns),
    '',
    ...wrap(
      'Before the work of another contractor is opened or mended, ask whether contract, warranty or local law lets that contractor look and mend first. This reminds you to ask; it is no legal advice.',
      columns,
    ),
  ];
}
