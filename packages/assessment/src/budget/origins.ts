import type { SurveyedJob } from '@undercroft/record';
import type { Origin } from '../origin.ts';

/** Where the figures of one state of air, ground and house came from. */
export interface ConditionOrigins {
  readonly crawl: Origin;
  readonly outdoor: Origin;
  readonly house: Origin;
  readonly ground: Origin;
}

interface Taken {
  readonly id: string;
  readonly who: string;
  readonly when: string;
}

/** Readings that were taken together into one figure; undefined for none. */
export function ofReadings(readings: readonly Taken[], what: string): Origin | undefined {
  const [first] = readings;
  if (first === undefined) return undefined;
  const note = readings.length === 1 ? what : `mean of ${readings.length}: ${what}`;
  const who = [...new Set(readings.map((r) => r.who))].join(', ');
  return { kind: 'reading', id: first.id, who, when: first.when, note };
}

/** Something that was drawn or entered at the survey. */
export function ofSurvey(job: SurveyedJob, kind: 'plan' | 'house', note: string, id?: string): Origin {
  const { surveyedBy, surveyedOn } = job.header;
  return {
    kind,
    ...(id === undefined ? {} : { id }),
    ...(surveyedBy.length === 0 ? {} : { who: surveyedBy.join(', ') }),
    ...(surveyedOn === undefined ? {} : { when: surveyedOn }),
    note,
  };
}

/** Humidity of the house where it was not read with the air. */
export function ofHouse(job: SurveyedJob): Origin {
  return job.house.indoorRelativeHumidity === undefined
    ? { kind: 'assumption', note: 'not measured indoors' }
    : ofSurvey(job, 'house', 'humidity of the house as entered');
}
