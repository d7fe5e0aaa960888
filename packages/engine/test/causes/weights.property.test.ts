import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { budgetEvidence } from '../../src/causes/budget-evidence.ts';
import { type CauseChain, type ChainInput, causeChain } from '../../src/causes/chain.ts';
import { type CauseEvidence, combineEvidence, ITEM_CAP, TOTAL_CAP } from '../../src/causes/evidence.ts';
import { causeLinks } from '../../src/causes/links.ts';
import { expectedGainBits, whatToMeasureNext } from '../../src/causes/next-measurement.ts';
import { causeNodes } from '../../src/causes/node.ts';
import { causeSigns } from '../../src/causes/signs.ts';

const keys = causeNodes.map((node) => node.key);
const effects = [...new Set(causeLinks.map((link) => link.to))];
const SLACK = 1e-12;

const evidence = fc
  .array(
    fc.record({
      explains: fc.constantFrom(...keys),
      of: fc.option(fc.subarray(effects, { minLength: 1 }), { nil: undefined }),
      group: fc.constantFrom('a', 'b', 'c', 'd'),
      logRatio: fc.double({ min: -9, max: 9, noNaN: true }),
    }),
    { maxLength: 25 },
  )
  .map((items) => items.map((item, i): CauseEvidence => ({ id: `e${i}`, ...item })));

const job: fc.Arbitrary<ChainInput> = fc
  .record({
    states: fc.array(fc.constantFrom('seen', 'absent', 'unknown'), {
      minLength: effects.length,
      maxLength: effects.length,
    }),
    ruledOut: fc.subarray(keys, { maxLength: 8 }),
    evidence,
  })
  .map(({ states, ruledOut, evidence: items }) => ({
    seen: effects.filter((_, i) => states[i] === 'seen'),
    absent: effects.filter((_, i) => states[i] === 'absent'),
    ruledOut,
    evidence: items,
  }));

function weightOf(chain: CauseChain, from: string, to: string): number {
  const rival = chain.effects.find((e) => e.node === to)?.rivals.find((r) => r.from === from);
  return rival?.weight ?? 0;
}

