import { distribution as engine } from '@undercroft/engine';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assess.ts';
import type { Assessment } from '../../src/assessment.ts';
import type {
  DistributionState,
  DistributionWorkedOut,
} from '../../src/distribution/distribution-assessment.ts';
import { assessmentJsonSchema } from '../../src/results-schema/assessment-schema.ts';
import { demoJob } from '../season/jobs.ts';
import { dehumidifierOf, demoWith, fieldOf } from './spaces.ts';

function worked({ distribution }: Assessment): DistributionWorkedOut {
  if (distribution?.outcome !== 'worked-out') throw new Error(distribution?.why ?? 'no field');
  return distribution;
}

const assessment = assess(demoJob('doubted-liner'), undefined, {
  season: 'none',
  coverage: false,
  distribution: 'search',
});
const shown = worked(assessment);
const states = (of: { low: DistributionState; value: DistributionState; high: DistributionState }) => [
  of.low,
  of.value,
  of.high,
];

describe('the machine that blows at a wall in its corner', () => {
  const { found } = shown;

  it('reads 55 % at its intake and is content, while the far end stays above 75 %', () => {
    expect(found.machine).toMatchObject({ id: 'dh', bearingDeg: 270, throwEndedBy: 'obstacle' });
    for (const state of states(found)) {
      expect(state.intakeRelativeHumidity).toBeCloseTo(0.55, 3);
      expect(state.outcome).toBe('holds');
      expect(state.farEnd.relativeHumidity).toBeGreaterThan(0.75);
      // It would have to run far more if its air got about: the mark of a fault of distribution.
      expect(state.duty).toBeLessThan(0.8 * state.mixedDuty);
      expect(state.signature).toBe(true);
    }
    expect(found.ranges.planCoefficient?.high).toBeLessThan(0.5);
  });

  it('has its far end at the other end of the floor', () => {
    // The machine stands near (1.2, 7.6) on a floor of 15.8 by 8.5 m.
    const { farEnd, farM } = found.value;
    expect(farEnd.at.xM).toBeGreaterThan(13);
    expect(farM).toBeGreaterThan(14);
    expect(farEnd.areaM2 / 133).toBeCloseTo(0.05, 2);
  });

  it('gets its dry air to the far end where the search would have it', () => {
    const { suggested, present } = shown.search!;
    for (const state of states(suggested!)) expect(state.farEnd.relativeHumidity).toBeLessThan(0.75);
    for (const state of states(suggested!)) expect(state.dampest.relativeHumidity).toBeLessThan(0.75);
    expect(present.rank).toBeGreaterThan(1);
    expect(suggested!.machine.ratedKgPerDay).toBe(found.machine.ratedKgPerDay);
  });

  it('is told what each change buys, and which rule left places out', () => {
    const { changes, present, excluded, excludedByRule, screened, ranked } = shown.search!;
    expect(screened).toBeGreaterThanOrEqual(300);
    const kinds = changes.map((c) => c.kind);
    for (const kind of ['move', 'turn', 'duct', 'fan', 'remote humidistat']) expect(kinds).toContain(kind);
    const turn = changes.find((c) => c.kind === 'turn')!;
    expect(turn.machine.bearingDeg).not.toBe(270);
    expect(turn.dampestRelativeHumidity).toBeLessThan(present.dampestRelativeHumidity);
    expect(ranked[0].dampestRelativeHumidity).toBeLessThanOrEqual(turn.dampestRelativeHumidity);
    expect(excludedByRule.reduce((sum, r) => sum + r.count, 0)).toBe(excluded.length);
    expect(excludedByRule.map((r) => r.rule)).toContain('outlet-run');
    for (const { why } of excluded) expect(why.length).toBeGreaterThan(10);
  });

  it('says what its maps rest on and what they cannot say', () => {
    expect(shown.limits.map((l) => l.code)).toEqual(
      expect.arrayContaining(['mixing-uncertain', 'near-machine']),
    );
    expect(shown.fit).toMatchObject({ outcome: 'not-fitted', places: 3, needed: 4 });
    expect(shown.mixing.low).toBeLessThan(shown.mixing.value);
    expect(shown.mixing.value).toBeLessThan(shown.mixing.high);
    const of = (key: string) => shown.inputs.find((i) => i.key === key)?.origin.kind;
    expect(of('direction-dh')).toBe('plan');
    expect(of('outletSpeed')).toBe('assumption');
  });

  it('has maps over the floor and nothing beside it', () => {
    const { map } = found.value;
    const cells = map.columns * map.rows;
    expect(map.relativeHumidity).toHaveLength(cells);
    expect(map.dewPointC).toHaveLength(cells);
    const at = (xM: number, yM: number) =>
      map.relativeHumidity[
        Math.floor((yM - map.originYM) / map.cellYM) * map.columns +
          Math.floor((xM - map.originXM) / map.cellXM)
      ]!;
    expect(at(14.5, 1.8)).toBeGreaterThan(at(2, 7.5) + 0.2);
    const wood = map.woodMoisture.filter((m) => m !== null);
    expect(Math.max(...wood)).toBeGreaterThan(0.16);
    expect(Math.min(...wood)).toBeLessThan(0.11);
  });

  it('does not dry the far end with twice the capacity in the same place', () => {
    const twice = demoWith('doubted-liner', (plan) => {
      const machine = dehumidifierOf(plan);
      machine.ratedKgPerDay = 66;
      machine.airflowM3PerS = 0.17;
    });
    const bigger = worked(
      assess(twice, undefined, { season: 'none', coverage: false, distribution: 'present' }),
    );
    const [before, after] = [found, bigger.found].map((f) => f.ranges);
    expect(bigger.found.value.intakeRelativeHumidity).toBeCloseTo(0.55, 3);
    expect(after.farEndRelativeHumidity.low).toBeGreaterThan(0.75);
    // It rests more and dries no more: within half a point, and no drier.
    expect(after.duty.value).toBeLessThan(0.6 * before.duty.value);
    expect(after.farEndRelativeHumidity.value).toBeGreaterThanOrEqual(before.farEndRelativeHumidity.value);
    expect(after.dampestRelativeHumidity.value).toBeGreaterThanOrEqual(before.dampestRelativeHumidity.value);
  });
});

it('fits the JSON Schema of an assessment', () => {
  const valid = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(assessmentJsonSchema());
  valid(JSON.parse(JSON.stringify(assessment)));
  expect(valid.errors ?? []).toEqual([]);
});

it('reaches the whole plan alike where mixing is huge', () => {
  const { model, arrangement } = fieldOf(demoJob('doubted-liner'), 0.5);
  const state = engine.steadyField(model, arrangement, { mixingM2PerS: 10 });
  const { numbers } = engine.fieldResult(model, arrangement, state);
  expect(Math.abs(numbers.planCoefficient! - 1)).toBeLessThan(0.02);
});
