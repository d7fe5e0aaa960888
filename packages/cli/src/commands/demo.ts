import { join } from 'node:path';
import { DEMO_JOBS } from '@undercroft/record';
import type { Command } from '../command.ts';
import { standsAt, writeOutputs } from '../files.ts';
import { jsonText } from '../json.ts';
import { UsageError } from '../usage-error.ts';
import { columnsOf, wrap } from '../wrap.ts';

/** The command that lists the demo jobs or writes one. */
export const demoCommand: Command = {
  name: 'demo',
  takes: '[NAME FOLDER]',
  help: 'Lists the demo jobs, or writes one as a job file into a folder.',
  more: ['A file that is there already is left alone.'],
  options: {
    out: { type: 'string', value: 'FOLDER', help: 'The folder, where you prefer to name it as an option.' },
  },
  run: async ({ words, options }, io) => {
    const [name, ...rest] = words;
    const folders = typeof options.out === 'string' ? [...rest, options.out] : rest;
    if (name === undefined) {
      if (folders.length > 0) throw new UsageError(`Name a demo job to write. ${known()}`);
      for (const line of columnsOf(
        DEMO_JOBS.map((d) => [d.name, d.about]),
        io.columns,
      ))
        io.print(line);
      io.print('');
      const how =
        'undercroft assess NAME assesses one; undercroft demo NAME FOLDER writes it as a file to work with.';
      for (const line of wrap(how, io.columns)) io.print(line);
      return 0;
    }
    const demo = DEMO_JOBS.find((d) => d.name === name);
    if (demo === undefined) throw new UsageError(`There is no demo job "${name}". ${known()}`);
    if (folders.length !== 1 || folders[0] === '') {
      throw new UsageError(`Name one folder to write it to: undercroft demo ${name} FOLDER.`);
    }
    const path = join(folders[0], `${name}.json`);
    if ((await standsAt(path, io.cwd)) !== 'nothing') {
      throw new UsageError(`${path} is there already. Move it or name another folder.`);
    }
    await writeOutputs([{ path, content: `${jsonText(demo.job)}\n` }], io.cwd);
    io.print(`Written: ${path}`);
    return 0;
  },
};

function known(): string {
  return `Demo jobs: ${DEMO_JOBS.map((d) => d.name).join(', ')}.`;
}
