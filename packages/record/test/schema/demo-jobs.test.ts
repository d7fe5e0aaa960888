import { describe, expect, it } from 'vitest';
import { canonicalJson, DEMO_JOBS, entriesOfJob, JobLog, readJob, readJobText } from '../../src/index.ts';
import { authorOn, START_MS } from '../small-job.ts';

describe.each(DEMO_JOBS)('the demo job $name', ({ job: input }) => {
  const read = readJob(input);
  const job = read.ok ? read.job : null;

  it('fits the schema', () => {
    expect(read).toMatchObject({ ok: true });
  });

  it('reads the same from its own text', () => {
    expect(readJobText(`\ufeff${JSON.stringify(job, null, 2)}`)).toEqual(read);
    expect(readJobText(canonicalJson(job))).toEqual(read);
  });

  it('is the fold of its entries, whatever their order', () => {
    if (job === null) throw new Error('no job');
    const entries = entriesOfJob(job, authorOn('office', START_MS));
    const log = new JobLog(job.id, entries);
    expect(log.fold()).toEqual({ job, issues: [] });
    expect(log.disagreements()).toEqual([]);
    expect(log.entries()).toEqual(entries);
    expect(new JobLog(job.id, entries.reverse()).fold().job).toEqual(job);
  });
});
