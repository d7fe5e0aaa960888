import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { run } from '../packages/cli/src/run.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const readme = readFileSync(join(root, 'README.md'), 'utf8');

/** Text under a heading of the second level. */
function section(heading: string): string {
  const parts = readme.split(/^## /m);
  const found = parts.find((part) => part.startsWith(`${heading}\n`));
  if (found === undefined) throw new Error(`README.md has no section "## ${heading}"`);
  return found;
}

/** Lines of the fenced blocks of a text, without their comments. */
function fencedLines(text: string): string[] {
  return [...text.matchAll(/^```\w*\n([\s\S]*?)^```$/gm)]
    .flatMap((match) => (match[1] ?? '').split('\n'))
    .map((line) => line.replace(/\s+#.*$/, '').trim())
    .filter((line) => line !== '');
}

/** Rows of the tables of a text, as cells, without heads. */
function rows(text: string): string[][] {
  const lines = text.split('\n').filter((line) => line.startsWith('|'));
  const cells = lines.map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
  const rule = cells.findIndex((row) => row.every((cell) => /^:?-+:?$/.test(cell)));
  return cells.slice(rule + 1);
}

const inBackticks = (text: string): string[] => [...text.matchAll(/`([^`]+)`/g)].map((m) => m[1] ?? '');

describe('two commands', () => {
  const commands = fencedLines(section('Two commands'));

  test('there are two, and the first starts the program', () => {
    expect(commands).toHaveLength(2);
    expect(commands[0]).toContain('npm start');
  });

  test('the test command is the one that the build service runs', () => {
    const ci = readFileSync(join(root, '.ci/run'), 'utf8').split('\n');
    expect(ci).toContain(commands[1]);
  });

  test('every script they name stands in package.json', () => {
    const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
    const named = [...readme.matchAll(/\bnpm (?:run )?(start|test|[a-z]+:[a-z]+)\b/g)].map((m) => m[1] ?? '');
    expect(named).toContain('test');
    for (const name of named) expect(Object.keys(scripts)).toContain(name);
  });
});

describe('where is ...?', () => {
  const table = rows(section('Where is ...?'));

  test('the table has rows, each with a place', () => {
    expect(table.length).toBeGreaterThan(10);
    for (const row of table) expect(inBackticks(row[1] ?? ''), row.join(' | ')).not.toEqual([]);
  });

  test('every place exists', () => {
    const missing = table
      .flatMap((row) => inBackticks(row[1] ?? ''))
      .filter((path) => !existsSync(join(root, path)));
    expect(missing).toEqual([]);
  });
});

test('the package map lists every workspace, and nothing else', () => {
  const listed = rows(section('Packages')).flatMap((row) => inBackticks(row[0] ?? ''));
  const workspaces = readdirSync(join(root, 'packages')).filter((name) =>
    existsSync(join(root, 'packages', name, 'package.json')),
  );
  expect(listed.sort()).toEqual(workspaces.sort());
});

test('every place that the README links to exists', () => {
  const links = [...readme.matchAll(/\]\(([^)#]+)\)/g)].map((match) => match[1] ?? '');
  const missing = links.filter((link) => !/^[a-z]+:/.test(link) && !existsSync(join(root, link)));
  expect(missing).toEqual([]);
});

describe('the commands that it shows work', () => {
  const shown = fencedLines(section('Using it')).filter((line) => line.startsWith('npx undercroft '));
  const alone = shown.filter((line) => !/\bmy[-.]/.test(line));

  test('there are some that need no file of your own', () => {
    expect(alone.length).toBeGreaterThan(3);
  });

  test.each(alone)('%s', async (line) => {
    const errors: string[] = [];
    const printed: string[] = [];
    const words = line.split(/\s+/).slice(2);
    // Hundreds of years take half a minute and have tests of their own.
    const quick = words[0] === 'assess' ? ['--season', 'none'] : [];
    const code = await run([...words, ...quick], {
      cwd: root,
      columns: 100,
      print: (text) => printed.push(text),
      warn: (text) => errors.push(text),
      progress: () => {},
    });
    expect(errors).toEqual([]);
    expect(code).toBe(0);
    expect(printed.join('\n').length).toBeGreaterThan(20);
  });

  test.each(shown.filter((line) => !alone.includes(line)))('%s is understood', async (line) => {
    const errors: string[] = [];
    const words = line.split(/\s+/).slice(2);
    const code = await run(words, {
      cwd: join(root, 'docs'),
      columns: 100,
      print: () => {},
      warn: (text) => errors.push(text),
      progress: () => {},
    });
    // No such job: everything else about the command was taken.
    const [file] = /\bmy-job\.\w+/.exec(line) ?? [];
    expect(errors).toEqual([`There is no file ${file}. Check the path.`]);
    expect(code).toBe(2);
  });
});
