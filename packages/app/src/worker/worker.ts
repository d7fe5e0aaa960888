import { assess, type HourlyYear, JobError } from '@undercroft/assessment';
import { EngineError } from '@undercroft/engine';
import { expose } from 'comlink';
import { airOnPlan } from './air.ts';
import type { AssessmentOutcome, Compute } from './api.ts';
import { survey } from './survey.ts';
import { readWeather, weatherYear } from './weather.ts';

/** Progress is told this often [ms]. */
const TELL_MS = 100;

/** Tells the first step, the last one, and some between. */
function nowAndThen(tell: (done: number, total: number) => void): (done: number, total: number) => void {
  let next = 0;
  return (done, total) => {
    const now = performance.now();
    if (now < next && done < total) return;
    next = now + TELL_MS;
    tell(done, total);
  };
}

/** Gives the reason of what a person can mend as words. */
function outcomeOf(make: () => AssessmentOutcome): AssessmentOutcome {
  try {
    return make();
  } catch (error) {
    if (error instanceof JobError || error instanceof EngineError)
      return { ok: false, reason: error.message };
    throw error;
  }
}

const compute: Compute = {
  ...survey,
  ...airOnPlan,
  async assess({ job, weather, coverage = false }, depth, progress) {
    const year = await weatherYear(weather);
    const told = progress === undefined ? {} : { progress: nowAndThen(progress) };
    return outcomeOf(() => ({
      ok: true,
      assessment: assess(job, year, { season: depth, coverage, ...told }),
    }));
  },
  async yearSeries({ job, weather }, span) {
    const year = await weatherYear(weather);
    const years: HourlyYear[] = [];
    const hours = (given: readonly HourlyYear[]) => years.push(...given);
    outcomeOf(() => ({
      ok: true,
      assessment: assess(job, year, { season: 'quick', coverage: false, hours }),
    }));
    const { seriesOf } = await import('./year-series.ts');
    return seriesOf(years, span);
  },
  readWeather,
  async planSvg(job, assessment, options) {
    const { planSvg } = await import('./drawing.ts');
    return planSvg(job, assessment, options);
  },
  async calculatorForms() {
    const { forms } = await import('./calculate.ts');
    return forms();
  },
  async calculate(name, inputs) {
    const { runCalculator } = await import('./calculate.ts');
    return runCalculator(name, inputs);
  },
};

expose(compute);
