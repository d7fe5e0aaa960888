import { assess } from '@undercroft/assessment';
import { DEMO_JOBS, readJob } from '@undercroft/record';
import { expect, it } from 'vitest';
import { REPAIR_KEYS, repairDoes, repairTitle } from '../../../src/screens/drying/repair-words.ts';

it('calls the repairs what the assessment calls them', () => {
  const read = readJob(DEMO_JOBS[2].job);
  if (!read.ok) throw new Error('the demo job is damaged');
  const { job } = read;
  job.design.repairs = REPAIR_KEYS.map((repair) => ({ id: repair, repair, chosen: true }));
  const { repairs } = assess(job, undefined, { season: 'quick' }).season!;
  expect(repairs).toHaveLength(17);
  for (const { repair, title, does } of repairs) {
    expect(repairTitle(repair, 'en')).toBe(title);
    expect(repairDoes(repair, 'en')).toBe(does);
    expect(repairTitle(repair, 'es')).not.toBe(title);
  }
});
