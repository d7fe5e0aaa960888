import { EngineError } from '../numerics/engine-error.ts';
import type { CauseKey } from './node.ts';
import { normalCumulative } from './normal.ts';

type Tells<T> = { readonly [K in CauseKey]?: T };

/**
 * A yes or no. `tells` is the chance of a yes where that node is the main explanation, `otherwise` the chance of a yes
 * where it is another; each over 0 and under 1.
 */
export interface AnswerModel {
  readonly kind: 'answer';
  readonly otherwise: number;
  readonly tells: Tells<number>;
}

/** A number in bands. One chance for each band, below the first edge to at or above the last; they sum to 1, none is 0. */
export interface BandModel {
  readonly kind: 'bands';
  /** Rising. A value on an edge belongs to the band above. */
  readonly edges: readonly number[];
  readonly otherwise: readonly number[];
  readonly tells: Tells<readonly number[]>;
}

/** A number that scatters normally about a mean, with one standard deviation for all explanations. */
export interface NormalModel {
  readonly kind: 'normal';
  readonly deviation: number;
  readonly otherwise: number;
  readonly tells: Tells<number>;
}

/** What a sign shows under one explanation and under all others. All chances are set by judgment unless said otherwise. */
export type OutcomeModel = AnswerModel | BandModel | NormalModel;

/** One outcome of a sign, as a person would tell it. */
export interface SignOutcome {
  /** For a question: the answer. */
  readonly answer?: boolean;
  /** For a number: at or above, and below; absent where there is no such end. */
  readonly from?: number;
  readonly below?: number;
}

/** Band that a value falls in. */
function bandOf(edges: readonly number[], value: number): number {
  let band = 0;
  for (const edge of edges) if (value >= edge) band += 1;
  return band;
}

/** Three values that stand for one with a doubt of plus or minus `doubt`: both ends and the middle count alike. */
function spread(value: number, doubt: number): readonly number[] {
  return doubt === 0 ? [value] : [value - doubt, value, value + doubt];
}

function answerRatio(present: number, absent: number, yes: boolean): number {
  return yes ? Math.log(present / absent) : Math.log((1 - present) / (1 - absent));
}

/** Density of a normal distribution up to a factor that is the same for all means. */
const density = (value: number, mean: number, variance: number) => -((value - mean) ** 2) / (2 * variance);

/**
 * Natural logarithm of how much more likely a value is where `node` is the main explanation than where it is another.
 * Zero where the model says nothing about `node`. A number with a doubt counts by the mean of its likelihoods over the
 * doubt (bands), or with the doubt squared added to the variance (normal).
 *
 * Source: I. J. Good, Probability and the Weighing of Evidence, 1950.
 * @param doubt plus or minus, in the unit of the value; not used for answers
 * @throws EngineError `bad-input` where the value is not of the model's kind, `not-finite` for NaN and infinities
 */
export function logLikelihoodRatio(
  model: OutcomeModel,
  node: CauseKey,
  value: number | boolean,
  doubt = 0,
): number {
  if (model.kind === 'answer') {
    if (typeof value !== 'boolean')
      throw new EngineError('bad-input', `a yes or no was expected; got ${value}`);
    const present = model.tells[node];
    return present === undefined ? 0 : answerRatio(present, model.otherwise, value);
  }
  if (typeof value === 'boolean') throw new EngineError('bad-input', `a number was expected; got ${value}`);
  if (!Number.isFinite(value) || !Number.isFinite(doubt) || doubt < 0) {
    throw new EngineError(
      'not-finite',
      `a number with a doubt of 0 or more was expected; got ${value}, ${doubt}`,
    );
  }
  if (model.kind === 'bands') {
    const present = model.tells[node];
    if (present === undefined) return 0;
    let [likely, other] = [0, 0];
    for (const one of spread(value, doubt)) {
      const band = bandOf(model.edges, one);
      likely += present[band] as number;
      other += model.otherwise[band] as number;
    }
    return Math.log(likely / other);
  }
  const mean = model.tells[node];
  if (mean === undefined) return 0;
  const variance = model.deviation ** 2 + doubt ** 2;
  return density(value, mean, variance) - density(value, model.otherwise, variance);
}

/** Slices in which a normal model is looked at; more change the expected gain by less than a thousandth of a bit. */
const SLICES = 48;

function normalEdges(model: NormalModel): readonly number[] {
  const means = [model.otherwise, ...Object.values(model.tells)];
  const low = Math.min(...means) - 3 * model.deviation;
  const high = Math.max(...means) + 3 * model.deviation;
  return Array.from({ length: SLICES - 1 }, (_, i) => low + ((high - low) * i) / (SLICES - 2));
}

function normalBands(edges: readonly number[], mean: number, deviation: number): number[] {
  const below = [0, ...edges.map((edge) => normalCumulative((edge - mean) / deviation)), 1];
  return below.slice(1).map((upper, i) => upper - (below[i] as number));
}

/** The outcomes of a sign with the chance of each, for a node and otherwise. */
export interface OutcomeChances {
  readonly outcomes: readonly SignOutcome[];
  readonly otherwise: readonly number[];
  /** Chances where a node is the main explanation; `otherwise` where the model says nothing about it. */
  readonly of: (node: CauseKey) => readonly number[];
}

function bandOutcomes(edges: readonly number[]): SignOutcome[] {
  return [...edges, undefined].map((edge, i) => ({
    ...(i === 0 ? {} : { from: edges[i - 1] as number }),
    ...(edge === undefined ? {} : { below: edge }),
  }));
}

/** All outcomes that a model knows; each list of chances sums to 1. */
export function outcomeChances(model: OutcomeModel): OutcomeChances {
  if (model.kind === 'answer') {
    const both = (yes: number) => [yes, 1 - yes];
    const otherwise = both(model.otherwise);
    return {
      outcomes: [{ answer: true }, { answer: false }],
      otherwise,
      of: (node) => both(model.tells[node] ?? model.otherwise),
    };
  }
  if (model.kind === 'bands') {
    return {
      outcomes: bandOutcomes(model.edges),
      otherwise: model.otherwise,
      of: (node) => model.tells[node] ?? model.otherwise,
    };
  }
  const edges = normalEdges(model);
  const chances = (mean: number) => normalBands(edges, mean, model.deviation);
  const otherwise = chances(model.otherwise);
  const told = new Map(Object.entries(model.tells).map(([node, mean]) => [node, chances(mean)]));
  return { outcomes: bandOutcomes(edges), otherwise, of: (node) => told.get(node) ?? otherwise };
}
