import { causes, criteria } from '@undercroft/engine';
import { balanceEvidence } from './balance.ts';
import type { CauseEvidenceShown } from './causes-assessment.ts';
import { defectEvidence } from './defect-evidence.ts';
import type { SignValue } from './sign-values.ts';
import type { ConditionState } from './states.ts';
import type { CausesSubject } from './subject.ts';

/** All evidence of a job: what the engine weighs, and how each item is shown, by its id. */
export interface JobEvidence {
  readonly items: readonly causes.CauseEvidence[];
  readonly shown: ReadonlyMap<string, CauseEvidenceShown>;
}

const timesOf = (logRatio: number) => Math.exp(Math.min(Math.abs(logRatio), causes.ITEM_CAP));

/** Ids of the criteria of this job that were judged on a quantity. */
function judgedOn(subject: CausesSubject, quantity: string | undefined): string[] {
  if (quantity === undefined) return [];
  const of = new Set(criteria.baseCatalogue.criteria.filter((c) => c.quantity === quantity).map((c) => c.id));
  return subject.criteria.filter((c) => of.has(c.id) && c.verdict !== 'not-shown').map((c) => c.id);
}

function ofSigns(
  subject: CausesSubject,
  values: ReadonlyMap<string, SignValue>,
  add: (item: causes.CauseEvidence, shown: CauseEvidenceShown) => void,
): void {
  for (const sign of causes.causeSigns) {
    const found = values.get(sign.key);
    if (found === undefined) continue;
    for (const explains of Object.keys(sign.model.tells) as causes.CauseKey[]) {
      const logRatio = causes.logLikelihoodRatio(sign.model, explains, found.value, found.doubt ?? 0);
      if (logRatio === 0) continue;
      const id = `${sign.key}:${explains}`;
      add(
        { id, explains, ...(sign.of === undefined ? {} : { of: sign.of }), group: sign.group, logRatio },
        {
          id,
          explains,
          title: sign.title,
          value: found.value,
          unit: causes.signUnit(sign),
          says: logRatio > 0 ? 'for' : 'against',
          times: timesOf(logRatio),
          basis: found.basis,
          reason: sign.reason,
          origins: found.origins,
          criteria: judgedOn(subject, sign.quantity),
        },
      );
    }
  }
}

/** Everything in a job that speaks for or against an explanation. */
export function evidenceOfJob(subject: CausesSubject, values: ReadonlyMap<string, SignValue>): JobEvidence {
  const items: causes.CauseEvidence[] = [];
  const shown = new Map<string, CauseEvidenceShown>();
  const add = (item: causes.CauseEvidence, one: CauseEvidenceShown) => {
    items.push(item);
    shown.set(one.id, one);
  };
  ofSigns(subject, values, add);
  for (const { item, shown: one } of defectEvidence(subject, [...items])) add(item, one);
  for (const { item, shown: one } of balanceEvidence(subject)) add(item, one);
  return { items, shown };
}

/** How the engine's evidence that a condition was seen, or looked for in vain, is shown. */
export function evidenceOfState({ key, state, because, origins }: ConditionState): CauseEvidenceShown {
  const seen = state === 'seen';
  return {
    id: `seen:${key}`,
    explains: key,
    title: causes.causeNode(key).title,
    value: seen,
    unit: 'yes-no',
    says: seen ? 'for' : 'against',
    times: seen ? causes.SEEN_TIMES.seen : causes.SEEN_TIMES.absent,
    basis: 'seen',
    reason: because,
    origins,
    criteria: [],
  };
}
