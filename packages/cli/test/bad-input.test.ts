import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { command, ownFolder } from './run-command.ts';
import { archiveOf, demoJob, writeJob, writeWeather } from './written-jobs.ts';

/** Runs each command that takes a job on what stands in the folder; all must refuse it alike and write nothing. */
async function refused(folder: string, job: string): Promise<string> {
  const before = readdirSync(folder);
  const messages: string[] = [];
  for (const args of [
    ['check', job],
    ['assess', job],
    ['assess', job, '--json', '--strict', '--out', 'place'],
    ['report', job, '--out', 'report.html'],
  ]) {
    const { code, out, err } = await command(args, folder);
    expect(code, args.join(' ')).toBe(2);
    expect(out, args.join(' ')).toBe('');
    messages.push(err);
  }
  expect(readdirSync(folder)).toEqual(before);
  expect(new Set(messages).size).toBe(1);
  return messages[0] as string;
}

/** An outline of four corners in the order in which they were taken. */
const outlineOf = (...corners: (readonly [number, number])[]) => ({
  kind: 'corners',
  corners: corners.map(([xM, yM], i) => ({ id: `c${i + 1}`, at: { xM, yM } })),
});

describe('a job that cannot be used', () => {
  test('missing file', async () => {
    expect(await refused(ownFolder(), 'house.json')).toBe('There is no file house.json. Check the path.\n');
  });

  test('a folder', async () => {
    const folder = ownFolder();
    mkdirSync(join(folder, 'jobs'));
    expect(await refused(folder, 'jobs')).toBe('jobs is a folder. Name a file in it.\n');
  });

  test('a file in the way of the path', async () => {
    const folder = ownFolder();
    writeFileSync(join(folder, 'jobs'), '');
    expect(await refused(folder, 'jobs/house.json')).toContain('a part of the path is a file, not a folder');
  });

  test('an empty file', async () => {
    const folder = ownFolder();
    writeFileSync(join(folder, 'empty.json'), '');
    expect(await refused(folder, 'empty.json')).toBe('empty.json is empty. Get the file again.\n');
  });

  test('broken JSON', async () => {
    const folder = ownFolder();
    writeFileSync(join(folder, 'broken.json'), '{"format": "undercroft-job", "version": 1,');
    const message = await refused(folder, 'broken.json');
    expect(message).toMatch(/^broken\.json: one thing is wrong\.$/m);
    expect(message).toContain('expected JSON text');
  });

  test('bytes that are no text', async () => {
    const folder = ownFolder();
    writeFileSync(join(folder, 'photo.jpg'), Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46]));
    expect(await refused(folder, 'photo.jpg')).toContain('expected JSON text');
  });

  test('JSON that is no job', async () => {
    const folder = ownFolder();
    expect(await refused(folder, writeJob(folder, [1, 2]))).toContain('expected an object');
    expect(await refused(folder, writeJob(folder, { format: 'other' }))).toContain(
      'expected "undercroft-job"',
    );
  });

  test('a newer version', async () => {
    const folder = ownFolder();
    const job = { ...demoJob('sound-closed'), version: 99 };
    expect(await refused(folder, writeJob(folder, job))).toContain(
      'version: found 99; expected at most 2; this job was written by a newer program and is left untouched',
    );
  });

  test('fields that are wrong, all at once with their paths', async () => {
    const folder = ownFolder();
    const job = demoJob('doubted-liner');
    const wrong = {
      ...job,
      header: { ...job.header, latitudeDeg: 391, surveyedOn: 'yesterday' },
      plan: { ...job.plan, color: 'green' },
    };
    const message = await refused(folder, writeJob(folder, wrong));
    for (const path of ['header.latitudeDeg', 'header.surveyedOn', 'plan']) expect(message).toContain(path);
    expect(message).toMatch(/3 things are wrong/);
  });

  test('a truncated archive', async () => {
    const folder = ownFolder();
    const bytes = archiveOf(demoJob('sound-closed'));
    for (const length of [3, 200, Math.floor(bytes.length / 2), bytes.length - 1]) {
      writeFileSync(join(folder, 'job.zip'), bytes.subarray(0, length));
      expect(await refused(folder, 'job.zip')).toContain('expected a whole zip file');
    }
  });

  test('an archive with a changed byte', async () => {
    const folder = ownFolder();
    const bytes = archiveOf(demoJob('sound-closed'));
    bytes[Math.floor(bytes.length / 2)] ^= 0x55;
    writeFileSync(join(folder, 'job.zip'), bytes);
    expect(await refused(folder, 'job.zip')).toContain('job.zip: one thing is wrong');
  });

  test.each([
    ['with loops of different size', outlineOf([0, 0], [9, 0], [1, 6], [8, 7])],
    ['with equal loops', outlineOf([0, 0], [9, 0], [0, 6], [9, 6])],
  ])('an outline that crosses itself, %s', async (_, outline) => {
    const folder = ownFolder();
    const job = demoJob('doubted-liner');
    const message = await refused(folder, writeJob(folder, { ...job, plan: { ...job.plan, outline } }));
    expect(message).toMatch(/plan\.outline\.corners: found wall 2 \(c2\) and wall 4 \(c4\) cross at /);
    expect(message).toContain('expected walls that meet only at their corners');
  });
});

