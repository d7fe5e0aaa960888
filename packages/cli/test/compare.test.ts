import { describe, expect, test } from 'vitest';
import { command, ownFolder } from './run-command.ts';
import { demoJob, writeJob } from './written-jobs.ts';

/** The doubted liner with every pier wrapped but one, a claim that all are, and one reading taken again. */
function later(): unknown {
  const job = demoJob('doubted-liner');
  return {
    ...job,
    header: { ...job.header, title: 'A year on', surveyedOn: '2027-08-10' },
    plan: {
      ...job.plan,
      piers: job.plan.piers.map((p) => (p.id === 'pa7' ? p : { ...p, wrapHeightM: 0.25, wrapSealed: true })),
    },
    readings: {
      ...job.readings,
      wood: [{ ...job.readings.wood[3], id: 'again', shown: 0.12, when: '2027-08-10T09:00:00-04:00' }],
    },
    acceptance: [
      {
        id: 'all',
        criterion: 'LIN-08a',
        title: 'Every pier wrapped',
        claimed: true,
        when: '2026-10-02T12:00:00-04:00',
        who: 'Crew of October',
      },
    ],
  };
}

describe('compare', () => {
  test('tells what was claimed and is not, what turned, and readings side by side', async () => {
    const folder = ownFolder();
    const { code, out, err } = await command(['compare', 'doubted-liner', writeJob(folder, later())], folder);
    expect([code, err]).toEqual([0, '']);
    const text = out.replace(/\s+/g, ' ');
    expect(text).toContain('(2026-08-12) After: A year on (2027-08-10)');
    expect(text).toContain(
      'is not Every pier wrapped (Crew of October, 2026-10-02). Claimed, and it is not so',
    );
    expect(text).toContain('holds Piers wrapped (Installer of 2024, 2024-06-21).');
    expect(text).toMatch(/better Joist: meter shows 17\.5 %; now Joist: meter shows 12\.0 %/);
    expect(text).toContain('7 readings of the earlier and 0 of the later survey have none at their place');
    expect(text).toContain('pier 6: wrap height 0.00 m, now 0.25 m; wrap sealed no, now yes.');
    expect(text).toMatch(/Not met in both: .*LIN-08a/);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  test('gives everything as JSON', async () => {
    const folder = ownFolder();
    const { out } = await command(['compare', 'doubted-liner', writeJob(folder, later()), '--json'], folder);
    const comparison = JSON.parse(out);
    expect(comparison.claims.find((c: { id: string }) => c.id === 'all').state).toBe('is-not');
    expect(comparison.readings[0].figures[0]).toHaveProperty('difference');
  });

  test('a job beside itself is as it was', async () => {
    const { out } = await command(['compare', 'sound-closed', 'sound-closed']);
    expect(out).not.toContain('What is drawn otherwise');
    expect(out.replace(/\s+/g, ' ')).toContain('0 criteria that were not met are met now');
  });

  test.each([[[]], [['sound-closed']], [['sound-closed', 'sound-closed', 'sound-closed']]])(
    '%j: exit 2 with how it is used',
    async (words) => {
      const { code, err } = await command(['compare', ...words]);
      expect(code).toBe(2);
      expect(err).toContain('undercroft compare BEFORE AFTER');
    },
  );
});
