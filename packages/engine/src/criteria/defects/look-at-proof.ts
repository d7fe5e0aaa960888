import { compareInterval } from '../compare.ts';
import type { Criterion } from '../criterion.ts';
import { type Evidence, type SortedEvidence, sortEvidence } from '../evidence.ts';
import { type FactKey, facts } from '../facts.ts';
import type { Judgement } from '../judgement.ts';
import { limitText, valueText } from '../limit-text.ts';
import { quantities } from '../quantities.ts';
import type { DefectEvidence } from './evidence-of-defects.ts';
import type { Proof } from './proof.ts';

/**
 * What one proof comes to. `shows` and `clears` rest on what was measured or answered. `leans`: only an assumed value or one
 * whose doubt reaches over the limit, or a breach of a criterion that may not apply. `aside`: it does not bear on this job.
 */
export type Outcome = 'shows' | 'leans' | 'clears' | 'open' | 'aside';

/** A proof held against the evidence of a job. */
export interface Look {
  readonly outcome: Outcome;
  /** Ids of the samples that show it, and of those that speak against it, sorted. */
  readonly by: readonly string[];
  readonly against: readonly string[];
  /** The facts about the job that it rests on. */
  readonly facts: readonly FactKey[];
  /** Why, one plain sentence; empty where nothing is known. */
  readonly because: string;
}

/** Evidence put in order once for all defects of a job. */
export interface SortedJob {
  readonly evidence: Pick<DefectEvidence, 'facts' | 'items'>;
  readonly criteria: ReadonlyMap<string, Criterion>;
  readonly judgements: ReadonlyMap<string, Judgement>;
  /** Judgements that an id of a defect stands for: that of the criterion itself, or of all parts of the rule. */
  readonly named: (id: string) => readonly Judgement[];
  readonly itemOf: ReadonlyMap<string, string | undefined>;
  readonly sorted: (quantity: string) => SortedEvidence;
}

/** Sorts the evidence of a job by quantity, each when it is first asked for. */
export function sortedJob(evidence: DefectEvidence): SortedJob {
  const byQuantity = new Map<string, Evidence[]>();
  for (const sample of evidence.samples) {
    const some = byQuantity.get(sample.quantity);
    if (some) some.push(sample);
    else byQuantity.set(sample.quantity, [sample]);
  }
  const done = new Map<string, SortedEvidence>();
  const byRule = new Map<string, Judgement[]>();
  for (const judgement of evidence.judgements) {
    const id = judgement.criterionId;
    for (const name of new Set([id, id.replace(/[a-z]$/, '')])) {
      const some = byRule.get(name);
      if (some) some.push(judgement);
      else byRule.set(name, [judgement]);
    }
  }
  return {
    evidence,
    criteria: new Map(evidence.criteria.map((one) => [one.id, one])),
    judgements: new Map(evidence.judgements.map((one) => [one.criterionId, one])),
    named: (id) => byRule.get(id) ?? [],
    itemOf: new Map(evidence.samples.map(({ id, item }) => [id, item])),
    sorted: (quantity) => {
      const known = done.get(quantity);
      if (known) return known;
      const registered = quantities[quantity as keyof typeof quantities];
      const made = sortEvidence(byQuantity.get(quantity) ?? [], registered);
      done.set(quantity, made);
      return made;
    },
  };
}

const NO_FACTS: readonly FactKey[] = [];
const OPEN: Look = { outcome: 'open', by: [], against: [], facts: NO_FACTS, because: '' };
const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
const ids = (samples: readonly Evidence[]) => samples.map(({ id }) => id);

/** Whether every item that needs a look had one; an answer about no item speaks for all. */
function allLookedAt(measured: readonly Evidence[], items: readonly string[] | undefined): boolean {
  if (items === undefined || items.length === 0) return true;
  const covered = new Set(measured.map(({ item }) => item));
  if (measured.some(({ item, value }) => item === undefined && typeof value === 'boolean')) return true;
  return items.every((item) => covered.has(item));
}

function atCriterion(id: string, job: SortedJob): Look {
  const judgement = job.judgements.get(id);
  if (judgement === undefined || judgement.applies === false) return { ...OPEN, outcome: 'aside' };
  const { verdict, evidence, reason, applies, assumed, margin } = judgement;
  const because = `${id}: ${reason}`;
  if (verdict === 'not-met') {
    return {
      outcome: applies === true ? 'shows' : 'leans',
      by: evidence,
      against: [],
      facts: NO_FACTS,
      because,
    };
  }
  if (verdict === 'met') return { outcome: 'clears', by: [], against: evidence, facts: NO_FACTS, because };
  const near = !assumed && margin !== undefined && margin < 0;
  return near ? { outcome: 'leans', by: evidence, against: [], facts: NO_FACTS, because } : OPEN;
}

