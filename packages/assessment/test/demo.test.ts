import { DEMO_JOBS, type Job, readJob } from '@undercroft/record';
import { describe, expect, it } from 'vitest';
import { assess, checkJob } from '../src/index.ts';

function demo(name: string): Job {
  const found = DEMO_JOBS.find((d) => d.name === name);
  const read = readJob(found?.job);
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
  return read.job;
}

describe('a neglected vented space', () => {
  const job = demo('neglected-vented');
  const result = assess(job, undefined, { season: 'none' });

  it('has a sound plan', () => {
    expect(checkJob(job)).toEqual([]);
    expect(result.geometry.closure?.verdict).toBe('good');
  });

  it('shows in the air, on the duct and in the wood', () => {
    const state = new Map(result.readings.map((r) => [r.id, r.state]));
    expect(state.get('air-1')).toBe('alarm');
    expect(state.get('sf-2')).toBe('alarm');
    expect(state.get('wd8')).toBe('alarm');
  });

  it('breaks the code with its bare earth, its vents and its dryer', () => {
    const notMet = result.criteria.filter((c) => c.verdict === 'not-met').map((c) => c.id);
    expect(notMet).toEqual(expect.arrayContaining(['VNT-01', 'DEB-01', 'EXH-01a', 'WOD-01']));
  });

  it('is wet in the most humid month by its own balance', () => {
    expect(result.budgets.designMonth.crawl.relativeHumidity).toBeGreaterThan(0.8);
  });
});

describe('a doubted liner', () => {
  const result = assess(demo('doubted-liner'), undefined, { season: 'none' });

  it('fails what its owner doubted, each with its evidence', () => {
    const byId = new Map(result.criteria.map((c) => [c.id, c]));
    for (const id of ['UNV-03', 'LIN-01', 'LIN-05a', 'UNV-04', 'DHU-08a', 'DRN-05']) {
      expect(byId.get(id)?.verdict, id).toBe('not-met');
      expect(byId.get(id)?.evidence.length, id).toBeGreaterThan(0);
    }
  });

  it('calls framing at 17 to 18 % too wet for a space with a dehumidifier', () => {
    const wood = result.readings.filter((r) => r.kind === 'wood' && r.means.includes('Too wet for a space'));
    expect(wood.length).toBeGreaterThan(0);
  });
});

describe('a sound closed space', () => {
  const result = assess(demo('sound-closed'), undefined, { season: 'none' });

  it('meets everything that was shown', () => {
    expect(result.criteria.filter((c) => c.verdict === 'not-met').map((c) => `${c.id} ${c.reason}`)).toEqual(
      [],
    );
    expect(result.criteriaCount.met).toBeGreaterThan(40);
  });

  it('has no reading in alarm', () => {
    expect(result.readings.filter((r) => r.state === 'alarm').map((r) => r.id)).toEqual([]);
  });

  it('never calls met what nobody measured', () => {
    for (const c of result.criteria) {
      if (c.verdict === 'met')
        expect(
          c.evidence.some((e) => !e.assumed),
          c.id,
        ).toBe(true);
    }
  });
});
