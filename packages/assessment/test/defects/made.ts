import {
  DEMO_JOBS,
  isSurveyed,
  type Job,
  type JobInput,
  readJob,
  type SurveyedJob,
} from '@undercroft/record';

const visit = { when: '2031-06-03T10:05:00-04:00', who: 'Ruth Castellane' };

/** A job as checked by the record. */
export function checked(input: JobInput): SurveyedJob {
  const read = readJob(input);
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
  if (!isSurveyed(read.job)) throw new Error('a job without walls');
  return read.job;
}

/** A demo job. */
export function demoJob(name: string): SurveyedJob {
  return checked(DEMO_JOBS.find((d) => d.name === name)?.job as JobInput);
}

type FindingInput = NonNullable<JobInput['findings']>[number];
type ObservationInput = NonNullable<NonNullable<JobInput['readings']>['observations']>[number];

/** A finding without picture or reading. */
export function finding(defect: string, more: Partial<FindingInput> = {}): FindingInput {
  return { id: `f-${defect}`, defect, title: defect, place: {}, ...visit, ...more };
}

/** An observation by the engine's name of the quantity. */
export function observation(quantity: string, value: number | boolean, more: Partial<ObservationInput> = {}) {
  return { id: `o-${quantity}`, quantity, value, ...visit, ...more };
}

const CORNERS = [
  { id: 's', at: { xM: 0, yM: 0 } },
  { id: 'e', at: { xM: 12, yM: 0 } },
  { id: 'n', at: { xM: 12, yM: 10 } },
  { id: 'w', at: { xM: 0, yM: 10 } },
];

interface Made {
  readonly ground?: NonNullable<JobInput['plan']>['ground'];
  readonly findings?: readonly FindingInput[];
  readonly observations?: readonly ObservationInput[];
  readonly plan?: Partial<NonNullable<JobInput['plan']>>;
  readonly house?: JobInput['house'];
}

const SOUND_LINER = { cover: 'liner', surface: 'dark-damp', liner: { workmanship: 'sealed' } } as const;

/**
 * A closed space of 12 by 10 m in the climate of Greensboro with a sealed liner, eight piers, a door and nothing said of
 * anything else.
 */
export function madeJob({
  ground = SOUND_LINER,
  findings,
  observations,
  plan,
  house,
}: Made = {}): SurveyedJob {
  return checked({
    format: 'undercroft-job',
    version: 2,
    id: 'made',
    header: { title: 'Made space', climateStation: 'greensboro_nc' },
    house: {
      stories: 1,
      heatedVolumeM3: 300,
      heatingSetC: 21,
      coolingSetC: 24,
      cooled: true,
      spaceType: 'closed',
      ...house,
    },
    plan: {
      outline: { kind: 'corners', corners: CORNERS },
      ground,
      heights: [{ id: 'h', at: { xM: 5, yM: 5 }, clearHeightM: 0.9 }],
      walls: CORNERS.map(({ id }) => ({
        id: `w-${id}`,
        wallId: id,
        material: 'hollow-block' as const,
        thicknessM: 0.2,
        heightM: 0.9,
        gradeAboveFloorM: 0.3,
      })),
      piers: Array.from({ length: 8 }, (_, i) => ({
        id: `p${i}`,
        at: { xM: 1.5 + 3 * (i % 4), yM: i < 4 ? 3 : 7 },
      })),
      doors: [{ id: 'door', wallId: 'e', offsetM: 1, widthM: 0.8, heightM: 0.6 }],
      ...plan,
    },
    readings: { observations: [...(observations ?? [])] },
    findings: [...(findings ?? [])],
  });
}

export type { FindingInput, Job };
