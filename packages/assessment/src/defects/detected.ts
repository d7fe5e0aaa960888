import { criteria } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import type { Judged } from '../criteria.ts';
import { itemsToShow } from '../evidence/from-plan.ts';
import type { Sample } from '../evidence/sample.ts';
import type { EvidenceUsed } from '../evidence-used.ts';
import type {
  DefectClaim,
  DefectNotShown,
  DefectPlace,
  DefectResult,
  DefectsCount,
} from './defect-result.ts';
import { drawnExtents, extentsOf } from './extents.ts';
import { planItems } from './place-of-item.ts';
import { placesOf } from './places.ts';

type Finding = SurveyedJob['findings'][number];

/** Grade of a finding that the catalogue does not have and that nobody graded. */
const UNGRADED = 1;

const hasProof = ({ photoIds, observationIds }: Finding) => photoIds.length > 0 || observationIds.length > 0;

function claimOf(finding: Finding): criteria.ClaimedDefect {
  const { id, defect, measured } = finding;
  return { id, defect, hasProof: hasProof(finding), ...(measured === undefined ? {} : { measured }) };
}

function shownClaim(finding: Finding, index: number): DefectClaim {
  const { id, title, place, photoIds, who, when, note, severity, measured } = finding;
  return {
    id,
    number: index + 1,
    title,
    ...(place.at === undefined ? {} : { at: place.at }),
    ...(place.words === undefined ? {} : { words: place.words }),
    photoIds,
    who,
    when,
    ...(note === undefined ? {} : { note }),
    ...(severity === undefined ? {} : { severity }),
    ...(measured === undefined ? {} : { measured }),
  };
}

function evidenceOf(samples: ReadonlyMap<string, Sample>, ids: readonly string[]): EvidenceUsed[] {
  return ids.flatMap((id) => {
    const s = samples.get(id);
    if (s === undefined) return [];
    const unit = criteria.findQuantity(s.quantity)?.unit ?? '';
    return [{ value: s.value, unit, assumed: s.assumed, origin: s.origin }];
  });
}

function sourceOf({ certainty, claims }: criteria.DetectedDefect): DefectResult['source'] {
  if (claims.length === 0) return certainty === 'none' ? 'none' : 'measured';
  return certainty === 'measured' ? 'both' : 'finding';
}

function resultOf(
  detected: criteria.DetectedDefect,
  findings: readonly DefectClaim[],
  samples: ReadonlyMap<string, Sample>,
  places: readonly DefectPlace[],
): DefectResult {
  const defect = criteria.defectOf(detected.key) as criteria.Defect;
  const { key, subject, name, seen, proof, remedy, causes, consequences, causedBy, leadsTo, step } = defect;
  return {
    key,
    subject,
    name: name.en,
    seen: seen.en,
    proof: proof.en,
    remedy: remedy.en,
    state: detected.state,
    certainty: detected.certainty,
    source: sourceOf(detected),
    because: detected.because,
    severity: detected.severity,
    severityBecause: detected.severityBecause,
    causes,
    consequences,
    causedBy,
    leadsTo,
    broken: detected.broken,
    met: detected.met,
    notShown: detected.notShown,
    evidence: evidenceOf(samples, detected.samples),
    against: evidenceOf(samples, detected.against),
    facts: detected.facts,
    findings: findings.filter((f) => detected.claims.includes(f.id)),
    places,
    items: detected.items,
    ...(detected.share === undefined ? {} : { share: detected.share }),
    bill: detected.bill,
    step,
    ...(defect.caution === undefined ? {} : { caution: defect.caution }),
    ...(defect.licensedTrade === undefined ? {} : { licensedTrade: defect.licensedTrade }),
  };
}

