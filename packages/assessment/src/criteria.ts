import { criteria } from '@undercroft/engine';
import type { Job, SurveyedJob } from '@undercroft/record';
import type { CautionShown, CriterionResult, OpenQuestion } from './assessment.ts';
import { itemsToShow } from './evidence/from-plan.ts';
import type { Sample } from './evidence/sample.ts';

/** Criteria of a job as the engine judged them, and the samples that it was given. */
export interface Judged {
  readonly criteria: readonly criteria.Criterion[];
  readonly judgements: readonly criteria.Judgement[];
  readonly evidence: readonly criteria.Evidence[];
}

/** Judged criteria and what was wrong with the evidence. */
export interface JudgedCriteria extends Judged {
  readonly results: readonly CriterionResult[];
  readonly openQuestions: readonly OpenQuestion[];
  /** Samples and amendments that could not be used, as plain sentences. */
  readonly problems: readonly string[];
}

/** Leaves out what is undefined. */
function compact<T extends object>(fields: T): T {
  const kept: Partial<T> = {};
  for (const key in fields) if (fields[key] !== undefined) kept[key] = fields[key];
  return kept as T;
}

function sourceText({ citation, edition, section }: criteria.CriterionSource): string {
  return [citation, edition, section].filter((part) => part !== undefined && part !== '').join(', ');
}

function asEvidence(sample: Sample): criteria.Evidence {
  const { id, quantity, item, value, assumed, uncertainty, origin } = sample;
  return compact({ id, quantity, item, value, assumed, uncertainty, who: origin.who, when: origin.when });
}

function resultOf(
  criterion: criteria.Criterion,
  judgement: criteria.Judgement,
  samples: ReadonlyMap<string, Sample>,
  governing: ReadonlySet<string>,
): CriterionResult {
  const limit = criteria.limitText(criterion);
  const evidence = judgement.evidence.flatMap((id) => {
    const sample = samples.get(id);
    if (sample === undefined) return [];
    return [{ value: sample.value, unit: criterion.unit, assumed: sample.assumed, origin: sample.origin }];
  });
  return compact({
    id: criterion.id,
    subject: criterion.subject,
    title: criterion.title,
    kind: criterion.kind,
    limit: limit.us,
    limitSi: limit.si,
    source: sourceText(criterion.source),
    sourceKnown: criterion.source.provenance,
    verdict: judgement.verdict,
    reason: judgement.reason,
    evidence,
    governs: governing.has(criterion.id),
    consequence: criterion.consequence,
    licensedTrade: criterion.licensedTrade,
  });
}

/** The base criteria with the local amendments that the job names laid over them. */
export function catalogueOf(job: Job, problems: string[]): criteria.Catalogue {
  const chosen = job.house.amendments.flatMap((id) => {
    const overlay = criteria.overlays.find((o) => o.id === id);
    if (overlay === undefined) {
      const known = criteria.overlays.map((o) => o.id).join(', ');
      problems.push(`house.amendments names "${id}", which is not built in; built in are ${known}.`);
    }
    return overlay === undefined ? [] : [overlay];
  });
  return criteria.adopt(criteria.baseCatalogue, chosen);
}

/** Facts that stand between criteria and a judgement, the one that most of them wait for first. */
function openQuestionsOf(
  catalogue: criteria.Catalogue,
  undecided: ReadonlySet<string>,
  known: criteria.JobFacts,
): OpenQuestion[] {
  const waiting = new Map<criteria.FactKey, string[]>();
  for (const criterion of catalogue.criteria) {
    if (!undecided.has(criterion.id)) continue;
    for (const fact of criteria.openFacts(criterion.appliesWhen, known)) {
      waiting.set(fact, [...(waiting.get(fact) ?? []), criterion.id]);
    }
  }
  const questions = [...waiting].map(([question, ids]): OpenQuestion => {
    const { question: text, values } = criteria.facts[question];
    return { question, text, answers: values === 'yes-no' ? ['yes', 'no'] : values, criteria: ids };
  });
  return questions.sort(
    (a, b) => b.criteria.length - a.criteria.length || (a.question < b.question ? -1 : 1),
  );
}

/** Judges every criterion that applies. Those that surely do not apply are left out. */
export function judgeCriteria(
  job: SurveyedJob,
  samples: readonly Sample[],
  facts: criteria.JobFacts,
): JudgedCriteria {
  const problems: string[] = [];
  const catalogue = catalogueOf(job, problems);
  const byId = new Map(samples.map((s) => [s.id, s]));
  const evidence = samples.map(asEvidence);
  const judgements = criteria.judgeAll(catalogue.criteria, evidence, facts, itemsToShow(job));
  const governing = new Set(criteria.governing(catalogue.criteria, facts).map((g) => g.governs.id));
  const byCriterion = new Map(judgements.map((j) => [j.criterionId, j]));
  const results = catalogue.criteria.flatMap((criterion) => {
    const judgement = byCriterion.get(criterion.id);
    if (judgement === undefined || judgement.applies !== true) return [];
    return [resultOf(criterion, judgement, byId, governing)];
  });
  const refused = new Set<string>();
  for (const issue of judgements.flatMap((j) => j.issues)) {
    refused.add(`${issue.path}: found ${issue.found}; expected ${issue.expected}.`);
  }
  for (const s of samples) {
    if (criteria.findQuantity(s.quantity) === undefined) {
      refused.add(`${s.id}: "${s.quantity}" is not a quantity that this program knows; it is not used.`);
    }
  }
  const undecided = new Set(judgements.filter((j) => j.applies === 'unknown').map((j) => j.criterionId));
  const openQuestions = openQuestionsOf(catalogue, undecided, facts);
  return {
    criteria: catalogue.criteria,
    judgements,
    evidence,
    results,
    openQuestions,
    problems: [...problems, ...[...refused].sort()],
  };
}

/** Steps of the work that an assessment leads to, whose cautions it shows. */
const STEPS: readonly criteria.WorkStep[] = [
  'plan-entry',
  'enter',
  'survey',
  'close-space',
  'clear-out',
  'clean-mold',
];

/** Standing cautions that the facts of this job call for. */
export function cautionsOf(facts: criteria.JobFacts): CautionShown[] {
  const shown = new Map<string, CautionShown>();
  for (const step of STEPS) {
    for (const caution of criteria.cautionsFor(step, facts)) {
      if (shown.has(caution.id)) continue;
      const { id, title, text, defersTo } = caution;
      shown.set(id, {
        id,
        text: `${title}. ${text} Defers to: ${defersTo[0].toLowerCase()}${defersTo.slice(1)}.`,
        because: `Step: ${step.replaceAll('-', ' ')}`,
      });
    }
  }
  return [...shown.values()];
}
