import { describe, expect, test } from 'vitest';
import { type EffectResult, UNLISTED_PRIOR } from '../../src/causes/chain.ts';
import { combineEvidence } from '../../src/causes/evidence.ts';
import { expectedGainBits } from '../../src/causes/next-measurement.ts';
import { causeNodes } from '../../src/causes/node.ts';
import { normalCumulative } from '../../src/causes/normal.ts';
import { logLikelihoodRatio, type OutcomeModel } from '../../src/causes/outcome-model.ts';
import type { Sign } from '../../src/causes/sign.ts';
import { causeSigns } from '../../src/causes/signs.ts';
import { entropyBits, rivalWeights } from '../../src/causes/weigh.ts';

const keys = causeNodes.map((node) => node.key);

/** An effect whose rivals all weigh the same, and where nothing else is possible. */
function evenEffect(count: number): EffectResult {
  const rivals = keys.slice(0, count).map((from) => ({
    from,
    to: 'smell' as const,
    prior: 1 / count,
    weight: 1 / count,
    logRatio: 0,
    supports: [],
    contradicts: [],
    standing: 'not-shown' as const,
  }));
  return {
    node: 'smell',
    seen: true,
    rivals,
    unlisted: { prior: UNLISTED_PRIOR, weight: 0 },
    entropyBits: Math.log2(count),
    roots: [],
  };
}

function signOf(model: OutcomeModel): Sign {
  const { of: _all, quantity: _none, ...rest } = causeSigns[0];
  return { ...rest, model };
}

/** A balance with `onPan` of twelve balls on each side: three outcomes, one odd ball that is heavy or light. */
function weighing(onPan: number): Sign {
  const zero = 1e-12;
  const outcome = (which: number) => [0, 1, 2].map((i) => (i === which ? 1 - 2 * zero : zero));
  const tells = Object.fromEntries(
    Array.from({ length: 24 }, (_, i) => {
      const ball = i % 12;
      const heavy = i < 12;
      const side = ball < onPan ? 'left' : ball < 2 * onPan ? 'right' : 'off';
      return [keys[i], outcome(side === 'off' ? 1 : (side === 'left') === heavy ? 0 : 2)];
    }),
  );
  return signOf({ kind: 'bands', edges: [1, 2], otherwise: outcome(1), tells });
}

describe("Bayes' rule against printed answers", () => {
  test('the cab problem: a witness right four times in five, cabs 15 % blue', () => {
    // A. Tversky and D. Kahneman, Evidential impact of base rates, 1982: 0.41 as printed (quoted), so to half a digit.
    const witness: OutcomeModel = { kind: 'answer', otherwise: 0.2, tells: { smell: 0.8 } };
    const logRatio = logLikelihoodRatio(witness, 'smell', true);
    const [blue, green] = rivalWeights([
      { prior: 0.15, logRatio },
      { prior: 0.85, logRatio: 0 },
    ]);
    expect(Math.abs(blue - 0.41)).toBeLessThan(0.005);
    expect(blue / green).toBeCloseTo(12 / 17, 12);
  });

  test('likelihood ratios of a test: sensitivity over false alarms, misses over right denials', () => {
    // Definition of LR+ and LR- as in medical statistics (quoted): 0.90 / 0.20 and 0.10 / 0.80; odds 1 : 3 become 1.5 : 1.
    const model: OutcomeModel = { kind: 'answer', otherwise: 0.2, tells: { mold: 0.9 } };
    expect(Math.exp(logLikelihoodRatio(model, 'mold', true))).toBeCloseTo(4.5, 12);
    expect(Math.exp(logLikelihoodRatio(model, 'mold', false))).toBeCloseTo(0.125, 12);
    const [after] = rivalWeights([
      { prior: 0.25, logRatio: logLikelihoodRatio(model, 'mold', true) },
      { prior: 0.75, logRatio: 0 },
    ]);
    expect(after).toBeCloseTo(0.6, 12);
  });

  test('three rivals by hand: 0.5, 0.3, 0.2 with ratios 1/2, 4, 1', () => {
    // 0.25 : 1.20 : 0.20, of 1.65.
    const weights = rivalWeights([
      { prior: 0.5, logRatio: Math.log(0.5) },
      { prior: 0.3, logRatio: Math.log(4) },
      { prior: 0.2, logRatio: 0 },
    ]);
    expect(weights[0]).toBeCloseTo(25 / 165, 12);
    expect(weights[1]).toBeCloseTo(120 / 165, 12);
    expect(weights[2]).toBeCloseTo(20 / 165, 12);
  });

  test('independent items add up: 2 and 3 make 6, a third of 1/12 makes 1/2', () => {
    const item = (id: string, ratio: number) => ({
      id,
      explains: 'mold' as const,
      group: id,
      logRatio: Math.log(ratio),
    });
    const all = combineEvidence([item('a', 2), item('b', 3), item('c', 1 / 12)]);
    expect(Math.exp(all.logRatio)).toBeCloseTo(0.5, 12);
    expect(all.supports).toEqual(['b', 'a']);
    expect(all.contradicts).toEqual(['c']);
  });

  test('two normal distributions: the ratio is 1 midway and e squared at the one mean', () => {
    const model: OutcomeModel = { kind: 'normal', deviation: 1, otherwise: 1, tells: { mold: -1 } };
    expect(logLikelihoodRatio(model, 'mold', 0)).toBeCloseTo(0, 12);
    expect(logLikelihoodRatio(model, 'mold', -1)).toBeCloseTo(2, 12);
    // A doubt as large as the spread doubles the variance and halves the logarithm.
    expect(logLikelihoodRatio(model, 'mold', -1, 1)).toBeCloseTo(1, 12);
  });

  test('a doubt that spans two bands counts by the mean of both', () => {
    const model: OutcomeModel = {
      kind: 'bands',
      edges: [10],
      otherwise: [0.5, 0.5],
      tells: { mold: [0.2, 0.8] },
    };
    // 9 and 10 and 11 with a doubt of 1 about 10: bands 0, 1, 1.
    expect(Math.exp(logLikelihoodRatio(model, 'mold', 10, 1))).toBeCloseTo((0.2 + 0.8 + 0.8) / 1.5, 12);
    expect(Math.exp(logLikelihoodRatio(model, 'mold', 10))).toBeCloseTo(1.6, 12);
    expect(Math.exp(logLikelihoodRatio(model, 'mold', 9.999))).toBeCloseTo(0.4, 12);
  });
});

