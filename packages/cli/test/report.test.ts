import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { command, ownFolder } from './run-command.ts';
import { demoJob } from './written-jobs.ts';

describe('report', () => {
  test.each(['report.pdf', 'REPORT.PDF', 'new/folder/report.pdf'])('%s is a PDF', async (path) => {
    const folder = ownFolder();
    const { code, out, err, progress } = await command(
      ['report', 'doubted-liner', '--out', path, '--season', 'none'],
      folder,
    );
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out).toContain(`Written: ${path}`);
    const bytes = readFileSync(join(folder, path));
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    expect(bytes.subarray(-8).toString()).toContain('%%EOF');
    expect(progress).toEqual(['Assessing ...', 'Writing the report ...']);
  });

  test('report.html is one page that asks nothing of the network', async () => {
    const folder = ownFolder();
    expect(
      (await command(['report', 'doubted-liner', '--out', 'report.html', '--season', 'none'], folder)).code,
    ).toBe(0);
    const page = readFileSync(join(folder, 'report.html'), 'utf8');
    expect(page).toContain(demoJob('doubted-liner').header.title);
    expect(page).not.toMatch(/(?:src|href)="https?:|url\(["']?https?:|@import/);
    expect(readdirSync(folder)).toEqual(['report.html']);
  });

  test('the same job gives the same bytes', async () => {
    const folder = ownFolder();
    for (const name of ['a.pdf', 'b.pdf', 'a.html', 'b.html']) {
      await command(['report', 'neglected-vented', '--out', name, '--season', 'none'], folder);
    }
    for (const ending of ['pdf', 'html']) {
      const [a, b] = ['a', 'b'].map((name) => readFileSync(join(folder, `${name}.${ending}`)));
      expect(a?.equals(b as Buffer)).toBe(true);
    }
  });
});
