import { type Assessment, type AssessOptions, assess } from '@undercroft/assessment';
import { type Season, seasonAsked } from './assess-options.ts';
import type { Given, Io } from './command.ts';
import { type FrozenJob, frozenJob } from './frozen-state.ts';
import { blamingJob } from './job-faults.ts';
import { type LoadedJob, loadWithPictures } from './load-job.ts';
import { loadWeather } from './load-weather.ts';

/**
 * Loads a job and its weather and assesses it.
 * @param usual how much of the year is worked out when nobody says
 * @param more what else the command asks for
 * @throws UsageError when either is missing or wrong, or no assessment can be made of the job
 */
export async function assessJob(
  given: Given,
  io: Io,
  usual: Season,
  more: Pick<AssessOptions, 'season' | 'coverage' | 'distribution'> = {},
): Promise<LoadedJob & Partial<FrozenJob> & { readonly assessment: Assessment }> {
  const { words, options } = given;
  const season = seasonAsked(options.season, usual);
  const loaded = await loadWithPictures(words, io);
  const asked = options.frozen;
  const from: LoadedJob & Partial<FrozenJob> =
    typeof asked === 'string' ? frozenJob(words[0], loaded, asked) : loaded;
  const { job } = from;
  if (options.weather !== undefined) io.progress('Reading the weather ...');
  const weather =
    typeof options.weather === 'string' ? await loadWeather(options.weather, io.cwd) : undefined;
  io.progress('Assessing ...');
  const progress = (done: number, total: number) =>
    io.progress(`Running the year by the hour: ${done} of ${total} years`);
  return {
    ...from,
    assessment: blamingJob(words[0], () => assess(job, weather, { season, progress, ...more })),
  };
}

/** Asks for better arrangements of the machine, as a report shows them, wherever the air on the plan is worked out at all. */
export const searchedAir = ({ options }: Given): Pick<AssessOptions, 'distribution'> =>
  options.season === 'none' ? {} : { distribution: 'search' };