/** A finding that the catalogue does not have: shown as the surveyor wrote it. */
function ownDefect(finding: Finding, claim: DefectClaim, places: readonly DefectPlace[]): DefectResult {
  const { title, note, severity, who, measured } = finding;
  const proved = hasProof(finding) || measured !== undefined;
  return {
    key: 'other',
    subject: 'other',
    name: title,
    seen: note ?? title,
    proof: 'A picture or a measurement with the finding.',
    remedy: '',
    state: proved ? 'shown' : 'claimed',
    certainty: proved ? 'seen' : 'suspected',
    source: 'finding',
    because: [],
    severity: severity ?? UNGRADED,
    severityBecause: [severity === undefined ? 'nobody graded it' : `graded by ${who}`],
    causes: [],
    consequences: [],
    causedBy: [],
    leadsTo: [],
    broken: [],
    met: [],
    notShown: [],
    evidence: [],
    against: [],
    facts: [],
    findings: [claim],
    places,
    items: [],
    bill: { unit: 'lot', from: 'not in the catalogue', assumed: false },
    step: 'prove',
    mendedNot: 'The catalogue does not have it.',
  };
}

const RANK: Readonly<Record<criteria.DefectState, number>> = {
  shown: 0,
  claimed: 1,
  contradicted: 2,
  'not-shown': 3,
  absent: 4,
};

function inOrder(a: DefectResult, b: DefectResult): number {
  const order = (d: DefectResult) => criteria.REPAIR_ORDER.indexOf(d.step);
  return (
    RANK[a.state] - RANK[b.state] ||
    b.severity - a.severity ||
    order(a) - order(b) ||
    (a.key < b.key ? -1 : a.key > b.key ? 1 : 0)
  );
}

/** Defects of a job, and what is still open about the rest of the catalogue. */
export interface DetectedDefects {
  /** Every defect of the catalogue as the engine judged it. */
  readonly detected: readonly criteria.DetectedDefect[];
  /** Shown, claimed, contradicted or suspected; the surest and gravest first. */
  readonly defects: readonly DefectResult[];
  readonly notShown: readonly DefectNotShown[];
  readonly count: DefectsCount;
}

function countOf(detected: readonly criteria.DetectedDefect[], own: readonly DefectResult[]): DefectsCount {
  const states = (state: criteria.DefectState) =>
    detected.filter((d) => d.state === state).length + own.filter((d) => d.state === state).length;
  const suspected = detected.filter((d) => d.state === 'not-shown' && d.certainty === 'suspected').length;
  return {
    shown: states('shown'),
    claimed: states('claimed'),
    suspected,
    contradicted: states('contradicted'),
    absent: states('absent'),
    notShown: states('not-shown') - suspected,
  };
}

/** Looks for every defect of the catalogue in a job, and takes in what the surveyor found besides. */
export function detectedDefects(
  job: SurveyedJob,
  geometry: GeometryResult,
  judged: Judged,
  samples: readonly Sample[],
  facts: criteria.JobFacts,
): DetectedDefects {
  const detected = criteria.detectDefects({
    criteria: judged.criteria,
    judgements: judged.judgements,
    samples: judged.evidence,
    facts,
    items: itemsToShow(job),
    claims: job.findings.map(claimOf),
    extents: extentsOf(job, geometry),
    drawn: drawnExtents(job, geometry),
  });
  const claims = job.findings.map(shownClaim);
  const byId = new Map(samples.map((s) => [s.id, s]));
  const places = placesOf(job, samples, planItems(job, geometry));
  const open = detected.filter((d) => d.state === 'not-shown' && d.certainty === 'none');
  const known = detected
    .filter((d) => d.state !== 'absent' && !open.includes(d))
    .map((d) => resultOf(d, claims, byId, places(d)));
  const own = job.findings.flatMap((finding, i) =>
    criteria.defectOf(finding.defect) === undefined
      ? [ownDefect(finding, claims[i], places({ ...NOTHING, claims: [finding.id] }))]
      : [],
  );
  const present = new Set(known.filter((d) => d.state !== 'contradicted').map((d) => d.key));
  return {
    detected,
    defects: [...known, ...own].sort(inOrder).map((d) => ({
      ...d,
      causedBy: d.causedBy.filter((key) => present.has(key)),
      leadsTo: d.leadsTo.filter((key) => present.has(key)),
    })),
    notShown: open.map(({ key, severity }): DefectNotShown => {
      const { subject, name, proof } = criteria.defectOf(key) as criteria.Defect;
      return { key, subject, name: name.en, proof: proof.en, severity };
    }),
    count: countOf(detected, own),
  };
}

const NOTHING = { claims: [], samples: [], items: [] } as const;
