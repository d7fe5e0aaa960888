import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { DEMO_JOBS } from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { command, ownFolder } from './run-command.ts';
import { archiveOf, demoJob, writeJob, writeWeather } from './written-jobs.ts';

/** Without the year by the hour, which takes a second and has tests of its own below. */
const QUICK = ['--season', 'none'];

/** Assesses without the year by the hour. */
const quick = (args: readonly string[], cwd?: string, columns?: number) =>
  command(['assess', ...args, ...QUICK], cwd, columns);

describe('assess for people', () => {
  test.each(DEMO_JOBS.map((d) => d.name))(
    '%s: headline, space, readings, criteria, water, cautions',
    async (name) => {
      const { code, out, err } = await quick([name]);
      expect(err).toBe('');
      expect(code).toBe(0);
      const title = demoJob(name).header.title;
      expect(out.startsWith(title)).toBe(true);
      for (const part of [
        'The space',
        'What the readings mean',
        'Criteria:',
        'Where the water comes from:',
        'Cautions',
      ]) {
        expect(out).toMatch(new RegExp(`^${part}`, 'm'));
      }
    },
  );

  test.each([80, 120])('no line is wider than %d columns', async (columns) => {
    for (const { name } of DEMO_JOBS) {
      const { out } = await quick([name], '/', columns);
      for (const line of out.split('\n')) expect(line.length, line).toBeLessThanOrEqual(columns);
    }
  });

  test('a broken criterion shows its reason, kind and source', async () => {
    const { out } = await quick(['doubted-liner'], '/', 120);
    expect(out).toMatch(/^ {2}UNV-01 .*bare earth.*\n +code: [\s\S]*?R408\.3 item 1$/m);
  });

  test('what nobody measured is marked in the budget and listed with its range', async () => {
    const { out } = await quick(['neglected-vented']);
    expect(out).toMatch(/^ {2}Open ground .* assumed$/m);
    expect(out).toMatch(/Dry layer of the ground.*may be .* to /);
  });

  test('no number runs to more digits than anybody can use', async () => {
    for (const { name } of DEMO_JOBS) expect((await quick([name])).out).not.toMatch(/\d\.0*[1-9]\d{5,}/);
  });

  test('progress is told while it works', async () => {
    const { progress } = await quick(['sound-closed']);
    expect(progress).toEqual(['Assessing ...']);
  });
});

describe('assess --json', () => {
  test('standard output is one JSON object and nothing else', async () => {
    const { code, out, err } = await quick(['doubted-liner', '--json']);
    expect(code).toBe(0);
    expect(err).toBe('');
    const read = JSON.parse(out);
    expect(read.format).toBe('undercroft-assessment');
    expect(read.job.id).toBe('demo-doubted-liner');
    expect(out).not.toContain('null');
  });

  test('the same job gives the same bytes', async () => {
    const first = await quick(['neglected-vented', '--json']);
    expect((await quick(['neglected-vented', '--json'])).out).toBe(first.out);
  });

  test('a job file and an archive of the same job give the same assessment', async () => {
    const folder = ownFolder();
    const job = demoJob('sound-closed');
    writeJob(folder, job, 'from-file.json');
    writeFileSync(join(folder, 'from-archive.zip'), archiveOf(job));
    const file = await quick(['from-file.json', '--json'], folder);
    const archive = await quick(['from-archive.zip', '--json'], folder);
    expect(archive.code).toBe(0);
    expect(archive.out).toBe(file.out);
  });

  test('a file named like a demo job wins over it, a folder does not', async () => {
    const folder = ownFolder();
    const job = demoJob('neglected-vented');
    writeJob(folder, job, 'sound-closed');
    mkdirSync(join(folder, 'doubted-liner'));
    const named = JSON.parse((await quick(['sound-closed', '--json'], folder)).out);
    expect(named.job.id).toBe('demo-neglected-vented');
    expect((await quick(['doubted-liner', '--json'], folder)).code).toBe(0);
  });
});

describe('assess --strict', () => {
  test.each([
    ['sound-closed', 0],
    ['neglected-vented', 1],
    ['doubted-liner', 1],
  ])('%s ends with %d', async (name, code) => {
    expect((await quick([name, '--strict'])).code).toBe(code);
    expect((await quick([name, '--strict', '--json'])).code).toBe(code);
    expect((await quick([name])).code).toBe(0);
  });
});

