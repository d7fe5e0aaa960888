import { calculators } from '@undercroft/engine';
import type { Command, Io } from '../command.ts';
import { jsonText } from '../json.ts';
import { answerLines, calculatorData, calculatorLines } from '../print-calculator.ts';
import { inputError, UsageError } from '../usage-error.ts';
import { columnsOf, wrap } from '../wrap.ts';

const VALUES = 'Values take trade or SI units: 72F, 22C, 65%, 6in, 12ft6-1/2in, 50cfm.';

function list(io: Io): void {
  const rows = calculators.calculators.map((c) => [c.name, c.title] as const);
  for (const line of columnsOf(rows, io.columns)) io.print(line);
  io.print('');
  const how = 'undercroft calc NAME tells what goes in; undercroft calc NAME key=value ... works it out.';
  for (const line of wrap(`${how} ${VALUES}`, io.columns)) io.print(line);
}

function keyValues(words: readonly string[]): Record<string, string> {
  const given: Record<string, string> = Object.create(null);
  for (const word of words) {
    const at = word.indexOf('=');
    if (at <= 0) {
      throw new UsageError(`"${word}" is not key=value. Write for example temperature=72F, without spaces.`);
    }
    const key = word.slice(0, at);
    if (key in given) throw new UsageError(`${key} is given twice.`);
    given[key] = word.slice(at + 1);
  }
  return given;
}

/** The command that runs a pocket calculator. */
export const calcCommand: Command = {
  name: 'calc',
  takes: '[NAME [key=value ...]]',
  help: 'Pocket calculators of the trade. Alone it lists them; with a name it tells what goes in.',
  more: [
    VALUES,
    'With --json an answer is one object: name, inputs and results (each key with value and unit), notices, sources. undercroft calc --json lists all calculators with their keys.',
  ],
  options: { json: { type: 'boolean', help: 'Print JSON.' } },
  helpOn: ([name], columns) => {
    const calculator = name === undefined ? undefined : calculators.findCalculator(name);
    return calculator === undefined ? undefined : calculatorLines(calculator, columns);
  },
  run: async ({ words, options }, io) => {
    const [name, ...rest] = words;
    const json = options.json === true;
    if (name === undefined) {
      if (json) io.print(jsonText(calculators.calculators.map(calculatorData)));
      else list(io);
      return 0;
    }
    const calculator = calculators.findCalculator(name);
    if (calculator !== undefined && rest.length === 0 && !json) {
      for (const line of calculatorLines(calculator, io.columns)) io.print(line);
      return 0;
    }
    const ran = calculators.runCalculator(name, keyValues(calculator === undefined ? [] : rest));
    if (!ran.ok || calculator === undefined) throw inputError(`calc ${name}`, ran.ok ? [] : ran.issues);
    if (json) io.print(jsonText(ran.answer));
    else for (const line of answerLines(calculator, ran.answer, io.columns)) io.print(line);
    return 0;
  },
};
