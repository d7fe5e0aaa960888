import {
  DEMO_JOBS,
  demoPictures,
  type Job,
  type JobLog,
  readArchive,
  readJob,
  readJobText,
} from '@undercroft/record';
import type { Io } from './command.ts';
import { readInput, standsAt } from './files.ts';
import { inputError, UsageError } from './usage-error.ts';

/** First bytes of a zip file. */
const ZIP = [0x50, 0x4b];

/** What JOB may be, for help texts. */
export const JOB_IS =
  'JOB is a job file (.json), an archive (.zip) or the name of a demo job (undercroft demo lists them).';

/** A job with the pictures that came with it, by their SHA-256: none from a job file, all that an archive holds. */
export interface LoadedJob {
  readonly job: Job;
  /** The entries of an archive; absent where a job comes without any. */
  readonly log?: JobLog;
  /** Those of a demo job are drawn when they are asked for. */
  readonly pictures: () => ReadonlyMap<string, Uint8Array>;
}

const NO_PICTURES: LoadedJob['pictures'] = () => new Map();

function archived(name: string, bytes: Uint8Array, io: Io): LoadedJob {
  const opened = readArchive(bytes);
  if (!opened.ok) throw inputError(name, opened.issues);
  for (const w of opened.archive.warnings) io.warn(`${w.path}: found ${w.found}; expected ${w.expected}`);
  const missing = opened.archive.missingBlobs.length;
  if (missing > 0)
    io.warn(
      `${missing} files named by the job (pictures, sound, lists of frozen states) are not in the archive.`,
    );
  const { job, log, blobs } = opened.archive;
  return { job, log, pictures: () => blobs };
}

/**
 * A job from a job file, an archive or the name of a demo job, with its pictures; a file wins over a demo job of its name.
 * Warnings of an archive go to standard error.
 * @throws UsageError when there is no such job or something is wrong with it
 */
export async function loadWithPictures(words: readonly string[], io: Io): Promise<LoadedJob> {
  const [name, ...extra] = words;
  if (name === undefined || name === '') {
    throw new UsageError(`Name a job. ${JOB_IS}`);
  }
  if (extra.length > 0) throw new UsageError(`One job at a time; "${extra.join(' ')}" is too much.`);
  const demo = DEMO_JOBS.find((d) => d.name === name);
  if (demo !== undefined && (await standsAt(name, io.cwd)) !== 'file') {
    const read = readJob(demo.job);
    if (!read.ok) throw new Error(`the demo job ${name} breaks the schema`);
    return { job: read.job, pictures: () => demoPictures(demo) };
  }
  const bytes = await readInput(name, io.cwd);
  if (bytes.length === 0) throw new UsageError(`${name} is empty. Get the file again.`);
  if (bytes[0] === ZIP[0] && bytes[1] === ZIP[1]) return archived(name, bytes, io);
  const read = readJobText(new TextDecoder().decode(bytes));
  if (!read.ok) throw inputError(name, read.issues);
  return { job: read.job, pictures: NO_PICTURES };
}

/**
 * The job alone; see `loadWithPictures`.
 * @throws UsageError when there is no such job or something is wrong with it
 */
export async function loadJob(words: readonly string[], io: Io): Promise<Job> {
  return (await loadWithPictures(words, io)).job;
}