describe('entropy and expected information against printed answers', () => {
  test('a fair coin is one bit, four equal sides are two, a certainty is none', () => {
    expect(entropyBits([0.5, 0.5])).toBeCloseTo(1, 12);
    expect(entropyBits([0.25, 0.25, 0.25, 0.25])).toBeCloseTo(2, 12);
    expect(entropyBits([1, 0])).toBe(0);
    // A coin with one quarter heads: 0.811 bits (textbooks of information theory).
    expect(entropyBits([0.25, 0.75])).toBeCloseTo(0.8113, 4);
  });

  test('the twelve balls: four against four tell log2(3) bits, six against six one bit', () => {
    // D. J. C. MacKay, Information Theory, Inference, and Learning Algorithms, exercise 4.1 (exercise read, answers quoted).
    const effect = evenEffect(24);
    expect(expectedGainBits(effect, weighing(4))).toBeCloseTo(Math.log2(3), 6);
    expect(expectedGainBits(effect, weighing(6))).toBeCloseTo(1, 6);
    expect(expectedGainBits(effect, weighing(0))).toBeCloseTo(0, 9);
  });

  test('an answer that is wrong one time in nine tells half a bit about an even question', () => {
    // Binary symmetric channel: 1 - H(0.11) = 0.50 bits as printed in textbooks (from memory), so to half a digit.
    const sign = signOf({ kind: 'answer', otherwise: 0.11, tells: { [keys[0]]: 0.89 } });
    expect(Math.abs(expectedGainBits(evenEffect(2), sign) - 0.5)).toBeLessThan(0.005);
  });
});

describe('the normal distribution against its tables', () => {
  // M. Abramowitz and I. A. Stegun, 1964, table 26.1 (from memory), digits as printed.
  test.each([
    [0, 0.5],
    [0.5, 0.69146246],
    [1, 0.84134475],
    [1.96, 0.9750021],
    [3, 0.9986501],
    [-2, 0.02275013],
  ])('below %d', (z, expected) => {
    expect(Math.abs(normalCumulative(z) - expected)).toBeLessThan(6e-8);
  });

  test('ends at 0 and 1', () => {
    expect(normalCumulative(-6)).toBe(0);
    expect(normalCumulative(6)).toBe(1);
    expect(normalCumulative(5.999)).toBeLessThanOrEqual(1);
    expect(normalCumulative(-5.999)).toBeGreaterThanOrEqual(0);
  });
});
