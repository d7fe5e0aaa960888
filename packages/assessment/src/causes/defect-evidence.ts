import { causes, criteria } from '@undercroft/engine';
import type { Origin } from '../origin.ts';
import type { CauseEvidenceShown } from './causes-assessment.ts';
import type { ConditionState } from './states.ts';
import type { CausesSubject, DefectKnown } from './subject.ts';

/** Evidence of one defect with what is shown of it. */
export interface DefectEvidenceItem {
  readonly item: causes.CauseEvidence;
  readonly shown: CauseEvidenceShown;
}

const NAMES = {
  shown: 'Shown by what was measured, or claimed with proof.',
  claimed: 'Claimed by the surveyor, without proof yet.',
  contradicted: 'Claimed, but what was measured says otherwise.',
} as const;

const nameOf = (key: string) => criteria.defectOf(key)?.name.en ?? key.replaceAll('-', ' ');

/** Claims and samples that a defect rests on. */
function originsOf({ job, samples }: CausesSubject, defect: DefectKnown): Origin[] {
  const claims = job.findings
    .filter((f) => defect.claims.includes(f.id))
    .map((f): Origin => ({ kind: 'finding', id: f.id, who: f.who, when: f.when, note: f.title }));
  const measured = samples.filter((s) => defect.samples.includes(s.id)).map((s) => s.origin);
  return [...claims, ...measured];
}

/**
 * Defects that were shown, claimed or contradicted, as evidence on the explanations that they speak for. A defect that was
 * shown by a measurement says nothing beside the sign that weighs this measurement itself.
 * @param signs evidence of the signs that were taken
 */
export function defectEvidence(
  subject: CausesSubject,
  signs: readonly causes.CauseEvidence[],
): DefectEvidenceItem[] {
  const weighed = new Set(signs.map((s) => `${s.group} ${s.explains}`));
  const found = new Map(subject.defects?.map((d) => [d.key, d]));
  return causes.defectSigns.flatMap(({ defect: key, explains, of, group }) => {
    const defect = found.get(key);
    if (defect === undefined || !(defect.state in causes.DEFECT_TIMES)) return [];
    const origins = originsOf(subject, defect);
    if (origins.length === 0) return [];
    const state = defect.state as keyof typeof causes.DEFECT_TIMES;
    if (state === 'shown' && weighed.has(`${group} ${explains}`)) return [];
    const times = causes.DEFECT_TIMES[state];
    const id = `defect-${key}:${explains}`;
    return [
      {
        item: { id, explains, ...(of === undefined ? {} : { of }), group, logRatio: Math.log(times) },
        shown: {
          id,
          explains,
          title: nameOf(key),
          says: times > 1 ? 'for' : 'against',
          times: Math.max(times, 1 / times),
          basis: 'defect',
          reason: NAMES[state],
          origins,
          criteria: [],
        },
      },
    ];
  });
}

/** States with what defects sight: a condition that nobody measured is seen where a defect says so. */
export function withSightings(subject: CausesSubject, states: readonly ConditionState[]): ConditionState[] {
  const sighted = new Map<causes.CauseKey, ConditionState>();
  for (const defect of subject.defects ?? []) {
    const key = causes.DEFECT_SIGHTINGS[defect.key];
    if (key === undefined || (defect.state !== 'shown' && defect.state !== 'claimed')) continue;
    const origins = originsOf(subject, defect);
    if (origins.length === 0) continue;
    const known = sighted.get(key);
    sighted.set(key, {
      key,
      state: 'seen',
      because: known?.because ?? `Found by the surveyor: ${nameOf(defect.key).toLowerCase()}.`,
      origins: [...(known?.origins ?? []), ...origins],
    });
  }
  const own = states.map((state) =>
    state.state === 'not-shown' ? (sighted.get(state.key) ?? state) : state,
  );
  const listed = new Set(own.map((s) => s.key));
  return [...own, ...[...sighted.values()].filter((s) => !listed.has(s.key))];
}
