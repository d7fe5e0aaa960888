import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  type Change,
  canonicalJson,
  DEMO_JOBS,
  demoPictures,
  entriesBehind,
  entriesOfJob,
  JobLog,
  sealLog,
  sha256Hex,
  writeArchive,
  writeEntry,
  writeSeal,
} from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { forged } from '../../record/test/freeze/forge.ts';
import { command, ownFolder } from './run-command.ts';
import { demoJob } from './written-jobs.ts';

const NAME = 'doubted-liner';
const START_MS = Date.parse('2031-06-20T12:00:00Z');
const author = (after: number) => ({
  who: 'R. Field',
  device: 'phone1',
  nowMs: START_MS + after * 1000,
  deviceTime: '2031-06-20T08:00:00-04:00',
});

/** An archive of a demo job in which a state was frozen and a finding renamed afterwards. */
function archive() {
  const job = demoJob(NAME);
  const log = new JobLog(job.id, entriesOfJob(job, author(0)));
  const seal = sealLog(log);
  const file = writeSeal(seal);
  const act = (change: Change, after: number) => {
    const made = writeEntry(log, author(after), change);
    if ('issues' in made) throw new Error(JSON.stringify(made.issues));
    log.add(made.entry);
  };
  const { entryCount, entriesSha256 } = seal;
  const value = {
    when: '2031-06-20T09:00:00-04:00',
    who: 'R. Field',
    entryCount,
    entriesSha256,
    sealSha256: sha256Hex(file),
  };
  const [finding] = job.findings;
  act({ do: 'create', kind: 'frozen', item: 'fz1', value }, 600);
  act({ do: 'set', kind: 'finding', item: finding.id, field: 'title', value: 'Renamed later' }, 1200);
  const demo = DEMO_JOBS.find((d) => d.name === NAME)!;
  const blobs = new Map([...demoPictures(demo), [value.sealSha256, file] as const]);
  return { log, seal, finding, bytes: writeArchive(log, blobs) };
}

const oneLine = (text: string) => text.replace(/\s+/g, ' ');

describe('a job with a frozen state', () => {
  const { log, seal, finding, bytes } = archive();
  const written = () => {
    const folder = ownFolder();
    writeFileSync(join(folder, 'job.zip'), bytes);
    return folder;
  };
  const report = async (...more: string[]) => {
    const folder = written();
    const given = ['report', 'job.zip', '--out', 'report.html', '--season', 'none', ...more];
    const done = await command(given, folder);
    return { ...done, page: done.code === 0 ? readFileSync(join(folder, 'report.html'), 'utf8') : '' };
  };

  test('is checked: the state is listed with its sum, and what came later is counted', async () => {
    const { code, out } = await command(['check', 'job.zip'], written());
    expect(code).toBe(0);
    expect(oneLine(out)).toContain(
      `Frozen 1: 2031-06-20T09:00:00-04:00 by R. Field, ${seal.entryCount} entries, SHA-256 ${seal.entriesSha256} Every entry is there, unchanged; 1 came later.`,
    );
  });

  test('gives a report of the state alone, each finding with its entries, each entry with its hash', async () => {
    const { code, page } = await report('--frozen', 'last');
    expect(code).toBe(0);
    expect(page).toContain(seal.entriesSha256);
    expect(page).toContain('R. Field froze on June 20, 2031, 09:00');
    expect(page).not.toContain('Renamed later');
    const order = seal.entries.map((e) => e.id);
    for (const { id, title } of demoJob(NAME).findings) {
      const stamps = entriesBehind(log, { kind: 'finding', id }).filter((s) => order.includes(s));
      expect(stamps.length, title).toBeGreaterThan(0);
      for (const stamp of stamps) {
        const sealed = seal.entries.find((e) => e.id === stamp)!;
        expect(page, title).toContain(stamp);
        expect(page, title).toContain(sealed.sha256.slice(0, 16));
        expect(page, title).toMatch(
          new RegExp(`Entr(?:y|ies) [^<]*\\b${order.indexOf(stamp) + 1}\\b|Entries [^<]* to `),
        );
      }
    }
  });

  test('gives a report of the job as it is now where none is asked for, with another sum', async () => {
    const { page } = await report();
    const now = sealLog(log);
    expect(page).toContain(now.entriesSha256);
    expect(page).not.toContain(seal.entriesSha256);
    expect(page).toContain('Renamed later');
    const [renamed] = entriesBehind(log, { kind: 'finding', id: finding.id }).slice(-1);
    const entry = log.entries().find((e) => e.id === renamed);
    expect(page).toContain(sha256Hex(new TextEncoder().encode(canonicalJson(entry))).slice(0, 16));
  });

  test.each([
    ['9', /Take "last" or 1 to 1/],
    ['x', /Take "last" or 1 to 1/],
  ])('has no state %s', async (which, says) => {
    const { code, err } = await report('--frozen', which);
    expect(code).toBe(2);
    expect(oneLine(err)).toMatch(says);
  });

  test('that was forged is refused with the entry that was altered', async () => {
    const folder = ownFolder();
    const edited = forged(bytes, (lines) =>
      lines.map((l) => l.replace(JSON.stringify(finding.title), '"Another claim"')),
    );
    writeFileSync(join(folder, 'forged.zip'), edited);
    const { code, err } = await command(['check', 'forged.zip'], folder);
    const [stamp] = entriesBehind(log, { kind: 'finding', id: finding.id });
    expect(code).toBe(2);
    expect(oneLine(err)).toContain(`entry ${stamp}, frozen 2031-06-20T09:00:00-04:00`);
    expect(oneLine(err)).toContain('other content');
  });

  test('a job file has no entries to freeze', async () => {
    const { code, err } = await command(
      ['report', NAME, '--out', 'r.html', '--season', 'none', '--frozen', 'last'],
      ownFolder(),
    );
    expect(code).toBe(2);
    expect(oneLine(err)).toContain('holds no entries');
  });
});