describe('weights of any job', () => {
  test('are finite and sum to 1 over the rivals of each effect, and so do the first causes', () => {
    fc.assert(
      fc.property(job, (input) => {
        const chain = causeChain(input);
        for (const effect of chain.effects) {
          const weights = [...effect.rivals.map((r) => r.weight), effect.unlisted.weight];
          for (const weight of weights) {
            expect(Number.isFinite(weight)).toBe(true);
            expect(weight).toBeGreaterThan(0);
          }
          expect(weights.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
          expect(effect.roots.reduce((sum, root) => sum + root.weight, 0)).toBeCloseTo(1, 12);
          expect(effect.entropyBits).toBeGreaterThanOrEqual(0);
          expect(effect.entropyBits).toBeLessThanOrEqual(Math.log2(weights.length) + SLACK);
        }
        if (input.seen.length > 0) {
          expect(chain.roots.reduce((sum, root) => sum + root.weight, 0)).toBeCloseTo(1, 12);
        } else expect(chain.roots).toEqual([]);
      }),
      { numRuns: 80 },
    );
  });

  test('never fall by another item for them, never rise by one against them', () => {
    fc.assert(
      fc.property(
        job,
        fc.constantFrom(...causeLinks),
        fc.double({ min: 0, max: 9, noNaN: true }),
        fc.constantFrom('a', 'b', 'new'),
        (input, link, size, group) => {
          const item = (logRatio: number): CauseEvidence => ({
            id: 'more',
            explains: link.from,
            of: [link.to],
            group,
            logRatio,
          });
          const seen = [...new Set([...input.seen, link.to])];
          const base = { ...input, seen };
          const before = weightOf(causeChain(base), link.from, link.to);
          const supported = causeChain({ ...base, evidence: [...input.evidence, item(size)] });
          const contradicted = causeChain({ ...base, evidence: [...input.evidence, item(-size)] });
          expect(weightOf(supported, link.from, link.to)).toBeGreaterThanOrEqual(before - SLACK);
          expect(weightOf(contradicted, link.from, link.to)).toBeLessThanOrEqual(before + SLACK);
        },
      ),
      { numRuns: 80 },
    );
  });

  test('do not depend on the order of what is known', () => {
    fc.assert(
      fc.property(job, (input) => {
        const turned = causeChain({
          ...input,
          seen: [...input.seen].reverse(),
          absent: [...input.absent].reverse(),
          evidence: [...input.evidence].reverse(),
        });
        expect(turned).toEqual(causeChain(input));
      }),
      { numRuns: 50 },
    );
  });

  test('do not change by evidence that says nothing, or that is about another effect', () => {
    fc.assert(
      fc.property(job, fc.constantFrom(...causeLinks), (input, link) => {
        const nothing: CauseEvidence = { id: 'nothing', explains: link.from, group: 'x', logRatio: 0 };
        const with0 = causeChain({ ...input, evidence: [...input.evidence, nothing] });
        expect(with0).toEqual(causeChain(input));
        const elsewhere: CauseEvidence = {
          id: 'elsewhere',
          explains: link.from,
          of: ['lung-dose'],
          group: 'x',
          logRatio: 3,
        };
        if (link.to === 'lung-dose') return;
        const other = causeChain({ ...input, evidence: [...input.evidence, elsewhere] });
        expect(weightOf(other, link.from, link.to)).toBe(weightOf(causeChain(input), link.from, link.to));
      }),
      { numRuns: 50 },
    );
  });

  test('are the priors where nothing is known, and say so', () => {
    const chain = causeChain({ seen: ['humid-air'], absent: [], ruledOut: [], evidence: [] });
    const air = chain.effects.find((e) => e.node === 'humid-air');
    for (const rival of air?.rivals ?? []) {
      expect(rival.weight).toBeCloseTo(rival.prior, 12);
      expect(rival.standing).toBe('not-shown');
    }
    expect(air?.unlisted.weight).toBeCloseTo(air?.unlisted.prior ?? 0, 12);
  });

  test('leave out what is ruled out and keep its rivals in proportion', () => {
    const chain = (ruledOut: ChainInput['ruledOut']) =>
      causeChain({ seen: ['free-water'], absent: [], ruledOut, evidence: [] });
    const without = chain(['plumbing-leak']);
    expect(weightOf(without, 'plumbing-leak', 'free-water')).toBe(0);
    const ratio = (c: CauseChain) =>
      weightOf(c, 'surface-water', 'free-water') / weightOf(c, 'drain-fails', 'free-water');
    expect(ratio(without)).toBeCloseTo(ratio(chain([])), 12);
  });
});

describe('combined evidence', () => {
  test('stays within its caps and keeps every item in sight', () => {
    fc.assert(
      fc.property(evidence, (items) => {
        const all = combineEvidence(items);
        expect(Math.abs(all.logRatio)).toBeLessThanOrEqual(TOTAL_CAP);
        expect(all.supports.length).toBe(items.filter((i) => i.logRatio > 0).length);
        expect(all.contradicts.length).toBe(items.filter((i) => i.logRatio < 0).length);
      }),
    );
  });

  test('counts the same thing looked at twice once, and one slip at most twenty to one', () => {
    const item = (id: string, group: string, logRatio: number): CauseEvidence => ({
      id,
      explains: 'mold',
      group,
      logRatio,
    });
    expect(combineEvidence([item('a', 'x', 1), item('b', 'x', 1.5)]).logRatio).toBe(1.5);
    expect(combineEvidence([item('a', 'x', 1), item('b', 'x', -1.5)]).logRatio).toBe(-0.5);
    expect(combineEvidence([item('a', 'x', 40)]).logRatio).toBe(ITEM_CAP);
  });
});

describe('shares of a balance', () => {
  const share = (
    explains: 'outdoor-air' | 'bare-ground' | 'free-water',
    kgPerDay: number,
    low = kgPerDay,
    high = kgPerDay,
  ) => ({
    id: explains,
    explains,
    kgPerDay,
    low,
    high,
  });

  test('by hand: 6 and 2 of 8 kg a day, against an even half, with a doubt of 0.05', () => {
    const [ground, air] = budgetEvidence([share('bare-ground', 6), share('outdoor-air', 2)], ['humid-air']);
    expect(Math.exp(ground.logRatio)).toBeCloseTo(0.8 / 0.55, 12);
    expect(Math.exp(air.logRatio)).toBeCloseTo(0.3 / 0.55, 12);
  });

  test('a path that carries water away speaks against itself, and takes nothing from the others', () => {
    const [ground, air] = budgetEvidence([share('bare-ground', 6), share('outdoor-air', -9)], ['humid-air']);
    expect(Math.exp(ground.logRatio)).toBeCloseTo(1.05 / 0.55, 12);
    expect(Math.exp(air.logRatio)).toBeCloseTo(0.05 / 0.55, 12);
  });

  test('never fall when a path brings more, and nothing follows from a balance without water', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        (one, more, other) => {
          const ratio = (kg: number) =>
            budgetEvidence([share('bare-ground', kg), share('free-water', other)], ['humid-air'])[0].logRatio;
          expect(ratio(one + more)).toBeGreaterThanOrEqual(ratio(one) - SLACK);
        },
      ),
    );
    expect(budgetEvidence([share('bare-ground', 0), share('free-water', -1)], ['humid-air'])).toEqual([]);
    expect(budgetEvidence([share('bare-ground', 4)], ['humid-air'])).toEqual([]);
  });
});

