import { describe, expect, test } from 'vitest';
import { command, ownFolder } from './run-command.ts';
import { demoJob, writeJob } from './written-jobs.ts';

const text = (out: string) => out.replace(/\s+/g, ' ');

describe('audit', () => {
  test('names the corner that no picture shows before any defect, and the claim that lacks a face', async () => {
    const { code, out, err } = await command(['audit', 'doubted-liner']);
    expect([code, err]).toEqual([0, '']);
    const read = text(out);
    const corner = read.indexOf('drawn as bare earth, the plan shows: Old batts and cans');
    const claim = read.indexOf('Claimed as done and not proved: Piers wrapped.');
    const first = read.indexOf('Proof');
    expect(corner).toBeGreaterThan(0);
    expect(claim).toBeGreaterThan(corner);
    expect(first).toBeGreaterThan(claim);
    expect(read).toContain('(3 of 4 faces are shown)');
  });

  test('gives each defect its place, proof, criterion with kind and source, consequence, remedy and effect', async () => {
    const { out } = await command(['audit', 'doubted-liner']);
    const read = text(out);
    const at = read.indexOf('3 Drain laid too high: shown;');
    const drain = read.slice(at, read.indexOf(' 3 ', at + 3));
    expect(drain).toContain('1 of 1 finding is wholly in a picture');
    expect(drain).toContain('Measured -1 in (-25.4 mm); it should be at least 4 in (102 mm)');
    expect(drain).toContain('DPR-01a (practice: Common practice, no source)');
    expect(drain).toMatch(/DRN-05 \(code: .*R405\.1\)/);
    expect(drain).toContain('Leads to water stands before the pipe runs');
    expect(drain).toContain('Quantity: up to 47');
    expect(drain).toMatch(/less water in the design month, \d+ % of what enters/);
    expect(drain).toContain('Caution A trench too near');
    expect(read).toContain('Ask in most places work for a licensed trade: plumber');
    expect(read).toContain('Nobody has looked for these yet');
    expect(read).toContain('it is no legal advice');
  });

  test('puts defects together as asked, a repair plan in its order', async () => {
    const { out } = await command(['audit', 'doubted-liner', '--by', 'step']);
    const order = ['\nDrain and sump\n', '\nWood\n', '\nLiner\n', '\nDry air\n'].map((h) => out.indexOf(h));
    expect(order.every((at) => at > 0)).toBe(true);
    expect([...order].sort((a, b) => a - b)).toEqual(order);
    const bad = await command(['audit', 'doubted-liner', '--by', 'color']);
    expect(bad.code).toBe(2);
    expect(bad.err).toContain('--by color is not known. It takes one of severity, subject, step.');
  });

  test('tells a defect that is only said from those that were shown', async () => {
    const job = demoJob('doubted-liner');
    const said = {
      ...job,
      findings: [
        ...job.findings,
        {
          id: 'said',
          title: 'Sour smell',
          defect: 'smell-from-organics',
          place: { words: 'by the bath' },
          photoIds: [],
          observationIds: [],
          when: '2026-08-12T08:40:00-04:00',
          who: 'Ruth Castellane',
        },
      ],
    };
    const folder = ownFolder();
    const { out } = await command(['audit', writeJob(folder, said), '--json'], folder);
    const audit = JSON.parse(out);
    expect(audit.job.id).toBe('demo-doubted-liner');
    const own = audit.defects.filter((d: { findings: { id: string }[] }) =>
      d.findings.some((f) => f.id === 'said'),
    );
    expect(own.map((d: { state: string }) => d.state)).toEqual(['claimed']);
    expect(audit.coverage.unseen[0].standsIn[0].name).toBe('Old batts and cans');
    expect(audit.defectsNotShown.length).toBeGreaterThan(10);
  });

  test('ends with 1 under --strict where a defect is shown', async () => {
    expect((await command(['audit', 'doubted-liner', '--strict'])).code).toBe(1);
  });
});
