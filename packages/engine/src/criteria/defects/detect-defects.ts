import type { Criterion } from '../criterion.ts';
import type { Judgement } from '../judgement.ts';
import { type BillQuantity, billOfDefect } from './bill-of-defect.ts';
import type { Defect } from './defect.ts';
import { gradeDefect } from './defect-severity.ts';
import { defects as catalogue } from './defects.ts';
import { type DefectEvidence, isNamedBy, itemsJudged } from './evidence-of-defects.ts';

/**
 * `shown`: measured, or claimed with proof. `claimed`: a surveyor says so without proof. `contradicted`: claimed, but what
 * was measured says otherwise; both are kept. `absent`: measured, and not so. `not-shown`: nobody knows.
 */
export type DefectState = 'shown' | 'claimed' | 'contradicted' | 'absent' | 'not-shown';

/** One defect of the catalogue, judged by what is known of a space. */
export interface DetectedDefect {
  readonly key: string;
  readonly state: DefectState;
  /** Grade of the catalogue, raised only by what was measured; that of the catalogue where nothing is shown. */
  readonly severity: Defect['severity'];
  readonly severityBecause: readonly string[];
  /** Ids of its criteria by verdict; only those that apply. */
  readonly broken: readonly string[];
  readonly met: readonly string[];
  readonly notShown: readonly string[];
  /** Ids of the samples behind the verdicts, sorted. */
  readonly samples: readonly string[];
  /** Ids of the claims. */
  readonly claims: readonly string[];
  /** Ids of the items that fail. */
  readonly items: readonly string[];
  readonly bill: BillQuantity;
}

interface Judged {
  readonly criterion: Criterion;
  readonly judgement: Judgement;
}

function stateOf(
  claims: DefectEvidence['claims'],
  broken: readonly Judged[],
  met: readonly Judged[],
): DefectState {
  if (broken.length > 0) return 'shown';
  if (claims.length > 0) {
    if (met.length > 0) return 'contradicted';
    return claims.some((claim) => claim.hasProof || claim.measured !== undefined) ? 'shown' : 'claimed';
  }
  return met.length > 0 ? 'absent' : 'not-shown';
}

function detectOne(
  defect: Defect,
  judged: readonly Judged[],
  claims: DefectEvidence['claims'],
  evidence: DefectEvidence,
): DetectedDefect {
  const named = (ids: readonly string[]) =>
    judged.filter(({ criterion }) => ids.some((id) => isNamedBy(criterion.id, id)));
  const telling = named(defect.shownBy ?? defect.criteria);
  // A fact that is not known leaves open whether a criterion applies: it shows nothing then.
  const applying = telling.filter(({ judgement }) => judgement.applies === true);
  const broken = applying.filter(({ judgement }) => judgement.verdict === 'not-met');
  const met = applying.filter(({ judgement }) => judgement.verdict === 'met');
  const open = named(defect.criteria).filter(
    ({ judgement }) => judgement.applies !== false && judgement.verdict === 'not-shown',
  );
  const state = stateOf(claims, broken, met);
  const perItem = broken.map(({ criterion }) => itemsJudged(criterion, evidence));
  const failing = new Set(perItem.flatMap((one) => one.failing));
  const seen = new Set(perItem.flatMap((one) => [...one.failing, ...one.passing]));
  const items = { failing: failing.size, seen: seen.size };
  const graded =
    state === 'shown'
      ? gradeDefect(defect, evidence, claims, items)
      : { severity: defect.severity, because: [defect.gradedBecause] };
  const ids = (list: readonly Judged[]) => list.map(({ criterion }) => criterion.id);
  return {
    key: defect.key,
    state,
    severity: graded.severity,
    severityBecause: graded.because,
    broken: ids(broken),
    met: ids(met),
    notShown: ids(open),
    samples: [...new Set([...broken, ...met].flatMap(({ judgement }) => judgement.evidence))].sort(),
    claims: claims.map((claim) => claim.id),
    items: [...failing].sort(),
    bill: billOfDefect(defect, evidence, claims, items),
  };
}

/**
 * Every defect of the catalogue, in its order, judged by the criteria it breaks and by what the surveyor claims. Claims of
 * unknown keys (such as `other`) are not looked at here. The order of samples and claims has no influence.
 */
export function detectDefects(evidence: DefectEvidence): readonly DetectedDefect[] {
  const byId = new Map(evidence.criteria.map((criterion) => [criterion.id, criterion]));
  const judged = evidence.judgements.flatMap((judgement): Judged[] => {
    const criterion = byId.get(judgement.criterionId);
    return criterion === undefined ? [] : [{ criterion, judgement }];
  });
  const claimsOf = new Map<string, DefectEvidence['claims'][number][]>();
  for (const claim of [...evidence.claims].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    claimsOf.set(claim.defect, [...(claimsOf.get(claim.defect) ?? []), claim]);
  }
  const found = catalogue.map((defect) =>
    detectOne(defect, judged, claimsOf.get(defect.key) ?? [], evidence),
  );
  const shown = new Set(found.filter((d) => d.state === 'shown').map((d) => d.key));
  return found.map((one, index) => {
    const graver = catalogue[index]?.yieldsTo;
    const yields =
      graver !== undefined && shown.has(graver) && one.state === 'shown' && one.claims.length === 0;
    return yields ? { ...one, state: 'absent' as const } : one;
  });
}
