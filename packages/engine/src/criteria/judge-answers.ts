import type { Criterion } from './criterion.ts';
import type { Evidence } from './evidence.ts';
import type { Finding } from './judgement.ts';

const ids = (samples: readonly Evidence[]) => samples.map(({ id }) => id);

/** "1 answer", "4 answers". */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}

/** Judges measured yes-or-no samples: each must give the answer that the criterion asks for. */
export function judgeAnswers(criterion: Criterion, measured: readonly Evidence[]): Finding {
  const wanted = criterion.comparison === 'yes';
  const { atLeast } = criterion.sampling;
  if (measured.length === 0) {
    return { verdict: 'not-shown', evidence: [], reason: 'Nobody has looked at this yet.' };
  }
  const against = measured.filter(({ value }) => value !== wanted);
  if (against.length > 0) {
    return {
      verdict: 'not-met',
      value: !wanted,
      evidence: ids(against),
      reason:
        measured.length === 1
          ? `The answer is ${wanted ? 'no' : 'yes'}; it should be ${criterion.comparison}.`
          : `${against.length} of ${counted(measured.length, 'answer')} ${against.length === 1 ? 'is' : 'are'} ${wanted ? 'no' : 'yes'}; each should be ${criterion.comparison}.`,
    };
  }
  if (measured.length < atLeast) {
    return {
      verdict: 'not-shown',
      value: wanted,
      evidence: ids(measured),
      reason: `${counted(measured.length, 'answer')} of the ${atLeast} it takes.`,
    };
  }
  return {
    verdict: 'met',
    value: wanted,
    evidence: ids(measured),
    reason:
      measured.length === 1
        ? `The answer is ${criterion.comparison}, as it should be.`
        : `All ${measured.length} answers are ${criterion.comparison}, as they should be.`,
  };
}
