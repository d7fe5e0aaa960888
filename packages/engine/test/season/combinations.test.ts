import { describe, expect, it } from 'vitest';
import { runCombinations, type SeasonRepair } from '../../src/season/combinations.ts';
import { latinHypercube, rankCorrelation } from '../../src/season/sampling.ts';
import { runUncertainty, usualUnknowns } from '../../src/season/uncertainty.ts';
import { prototypeCases, prototypeDryer, prototypeWeather } from './test-cases.ts';

const weather = prototypeWeather();
const { a, c, c2 } = prototypeCases();
const repairs: SeasonRepair[] = [
  { name: 'liner', costCents: 300_000, apply: (s) => ({ ...s, cover: c.cover }) },
  { name: 'close vents', costCents: 70_000, apply: (s) => ({ ...s, airExchange: c.airExchange }) },
  {
    name: 'dehumidifier',
    costCents: 150_000,
    apply: (s) => ({ ...s, machines: [...s.machines, prototypeDryer] }),
  },
];

describe('combinations of repairs', () => {
  const result = runCombinations(a, repairs, weather);

  it('runs all eight and finds that the sets which cost more and do less are never best', () => {
    expect(result.complete).toBe(true);
    expect(result.sets).toHaveLength(8);
    expect(result.best[0]!.repairs).toEqual([]);
    for (let i = 1; i < result.best.length; i++) {
      expect(result.best[i]!.costCents).toBeGreaterThan(result.best[i - 1]!.costCents);
    }
    expect(result.best.map((set) => set.repairs)).not.toContainEqual(['close vents']);
  });

  it('shows that closing the vents alone makes it worse, and the liner better', () => {
    const alone = (name: string) => result.effects.find((effect) => effect.name === name)!.alone;
    expect(alone('close vents').daysAbove80).toBeGreaterThan(0);
    expect(alone('liner').daysAbove80).toBeLessThan(0);
    expect(alone('dehumidifier').yearlyCostCents).toBeGreaterThan(0);
  });

  it('with more than eight repairs runs each alone and each left out, and says so', () => {
    const nine = Array.from({ length: 9 }, (_, i) => ({ ...repairs[i % 3]!, name: `repair ${i}` }));
    const many = runCombinations(a, nine, weather);
    expect(many.complete).toBe(false);
    expect(many.sets).toHaveLength(20);
    expect(many.notices.map((n) => n.code)).toContain('not-every-combination');
  });

  it('refuses two repairs of one name', () => {
    expect(() => runCombinations(a, [repairs[0]!, repairs[0]!], weather)).toThrow(
      /two repairs are named liner/,
    );
  });
});

describe('years of what is not known', () => {
  it('draws one value from each stratum, the same for the same seed', () => {
    const [first, second] = latinHypercube(40, 2, 3);
    const strata = Array.from(first!, (v) => Math.floor(v * 40)).sort((x, y) => x - y);
    expect(strata).toEqual(Array.from({ length: 40 }, (_, i) => i));
    expect(latinHypercube(40, 2, 3)[1]).toEqual(second);
    expect(latinHypercube(40, 2, 4)[1]).not.toEqual(second);
  });

  it('correlates ranks as the textbook form 1 − 6 Σd²/(n(n² − 1)) does', () => {
    // Ranks 2 1 4 5 3 against 1 to 5: Σd² = 1 + 1 + 1 + 1 + 4, n = 5.
    expect(rankCorrelation([1, 2, 3, 4, 5], [2, 1, 3, 6, 2.5])).toBeCloseTo(1 - (6 * 8) / 120, 9);
  });

  it('finds open ground to matter most where a liner is bad, and repeats with its seed', () => {
    const run = () =>
      runUncertainty({ ...c2, name: 'bad liner' }, usualUnknowns(), weather, { count: 20, seed: 9 });
    const result = run();
    expect(result.influences[0]!.name).toBe('open ground');
    expect(result.influences[0]!.onHumidity).toBeGreaterThan(0.5);
    expect(result.staysBelow60.value).toBeLessThanOrEqual(result.staysBelow80.value);
    expect(result.highestDayRelativeHumidity.low).toBeLessThan(result.highestDayRelativeHumidity.high);
    expect(run()).toEqual(result);
  });
});
