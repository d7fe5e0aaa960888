import { DEMO_JOBS, isSurveyed, readJob, type SurveyedJob } from '@undercroft/record';
import { describe, expect, it } from 'vitest';
import { Assumptions } from '../../src/assumptions.ts';
import { causesOf } from '../../src/causes/causes.ts';
import type { DefectKnown } from '../../src/causes/subject.ts';
import { geometryOf } from '../../src/geometry.ts';
import { assess } from '../../src/index.ts';

function demo(name: string): SurveyedJob {
  const read = readJob(DEMO_JOBS.find((d) => d.name === name)?.job);
  if (!read.ok || !isSurveyed(read.job)) throw new Error(`the demo job ${name} is not sound`);
  return read.job;
}

/** The causes of a job whose observations are put aside, so that only defects speak. */
function withDefects(job: SurveyedJob, defects: readonly DefectKnown[]) {
  const { budgets, criteria } = assess(job, undefined, { season: 'none' });
  const space = geometryOf(job, new Assumptions());
  return causesOf({ job, space, facts: {}, samples: [], readings: [], criteria, budgets, defects });
}

const claimed = (key: string, id: string, state: DefectKnown['state'] = 'claimed'): DefectKnown => ({
  key,
  state,
  claims: [id],
  samples: [],
});

describe('defects', () => {
  const job = demo('doubted-liner');
  const weightOf = (defects: readonly DefectKnown[], from: string, to: string) =>
    withDefects(job, defects).arrows.find((a) => a.from === from && a.to === to)?.weight ?? 0;

  it('that were claimed move the weight of what they speak for, those shown move it more', () => {
    const none = weightOf([], 'drain-fails', 'free-water');
    const one = weightOf([claimed('drain-on-grade', 'f7')], 'drain-fails', 'free-water');
    const proven = weightOf([claimed('drain-on-grade', 'f7', 'shown')], 'drain-fails', 'free-water');
    expect(one).toBeGreaterThan(none);
    expect(proven).toBeGreaterThan(one);
  });

  it('that were claimed against what was measured speak against, and are kept', () => {
    const { arrows, evidence } = withDefects(job, [claimed('drain-on-grade', 'f7', 'contradicted')]);
    const arrow = arrows.find((a) => a.from === 'drain-fails' && a.to === 'free-water');
    expect(arrow?.contradicts).toEqual(['defect-drain-on-grade:drain-fails']);
    const shown = evidence.find((e) => e.id === 'defect-drain-on-grade:drain-fails');
    expect(shown).toMatchObject({ basis: 'defect', says: 'against', times: 2 });
    expect(shown?.origins[0]).toMatchObject({ kind: 'finding', id: 'f7' });
  });

  it('that are absent or unknown, or rest on nothing, say nothing', () => {
    const plain = withDefects(job, []);
    for (const state of ['absent', 'not-shown'] as const) {
      expect(withDefects(job, [claimed('drain-on-grade', 'f7', state)])).toEqual(plain);
    }
    expect(withDefects(job, [claimed('drain-on-grade', 'nobody')])).toEqual(plain);
  });

  it('that were shown by a reading do not count beside the sign that weighs it', () => {
    const { defects, causes } = assess(job, undefined, { season: 'none' });
    expect(defects.find((d) => d.key === 'drain-on-grade')?.state).toBe('shown');
    const arrow = causes.arrows.find((a) => a.from === 'drain-fails' && a.to === 'free-water');
    expect(arrow?.supports).toContain('drain-below-floor:drain-fails');
    expect(arrow?.supports).not.toContain('defect-drain-on-grade:drain-fails');
    expect(arrow?.supports).toContain('defect-pump-or-discharge-faulty:drain-fails');
  });

  it('let a condition be seen that nobody measured', () => {
    const seen = (defects: readonly DefectKnown[]) =>
      withDefects(job, defects).observations.map((o) => o.key);
    expect(seen([])).not.toContain('mold');
    expect(seen([claimed('visible-mold', 'f10')])).toContain('mold');
    expect(seen([])).not.toContain('insects');
    expect(seen([claimed('termite-signs', 'f10')])).toContain('insects');
  });
});
