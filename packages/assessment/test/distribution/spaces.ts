import type { SurveyedJob } from '@undercroft/record';
import { Assumptions } from '../../src/assumptions.ts';
import { chooseClimate } from '../../src/climate.ts';
import type { DistributionMissing } from '../../src/distribution/distribution-assessment.ts';
import {
  type DistributionSpace,
  type PreparedField,
  prepareField,
} from '../../src/distribution/prepare-field.ts';
import { geometryOf } from '../../src/geometry.ts';
import { demoJob } from '../season/jobs.ts';

/** A job as the field takes it, nothing said beside its drawing. */
export function spaceOf(job: SurveyedJob): DistributionSpace {
  const noted = new Assumptions();
  const chosen = chooseClimate(job, undefined, noted);
  return { job, drawn: job.plan, space: geometryOf(job, noted), chosen, seed: 1 };
}

/** A demo job changed in some way. */
export function demoWith(name: string, change: (plan: SurveyedJob['plan']) => void): SurveyedJob {
  const job = structuredClone(demoJob(name));
  change(job.plan);
  return job;
}

/** The dehumidifier of a plan. */
export function dehumidifierOf(plan: SurveyedJob['plan']): SurveyedJob['plan']['equipment'][number] {
  const found = plan.equipment.find((e) => e.kind === 'dehumidifier');
  if (found === undefined) throw new Error('no dehumidifier is drawn');
  return found;
}

/** A field that can be made ready. */
export function fieldOf(job: SurveyedJob, cellM?: number): PreparedField {
  const made: PreparedField | DistributionMissing = prepareField(spaceOf(job), cellM);
  if ('outcome' in made) throw new Error(made.why);
  return made;
}
