import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DEMO_JOBS, readArchive, readJobText } from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { command, ownFolder } from './run-command.ts';
import { archiveOf, demoJob, writeJob } from './written-jobs.ts';

describe('demo', () => {
  test('lists every demo job with what it shows', async () => {
    const { code, out } = await command(['demo']);
    expect(code).toBe(0);
    for (const { name } of DEMO_JOBS) expect(out).toMatch(new RegExp(`^ {2}${name} `, 'm'));
  });

  test.each(DEMO_JOBS.map((d) => d.name))(
    '%s is written as a job file that reads and checks',
    async (name) => {
      const folder = ownFolder();
      const { code, out } = await command(['demo', name, 'some/place'], folder);
      expect(code).toBe(0);
      expect(out).toBe(`Written: some/place/${name}.json\n`);
      const text = readFileSync(join(folder, 'some/place', `${name}.json`), 'utf8');
      expect(readJobText(text)).toEqual({ ok: true, job: demoJob(name) });
      expect((await command(['check', `some/place/${name}.json`], folder)).code).toBe(0);
    },
  );

  test('--archive writes the log and the pictures, the same bytes each time', async () => {
    const folder = ownFolder();
    const { out } = await command(['demo', 'doubted-liner', 'a', '--archive'], folder);
    expect(out).toBe('Written: a/doubted-liner.zip\n');
    await command(['demo', 'doubted-liner', 'b', '--archive'], folder);
    const bytes = readFileSync(join(folder, 'a/doubted-liner.zip'));
    expect(readFileSync(join(folder, 'b/doubted-liner.zip')).equals(bytes)).toBe(true);
    const read = readArchive(bytes);
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expect(read.archive.job).toEqual(demoJob('doubted-liner'));
    expect([read.archive.blobs.size, read.archive.missingBlobs]).toEqual([32, []]);
    const { code, err } = await command(['check', 'a/doubted-liner.zip'], folder);
    expect([code, err]).toEqual([0, '']);
  });

  test('--out names the folder as well', async () => {
    const folder = ownFolder();
    await command(['demo', 'sound-closed', '--out', 'place'], folder);
    expect(readdirSync(join(folder, 'place'))).toEqual(['sound-closed.json']);
  });

  test('a file that is there already is left alone: exit 2', async () => {
    const folder = ownFolder();
    writeFileSync(join(folder, 'sound-closed.json'), 'edited by hand');
    const { code, err } = await command(['demo', 'sound-closed', '.'], folder);
    expect(code).toBe(2);
    expect(err).toBe('sound-closed.json is there already. Move it or name another folder.\n');
    expect(readFileSync(join(folder, 'sound-closed.json'), 'utf8')).toBe('edited by hand');
  });
});

describe('check', () => {
  test.each(DEMO_JOBS.map((d) => d.name))('%s has nothing wrong', async (name) => {
    const { code, out, err } = await command(['check', name]);
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(out).toBe(`${demoJob(name).header.title}: nothing wrong found.\n`);
  });

  test('an archive is checked like a file', async () => {
    const folder = ownFolder();
    writeFileSync(join(folder, 'job.zip'), archiveOf(demoJob('doubted-liner')));
    expect((await command(['check', 'job.zip'], folder)).code).toBe(0);
  });

  test('pictures that an archive lacks are told on standard error', async () => {
    const folder = ownFolder();
    const job = demoJob('sound-closed');
    const photo = {
      id: 'p1',
      sha256: 'ab'.repeat(32),
      bytes: 81_234,
      mediaType: 'image/jpeg',
      takenAt: '2031-05-14T09:24:00-04:00',
      who: 'Linnea Aalbrecht',
      place: {},
    };
    const withPhoto = { ...job, media: { ...job.media, photos: [photo] } };
    writeFileSync(join(folder, 'job.zip'), archiveOf(withPhoto));
    const { code, err } = await command(['check', 'job.zip'], folder);
    expect(code).toBe(0);
    expect(err).toContain(
      '1 files named by the job (pictures, sound, lists of frozen states) are not in the archive.',
    );
  });

  test('a pier outside the walls is named', async () => {
    const folder = ownFolder();
    const job = demoJob('doubted-liner');
    const piers = job.plan.piers.map((p, i) => (i === 2 ? { ...p, at: { xM: 90, yM: -4 } } : p));
    const { code, out, err } = await command(
      ['check', writeJob(folder, { ...job, plan: { ...job.plan, piers } })],
      folder,
    );
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('plan.piers[2]');
  });
});

describe('schema', () => {
  test.each([
    [['schema'], 'undercroft-job'],
    [['schema', 'job'], 'undercroft-job'],
  ])('%j is the JSON Schema of a job', async (args, constant) => {
    const { code, out } = await command(args);
    expect(code).toBe(0);
    const schema = JSON.parse(out);
    expect(schema.$schema).toContain('json-schema.org');
    expect(schema.properties.format.const).toBe(constant);
  });

  test('entry and assessment have schemas of their own', async () => {
    const texts = await Promise.all(
      ['job', 'entry', 'assessment'].map(async (name) => (await command(['schema', name])).out),
    );
    expect(new Set(texts).size).toBe(3);
    for (const text of texts) expect(Object.keys(JSON.parse(text))).toContain('$schema');
  });

  test('the schema of an assessment names what the JSON of one holds', async () => {
    const schema = JSON.parse((await command(['schema', 'assessment'])).out);
    const assessment = JSON.parse(
      (await command(['assess', 'sound-closed', '--json', '--season', 'none'])).out,
    );
    for (const key of Object.keys(assessment)) expect(Object.keys(schema.properties)).toContain(key);
    for (const key of schema.required) expect(Object.keys(assessment)).toContain(key);
  });
});
