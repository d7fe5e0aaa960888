import { criteria } from '@undercroft/engine';
import { isSurveyed, type Job } from '@undercroft/record';
import type { CriterionResult, Verdict } from '../assessment.ts';
import { catalogueOf } from '../criteria.ts';
import { jobFacts } from '../evidence/job-facts.ts';

/** How one value stands against one criterion. */
export interface ValueAgainstCriterion {
  readonly id: string;
  readonly title: string;
  readonly kind: CriterionResult['kind'];
  /** The limit in words and US units, and in SI units. */
  readonly limit: string;
  readonly limitSi: string;
  readonly verdict: Verdict;
  /** False where it is not known whether the criterion applies here. */
  readonly applies: boolean;
}

const BINDING: readonly CriterionResult['kind'][] = ['code', 'standard', 'guide', 'practice'];

/**
 * How a value that somebody types stands against every criterion that may apply, what binds most first. One sample alone:
 * a criterion that asks for several may still not be shown.
 */
export function valueAgainstCriteria(
  job: Job,
  quantity: string,
  value: number | boolean,
): ValueAgainstCriterion[] {
  const facts = isSurveyed(job) ? jobFacts(job, () => {}) : {};
  const sample = { id: 'draft', quantity, value, assumed: false };
  return catalogueOf(job, [])
    .criteria.filter((criterion) => criterion.quantity === quantity)
    .flatMap((criterion) => {
      const alone = { ...criterion, sampling: { ...criterion.sampling, atLeast: 1 } };
      const judgement = criteria.judge(alone, [sample], facts);
      if (judgement.applies === false || judgement.issues.length > 0) return [];
      const { us, si } = criteria.limitText(criterion);
      return [
        {
          id: criterion.id,
          title: criterion.title,
          kind: criterion.kind,
          limit: us,
          limitSi: si,
          verdict: judgement.verdict,
          applies: judgement.applies === true,
        },
      ];
    })
    .sort((a, b) => BINDING.indexOf(a.kind) - BINDING.indexOf(b.kind));
}
