import { describe, expect, test } from 'vitest';
import { budgetEvidence } from '../../src/causes/budget-evidence.ts';
import { type ChainInput, causeChain } from '../../src/causes/chain.ts';
import type { CauseEvidence } from '../../src/causes/evidence.ts';
import { whatToMeasureNext } from '../../src/causes/next-measurement.ts';
import type { CauseKey } from '../../src/causes/node.ts';
import { logLikelihoodRatio } from '../../src/causes/outcome-model.ts';
import { causeSigns, findSign } from '../../src/causes/signs.ts';

/** What a sign shows, as evidence on every explanation that it tells about. */
function shows(key: string, value: number | boolean): CauseEvidence[] {
  const sign = findSign(key);
  if (sign === undefined) throw new Error(`no sign ${key}`);
  return (Object.keys(sign.model.tells) as CauseKey[]).map((explains) => ({
    id: `${key}:${explains}`,
    explains,
    ...(sign.of === undefined ? {} : { of: sign.of }),
    group: sign.group,
    logRatio: logLikelihoodRatio(sign.model, explains, value),
  }));
}

function effect(input: Partial<ChainInput>, node: CauseKey) {
  const chain = causeChain({ seen: [], absent: [], ruledOut: [], evidence: [], ...input });
  const found = chain.effects.find((e) => e.node === node);
  if (found === undefined) throw new Error(`${node} is not in the chain`);
  return { chain, found, first: found.rivals[0] };
}

describe('a vented space over damp bare earth, two feet of water in one corner', () => {
  const input: Partial<ChainInput> = {
    seen: ['humid-air', 'free-water', 'sweating', 'wet-wood'],
    ruledOut: ['open-liner', 'machine-pocket', 'machine-small', 'drain-fails'],
    evidence: [
      ...shows('bare-share', 1),
      ...shows('ground-look', 3),
      ...shows('grade-falls-away', -0.015),
      ...shows('spout-distance', 0.36),
      ...shows('sweats-at-sixty', false),
      ...shows('wood-over-air', 0.01),
      ...budgetEvidence(
        [
          { id: 'b1', explains: 'bare-ground', kgPerDay: 9, low: 6, high: 14.6 },
          { id: 'b2', explains: 'outdoor-air', kgPerDay: 2.5, low: 1.2, high: 4.3 },
          { id: 'b3', explains: 'free-water', kgPerDay: 1.2, low: 0.8, high: 1.6 },
        ],
        ['humid-air'],
      ),
    ],
  };

  test('is humid from its ground, wet from the rain, and its ducts sweat because the air is humid', () => {
    expect(effect(input, 'humid-air').first.from).toBe('bare-ground');
    expect(effect(input, 'free-water').first.from).toBe('surface-water');
    expect(effect(input, 'sweating').first.from).toBe('humid-air');
    expect(effect(input, 'wet-wood').first.from).toBe('humid-air');
  });

  test('has its wet wood led back through the air to the ground', () => {
    const { found } = effect(input, 'wet-wood');
    expect(found.roots[0].node).toBe('bare-ground');
    expect(found.roots.map((r) => r.node)).not.toContain('humid-air');
  });

  test('may go on to mold, decay and a floor that moves', () => {
    const { chain } = effect(input, 'humid-air');
    const follows = chain.effects.filter((e) => !e.seen).map((e) => e.node);
    expect(follows).toEqual(expect.arrayContaining(['mold', 'decay', 'floor-moves']));
    expect(follows).not.toContain('lung-dose');
  });
});

describe('a lined space whose machine blows at a wall, with a drain on the ground', () => {
  const input: Partial<ChainInput> = {
    seen: ['damp-far-end', 'free-water', 'smell'],
    ruledOut: ['bare-ground'],
    evidence: [
      ...shows('free-run', 0.56),
      ...shows('inlet-shortfall', 0.22),
      ...shows('starts-per-hour', 6),
      ...shows('run-share', 0.19),
      ...shows('open-ground-at-damp-end', true),
      ...shows('drain-below-floor', -0.025),
      ...shows('drain-joined', false),
      ...shows('drain-fall', 0.0005),
      ...shows('old-liner-left', true),
      ...shows('old-liner-dry', false),
    ],
  };

  test('is damp at the far end because of the machine, and the bare corner there is not forgotten', () => {
    const { found, first } = effect(input, 'damp-far-end');
    expect(first.from).toBe('machine-pocket');
    expect(found.rivals.find((r) => r.from === 'open-liner')?.standing).toBe('supported');
  });

  test('is wet because of its drain and smells of its old sheet', () => {
    expect(effect(input, 'free-water').first.from).toBe('drain-fails');
    expect(effect(input, 'smell').first.from).toBe('old-liner');
  });

  test('turns to the bare corner when the machine is found to blow freely', () => {
    const evidence = [
      ...shows('free-run', 5),
      ...shows('inlet-shortfall', 0.01),
      ...shows('open-ground-at-damp-end', true),
      ...shows('bare-share', 0.05),
    ];
    expect(effect({ ...input, evidence }, 'damp-far-end').first.from).toBe('open-liner');
  });
});

describe('a sound closed space', () => {
  test('has nothing to explain: no effects, no causes, nothing to measure', () => {
    const chain = causeChain({
      seen: [],
      absent: ['humid-air', 'sweating', 'free-water', 'damp-masonry', 'wet-wood', 'wet-bearing', 'mold'],
      ruledOut: [],
      evidence: [...shows('bare-share', 0), ...shows('free-run', 4.7), ...shows('dryer-ends-inside', false)],
    });
    expect(chain).toEqual({ effects: [], roots: [] });
    expect(whatToMeasureNext(chain, causeSigns)).toEqual([]);
  });
});

describe('contradicting evidence', () => {
  test('is kept beside what supports, and the explanation is called disputed', () => {
    const { found } = effect(
      {
        seen: ['humid-air'],
        evidence: [...shows('vents-open', true), ...shows('dew-point-over-outdoor', 4)],
      },
      'humid-air',
    );
    const air = found.rivals.find((r) => r.from === 'outdoor-air');
    expect(air?.standing).toBe('disputed');
    expect(air?.supports).toEqual(['vents-open:outdoor-air']);
    expect(air?.contradicts).toEqual(['dew-point-over-outdoor:outdoor-air']);
  });
});

describe('two causes that fit alike', () => {
  test('water with a bad drain and bad grading: a hose or rain tells them from a leak, not a tape', () => {
    const { chain } = effect({ seen: ['free-water'] }, 'free-water');
    const next = whatToMeasureNext(chain, causeSigns);
    const place = (key: string) => next.findIndex((n) => n.sign.key === key);
    expect(place('hose-brings-water')).toBeGreaterThanOrEqual(0);
    expect(place('hose-brings-water')).toBeLessThan(place('condensate-pump-fixed'));
    const hose = next[place('hose-brings-water')];
    expect(hose.outcomes.find((o) => o.outcome.answer === true)?.leads).toBe('surface-water');
    expect(hose.outcomes.find((o) => o.outcome.answer === false)?.leads).not.toBe('surface-water');
  });
});
