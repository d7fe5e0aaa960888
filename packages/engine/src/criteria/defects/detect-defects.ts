import { holds } from '../condition.ts';
import type { FactKey } from '../facts.ts';
import { type BillQuantity, billOfDefect } from './bill-of-defect.ts';
import type { Defect } from './defect.ts';
import { gradeDefect, shareOfFault } from './defect-severity.ts';
import { defects as catalogue } from './defects.ts';
import { type DefectEvidence, itemsJudged } from './evidence-of-defects.ts';
import { type Look, lookAt, type SortedJob, sortedJob } from './look-at-proof.ts';
import type { Proof } from './proof.ts';
import { defectRules } from './rules.ts';

/**
 * `shown`: measured, or claimed with proof. `claimed`: a surveyor says so without proof. `contradicted`: claimed, but what
 * was measured says otherwise; both are kept. `absent`: measured, and not so. `not-shown`: nobody knows.
 */
export type DefectState = 'shown' | 'claimed' | 'contradicted' | 'absent' | 'not-shown';

/** How sure a defect is: measured; seen and proved by a picture or reading; or no more than said or supposed. */
export type DefectCertainty = 'measured' | 'seen' | 'suspected' | 'none';

/** One defect of the catalogue, judged by what is known of a space. */
export interface DetectedDefect {
  readonly key: string;
  readonly state: DefectState;
  readonly certainty: DefectCertainty;
  /** Why it is in that state: what shows it, what speaks against it, what makes it likely. Plain sentences. */
  readonly because: readonly string[];
  /** Grade of the catalogue, raised only by what was measured; that of the catalogue where nothing is shown. */
  readonly severity: Defect['severity'];
  readonly severityBecause: readonly string[];
  /** Ids of its criteria by verdict; only those that apply. */
  readonly broken: readonly string[];
  readonly met: readonly string[];
  readonly notShown: readonly string[];
  /** Ids of the samples that show it, and of those that speak against it, sorted. */
  readonly samples: readonly string[];
  readonly against: readonly string[];
  /** Facts about the job that show it or speak against it, sorted. */
  readonly facts: readonly FactKey[];
  /** Ids of the claims. */
  readonly claims: readonly string[];
  /** Ids of the items that have it, sorted. */
  readonly items: readonly string[];
  /** Share of the plan's length, area or count that has it, where that is known. */
  readonly share?: number;
  readonly bill: BillQuantity;
}

const sortedUnique = (ids: readonly string[]): string[] => [...new Set(ids)].sort();

/** What all the proofs of a defect come to, without any claim. */
interface Measured {
  readonly state: 'shown' | 'absent' | 'open';
  readonly likely: boolean;
  readonly looks: readonly Look[];
}

function measuredState(defect: Defect, job: SortedJob): Measured {
  const rules = defectRules[defect.key] ?? { proofs: [] };
  const look = (proofs: readonly Proof[] = []) => proofs.map((proof) => lookAt(proof, job));
  const needed = look(rules.proofs).filter(({ outcome }) => outcome !== 'aside');
  const also = look(rules.also);
  const hints = look(rules.hints).filter(({ outcome }) => outcome === 'shows');
  const both = [...needed, ...also];
  const showing = both.filter(({ outcome }) => outcome === 'shows');
  const leaning = both.filter(({ outcome }) => outcome === 'leans');
  const speaking = both.filter(({ outcome }) => outcome === 'clears');
  if (showing.length > 0) return { state: 'shown', likely: true, looks: showing };
  const refuted = needed.length > 0 && needed.every(({ outcome }) => outcome === 'clears');
  if (refuted && leaning.length === 0) return { state: 'absent', likely: false, looks: speaking };
  const likely = [...leaning, ...hints];
  return { state: 'open', likely: likely.length > 0, looks: [...likely, ...speaking] };
}

