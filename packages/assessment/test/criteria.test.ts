import { DEMO_JOBS, type Job, type JobInput, readJob } from '@undercroft/record';
import { describe, expect, it } from 'vitest';
import { assess } from '../src/index.ts';

/** The sound closed demo job with something changed. */
function changed(change: (job: JobInput) => void): Job {
  const demo = DEMO_JOBS.find((d) => d.name === 'sound-closed');
  const copy = structuredClone(demo?.job) as JobInput;
  change(copy);
  const read = readJob(copy);
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
  return read.job;
}

function verdict(job: Job, id: string): string | undefined {
  return assess(job, undefined, { season: 'none' }).criteria.find((c) => c.id === id)?.verdict;
}

describe('criteria about many items', () => {
  it('are met when every pier was measured', () => {
    expect(
      verdict(
        changed(() => {}),
        'LIN-08a',
      ),
    ).toBe('met');
  });

  it('are not shown when one pier was passed over', () => {
    const job = changed(({ plan }) => {
      const piers = plan.piers ?? [];
      piers[3] = { ...piers[3], wrapHeightM: undefined };
    });
    expect(verdict(job, 'LIN-08a')).toBe('not-shown');
  });

  it('are not met when one pier was found bare', () => {
    const job = changed(({ plan }) => {
      const piers = plan.piers ?? [];
      piers[3] = { ...piers[3], wrapHeightM: 0 };
    });
    expect(verdict(job, 'LIN-08a')).toBe('not-met');
  });
});

describe('evidence', () => {
  it('that is assumed never shows a criterion as met', () => {
    const job = changed(({ readings }) => {
      for (const o of readings?.observations ?? []) if (o.quantity === 'radonBqPerM3') o.assumed = true;
    });
    expect(verdict(job, 'RAD-01a')).toBe('not-shown');
  });

  it('of an unknown quantity is named and not used', () => {
    const job = changed(({ readings }) => {
      readings?.observations?.push({
        id: 'odd',
        quantity: 'moonPhase',
        value: 3,
        when: '2026-06-18T13:05:00-04:00',
        who: 'Anselm Voss-Reyes',
      });
    });
    expect(
      assess(job, undefined, { season: 'none' })
        .notices.map((n) => n.message)
        .join(' '),
    ).toContain('"moonPhase"');
  });

  it('leads to the people and times behind every verdict', () => {
    for (const c of assess(
      changed(() => {}),
      undefined,
      { season: 'none' },
    ).criteria) {
      if (c.verdict === 'not-shown') continue;
      expect(c.source, c.id).not.toBe('');
      for (const e of c.evidence) {
        expect(
          e.origin.kind === 'plan' || (e.origin.who !== undefined && e.origin.when !== undefined),
          c.id,
        ).toBe(true);
      }
    }
  });
});

describe('local amendments', () => {
  it('that are not built in are named', () => {
    const job = changed(({ house }) => {
      if (house !== undefined) house.amendments = ['atlantis'];
    });
    expect(
      assess(job, undefined, { season: 'none' })
        .notices.map((n) => n.message)
        .join(' '),
    ).toContain('"atlantis"');
  });
});
