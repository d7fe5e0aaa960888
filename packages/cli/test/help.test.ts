import { describe, expect, test } from 'vitest';
import { command } from './run-command.ts';

const COMMANDS = [
  'assess',
  'audit',
  'coverage',
  'air',
  'compare',
  'check',
  'report',
  'calc',
  'demo',
  'schema',
];

describe('help', () => {
  test.each([[[]], [['--help']], [['-h']], [['help']]])('%j gives the overview', async (args) => {
    const { code, out, err } = await command(args);
    expect(code).toBe(0);
    expect(err).toBe('');
    for (const name of COMMANDS) expect(out).toMatch(new RegExp(`^ {2}${name}\\b`, 'm'));
    expect(out).toContain('Exit codes:');
    expect(out).toContain('Follow the local');
  });

  test.each(COMMANDS)('%s --help, %s -h and help %s say the same, with every option', async (name) => {
    const asOption = await command([name, '--help']);
    expect(asOption.code).toBe(0);
    expect(asOption.out).toMatch(new RegExp(`^Usage: undercroft ${name}`));
    expect((await command([name, '-h'])).out).toBe(asOption.out);
    expect((await command(['help', name])).out).toBe(asOption.out);
  });

  test.each([
    ['assess', ['--weather FILE', '--season HOW', '--json', '--out DIR', '--strict']],
    ['report', ['--out FILE', '--weather FILE', '--season HOW']],
    ['audit', ['--by WHAT', '--weather FILE', '--season HOW', '--json', '--strict']],
    ['coverage', ['--route WHAT', '--bays', '--angle DEG', '--exact', '--json']],
    ['air', ['--weather FILE', '--as-found', '--json']],
    ['calc', ['--json']],
  ])('help of %s lists %j', async (name, options) => {
    const { out } = await command([name, '--help']);
    for (const option of options) expect(out).toContain(`  ${option} `);
  });

  test('help asked for among other words does not run the command', async () => {
    const { code, out } = await command(['assess', 'no-such-file.json', '--strict', '--help']);
    expect(code).toBe(0);
    expect(out).toMatch(/^Usage: undercroft assess/);
  });

  test('help of a calculator tells its keys, results, an example and sources', async () => {
    const { out } = await command(['calc', 'pipe-fall', '--help']);
    for (const part of ['drop=', 'run=', 'slope', 'Example:', 'Sources:', 'International Plumbing Code']) {
      expect(out).toContain(part);
    }
    expect((await command(['calc', 'pipe-fall'])).out).toBe(out);
  });

  test('--version prints the version of the package', async () => {
    expect((await command(['--version'])).out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });

  test.each([80, 120])('no line of help is wider than %d columns', async (columns) => {
    for (const args of [[], ...COMMANDS.map((name) => [name, '--help']), ['calc', 'design-load']]) {
      const { out } = await command(args, '/', columns);
      for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(columns);
    }
  });
});

describe('what is not known', () => {
  test.each(['assses', '--asses', ''])('command "%s": exit 2 with the list of commands', async (name) => {
    const { code, out, err } = await command([name]);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toBe(`There is no command "${name}". Commands: ${COMMANDS.join(', ')}.\n`);
  });

  test('help of an unknown command: exit 2', async () => {
    expect((await command(['help', 'asess'])).code).toBe(2);
    expect((await command(['asess', '--help'])).code).toBe(2);
  });

  test.each([
    [
      ['assess', 'sound-closed', '--loud'],
      'There is no option --loud.',
      '--weather FILE, --season HOW, --json',
    ],
    [['check', 'sound-closed', '-x'], 'There is no option -x.', 'check has none.'],
    [['assess', 'sound-closed', '--weather'], 'Option --weather', '--weather FILE'],
    [['assess', 'sound-closed', '--strict=yes'], 'Option --strict', '--strict'],
    [['assess', 'sound-closed', '--out='], '--out is empty.', '--out DIR'],
  ])('%j: exit 2 with the options', async (args, what, options) => {
    const { code, out, err } = await command(args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(what);
    expect(err).toContain(options);
  });
});
