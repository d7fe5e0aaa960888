import { compareInterval, marginOf, type Outcome } from './compare.ts';
import type { Criterion } from './criterion.ts';
import type { Evidence } from './evidence.ts';
import { counted } from './judge-answers.ts';
import type { Finding } from './judgement.ts';
import { limitText, valueText } from './limit-text.ts';

const numberOf = (sample: Evidence) => sample.value as number;
const doubtOf = (sample: Evidence) => sample.uncertainty ?? 0;
const ids = (samples: readonly Evidence[]) => samples.map(({ id }) => id);

function limitWords(criterion: Criterion): string {
  const { us } = limitText(criterion);
  return criterion.limit?.us === criterion.limit?.si ? us : `${us} (${criterion.limit?.si})`;
}

function doubtWords(criterion: Criterion, value: number, doubt: number): string {
  return doubt > 0
    ? `${valueText(value, criterion)} ± ${valueText(doubt, criterion)}`
    : valueText(value, criterion);
}

function finding(
  criterion: Criterion,
  verdict: Finding['verdict'],
  value: number,
  deciding: readonly Evidence[],
  reason: string,
): Finding {
  return { verdict, value, evidence: ids(deciding), margin: marginOf(criterion, value), reason };
}

/** The sample that comes closest to failing, or fails by most; the first by id where several do. */
function worstOf(criterion: Criterion, samples: readonly Evidence[]): Evidence {
  let worst = samples[0]!;
  let least = marginOf(criterion, numberOf(worst)) - doubtOf(worst);
  for (const sample of samples) {
    const margin = marginOf(criterion, numberOf(sample)) - doubtOf(sample);
    if (margin < least) {
      worst = sample;
      least = margin;
    }
  }
  return worst;
}

function judgeEach(criterion: Criterion, measured: readonly Evidence[]): Finding {
  const groups: Record<Outcome, Evidence[]> = { pass: [], fail: [], straddle: [] };
  for (const sample of measured) {
    const value = numberOf(sample);
    const doubt = doubtOf(sample);
    groups[compareInterval(criterion, value - doubt, value + doubt)].push(sample);
  }
  const { atLeast } = criterion.sampling;
  const limit = limitWords(criterion);
  const deciding =
    groups.fail.length > 0 ? groups.fail : groups.straddle.length > 0 ? groups.straddle : measured;
  const worst = worstOf(criterion, deciding);
  const value = numberOf(worst);
  const shown = doubtWords(criterion, value, doubtOf(worst));
  const all = counted(measured.length, 'sample');
  if (groups.fail.length > 0) {
    const which =
      measured.length === 1 ? `Measured ${shown}` : `${groups.fail.length} of ${all} fail, worst ${shown}`;
    return finding(criterion, 'not-met', value, deciding, `${which}; it should be ${limit}.`);
  }
  if (groups.straddle.length > 0) {
    const reason = `The doubt of ${shown} reaches over the limit, ${limit}; measure it more closely.`;
    return finding(criterion, 'not-shown', value, deciding, reason);
  }
  if (measured.length < atLeast) {
    const reason = `${all} of the ${atLeast} it takes, worst ${shown}; it should be ${limit}.`;
    return finding(criterion, 'not-shown', value, deciding, reason);
  }
  const which = measured.length === 1 ? `Measured ${shown}` : `All ${all} pass, worst ${shown}`;
  return finding(criterion, 'met', value, deciding, `${which}; it should be ${limit}.`);
}

interface Combined {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Mean, largest or smallest of the samples with its doubt. The doubt of a mean is the mean of the doubts, as for errors
 * that all go one way; it is never taken to average out.
 */
function combine(how: 'mean' | 'maximum' | 'minimum', measured: readonly Evidence[]): Combined {
  const values = measured.map(numberOf);
  const lows = measured.map((sample) => numberOf(sample) - doubtOf(sample));
  const highs = measured.map((sample) => numberOf(sample) + doubtOf(sample));
  const of = (numbers: readonly number[]) => {
    if (how === 'maximum') return Math.max(...numbers);
    if (how === 'minimum') return Math.min(...numbers);
    return numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
  };
  return { value: of(values), low: of(lows), high: of(highs) };
}

/** Whether more samples of this kind can only make a failing result worse. */
function failsForGood(criterion: Criterion): boolean {
  const { combine: how } = criterion.sampling;
  const { comparison } = criterion;
  return (
    (how === 'maximum' && (comparison === '<=' || comparison === '<')) ||
    (how === 'minimum' && (comparison === '>=' || comparison === '>'))
  );
}

const HOW = { mean: 'mean', maximum: 'largest', minimum: 'smallest' } as const;

function judgeCombined(
  criterion: Criterion,
  how: 'mean' | 'maximum' | 'minimum',
  measured: readonly Evidence[],
): Finding {
  const { value, low, high } = combine(how, measured);
  const outcome = compareInterval(criterion, low, high);
  const limit = limitWords(criterion);
  const enough = measured.length >= criterion.sampling.atLeast;
  const shown = `${HOW[how]} of ${counted(measured.length, 'sample')} ${doubtWords(criterion, value, Math.max(value - low, high - value))}`;
  const sentence = `The ${shown}; it should be ${limit}.`;
  if (outcome === 'fail' && (enough || failsForGood(criterion))) {
    return finding(criterion, 'not-met', value, measured, sentence);
  }
  if (!enough) {
    const reason = `It takes ${criterion.sampling.atLeast} samples. ${sentence}`;
    return finding(criterion, 'not-shown', value, measured, reason);
  }
  if (outcome === 'straddle') {
    const reason = `The doubt of the ${shown} reaches over the limit, ${limit}; measure it more closely.`;
    return finding(criterion, 'not-shown', value, measured, reason);
  }
  return finding(criterion, 'met', value, measured, sentence);
}

/** Judges measured samples of a quantity that is a number. */
export function judgeNumbers(criterion: Criterion, measured: readonly Evidence[]): Finding {
  if (measured.length === 0) {
    return {
      verdict: 'not-shown',
      evidence: [],
      reason: `Nobody has measured this yet; it should be ${limitWords(criterion)}.`,
    };
  }
  const { combine: how } = criterion.sampling;
  return how === 'each' ? judgeEach(criterion, measured) : judgeCombined(criterion, how, measured);
}
