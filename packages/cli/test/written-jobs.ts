import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DEMO_JOBS, entriesOfJob, type Job, JobLog, readJob, writeArchive } from '@undercroft/record';

/** A demo job, read through the schema. */
export function demoJob(name: string): Job {
  const demo = DEMO_JOBS.find((d) => d.name === name);
  if (demo === undefined) throw new Error(`no demo job ${name}`);
  const read = readJob(demo.job);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.job;
}

/** Writes data as a job file and gives its name. */
export function writeJob(folder: string, job: unknown, name = 'job.json'): string {
  writeFileSync(join(folder, name), JSON.stringify(job));
  return name;
}

/** A job as the bytes of an archive. */
export function archiveOf(job: Job): Uint8Array {
  const entries = entriesOfJob(job, {
    who: 'Linnea Aalbrecht',
    device: 'deskabcd',
    nowMs: Date.UTC(2031, 4, 14, 13, 20),
    deviceTime: '2031-05-14T09:20:00-04:00',
  });
  return writeArchive(new JobLog(job.id, entries), new Map());
}

/** A weather year in the EPW layout: warm and humid by season and hour, invented. */
export function writeWeather(year: { readonly name: string; readonly meanC: number }): string {
  const rows = [
    `LOCATION,${year.name},NC,USA,made,723170,36.1,-79.95,-5.0,270.0`,
    'DESIGN CONDITIONS,0',
    'TYPICAL/EXTREME PERIODS,0',
    'GROUND TEMPERATURES,0',
    'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
    'COMMENTS 1,made for a test',
    'COMMENTS 2,',
    'DATA PERIODS,1,1,Data,Sunday,1/1,12/31',
  ];
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  let dayOfYear = 0;
  for (const [month, count] of days.entries()) {
    for (let day = 1; day <= count; day += 1) {
      for (let hour = 1; hour <= 24; hour += 1) {
        const season = -Math.cos((2 * Math.PI * (dayOfYear - 15)) / 365);
        const daily = -Math.cos((2 * Math.PI * (hour - 3)) / 24);
        const dryBulb = year.meanC + 10 * season + 4 * daily;
        const dewPoint = year.meanC - 6 + 9 * season;
        const rh = Math.round(
          100 * Math.exp((17.6 * dewPoint) / (243 + dewPoint) - (17.6 * dryBulb) / (243 + dryBulb)),
        );
        const sun = Math.max(0, Math.round(500 * daily));
        rows.push(
          [
            2001,
            month + 1,
            day,
            hour,
            0,
            '?9?9?9?9E0?9?9?9?9?9?9?9?9?9?9?9?9?9?9?9*9*9?9*9*9',
            dryBulb.toFixed(1),
            dewPoint.toFixed(1),
            Math.min(100, rh),
            98100,
            0,
            0,
            320,
            sun,
            sun,
            Math.round(sun / 3),
            9999,
            9999,
            9999,
            9999,
            (hour * 15) % 360,
            '2.6',
            5,
            5,
            '16.0',
            77777,
            9,
            999999999,
            20,
            '0.1',
            0,
            88,
            0.16,
            0,
            0,
          ].join(','),
        );
      }
      dayOfYear += 1;
    }
  }
  return `${rows.join('\n')}\n`;
}
