import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { climate } from '@undercroft/engine';
import { DEMO_JOBS, type Job, readJob } from '@undercroft/record';

/** Path of the shared data; absent where it is not at hand. */
export const shared = process.env.UNDERCROFT_SHARED;
const folder = join(shared ?? '', 'data/weather');

/** Names of the weather files of the shared data. */
export const weatherFiles =
  shared === undefined
    ? []
    : readdirSync(folder)
        .filter((name) => /\.(epw|csv)\.gz$/.test(name))
        .sort();

/** One of the weather files, read. */
export function weatherYear(name: string): climate.ClimateYear {
  const read = climate.readWeather(gunzipSync(readFileSync(join(folder, name))), name);
  if (!read.ok) throw new Error(`${name}: ${read.issues[0]?.message}`);
  return read.year;
}

/** The demo jobs, read through the schema. */
export const demoJobs: readonly Job[] = DEMO_JOBS.map(({ name, job }) => {
  const read = readJob(job);
  if (!read.ok) throw new Error(`the demo job ${name} breaks the schema`);
  return read.job;
});

/** Paths of all numbers in plain data that are not finite. */
export function notFinite(data: unknown, path = ''): string[] {
  if (typeof data === 'number') return Number.isFinite(data) ? [] : [`${path} = ${data}`];
  if (typeof data !== 'object' || data === null) return [];
  return Object.entries(data).flatMap(([key, value]) => notFinite(value, `${path}.${key}`));
}
