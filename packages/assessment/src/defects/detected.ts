import { criteria } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { EvidenceUsed, GeometryResult } from '../assessment.ts';
import type { Judged } from '../criteria.ts';
import type { Sample } from '../evidence/sample.ts';
import type { DefectClaim, DefectResult, DefectsCount } from './defect-result.ts';
import { extentsOf } from './extents.ts';

type Finding = SurveyedJob['findings'][number];

/** Grade of a finding that the catalogue does not have and that nobody graded. */
const UNGRADED = 1;

function claimOf(finding: Finding): criteria.ClaimedDefect {
  const { id, defect, measured, photoIds, observationIds } = finding;
  const hasProof = photoIds.length > 0 || observationIds.length > 0;
  return { id, defect, hasProof, ...(measured === undefined ? {} : { measured }) };
}

function shownClaim({
  id,
  title,
  place,
  photoIds,
  who,
  when,
  note,
  severity,
  measured,
}: Finding): DefectClaim {
  return {
    id,
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

function evidenceOf(samples: readonly Sample[], ids: readonly string[]): EvidenceUsed[] {
  const wanted = new Set(ids);
  return samples
    .filter((s) => wanted.has(s.id))
    .map((s) => ({
      value: s.value,
      unit: criteria.findQuantity(s.quantity)?.unit ?? '',
      assumed: s.assumed,
      origin: s.origin,
    }));
}

function resultOf(
  detected: criteria.DetectedDefect,
  state: DefectResult['state'],
  findings: readonly Finding[],
  samples: readonly Sample[],
): DefectResult | undefined {
  const defect = criteria.defectOf(detected.key);
  if (defect === undefined) return undefined;
  const { key, subject, name, seen, proof, remedy, causes, consequences, causedBy, leadsTo, step } = defect;
  return {
    key,
    subject,
    name: name.en,
    seen: seen.en,
    proof: proof.en,
    remedy: remedy.en,
    state,
    severity: detected.severity,
    severityBecause: detected.severityBecause,
    causes,
    consequences,
    causedBy,
    leadsTo,
    broken: detected.broken,
    notShown: detected.notShown,
    evidence: evidenceOf(samples, detected.samples),
    samples: detected.samples,
    claims: detected.claims,
    findings: findings.filter((f) => detected.claims.includes(f.id)).map(shownClaim),
    items: detected.items,
    bill: detected.bill,
    step,
    ...(defect.caution === undefined ? {} : { caution: defect.caution }),
    ...(defect.licensedTrade === undefined ? {} : { licensedTrade: defect.licensedTrade }),
  };
}

/** A finding that the catalogue does not have: shown as the surveyor wrote it. */
function ownDefect(finding: Finding): DefectResult {
  const proved = claimOf(finding).hasProof || finding.measured !== undefined;
  return {
    key: 'other',
    subject: 'other',
    name: finding.title,
    seen: finding.note ?? finding.title,
    proof: 'A picture or a measurement with the finding.',
    remedy: '',
    state: proved ? 'shown' : 'claimed',
    severity: finding.severity ?? UNGRADED,
    severityBecause: [finding.severity === undefined ? 'nobody graded it' : `graded by ${finding.who}`],
    causes: [],
    consequences: [],
    causedBy: [],
    leadsTo: [],
    broken: [],
    notShown: [],
    evidence: [],
    samples: [],
    claims: [finding.id],
    findings: [shownClaim(finding)],
    items: [],
    bill: { unit: 'lot', from: 'not in the catalogue', assumed: false },
    step: 'prove',
  };
}

function inOrder(a: DefectResult, b: DefectResult): number {
  const order = (d: DefectResult) => criteria.REPAIR_ORDER.indexOf(d.step);
  return b.severity - a.severity || order(a) - order(b) || (a.key < b.key ? -1 : a.key > b.key ? 1 : 0);
}

/** Every defect that was shown, claimed or contradicted, the gravest first, and how many stand otherwise. */
export function detectedDefects(
  job: SurveyedJob,
  geometry: GeometryResult,
  judged: Judged,
  samples: readonly Sample[],
  facts: criteria.JobFacts,
): { readonly defects: readonly DefectResult[]; readonly count: DefectsCount } {
  const detected = criteria.detectDefects({
    criteria: judged.criteria,
    judgements: judged.judgements,
    samples: judged.evidence,
    facts,
    claims: job.findings.map(claimOf),
    extents: extentsOf(job, geometry),
  });
  const known = detected.flatMap((one) => {
    const { state } = one;
    if (state === 'absent' || state === 'not-shown') return [];
    return resultOf(one, state, job.findings, samples) ?? [];
  });
  const own = job.findings.filter((f) => criteria.defectOf(f.defect) === undefined).map(ownDefect);
  const defects = [...known, ...own].sort(inOrder);
  const present = new Set(defects.map((d) => d.key));
  const states = (state: string) => detected.filter((d) => d.state === state).length;
  return {
    defects: defects.map((d) => ({
      ...d,
      causedBy: d.causedBy.filter((key) => present.has(key)),
      leadsTo: d.leadsTo.filter((key) => present.has(key)),
    })),
    count: {
      shown: states('shown') + own.filter((d) => d.state === 'shown').length,
      claimed: states('claimed') + own.filter((d) => d.state === 'claimed').length,
      contradicted: states('contradicted'),
      absent: states('absent'),
      notShown: states('not-shown'),
    },
  };
}