describe('assess --weather', () => {
  test('plain and gzip, named as it is called inside', async () => {
    const folder = ownFolder();
    const text = writeWeather({ name: 'Alder Ferry', meanC: 16 });
    writeFileSync(join(folder, 'year.epw'), text);
    writeFileSync(join(folder, 'year.epw.gz'), gzipSync(text));
    const plain = await quick(['neglected-vented', '--weather', 'year.epw', '--json'], folder);
    const packed = await quick(['neglected-vented', '--weather', 'year.epw.gz', '--json'], folder);
    expect(plain.code).toBe(0);
    expect(packed.out).toBe(plain.out);
    expect(JSON.parse(plain.out).climate.name).toContain('Alder Ferry');
    expect(plain.progress).toEqual(['Reading the weather ...', 'Assessing ...']);
  });

  test('a warmer year moves the design month and leaves sizes and criteria alone', async () => {
    const folder = ownFolder();
    const read = async (meanC: number) => {
      const name = `${meanC}.epw`;
      writeFileSync(join(folder, name), writeWeather({ name: 'Alder Ferry', meanC }));
      return JSON.parse((await quick(['neglected-vented', '--weather', name, '--json'], folder)).out);
    };
    const [cool, warm] = [await read(11), await read(17)];
    expect(warm.budgets.designMonth.outdoor.temperatureC).toBeGreaterThan(
      cool.budgets.designMonth.outdoor.temperatureC + 3,
    );
    expect(warm.criteriaCount).toEqual(cool.criteriaCount);
    expect(warm.geometry).toEqual(cool.geometry);
  });
});

describe('assess --out', () => {
  test('writes the JSON it prints, the page and the paper, and nothing else', async () => {
    const folder = ownFolder();
    const { code, out } = await quick(['sound-closed', '--out', 'new/place', '--json'], folder);
    expect(code).toBe(0);
    const place = join(folder, 'new/place');
    expect(readdirSync(place).sort()).toEqual(['assessment.json', 'report.html', 'report.pdf']);
    expect(readFileSync(join(place, 'assessment.json'), 'utf8')).toBe(out);
    expect(readFileSync(join(place, 'report.html'), 'utf8')).toMatch(/^<!doctype html>/i);
    expect(readFileSync(join(place, 'report.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('text names the files; writing again replaces them with the same bytes', async () => {
    const folder = ownFolder();
    const first = await quick(['sound-closed', '--out', 'place'], folder);
    expect(first.out).toContain('Written: place/assessment.json, place/report.html, place/report.pdf');
    const pdf = readFileSync(join(folder, 'place/report.pdf'));
    expect((await quick(['sound-closed', '--out', 'place'], folder)).code).toBe(0);
    expect(readFileSync(join(folder, 'place/report.pdf')).equals(pdf)).toBe(true);
    expect(readdirSync(join(folder, 'place'))).toHaveLength(3);
  });

  test('a folder that is a file: exit 2, nothing printed as done, nothing written', async () => {
    const folder = ownFolder();
    writeFileSync(join(folder, 'taken'), 'mine');
    const { code, out, err } = await quick(['sound-closed', '--out', 'taken', '--json'], folder);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toBe(
      'taken/assessment.json cannot be written: a part of the path is a file, not a folder. Name another folder. Nothing was written.\n',
    );
    expect(readFileSync(join(folder, 'taken'), 'utf8')).toBe('mine');
  });

  test('one place taken by a folder: exit 2, and the other files are not written either', async () => {
    const folder = ownFolder();
    mkdirSync(join(folder, 'place/report.pdf'), { recursive: true });
    const { code, err } = await quick(['sound-closed', '--out', 'place'], folder);
    expect(code).toBe(2);
    expect(err).toContain('place/report.pdf is a folder. Move it away.');
    expect(readdirSync(join(folder, 'place'))).toEqual(['report.pdf']);
  });
});

describe('assess --season', () => {
  test('cases are the states of the space through a year; progress counts up to its total', async () => {
    const { code, out, progress } = await command(['assess', 'doubted-liner', '--season', 'cases']);
    expect(code).toBe(0);
    expect(out).toMatch(/^The year by the hour: Baltimore, MD$/m);
    expect(out).toMatch(/^ {2}as found +\d+ +\d+% /m);
    const counts = progress
      .map((line) => /(\d+) of (\d+) years/.exec(line))
      .filter((match) => match !== null)
      .map((match) => [Number(match[1]), Number(match[2])] as const);
    expect(counts.length).toBeGreaterThan(1);
    expect(counts.map(([done]) => done)).toEqual([...counts.map(([done]) => done)].sort((a, b) => a - b));
    const [done, total] = counts.at(-1) ?? [];
    expect(done).toBe(total);
  });

  test('in JSON the year stands under season, and none leaves it out', async () => {
    const year = JSON.parse((await command(['assess', 'sound-closed', '--json', '--season', 'cases'])).out);
    expect(year.season.cases[0].months).toHaveLength(12);
    expect(JSON.parse((await quick(['sound-closed', '--json'])).out)).not.toHaveProperty('season');
  });

  test('another word: exit 2 with the words it takes', async () => {
    const { code, out, err } = await command(['assess', 'sound-closed', '--season', 'summer']);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toBe('--season summer is not known. It takes one of none, cases, full.\n');
  });
});
