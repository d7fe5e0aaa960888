import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { assess, assessmentJsonSchema } from '../../src/index.ts';
import { plainJob } from './jobs.ts';

const job = plainJob(
  { cover: 'bare-earth', surface: 'dark-damp' },
  [
    { repair: 'ground-liner', priceCents: 400_000 },
    { repair: 'close-vents', priceCents: 70_000 },
    'wood-treatment',
    { repair: 'dehumidifier', priceCents: 180_000 },
  ],
  {
    machines: [
      { id: 'big', name: 'Big', ratedKgPerDay: 60, ratingPoint: '80F-60', litersPerKWh: 2.5 },
      { id: 'small', name: 'Small', ratedKgPerDay: 35, ratingPoint: '80F-60', litersPerKWh: 2.1 },
    ],
  },
);
const told: number[] = [];
const full = (seed: number) =>
  assess(job, undefined, { season: 'full', seed, years: 20, progress: (done) => told.push(done) });
const result = full(1);
const { ranking, chances, cases } = result.season!;

describe('which repairs buy dryness', () => {
  it('runs every combination of the repairs that can act', () => {
    expect(ranking!.complete).toBe(true);
    expect(ranking!.yearsRun).toBe(8);
    expect(ranking!.sets).toHaveLength(8);
    expect(ranking!.effects.map((e) => e.id).sort()).toEqual(['r1', 'r2', 'r4']);
  });

  it('agrees with the cases that it repeats', () => {
    const of = (ids: string[]) => ranking!.sets.find((s) => s.repairIds.join() === ids.join())!;
    const none = of([]);
    expect(none.daysAbove80).toBe(cases[0].daysAbove80);
    expect(none.peakMoldIndex).toBeCloseTo(cases[0].peakMoldIndex, 9);
    const liner = cases.find((c) => c.repairIds.join() === 'r1')!;
    expect(of(['r1']).peakWoodMoisture).toBeCloseTo(liner.peakWoodMoisture, 9);
    const all = cases.find((c) => c.kind === 'all-repairs')!;
    expect(of(['r1', 'r2', 'r4']).yearlyCostCents).toBe(all.costCents);
    const effect = ranking!.effects.find((e) => e.id === 'r1')!;
    expect(effect.alone.daysAbove80).toBe(liner.daysAbove80 - cases[0].daysAbove80);
  });

  it('names for each budget a set that no cheaper set matches', () => {
    const { best, sets } = ranking!;
    expect(best[0].priceCents).toBe(0);
    for (let i = 1; i < best.length; i++) {
      expect(best[i].priceCents).toBeGreaterThan(best[i - 1].priceCents);
      expect(best[i].daysAbove80).toBeLessThanOrEqual(best[i - 1].daysAbove80);
    }
    for (const one of best) {
      const cheaper = sets.filter((s) => s.priceCents <= one.priceCents);
      expect(Math.min(...cheaper.map((s) => s.daysAbove80))).toBe(one.daysAbove80);
    }
  });

  it('puts the repair first that takes away most days above 80 %', () => {
    const days = ranking!.effects.map((e) => e.alone.daysAbove80 + e.last.daysAbove80);
    expect([...days].sort((a, b) => a - b)).toEqual(days);
  });
});

describe('how sure it is', () => {
  it('counts chances that grow with the limit', () => {
    const { staysBelow60, staysBelow70, staysBelow80, moldAtMost3 } = chances!;
    expect(staysBelow60.value).toBeLessThanOrEqual(staysBelow70.value);
    expect(staysBelow70.value).toBeLessThanOrEqual(staysBelow80.value);
    for (const chance of [staysBelow60, staysBelow70, staysBelow80, moldAtMost3]) {
      expect(chance.low).toBeLessThanOrEqual(chance.value + 1e-12);
      expect(chance.high).toBeGreaterThanOrEqual(chance.value - 1e-12);
    }
  });

  it('draws what was assumed with a range, and the weather', () => {
    const keys = chances!.influences.map((i) => i.key);
    for (const key of [
      'weather',
      'openFraction-elsewhere',
      'dryLayerUnderLiner',
      'sealedVentLeakShare',
      'crawlWallLeakageM2PerM2',
      'sheet-elsewhere',
      'planCoefficient',
    ]) {
      expect(keys).toContain(key);
    }
    expect(new Set(keys).size).toBe(keys.length);
    const shares = chances!.influences.map((i) => i.share);
    expect([...shares].sort((a, b) => b - a)).toEqual(shares);
    for (const one of chances!.influences) expect(one.low).toBeLessThan(one.high);
  });

  it('spreads round the year of the usual values', () => {
    const all = cases.find((c) => c.kind === 'all-repairs')!;
    const { low, high } = chances!.highestDayRelativeHumidity;
    expect(low).toBeLessThan(all.highestDayRelativeHumidity + 0.03);
    expect(high).toBeGreaterThan(all.highestDayRelativeHumidity - 0.03);
  });

  it('tells its progress in order', () => {
    expect([...told].sort((a, b) => a - b)).toEqual(told);
  });

  it('gives the same for the same seed, byte for byte, and another sample for another', () => {
    expect(JSON.stringify(full(1))).toBe(JSON.stringify(result));
    const other = full(2).season!.chances!;
    expect(other.energyKWh).not.toEqual(chances!.energyKWh);
  }, 120_000);
});

it('is an assessment by its schema', () => {
  const valid = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(assessmentJsonSchema());
  valid(JSON.parse(JSON.stringify(result)));
  expect(valid.errors ?? []).toEqual([]);
});

it('runs more than eight repairs alone and left out only', () => {
  const many = plainJob({ cover: 'bare-earth' }, [
    'ground-liner',
    'seal-edges',
    'wrap-piers',
    'close-vents',
    'air-seal-floor',
    'drain',
    'regrade',
    'insulate-walls',
    'circulating-fan',
  ]);
  const ran = assess(many, undefined, { season: 'full', years: 20 }).season!.ranking!;
  expect(ran.complete).toBe(false);
  expect(ran.yearsRun).toBe(20);
  expect(ran.notices.map((n) => n.code)).toEqual(['not-every-combination', 'repair-without-price']);
}, 120_000);
