import { criteria } from '@undercroft/engine';
import type { ClaimSubject, SurveyedJob } from '@undercroft/record';
import type { Assessment } from '../assessment.ts';
import { samplesOfPlan } from '../evidence/from-plan.ts';
import { samplesOfObservations } from '../evidence/from-readings.ts';
import { jobFacts } from '../evidence/job-facts.ts';
import type { ClaimChecked } from './comparison.ts';

type AcceptanceItem = SurveyedJob['acceptance'][number];

/** Things that a claim names one by one; undefined where it is about all of a kind, or says nothing. */
function itemsNamed(about: readonly ClaimSubject[] | undefined): string[] | undefined {
  if (about === undefined || about.some((one) => 'all' in one)) return undefined;
  return about.flatMap((one) => ('all' in one ? [] : [one.id]));
}

/** A criterion judged on some things only: a claim about nine piers is not broken by a tenth. */
function judgedOn(
  job: SurveyedJob,
  assessment: Assessment,
  criterion: criteria.Criterion,
  items: readonly string[],
): { readonly verdict: string; readonly reason: string } {
  const samples = [...samplesOfObservations(job), ...samplesOfPlan(job, assessment.geometry)].filter(
    (s) => s.quantity === criterion.quantity && s.item !== undefined && items.includes(s.item),
  );
  const evidence = samples.map(({ id, quantity, item, value, assumed }) => ({
    id,
    quantity,
    item,
    value,
    assumed,
  }));
  return criteria.judge(
    { ...criterion, sampling: { ...criterion.sampling, atLeast: 1 } },
    evidence,
    jobFacts(job, () => {}),
    { [criterion.quantity]: items },
  );
}

/** Holds a claim against its criterion; where that tells nothing, against the pictures. */
function checked(item: AcceptanceItem, job: SurveyedJob, assessment: Assessment): ClaimChecked {
  const { id, criterion: criterionId, title, who, when } = item;
  const criterion = criteria.criteria.find((c) => c.id === criterionId);
  const named = itemsNamed(item.about);
  const judged =
    criterion !== undefined && named !== undefined
      ? judgedOn(job, assessment, criterion, named)
      : assessment.criteria.find((c) => c.id === criterionId);
  const head = { id, title: title ?? criterion?.title ?? criterionId, who, when };
  const against = criterion === undefined ? head : { ...head, criterion: criterion.id };
  // A claim about some things says nothing of the others, and must not read as if it did.
  const of = named === undefined ? '' : ` of the ${named.length} things that it names, and of no others`;
  if (judged?.verdict === 'not-met')
    return { ...against, state: 'is-not', says: `Claimed${of}, and it is not so: ${judged.reason}` };
  if (judged?.verdict === 'met')
    return { ...against, state: 'holds', says: `Claimed${of}, and borne out: ${judged.reason}` };
  const proof = assessment.coverage?.proofs.find((p) => p.of === 'acceptance' && p.id === id);
  const pictures = proof === undefined ? '' : ` ${proof.says}`;
  return { ...against, state: 'not-shown', says: `Claimed; nothing that was measured shows it.${pictures}` };
}

/** Every claim of "done" of both surveys against what the later one found. */
export function claimsChecked(
  before: SurveyedJob,
  after: SurveyedJob,
  assessment: Assessment,
): ClaimChecked[] {
  const items = new Map([...before.acceptance, ...after.acceptance].map((item) => [item.id, item]));
  return [...items.values()].filter((item) => item.claimed).map((item) => checked(item, after, assessment));
}
