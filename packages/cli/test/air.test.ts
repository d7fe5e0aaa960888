import type { Job } from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { command, ownFolder } from './run-command.ts';
import { demoJob, writeJob } from './written-jobs.ts';

const oneLine = (text: string) => text.replace(/\s+/g, ' ');

/** A small damp space with a wall across, its machine behind it blowing at the outside wall. */
function smallJob(change: (plan: Job['plan']) => void = () => {}): Job {
  const job = structuredClone(demoJob('sound-closed'));
  const corners = [
    { xM: 0, yM: 0 },
    { xM: 8, yM: 0 },
    { xM: 8, yM: 4 },
    { xM: 0, yM: 4 },
  ].map((at, i) => ({ id: 'abcd'[i], at }));
  const [door] = job.plan.doors;
  const machine = job.plan.equipment.find((e) => e.kind === 'dehumidifier')!;
  Object.assign(job.plan, {
    northDeg: 0,
    outline: { kind: 'corners', corners },
    ground: { cover: 'bare-earth', surface: 'average' },
    piers: [],
    girders: [],
    ducts: [],
    vents: [],
    seams: [],
    drains: [],
    interiorWalls: [
      {
        id: 'cross',
        from: { xM: 4, yM: 0 },
        to: { xM: 4, yM: 4 },
        thicknessM: 0.2,
        openings: [{ id: 'gap', offsetM: 1.5, widthM: 1, heightM: 0.8 }],
      },
    ],
    equipment: [{ ...machine, at: { xM: 1, yM: 1 }, facingDeg: 270, runShare: undefined }],
    doors: [{ ...door, offsetM: 1.5 }],
    heights: [{ id: 'h', at: { xM: 2, yM: 2 }, clearHeightM: 1 }],
  });
  change(job.plan);
  return job;
}

describe('air', () => {
  test('tells the pocket, its far end, the band and the mark of a fault of distribution', async () => {
    const { code, out, err } = await command(['air', 'doubted-liner', '--as-found']);
    expect(code).toBe(0);
    expect(err).toBe('');
    const text = oneLine(out);
    expect(text).toMatch(/As found, on the most humid day, \w+ \d+/);
    expect(text).toMatch(/from the north wall and .* from the west wall, blowing west \(262°\)/);
    expect(text).toContain('where something is in its way');
    expect(text).toMatch(
      /Its intake reads 55 % RH while the far end of the floor, .* has \d\d % \(\d\d to \d\d %\)/,
    );
    expect(text).toMatch(/It runs \d\d % \(\d\d to \d\d %\) of the time; with mixed air it would run/);
    expect(text).toContain('Little running and a wet corner: its dry air does not get about.');
    expect(text).toMatch(/Plan coefficient: 0\.\d\d \(0\.\d\d to 0\.\d\d\)/);
    expect(text).toContain('The air was read at 3 places; it takes 4');
    expect(text).toContain('Speed of the air at the outlet');
    expect(text).toMatch(/Limits -+ - Mixing in low, obstructed spaces is known to a factor of three/);
    expect(text).not.toContain('A better arrangement');
  });

  test('suggests steps by tape and compass, tells what each change buys and what rules left out', async () => {
    const folder = ownFolder();
    const file = writeJob(folder, smallJob());
    const { code, out, progress } = await command(['air', file], folder);
    expect(code).toBe(0);
    expect(progress.join(' ')).toContain('Assessing');
    const text = oneLine(out);
    expect(text).toContain('A better arrangement');
    expect(text).toMatch(/As found it ranks \d+ of \d+ arrangements that were worked out\./);
    expect(text).toMatch(/Then the far end has \d+ %.* RH in place of \d+ %/);
    expect(text).toMatch(/Work and material: about \$\d+ \(usual prices\)/);
    expect(text).toContain('What one change alone buys:');
    expect(text).toMatch(/Turned where it stands: dampest part \d+ % in place of \d+ %/);
    expect(text).toMatch(/too little free run ahead of the outlet \(\d+\)/);
    expect(text).toContain('Nobody said where power is');
    const { distribution } = JSON.parse((await command(['air', file, '--json'], folder)).out);
    expect(distribution.search.suggested.what).toBe(distribution.search.ranked[0].what);
    expect(distribution.search.excluded[0]).toHaveProperty('rule');
  });

  test('gives everything as JSON, with maps that are null beside the floor', async () => {
    const { out } = await command(['air', 'doubted-liner', '--as-found', '--json']);
    const { job, distribution } = JSON.parse(out);
    expect(job.id).toBe('demo-doubted-liner');
    expect(distribution.outcome).toBe('worked-out');
    expect(distribution.search).toBeUndefined();
    for (const part of ['low', 'value', 'high']) {
      const { map, intakeRelativeHumidity } = distribution.found[part];
      expect(intakeRelativeHumidity).toBeCloseTo(0.55, 3);
      expect(map.relativeHumidity).toHaveLength(map.columns * map.rows);
    }
  });

  test('says why where there is nothing to follow', async () => {
    const { code, out } = await command(['air', 'neglected-vented', '--as-found']);
    expect(code).toBe(0);
    expect(out).toContain('No dehumidifier runs in the space');
    const json = JSON.parse((await command(['air', 'neglected-vented', '--as-found', '--json'])).out);
    expect(json.distribution).toMatchObject({ outcome: 'missing', code: 'no-machine' });
  });

  test('finds a place for a machine that the repairs set', async () => {
    const folder = ownFolder();
    const job = smallJob((plan) => {
      plan.equipment = [];
    });
    job.design.repairs = [
      { id: 'r1', repair: 'ground-liner', chosen: true },
      { id: 'r2', repair: 'dehumidifier', chosen: true },
    ];
    const { code, out } = await command(['air', writeJob(folder, job)], folder);
    expect(code).toBe(0);
    const text = oneLine(out);
    expect(text).toContain('Where to stand the new machine');
    expect(text).toMatch(/from the \w+ wall and .* from the \w+ wall, .*set to 52 %/);
    expect(text).toMatch(/Then its intake reads \d+ %.* RH, the far end of the floor has \d+ %/);
    expect(text).toMatch(/\d+ arrangements were worked out\. The best of them:/);
  });

  test('tells a place that the engine refuses as the reason', async () => {
    const folder = ownFolder();
    const away = smallJob((plan) => {
      plan.equipment[0].at = { xM: 40, yM: 40 };
    });
    const { code, out } = await command(['air', writeJob(folder, away)], folder);
    expect(code).toBe(0);
    expect(oneLine(out)).toMatch(/The air on the plan was not worked out: .*dehumidifier/);
  });

  test('needs a job', async () => {
    const { code, err } = await command(['air']);
    expect(code).toBe(2);
    expect(err).not.toBe('');
  });
});
