import type { CauseChain, EffectResult, RootShare } from './chain.ts';
import type { CauseKey } from './node.ts';
import { type OutcomeChances, outcomeChances, type SignOutcome } from './outcome-model.ts';
import type { Sign } from './sign.ts';
import { entropyBits } from './weigh.ts';

/** What one outcome would make of an effect. */
export interface OutcomeEffect {
  readonly outcome: SignOutcome;
  /** Chance of the outcome as things stand. */
  readonly chance: number;
  /** Explanation that would lead then, and its weight. */
  readonly leads: RootShare['node'];
  readonly weight: number;
}

/** A measurement and how much it is expected to settle. */
export interface NextMeasurement {
  readonly sign: Sign;
  /** Expected fall of the entropy, summed over all effects that were seen [bits]. Never negative. */
  readonly gainBits: number;
  /** The effect that it tells most about, and its outcomes; neighboring outcomes with the same leader are one. */
  readonly effect: CauseKey;
  readonly outcomes: readonly OutcomeEffect[];
}

/** Weights of an effect, "not listed" last. */
const weightsOf = (effect: EffectResult) => [...effect.rivals.map((r) => r.weight), effect.unlisted.weight];

interface Foreseen {
  readonly chance: number;
  readonly weights: readonly number[];
}

/** Chance of each outcome and the weights after it. */
function foresee(effect: EffectResult, chances: OutcomeChances): Foreseen[] {
  const before = weightsOf(effect);
  const likely = [...effect.rivals.map((r) => chances.of(r.from)), chances.otherwise];
  return chances.outcomes.map((_, o) => {
    const joint = before.map((w, i) => w * (likely[i]?.[o] as number));
    const chance = joint.reduce((a, b) => a + b, 0);
    return { chance, weights: chance > 0 ? joint.map((j) => j / chance) : before };
  });
}

/**
 * Expected fall of the entropy of an effect's explanations if a sign is taken [bits]. Never negative, and 0 where the sign
 * has the same chances under all explanations. Taken on the weights as they stand, without the caps on evidence.
 *
 * Source: D. V. Lindley, On a Measure of the Information Provided by an Experiment, 1956.
 * @param chances of the sign's outcomes, where they are worked out already
 */
export function expectedGainBits(
  effect: EffectResult,
  sign: Sign,
  chances: OutcomeChances = outcomeChances(sign.model),
): number {
  if (sign.of !== undefined && !sign.of.includes(effect.node)) return 0;
  if (!effect.rivals.some((r) => r.from in sign.model.tells)) return 0;
  let after = 0;
  for (const { chance, weights } of foresee(effect, chances)) after += chance * entropyBits(weights);
  return Math.max(0, entropyBits(weightsOf(effect)) - after);
}

function outcomesOf(effect: EffectResult, chances: OutcomeChances): OutcomeEffect[] {
  const { outcomes } = chances;
  const merged: { outcome: SignOutcome; chance: number; lead: number; weight: number }[] = [];
  foresee(effect, chances).forEach(({ chance, weights }, o) => {
    const outcome = outcomes[o] as SignOutcome;
    const weight = Math.max(...weights);
    const lead = weights.indexOf(weight);
    const last = merged.at(-1);
    if (last === undefined || last.lead !== lead || outcome.answer !== undefined) {
      merged.push({ outcome, chance, lead, weight });
      return;
    }
    const sum = last.chance + chance;
    if (sum > 0) last.weight = (last.weight * last.chance + weight * chance) / sum;
    last.chance = sum;
    last.outcome = {
      ...(last.outcome.from === undefined ? {} : { from: last.outcome.from }),
      ...(outcome.below === undefined ? {} : { below: outcome.below }),
    };
  });
  return merged.map(({ outcome, chance, lead, weight }) => ({
    outcome,
    chance,
    leads: effect.rivals[lead]?.from ?? 'unlisted',
    weight,
  }));
}

/** Gains are compared in steps of this; equal ones are a tie, which the quicker measurement wins [bits]. */
const TIE_BITS = 1e-6;

/**
 * Of measurements that were not taken yet, those that are expected to settle something, the one whose outcome is expected to
 * change the ranking of explanations most first; ties go to the one that is known sooner, then to the quicker one.
 * @param signs possible measurements; leave out those already taken
 */
export function whatToMeasureNext(chain: CauseChain, signs: readonly Sign[]): NextMeasurement[] {
  const seen = chain.effects.filter((effect) => effect.seen);
  const found = signs.flatMap((sign): NextMeasurement[] => {
    const chances = outcomeChances(sign.model);
    const gains = seen.map((effect) => ({ effect, bits: expectedGainBits(effect, sign, chances) }));
    const gainBits = gains.reduce((sum, gain) => sum + gain.bits, 0);
    if (gainBits < TIE_BITS) return [];
    const { effect } = gains.reduce((best, gain) => (gain.bits > best.bits ? gain : best));
    return [{ sign, gainBits, effect: effect.node, outcomes: outcomesOf(effect, chances) }];
  });
  return found.sort((a, b) => {
    return (
      Math.round(b.gainBits / TIE_BITS) - Math.round(a.gainBits / TIE_BITS) ||
      (a.sign.waitDays ?? 0) - (b.sign.waitDays ?? 0) ||
      a.sign.minutes - b.sign.minutes ||
      (a.sign.key < b.sign.key ? -1 : 1)
    );
  });
}
