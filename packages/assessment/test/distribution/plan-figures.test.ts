import { expect, it } from 'vitest';
import { assess } from '../../src/assess.ts';
import { Assumptions } from '../../src/assumptions.ts';
import { distributionOf } from '../../src/distribution/distribution.ts';
import { withSources } from '../../src/distribution/plan-figures.ts';
import { geometryOf } from '../../src/geometry.ts';
import { chosenRepairs, repaired } from '../../src/season/repairs.ts';
import { asFound } from '../../src/season/space-state.ts';
import { demoJob } from '../season/jobs.ts';
import { spaceOf } from './spaces.ts';

it('changes with the sources as the mean share of a line does', () => {
  // tanh(2)/2 and, with four times the sources, tanh(4)/4.
  expect(withSources(Math.tanh(2) / 2, 4)).toBeCloseTo(Math.tanh(4) / 4, 9);
  expect(withSources(Math.tanh(2) / 2, 1)).toBeCloseTo(Math.tanh(2) / 2, 9);
  expect(withSources(Math.tanh(2) / 2, 1e-6)).toBeCloseTo(1, 3);
  // A machine whose dry air is delivered far away is beyond that line.
  expect(withSources(1.2, 4)).toBe(1.2);
});

it('of a repaired space is near that of its own field', () => {
  const where = spaceOf(demoJob('doubted-liner'));
  const found = distributionOf(where, 'present');
  const edges = chosenRepairs(where.job).filter((r) => r.meaning.repair === 'seal-edges');
  const state = repaired(asFound(where.job), edges, {});
  const scaled = found.planFigures?.(state, 'dh');
  const own = distributionOf(
    { ...where, job: state.job, drawn: state.job.plan, space: geometryOf(state.job, new Assumptions()) },
    'present',
  ).shown;
  if (own.outcome !== 'worked-out' || scaled === undefined) throw new Error('no field');
  const exact = own.found.ranges.planCoefficient!.value;
  const before = found.planFigures!(asFound(where.job), 'dh')!.value;
  expect(exact).toBeGreaterThan(1.1 * before);
  // A line in place of the plan: a tenth off is less than the band of mixing around it.
  expect(Math.abs(scaled.value / exact - 1)).toBeLessThan(0.1);
  expect(found.planFigures!({ ...state, machineIsNew: true }, 'dh')).toBeUndefined();
  expect(found.planFigures!(state, 'other')).toBeUndefined();
});

it('goes into the year and into what is drawn for the chances', () => {
  const job = demoJob('doubted-liner');
  const run = (distribution: false | 'present') =>
    assess(job, undefined, { season: 'quick', coverage: false, distribution });
  const [without, air] = [run(false), run('present')];
  const of = (a: typeof air) => a.assumptions.find((one) => one.key === 'planCoefficient');
  if (air.distribution?.outcome !== 'worked-out') throw new Error('no field');
  const { low, value, high } = air.distribution.found.ranges.planCoefficient!;
  expect(of(air)).toMatchObject({ low, high });
  expect(of(air)?.value).toBeCloseTo(value, 9);
  expect(of(without)?.why).toContain('readings');
  // The machine dries its pocket and rests: the rest of the space is damper than with air that reaches it.
  const [before, after] = [without, air].map((a) => a.season!.cases[0]);
  expect(after.waterRemovedKg).toBeLessThan(before.waterRemovedKg);
  expect(after.highestDayRelativeHumidity).toBeGreaterThan(before.highestDayRelativeHumidity);
});
