import type { criteria } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Assessment } from '../assessment.ts';
import type { Sample } from '../evidence/sample.ts';
import type { SpaceGeometry } from '../geometry.ts';
import type { Origin } from '../origin.ts';

/** What has to be known of a defect: how sure it is, and what says so. */
export type DefectKnown = Pick<criteria.DetectedDefect, 'key' | 'state' | 'claims' | 'samples'>;

/** What is known of a job when its causes are looked for. */
export interface CausesSubject {
  readonly job: SurveyedJob;
  readonly space: SpaceGeometry;
  readonly facts: criteria.JobFacts;
  readonly samples: readonly Sample[];
  readonly readings: Assessment['readings'];
  readonly criteria: Assessment['criteria'];
  readonly budgets: Assessment['budgets'];
  readonly season?: Assessment['season'];
  /** Defects of the catalogue, as judged. */
  readonly defects?: readonly DefectKnown[];
}

/** Samples of a quantity that somebody measured or answered. */
export function measuredSamples({ samples }: CausesSubject, quantity: string): Sample[] {
  return samples.filter((s) => s.quantity === quantity && !s.assumed);
}

/** Dehumidifiers that run, or of which nobody said that they do not. */
export function runningMachines({ job }: CausesSubject): SurveyedJob['plan']['equipment'] {
  return job.plan.equipment.filter((e) => e.kind === 'dehumidifier' && e.running !== false);
}

/** Readings of the air of one place, with their meaning. */
export function airReadings(
  { job, readings }: CausesSubject,
  where: SurveyedJob['readings']['air'][number]['where'],
): Assessment['readings'] {
  const ids = new Set(job.readings.air.filter((r) => r.where === where).map((r) => r.id));
  return readings.filter((r) => r.kind === 'air' && ids.has(r.id));
}

/** Mean of a list; undefined for an empty one. */
export function meanOf(values: readonly number[]): number | undefined {
  return values.length === 0 ? undefined : values.reduce((a, b) => a + b, 0) / values.length;
}

/** Relative humidity of the air of the space: mean of its readings, undefined without any. */
export function crawlHumidity(subject: CausesSubject): number | undefined {
  return meanOf(airReadings(subject, 'crawl').map((r) => r.figures.relativeHumidity));
}

/** Where a reading came from. */
export function originOf(reading: Assessment['readings'][number]): Origin {
  return { kind: 'reading', id: reading.id, who: reading.who, when: reading.when, note: reading.shown };
}