describe('what to measure next', () => {
  test('is never expected to make things less clear', () => {
    fc.assert(
      fc.property(job, (input) => {
        const chain = causeChain(input);
        for (const effect of chain.effects) {
          for (const sign of causeSigns) {
            const bits = expectedGainBits(effect, sign);
            expect(bits).toBeGreaterThanOrEqual(0);
            expect(bits).toBeLessThanOrEqual(effect.entropyBits + 1e-9);
          }
        }
      }),
      { numRuns: 25 },
    );
  });

  test('is nothing that has the same chances under all explanations', () => {
    fc.assert(
      fc.property(job, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (input, chance) => {
        const blind = {
          ...causeSigns[0],
          of: undefined,
          model: {
            kind: 'answer' as const,
            otherwise: chance,
            tells: Object.fromEntries(keys.map((k) => [k, chance])),
          },
        };
        const { of: _all, ...sign } = blind;
        const chain = causeChain(input);
        for (const effect of chain.effects) expect(expectedGainBits(effect, sign)).toBeLessThan(1e-9);
        expect(whatToMeasureNext(chain, [sign])).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });

  test('comes with outcomes whose chances sum to 1, the most telling measurement first', () => {
    fc.assert(
      fc.property(job, (input) => {
        const next = whatToMeasureNext(causeChain(input), causeSigns);
        next.forEach((one, i) => {
          expect(one.outcomes.reduce((sum, o) => sum + o.chance, 0)).toBeCloseTo(1, 9);
          if (i > 0) expect(next[i - 1].gainBits).toBeGreaterThanOrEqual(one.gainBits - 2e-6);
        });
      }),
      { numRuns: 25 },
    );
  });

  test('is the quicker one of two that tell the same', () => {
    const [sign] = causeSigns.filter((s) => s.key === 'meter-turns');
    const chain = causeChain({ seen: ['free-water'], absent: [], ruledOut: [], evidence: [] });
    const slow = { ...sign, key: 'a-slow', minutes: 90 };
    const late = { ...sign, key: 'a-late', minutes: 1, waitDays: 3 };
    const order = whatToMeasureNext(chain, [slow, late, sign]).map((n) => n.sign.key);
    expect(order).toEqual(['meter-turns', 'a-slow', 'a-late']);
  });
});
