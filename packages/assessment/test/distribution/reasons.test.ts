import { DEMO_JOBS, type SurveyedJob } from '@undercroft/record';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assess.ts';
import type { DistributionWorkedOut } from '../../src/distribution/distribution-assessment.ts';
import { demoJob, plainJob } from '../season/jobs.ts';
import { dehumidifierOf, demoWith } from './spaces.ts';

const only = { season: 'none', coverage: false, distribution: 'present' } as const;
const airOf = (job: SurveyedJob) => assess(job, undefined, only).distribution;

function worked(job: SurveyedJob): DistributionWorkedOut {
  const air = airOf(job);
  if (air?.outcome !== 'worked-out') throw new Error(air?.why ?? 'not asked for');
  return air;
}

/** Every number in a result that is no number, by its path. */
function notFinite(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, one]) => notFinite(one, `${path}.${key}`));
}

describe.each(DEMO_JOBS.map((d) => d.name))('the air of %s', (name) => {
  it('has only numbers, or a reason', () => {
    const air = airOf(demoJob(name));
    expect(notFinite(air)).toEqual([]);
    if (air?.outcome === 'missing') expect(air.why).toMatch(/\.$/);
    else expect(air?.found.value.map.relativeHumidity.some((h) => h !== null)).toBe(true);
  });
});

it('is left out where nobody asked, and where the year is', () => {
  expect(assess(demoJob('sound-closed'), undefined, { season: 'none' }).distribution).toBeUndefined();
  const off = assess(demoJob('sound-closed'), undefined, { season: 'quick', distribution: false });
  expect(off.distribution).toBeUndefined();
  const on = assess(demoJob('sound-closed'), undefined, { season: 'quick' });
  expect(on.distribution?.outcome).toBe('worked-out');
});

it('has a reason where no dehumidifier runs', () => {
  expect(airOf(plainJob({ cover: 'bare-earth' }))).toMatchObject({ outcome: 'missing', code: 'no-machine' });
  const resting = demoWith('sound-closed', (plan) => {
    dehumidifierOf(plan).running = false;
  });
  expect(airOf(resting)).toMatchObject({ outcome: 'missing', code: 'no-machine' });
});

it('has a reason where the machine stands outside the walls', () => {
  const outside = demoWith('sound-closed', (plan) => {
    dehumidifierOf(plan).at = { xM: 30, yM: 30 };
  });
  expect(airOf(outside)).toMatchObject({
    outcome: 'missing',
    code: 'refused',
    why: expect.stringContaining('dehumidifier'),
  });
});

it('names what it takes where the machine says little', () => {
  const bare = demoWith('sound-closed', (plan) => {
    const { id, kind, at } = dehumidifierOf(plan);
    plan.equipment = [{ id, kind, at }];
  });
  const { inputs, found } = worked(bare);
  const taken = inputs.filter((i) => i.origin.kind === 'assumption').map((i) => i.key);
  expect(taken).toEqual(
    expect.arrayContaining(['direction-dh', 'machineCapacity', 'machineEfficiency', 'airflow', 'setPoint']),
  );
  // The machine stands west and south of the middle (6.4, 4.3), so it is taken to blow east and a little north.
  expect(found.machine.bearingDeg).toBeGreaterThan(0);
  expect(found.machine.bearingDeg).toBeLessThan(90);
  expect(found.machine.setRelativeHumidity).toBe(bare.design.targetRelativeHumidity);
});

it('takes the largest of several machines and says so', () => {
  const two = demoWith('sound-closed', (plan) => {
    const machine = dehumidifierOf(plan);
    plan.equipment.push({ ...machine, id: 'small', ratedKgPerDay: 12, at: { xM: 9, yM: 6 } });
  });
  const { found, notices } = worked(two);
  expect(found.machine.id).toBe('dh');
  expect(notices.find((n) => n.code === 'other-machines')?.message).toContain('small');
});

it('has fans where they were drawn', () => {
  const fan = demoWith('sound-closed', (plan) => {
    plan.equipment.push({
      id: 'fan',
      kind: 'circulating-fan',
      at: { xM: 8, yM: 6 },
      facingDeg: 180,
      inputW: 31,
      airflowM3PerS: 0.07,
      running: true,
    });
  });
  expect(worked(fan).found.fans).toEqual([
    { id: 'fan', at: { xM: 8, yM: 6 }, bearingDeg: 180, airflowM3PerS: 0.07, powerW: 31 },
  ]);
});

it('looks for no other arrangement where no door is drawn', () => {
  const shut = demoWith('sound-closed', (plan) => {
    plan.doors = [];
  });
  const air = assess(shut, undefined, { ...only, distribution: 'search' }).distribution;
  if (air?.outcome !== 'worked-out') throw new Error('no field');
  expect(air.search).toBeUndefined();
  expect(air.notices.map((n) => n.code)).toContain('no-door');
});

it('suggests nothing where the floor is dry enough', () => {
  const small = demoWith('sound-closed', (plan) => {
    const [a, b, c, d] = [
      { xM: 0, yM: 0 },
      { xM: 6, yM: 0 },
      { xM: 6, yM: 5 },
      { xM: 0, yM: 5 },
    ].map((at, i) => ({ id: 'abcd'[i], at }));
    Object.assign(plan, { outline: { kind: 'corners', corners: [a, b, c, d] } });
    plan.piers = [];
    plan.girders = [];
    plan.ducts = [];
    plan.vents = [];
    plan.seams = [];
    plan.equipment = [{ ...dehumidifierOf(plan), at: { xM: 2, yM: 2.5 } }];
    plan.doors = [{ ...plan.doors[0], offsetM: 2 }];
  });
  const air = assess(small, undefined, { ...only, distribution: 'search' }).distribution;
  if (air?.outcome !== 'worked-out') throw new Error(air?.why);
  expect(air.search?.suggested).toBeUndefined();
  expect(air.search?.notices.map((n) => n.code)).toContain('dry-enough');
  expect(air.search?.present.dampestRelativeHumidity).toBeLessThanOrEqual(0.65);
});

it('fits mixing to readings at four places and takes it for the maps where they tell it', () => {
  const job = demoWith('doubted-liner', () => {});
  const [first] = job.readings.air.filter((r) => r.where === 'crawl');
  job.readings.air.push(
    { ...first, id: 'air-4', place: { at: { xM: 14, yM: 2 } }, temperatureC: 21.5, relativeHumidity: 0.8 },
    { ...first, id: 'air-5', place: { at: { xM: 4, yM: 2 } }, temperatureC: 22, relativeHumidity: 0.7 },
  );
  const { fit, mixing } = worked(job);
  if (fit.outcome !== 'fitted') throw new Error(fit.why);
  expect(fit.residuals.map((r) => r.readingId)).toEqual(['air-1', 'air-2', 'air-3', 'air-4', 'air-5']);
  expect(fit.misfit).toBeLessThanOrEqual(fit.misfitBefore);
  expect(mixing.origin.kind).toBe(fit.used ? 'reading' : 'assumption');
});