function itemsOf(defect: Defect, looks: readonly Look[], job: SortedJob) {
  const named = (ids: readonly string[]) => ids.flatMap((id) => job.itemOf.get(id) ?? []);
  const failing = new Set(looks.flatMap(({ by }) => named(by)));
  const passing = new Set(looks.flatMap(({ against }) => named(against)));
  for (const proof of defectRules[defect.key]?.proofs ?? []) {
    const criterion = proof.by === 'criterion' ? job.criteria.get(proof.id) : undefined;
    if (criterion === undefined) continue;
    const judged = itemsJudged(criterion, job.sorted(criterion.quantity).measured);
    for (const item of judged.failing) failing.add(item);
    for (const item of judged.passing) passing.add(item);
  }
  return { failing: [...failing].sort(), seen: new Set([...failing, ...passing]).size };
}

function stateOf(measured: Measured, claims: DefectEvidence['claims']): [DefectState, DefectCertainty] {
  if (measured.state === 'shown') return ['shown', 'measured'];
  if (claims.length === 0) {
    if (measured.state === 'absent') return ['absent', 'none'];
    return ['not-shown', measured.likely ? 'suspected' : 'none'];
  }
  if (measured.state === 'absent') return ['contradicted', 'suspected'];
  const proved = claims.some((claim) => claim.hasProof || claim.measured !== undefined);
  return proved ? ['shown', 'seen'] : ['claimed', 'suspected'];
}

function detectOne(
  defect: Defect,
  claims: DefectEvidence['claims'],
  evidence: DefectEvidence,
  job: SortedJob,
): DetectedDefect {
  const rules = defectRules[defect.key] ?? { proofs: [] };
  const bears = rules.appliesWhen === undefined || holds(rules.appliesWhen, evidence.facts) !== false;
  const measured: Measured = bears
    ? measuredState(defect, job)
    : { state: 'absent', likely: false, looks: [] };
  const [state, certainty] = stateOf(measured, claims);
  const items = itemsOf(defect, measured.state === 'shown' ? measured.looks : [], job);
  const share = shareOfFault(defect, evidence, claims, items.failing.length);
  const graded = gradeDefect(defect, rules, job, share);
  const verdicts = defect.criteria.flatMap(job.named).filter(({ applies }) => applies === true);
  const withVerdict = (wanted: string) =>
    verdicts.filter(({ verdict }) => verdict === wanted).map(({ criterionId }) => criterionId);
  return {
    key: defect.key,
    state,
    certainty,
    because: bears
      ? [...new Set(measured.looks.map((look) => look.because))].filter((text) => text !== '')
      : ['The space has none of what it is about.'],
    severity: graded.severity,
    severityBecause: graded.because,
    broken: withVerdict('not-met'),
    met: withVerdict('met'),
    notShown: withVerdict('not-shown'),
    samples: sortedUnique(measured.looks.flatMap(({ by }) => by)),
    against: sortedUnique(measured.looks.flatMap(({ against }) => against)),
    facts: [...new Set(measured.looks.flatMap((look) => look.facts))].sort(),
    claims: claims.map((claim) => claim.id),
    items: items.failing,
    ...(share === undefined ? {} : { share }),
    // What was measured without naming an item is at least one.
    bill: billOfDefect(defect, evidence, claims, {
      failing: Math.max(items.failing.length, measured.state === 'shown' && claims.length === 0 ? 1 : 0),
      seen: items.seen,
    }),
  };
}

function claimsByDefect(claims: DefectEvidence['claims']): ReadonlyMap<string, DefectEvidence['claims']> {
  const byDefect = new Map<string, DefectEvidence['claims'][number][]>();
  for (const claim of [...claims].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    const some = byDefect.get(claim.defect);
    if (some) some.push(claim);
    else byDefect.set(claim.defect, [claim]);
  }
  return byDefect;
}

/**
 * Some defects of the catalogue, in their order, judged by their proofs and by what the surveyor claims. Claims of other
 * keys (such as `other`) are not looked at. The order of samples and claims has no influence.
 */
export function detectAmong(some: readonly Defect[], evidence: DefectEvidence): readonly DetectedDefect[] {
  const job = sortedJob(evidence);
  const claims = claimsByDefect(evidence.claims);
  return some.map((defect) => detectOne(defect, claims.get(defect.key) ?? [], evidence, job));
}

/** Every defect of the catalogue; see `detectAmong`. */
export function detectDefects(evidence: DefectEvidence): readonly DetectedDefect[] {
  return detectAmong(catalogue, evidence);
}
