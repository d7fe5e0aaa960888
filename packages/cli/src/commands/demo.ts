import { join } from 'node:path';
import {
  DEMO_JOBS,
  type DemoJob,
  demoPictures,
  entriesOfJob,
  JobLog,
  readJob,
  writeArchive,
} from '@undercroft/record';
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
    archive: {
      type: 'boolean',
      help: 'Write it as an archive (.zip) with its log of entries and its pictures.',
    },
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
    const archive = options.archive === true;
    const path = join(folders[0], `${name}.${archive ? 'zip' : 'json'}`);
    if ((await standsAt(path, io.cwd)) !== 'nothing') {
      throw new UsageError(`${path} is there already. Move it or name another folder.`);
    }
    const content = archive ? archiveOf(demo) : `${jsonText(demo.job)}\n`;
    await writeOutputs([{ path, content }], io.cwd);
    io.print(`Written: ${path}`);
    return 0;
  },
};

/** Time of the entries of a demo archive: a fixed one, so that the same job gives the same bytes. */
const ENTERED = { nowMs: Date.UTC(2026, 7, 12, 18), deviceTime: '2026-08-12T14:00:00-04:00' };

/** A demo job as if it had been entered all at once, with its pictures. */
function archiveOf(demo: DemoJob): Uint8Array {
  const read = readJob(demo.job);
  if (!read.ok) throw new Error(`the demo job ${demo.name} breaks the schema`);
  const entries = entriesOfJob(read.job, { who: 'Undercroft demo', device: 'demodevice', ...ENTERED });
  return writeArchive(new JobLog(read.job.id, entries), demoPictures(demo));
}

function known(): string {
  return `Demo jobs: ${DEMO_JOBS.map((d) => d.name).join(', ')}.`;
}
