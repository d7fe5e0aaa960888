import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { ownFolder } from './run-command.ts';

const bin = fileURLToPath(new URL('../bin/undercroft.js', import.meta.url));
const built = existsSync(fileURLToPath(new URL('../dist/main.js', import.meta.url)));

if (!built) {
  // biome-ignore lint/suspicious/noConsole: a suite that does not run must say so
  console.warn(
    'NOT RUN: the tests of the built command need the build. "npm ci" or "npm run build" makes it.',
  );
}

const undercroft = (args: readonly string[], cwd: string) =>
  spawnSync(process.execPath, [bin, ...args], { cwd, encoding: 'utf8' });

const shell = (line: string, cwd: string) =>
  spawnSync('bash', ['-c', line], {
    cwd,
    encoding: 'utf8',
    env: { ...process.env, UNDERCROFT: `${process.execPath} ${bin}` },
  });

describe.skipIf(!built)('the built command, needs npm run build', () => {
  test('JSON on standard output, silent standard error, exit 0', () => {
    const ran = undercroft(['calc', 'pipe-fall', 'drop=1/4in', 'run=1ft', '--json'], ownFolder());
    expect(ran.stderr).toBe('');
    expect(ran.status).toBe(0);
    expect(JSON.parse(ran.stdout).results.slope.value).toBeCloseTo(1 / 48, 12);
  });

  test('exit 1 for a broken criterion with --strict, 2 for bad input', () => {
    const folder = ownFolder();
    const strict = undercroft(['assess', 'doubted-liner', '--strict', '--season', 'none'], folder);
    expect(strict.status).toBe(1);
    expect(strict.stderr).toBe('');
    const missing = undercroft(['assess', 'house.json'], folder);
    expect(missing.status).toBe(2);
    expect(missing.stdout).toBe('');
    expect(missing.stderr).toBe('There is no file house.json. Check the path.\n');
  });

  test('a demo job written, assessed and reported, all by relative paths', () => {
    const folder = ownFolder();
    expect(undercroft(['demo', 'sound-closed', 'jobs'], folder).status).toBe(0);
    const assessed = undercroft(
      ['assess', 'jobs/sound-closed.json', '--out', 'results', '--season', 'cases'],
      folder,
    );
    expect(assessed.stderr).toBe('');
    expect(assessed.status).toBe(0);
    expect(JSON.parse(readFileSync(join(folder, 'results/assessment.json'), 'utf8')).job.id).toBe(
      'demo-sound-closed',
    );
    expect(readFileSync(join(folder, 'results/report.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('a reader that stops early is no fault, and the exit code stays', () => {
    const ran = shell(
      '{ $UNDERCROFT assess doubted-liner --strict --season none; echo "code $?" >&2; } | head -1',
      ownFolder(),
    );
    expect(ran.stdout.split('\n')).toHaveLength(2);
    expect(ran.stderr).toBe('code 1\n');
  });

  test.skipIf(!existsSync('/dev/full'))('output to a full disk: exit 2 with words', () => {
    const ran = shell('$UNDERCROFT schema > /dev/full', ownFolder());
    expect(ran.stderr).toMatch(/^The output cannot be written: .*no space left/);
    expect(ran.status).toBe(2);
  });

  test('a job comes in by standard input as well', () => {
    const folder = ownFolder();
    undercroft(['demo', 'neglected-vented', '.'], folder);
    const ran = shell('$UNDERCROFT check /dev/stdin < neglected-vented.json', folder);
    expect(ran.stderr).toBe('');
    expect(ran.status).toBe(0);
  });
});
