import { describe, expect, test } from 'vitest';
import { command, ownFolder } from './run-command.ts';
import { demoJob, writeJob } from './written-jobs.ts';

describe('coverage', () => {
  test('tells what hides in the corner that no picture shows, and which claim lacks a face', async () => {
    const { code, out, err } = await command(['coverage', 'doubted-liner']);
    expect(code).toBe(0);
    expect(err).toBe('');
    const text = out.replace(/\s+/g, ' ');
    expect(text).toContain('What 32 pictures show');
    expect(text).toMatch(/No picture shows \d\.\d m² of the floor, 4 % of it\./);
    expect(text).toContain(
      'Drawn there: bare earth; Old batts and cans, Far right corner, liner stops short',
    );
    expect(text).toMatch(/\(1\.\d\d m\) from the east wall and .* from the north wall/);
    expect(text).toContain('partly Claim: Piers wrapped. The pictures do not show the north face of pier 14');
    expect(text).toContain('shown Claim: Vents closed.');
    expect(text).not.toContain('Crawl');
  });

  test('plans a crawl from the door: stand here, point there', async () => {
    const { out } = await command(['coverage', 'doubted-liner', '--route', 'rest']);
    const text = out.replace(/\s+/g, ' ');
    expect(text).toMatch(/A crawl for what is not shown yet -+ \d stops, \d+ pictures/);
    expect(text).toMatch(
      / 1 Crawl .*\. Stand .* from the \w+ wall and .* from the \w+ wall\. 1a Point \w+ \(\d+°\)\./,
    );
    expect(text).toContain('No plan with fewer stops shows as much');
    expect(text).toContain('never that it is safe to enter');
    const all = await command(['coverage', 'doubted-liner', '--route', 'all', '--angle', '100']);
    expect(all.out.replace(/\s+/g, ' ')).toContain('A crawl that shows everything');
    expect(all.out.replace(/\s+/g, ' ')).toContain('Camera: 100° wide');
  });

  test('gives everything as JSON', async () => {
    const { out } = await command(['coverage', 'doubted-liner', '--json', '--route', 'rest']);
    const { job, coverage, crawl } = JSON.parse(out);
    expect(job.id).toBe('demo-doubted-liner');
    expect(coverage.unseen[0].standsIn[0]).toEqual({
      kind: 'obstacle',
      id: 'ob1',
      name: 'Old batts and cans',
    });
    expect(crawl.stops[0]).toMatchObject({ number: 1, shots: [{ id: '1a' }, {}, {}] });
    expect(crawl.door.id).toBe('door');
    const { crawl: none } = JSON.parse((await command(['coverage', 'doubted-liner', '--json'])).out);
    expect(none).toBeUndefined();
  });

  test('says so where no picture counts', async () => {
    const { code, out } = await command(['coverage', 'sound-closed']);
    expect(code).toBe(0);
    expect(out).toContain('What 0 pictures show');
    expect(out.replace(/\s+/g, ' ')).toContain('nothing of the space is shown');
  });

  test.each([
    [['--route', 'some'], '--route some is not known. It takes rest or all.'],
    [['--exact'], '--exact goes with --route'],
    [['--bays'], '--bays goes with --route'],
    [['--route', 'all', '--angle', 'wide'], '--angle wide is no angle from 20 to 360 degrees.'],
    [['--route', 'all', '--angle', '12'], '--angle 12 is no angle from 20 to 360 degrees.'],
  ])('%j: exit 2 with the reason', async (options, reason) => {
    const { code, out, err } = await command(['coverage', 'doubted-liner', ...options]);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(reason);
  });

  test('a job without a door cannot have a crawl, and the job is to blame', async () => {
    const folder = ownFolder();
    const job = demoJob('doubted-liner');
    const file = writeJob(folder, { ...job, plan: { ...job.plan, doors: [] } });
    const { code, err } = await command(['coverage', file, '--route', 'rest'], folder);
    expect(code).toBe(2);
    expect(err).toContain('plan.doors: found no door; expected the access door');
  });

  test('joists that make no sense are told as the reason', async () => {
    const folder = ownFolder();
    const job = demoJob('doubted-liner');
    const joists = job.plan.joists.map((j) => ({ ...j, spacingM: 0.01 }));
    const { code, err } = await command(
      ['coverage', writeJob(folder, { ...job, plan: { ...job.plan, joists } })],
      folder,
    );
    expect(code).toBe(2);
    expect(err).toContain('spacing of joists');
  });
});
