import { readFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import type { Command, Given, Io } from './command.ts';
import { commandHelp, overview } from './help.ts';
import { UsageError } from './usage-error.ts';

/** Each is loaded only when it is asked for: a pocket calculator should not wait for the report. */
const COMMANDS: Readonly<Record<string, () => Promise<Command>>> = {
  assess: async () => (await import('./commands/assess.ts')).assessCommand,
  audit: async () => (await import('./commands/audit.ts')).auditCommand,
  coverage: async () => (await import('./commands/coverage.ts')).coverageCommand,
  air: async () => (await import('./commands/air.ts')).airCommand,
  compare: async () => (await import('./commands/compare.ts')).compareCommand,
  check: async () => (await import('./commands/check.ts')).checkCommand,
  report: async () => (await import('./commands/report.ts')).reportCommand,
  calc: async () => (await import('./commands/calc.ts')).calcCommand,
  demo: async () => (await import('./commands/demo.ts')).demoCommand,
  schema: async () => (await import('./commands/schema.ts')).schemaCommand,
};

function optionsOf(command: Command): string {
  const known = Object.entries(command.options).map(([name, o]) =>
    o.type === 'string' ? `--${name} ${o.value ?? 'VALUE'}` : `--${name}`,
  );
  return known.length > 0 ? `Options of ${command.name}: ${known.join(', ')}.` : `${command.name} has none.`;
}

/** Says in our own words what the parser of arguments found; its first words name the option in quotes. */
function unreadable(command: Command, error: unknown): UsageError {
  const { code, message } = error as NodeJS.ErrnoException;
  const option = /'(-[^' ]*)/.exec(message)?.[1] ?? 'an option';
  const what =
    code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION'
      ? `There is no option ${option}.`
      : `Option ${option} is not used rightly: one that takes a value needs it right after it, others take none.`;
  return new UsageError(`${what} ${optionsOf(command)}`);
}

function read(command: Command, args: readonly string[]): Given {
  const options = Object.fromEntries(
    Object.entries(command.options).map(([name, o]) => [name, { type: o.type }]),
  );
  let given: Given;
  try {
    const parsed = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
    given = { words: parsed.positionals, options: parsed.values as Given['options'] };
  } catch (error) {
    throw unreadable(command, error);
  }
  for (const [name, value] of Object.entries(given.options)) {
    if (value === '') throw new UsageError(`--${name} is empty. ${optionsOf(command)}`);
  }
  return given;
}

async function find(name: string): Promise<Command> {
  if (Object.hasOwn(COMMANDS, name)) return COMMANDS[name]();
  throw new UsageError(`There is no command "${name}". Commands: ${Object.keys(COMMANDS).join(', ')}.`);
}

async function version(): Promise<string> {
  const manifest = await readFile(new URL('../package.json', import.meta.url), 'utf8');
  return JSON.parse(manifest).version;
}

const asksForHelp = (word: string): boolean => word === '--help' || word === '-h';

async function help(words: readonly string[], columns: number): Promise<readonly string[]> {
  const [name, ...rest] = words.filter((word) => !asksForHelp(word));
  if (name === undefined) {
    return overview(await Promise.all(Object.values(COMMANDS).map((load) => load())), columns);
  }
  const command = await find(name);
  return command.helpOn?.(rest, columns) ?? commandHelp(command, columns);
}

async function dispatch(args: readonly string[], io: Io): Promise<0 | 1> {
  const [name, ...rest] = args;
  if (name === '--version') {
    io.print(await version());
    return 0;
  }
  if (name === undefined || name === 'help' || args.some(asksForHelp)) {
    for (const line of await help(name === 'help' ? rest : args, io.columns)) io.print(line);
    return 0;
  }
  const command = await find(name);
  return command.run(read(command, rest), io);
}

/** Runs the program and gives its exit code. Every fault ends in words, never in a bare stack. */
export async function run(args: readonly string[], io: Io): Promise<0 | 1 | 2 | 3> {
  try {
    return await dispatch(args, io);
  } catch (error) {
    if (error instanceof UsageError) {
      io.warn(error.message);
      return 2;
    }
    io.warn(`A fault of the program, not of your input: ${(error as Error).message}`);
    io.warn('Please report it with the command you gave and these lines:');
    io.warn((error as Error).stack ?? '');
    return 3;
  }
}
