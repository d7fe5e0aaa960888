import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { climate } from '@undercroft/engine';
import { expect } from 'vitest';
import { assess } from '../../src/index.ts';
import { demoJob } from './jobs.ts';

/** Path of the shared reference data; absent where it is not at hand. */
export const shared = process.env.UNDERCROFT_SHARED;

const folder = join(shared ?? '.', 'data', 'weather');

/** Names of the typical years in the shared data. */
export const weatherFiles: readonly string[] = shared
  ? readdirSync(folder).filter((name) => name.endsWith('.gz'))
  : [];

/** The typical year of a place, by a part of its file's name. */
export function weatherOf(place: string): climate.ClimateYear {
  const name = weatherFiles.find((file) => file.includes(place)) as string;
  const read = climate.readWeather(gunzipSync(readFileSync(join(folder, name))), name);
  if (!read.ok) throw new Error(JSON.stringify(read.issues.slice(0, 3)));
  return read.year;
}

/** Expects every year of a wet and of a sound space in this weather to close its books and to repeat. */
export function expectSoundYears(place: string): void {
  const weather = weatherOf(place);
  for (const job of [demoJob('neglected-vented'), demoJob('sound-closed')]) {
    const { cases, weather: used, notices } = assess(job, weather).season!;
    expect(used.seed).toBeUndefined();
    for (const one of cases) {
      expect(Math.abs(one.closure.water), one.name).toBeLessThan(1e-9);
      expect(Math.abs(one.closure.energy), one.name).toBeLessThan(1e-9);
      // Wood above fiber saturation under air that never dries it takes up water for decades: no year repeats, and it says so.
      if (one.peakWoodMoisture > 0.3 && !one.settled) {
        expect(notices.map((n) => n.code)).toContain('year-not-settled');
      } else expect(one.settled, one.name).toBe(true);
      for (const month of one.months) {
        for (const figure of Object.values(month)) expect(Number.isFinite(figure)).toBe(true);
      }
    }
  }
}