describe('a job whose figures are well formed and absurd', () => {
  test.each([
    ['a wall of a kilometer', 'walls', { heightM: 1000 }, 'wall height'],
    ['a vent of 300 m', 'vents', { heightM: 300 }, 'height'],
  ])('%s', async (_, list, wrong, named) => {
    const folder = ownFolder();
    const job = demoJob('neglected-vented');
    const items = job.plan[list as 'walls'].map((item, i) => (i === 1 ? { ...item, ...wrong } : item));
    const message = await refused(folder, writeJob(folder, { ...job, plan: { ...job.plan, [list]: items } }));
    expect(message).toMatch(/^job\.json: one thing is wrong\.$/m);
    expect(message).toContain(named);
    expect(message).toMatch(/must be from .* to .*; got [\d.]+\. Correct this figure\./);
  });
});

describe('weather that cannot be used', () => {
  const assess = (folder: string, file: string) =>
    command(['assess', 'sound-closed', '--weather', file, '--json', '--season', 'none'], folder);

  test.each<[string, Uint8Array | string, string]>([
    ['notes.txt', 'bring the long ladder\n', 'is in no layout that can be read here'],
    ['empty.epw', '', 'empty.epw is empty.'],
    ['cut.epw.gz', gzipSync(writeWeather({ name: 'Weir', meanC: 13 })).subarray(0, 9000), 'does not unpack'],
    ['zeros.epw.gz', gzipSync(new Uint8Array(65 * 1024 * 1024)), 'it holds more than 64 MB'],
    ['year.zip', archiveOf(demoJob('sound-closed')), 'zip archive'],
    [
      'short.epw',
      writeWeather({ name: 'Weir', meanC: 13 }).split('\n').slice(0, 4000).join('\n'),
      'short.epw: one thing is wrong',
    ],
  ])('%s: exit 2', async (name, content, message) => {
    const folder = ownFolder();
    writeFileSync(join(folder, name), content);
    const { code, out, err } = await assess(folder, name);
    expect(err).toContain(message);
    expect(out).toBe('');
    expect(code).toBe(2);
  });

  test('a missing file and a folder', async () => {
    const folder = ownFolder();
    mkdirSync(join(folder, 'years'));
    expect((await assess(folder, 'none.epw')).err).toBe('There is no file none.epw. Check the path.\n');
    expect((await assess(folder, 'years')).err).toBe('years is a folder. Name a file in it.\n');
    expect((await assess(folder, 'years')).code).toBe(2);
  });

  test('a fault in a column names its line', async () => {
    const folder = ownFolder();
    const lines = writeWeather({ name: 'Weir', meanC: 13 }).split('\n');
    lines[107] = lines[107]?.replace(/^((?:[^,]*,){6})[^,]*/, '$1warm') as string;
    writeFileSync(join(folder, 'warm.epw'), lines.join('\n'));
    const { code, err } = await assess(folder, 'warm.epw');
    expect(code).toBe(2);
    expect(err).toContain('Line 108, column 7');
    expect(err).toContain('"warm", not a number');
  });
});

describe('words that do not fit', () => {
  test.each([
    [['assess'], 'Name a job.'],
    [['check'], 'Name a job.'],
    [['report', '--out', 'a.pdf'], 'Name a job.'],
    [['assess', ''], 'Name a job.'],
    [['assess', 'sound-closed', 'doubted-liner'], 'One job at a time; "doubted-liner" is too much.'],
    [['report', 'sound-closed'], 'Name the file to write: --out FILE.pdf or --out FILE.html.'],
    [['report', 'sound-closed', '--out', 'report.docx'], '--out report.docx must end in .pdf or .html.'],
    [['schema', 'house'], 'There is no schema "house". Schemas: job, entry, assessment.'],
    [['schema', 'toString'], 'There is no schema "toString".'],
    [['schema', 'job', 'entry'], 'There is no schema "job entry".'],
    [['demo', 'nobody'], 'There is no demo job "nobody". Demo jobs: neglected-vented'],
    [['demo', 'sound-closed'], 'Name one folder to write it to'],
    [['demo', 'sound-closed', 'a', 'b'], 'Name one folder to write it to'],
    [['demo', '--out', 'a'], 'Name a demo job to write.'],
  ])('%j: exit 2', async (args, message) => {
    const folder = ownFolder();
    const { code, out, err } = await command(args, folder);
    expect(err).toContain(message);
    expect(out).toBe('');
    expect(code).toBe(2);
    expect(readdirSync(folder)).toEqual([]);
  });
});
