import type { Command } from './command.ts';
import { columnsOf, wrap } from './wrap.ts';

const EXIT_CODES: readonly (readonly [string, string])[] = [
  ['0', 'done'],
  ['1', 'a criterion is not met or, of an audit, a defect is shown (only with --strict)'],
  ['2', 'bad usage or bad input'],
  ['3', 'a fault of the program'],
];

/** Overview of all commands. */
export function overview(commands: readonly Command[], columns: number): string[] {
  return [
    'undercroft: survey, explain, repair and keep dry a crawl space',
    '',
    'Usage: undercroft COMMAND [words] [options]',
    '',
    ...columnsOf(
      commands.map((c) => [`${c.name} ${c.takes}`.trimEnd(), c.help]),
      columns,
    ),
    '',
    'undercroft COMMAND --help tells more. undercroft --version prints the version.',
    '',
    'Exit codes:',
    ...columnsOf(EXIT_CODES, columns),
    '',
    ...wrap(
      'The tool never says that it is safe to enter a space or to skip a licensed trade. Follow the local code.',
      columns,
    ),
  ];
}

/** Help of one command. */
export function commandHelp(command: Command, columns: number): string[] {
  const options = Object.entries(command.options).map(
    ([name, o]) => [`--${name}${o.type === 'string' ? ` ${o.value ?? 'VALUE'}` : ''}`, o.help] as const,
  );
  return [
    `Usage: undercroft ${command.name} ${command.takes}`.trimEnd(),
    '',
    ...wrap(command.help, columns),
    ...(command.more ?? []).flatMap((paragraph) => ['', ...wrap(paragraph, columns)]),
    ...(options.length > 0 ? ['', 'Options:', ...columnsOf(options, columns)] : []),
  ];
}