function atAnswer(proof: Extract<Proof, { by: 'answer' }>, job: SortedJob): Look {
  const { measured, assumed } = job.sorted(proof.quantity);
  const showing = measured.filter(({ value }) => value === proof.shows);
  const against = ids(measured.filter(({ value }) => value !== proof.shows));
  const { title } = quantities[proof.quantity];
  const answer = proof.shows ? 'yes' : 'no';
  if (showing.length > 0) {
    const count = measured.length === 1 ? '' : ` at ${showing.length} of ${measured.length}`;
    return {
      outcome: 'shows',
      by: ids(showing),
      against,
      facts: NO_FACTS,
      because: `${title}: ${answer}${count}.`,
    };
  }
  if (measured.length > 0) {
    const whole = allLookedAt(measured, job.evidence.items?.[proof.quantity]);
    const because = `${title}: ${proof.shows ? 'no' : 'yes'}.`;
    return { outcome: whole ? 'clears' : 'open', by: [], against, facts: NO_FACTS, because };
  }
  const supposed = assumed.filter(({ value }) => value === proof.shows);
  if (supposed.length === 0) return OPEN;
  return {
    outcome: 'leans',
    by: ids(supposed),
    against: [],
    facts: NO_FACTS,
    because: `${title}: ${answer}, assumed.`,
  };
}

function atNumber(proof: Extract<Proof, { by: 'number' }>, job: SortedJob): Look {
  const { quantity, limit, atLeast } = proof;
  const { measured, assumed } = job.sorted(quantity);
  const { title, unit } = quantities[quantity];
  const test = { id: quantity, comparison: proof.comparison, limit };
  const outcomeOf = ({ value, uncertainty = 0 }: Evidence) =>
    compareInterval(test, (value as number) - uncertainty, (value as number) + uncertainty);
  const pass = measured.filter((s) => outcomeOf(s) === 'pass');
  const fail = measured.filter((s) => outcomeOf(s) === 'fail');
  const shown = (some: readonly Evidence[]) => {
    const values = some.map((s) => s.value as number);
    const upward = proof.comparison === '>' || proof.comparison === '>=' || proof.comparison === 'within';
    const worst = upward ? Math.max(...values) : Math.min(...values);
    return `${title}: ${valueText(worst, { unit, limit })} (a defect when ${limitText(test).us})`;
  };
  if (pass.length > 0) {
    return {
      outcome: 'shows',
      by: ids(pass),
      against: ids(fail),
      facts: NO_FACTS,
      because: `${shown(pass)}.`,
    };
  }
  const doubtful = measured.filter((s) => {
    const value = s.value as number;
    return outcomeOf(s) === 'straddle' && compareInterval(test, value, value) === 'pass';
  });
  if (doubtful.length > 0) {
    const because = `${shown(doubtful)}, within its doubt.`;
    return { outcome: 'leans', by: ids(doubtful), against: ids(fail), facts: NO_FACTS, because };
  }
  if (fail.length > 0 && fail.length === measured.length) {
    const whole = fail.length >= atLeast && allLookedAt(measured, job.evidence.items?.[quantity]);
    return {
      outcome: whole ? 'clears' : 'open',
      by: [],
      against: ids(fail),
      facts: NO_FACTS,
      because: `${shown(fail)}.`,
    };
  }
  const supposed = assumed.filter((s) => outcomeOf(s) === 'pass');
  if (measured.length > 0 || supposed.length === 0) return OPEN;
  return {
    outcome: 'leans',
    by: ids(supposed),
    against: [],
    facts: NO_FACTS,
    because: `${shown(supposed)}, assumed.`,
  };
}

function together(looks: readonly Look[]): Look {
  const against = [...new Set(looks.flatMap((look) => look.against))].sort();
  const by = [...new Set(looks.flatMap((look) => look.by))].sort();
  const rests = [...new Set(looks.flatMap((look) => look.facts))];
  const because = looks
    .map((look) => look.because)
    .filter((text) => text !== '')
    .join(' ');
  const has = (outcome: Outcome) => looks.some((look) => look.outcome === outcome);
  if (has('aside')) return { ...OPEN, outcome: 'aside' };
  if (has('clears')) return { outcome: 'clears', by: [], against, facts: rests, because };
  if (has('open')) return { ...OPEN, against };
  return { outcome: has('leans') ? 'leans' : 'shows', by, against, facts: rests, because };
}

/** Holds a proof against the evidence of a job. */
export function lookAt(proof: Proof, job: SortedJob): Look {
  switch (proof.by) {
    case 'criterion':
      return atCriterion(proof.id, job);
    case 'answer':
      return atAnswer(proof, job);
    case 'number':
      return atNumber(proof, job);
    case 'all':
      return together(proof.parts.map((part) => lookAt(part, job)));
    default: {
      const value = job.evidence.facts[proof.fact];
      if (value === undefined) return OPEN;
      const said = value === true ? 'Yes' : value === false ? 'No' : capital(value);
      const because = `${facts[proof.fact].question} ${said}.`;
      const outcome = value === proof.shows ? 'shows' : 'clears';
      return { outcome, by: [], against: [], facts: [proof.fact], because };
    }
  }
}
