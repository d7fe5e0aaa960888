import { EngineError } from '../numerics/engine-error.ts';
import { holds, openFacts } from './condition.ts';
import { type ItemsToCover, withCoverage } from './coverage.ts';
import type { Criterion } from './criterion.ts';
import { type Evidence, sortEvidence } from './evidence.ts';
import { facts as factRegistry, type JobFacts } from './facts.ts';
import type { CriteriaIssue } from './issue.ts';
import { judgeAnswers } from './judge-answers.ts';
import { judgeNumbers } from './judge-numbers.ts';
import type { Judgement } from './judgement.ts';
import { valueText } from './limit-text.ts';
import { findQuantity } from './quantities.ts';

function factIssues(facts: JobFacts, names: readonly string[]): CriteriaIssue[] {
  const issues: CriteriaIssue[] = [];
  for (const name of names) {
    const value = facts[name as keyof JobFacts];
    if (value === undefined) continue;
    const { values } = factRegistry[name as keyof JobFacts];
    issues.push({
      path: `fact ${name}`,
      found: String(value),
      expected: values === 'yes-no' ? 'true or false' : `one of ${values.join(', ')}`,
    });
  }
  return issues;
}

function assumedText({ id, value }: Evidence, criterion: Criterion): string {
  const shown = typeof value === 'number' ? valueText(value, criterion) : value ? 'yes' : 'no';
  return `${shown} [${id}]`;
}

/** Judges samples that all are of the criterion's quantity. */
function judgeSamples(
  criterion: Criterion,
  samples: readonly Evidence[],
  facts: JobFacts,
  items: ItemsToCover | undefined,
): Judgement {
  const quantity = findQuantity(criterion.quantity);
  if (!quantity) {
    throw new EngineError(
      'bad-input',
      `criterion ${criterion.id} asks for "${criterion.quantity}", which is not a registered quantity`,
    );
  }
  const applies = holds(criterion.appliesWhen, facts);
  if (applies === false) {
    return {
      criterionId: criterion.id,
      verdict: 'not-shown',
      applies,
      evidence: [],
      reason: 'Does not apply to this job.',
      assumed: false,
      issues: [],
    };
  }
  const { measured, assumed, issues } = sortEvidence(samples, quantity);
  const found =
    quantity.unit === 'yes-no' ? judgeAnswers(criterion, measured) : judgeNumbers(criterion, measured);
  const finding = withCoverage(found, measured, items?.[criterion.quantity]);
  const notes: string[] = [finding.reason];
  const tooFew = measured.length < criterion.sampling.atLeast || finding !== found;
  const leansOnAssumption = finding.verdict === 'not-shown' && tooFew && assumed.length > 0;
  if (leansOnAssumption) {
    notes.push(
      `Assumed, not measured: ${assumed.map((sample) => assumedText(sample, criterion)).join('; ')}.`,
    );
  }
  let allIssues = issues;
  if (applies === 'unknown') {
    const open = openFacts(criterion.appliesWhen, facts);
    notes.push(`Not known whether it applies: ${open.map((key) => factRegistry[key].question).join(' ')}`);
    allIssues = [...issues, ...factIssues(facts, open)];
  }
  // Field by field: spreading objects of changing shape took half of the time of judging a job.
  return {
    criterionId: criterion.id,
    verdict: finding.verdict,
    applies,
    value: finding.value,
    evidence: finding.evidence,
    margin: finding.margin,
    reason: notes.join(' '),
    assumed: leansOnAssumption,
    issues: allIssues,
  };
}

/**
 * Judges one criterion by the evidence of a job.
 *
 * `met` needs the criterion's number of measured samples, all doubt included, on the passing side. One failing sample
 * is enough for `not-met` where every sample must pass. Too few samples, a sample whose doubt reaches over the limit,
 * or nothing but assumed values give `not-shown`. A criterion that does not apply is `not-shown` with `applies` false;
 * where that is unknown the verdict is given and `applies` says `unknown`. The order of the evidence has no influence.
 * @param evidence samples of any quantities; only those of the criterion's quantity count
 * @param items items that each need a sample before `met`; without it the criterion's own number is enough
 * @throws EngineError `bad-input` for an unregistered quantity or a limit that does not fit the comparison
 */
export function judge(
  criterion: Criterion,
  evidence: readonly Evidence[],
  facts: JobFacts,
  items?: ItemsToCover,
): Judgement {
  return judgeSamples(
    criterion,
    evidence.filter(({ quantity }) => quantity === criterion.quantity),
    facts,
    items,
  );
}

const NO_SAMPLES: readonly Evidence[] = [];

/** Judges many criteria, in their order, as `judge` does one; the evidence is sorted by quantity once. */
export function judgeAll(
  criteria: readonly Criterion[],
  evidence: readonly Evidence[],
  facts: JobFacts,
  items?: ItemsToCover,
): readonly Judgement[] {
  const byQuantity = new Map<string, Evidence[]>();
  for (const sample of evidence) {
    const samples = byQuantity.get(sample.quantity);
    if (samples) samples.push(sample);
    else byQuantity.set(sample.quantity, [sample]);
  }
  return criteria.map((criterion) =>
    judgeSamples(criterion, byQuantity.get(criterion.quantity) ?? NO_SAMPLES, facts, items),
  );
}
