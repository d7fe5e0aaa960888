import {
  DEMO_JOBS,
  isSurveyed,
  type Job,
  type JobInput,
  readJob,
  type SurveyedJob,
} from '@undercroft/record';

/** A demo job, checked. */
export function demoJob(name: string): SurveyedJob {
  const found = DEMO_JOBS.find((d) => d.name === name);
  return checked(found?.job as JobInput);
}

function checked(input: JobInput): SurveyedJob {
  const read = readJob(input);
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
  if (!isSurveyed(read.job)) throw new Error('a job without walls');
  return read.job;
}

type Repair = Job['design']['repairs'][number]['repair'];

/**
 * A plain vented house in the climate of Greensboro, with nothing but what is asked for: 12 by 10 m, dry block walls,
 * eight vents, no machine, no ducts.
 */
export function plainJob(
  ground: NonNullable<JobInput['plan']>['ground'],
  repairs: readonly (Repair | { repair: Repair; priceCents: number })[] = [],
  more: { readonly vents?: number; readonly machines?: NonNullable<JobInput['design']>['machines'] } = {},
): SurveyedJob {
  const corners = [
    { id: 's', at: { xM: 0, yM: 0 } },
    { id: 'e', at: { xM: 12, yM: 0 } },
    { id: 'n', at: { xM: 12, yM: 10 } },
    { id: 'w', at: { xM: 0, yM: 10 } },
  ];
  return checked({
    format: 'undercroft-job',
    version: 2,
    id: 'plain',
    header: { title: 'Plain space', climateStation: 'greensboro_nc' },
    house: {
      stories: 1,
      heatedVolumeM3: 300,
      heatingSetC: 21,
      coolingSetC: 24,
      cooled: true,
      spaceType: 'vented',
      electricityCentsPerKWh: 20,
    },
    plan: {
      outline: { kind: 'corners', corners },
      ground,
      heights: [{ id: 'h', at: { xM: 5, yM: 5 }, clearHeightM: 0.9 }],
      walls: corners.map(({ id }) => ({
        id: `w-${id}`,
        wallId: id,
        material: 'hollow-block' as const,
        thicknessM: 0.2,
        heightM: 0.9,
        gradeAboveFloorM: 0.3,
        dampness: 'dry' as const,
      })),
      joists: [{ id: 'j', bearingDeg: 0, spacingM: 0.406, depthM: 0.235 }],
      vents: Array.from({ length: more.vents ?? 8 }, (_, i) => ({
        id: `v${i}`,
        wallId: corners[i % 4].id,
        offsetM: 2 + (i >> 2),
        widthM: 0.4,
        heightM: 0.2,
        sillHeightM: 0.6,
        netFreeAreaM2: 0.05,
        state: 'open' as const,
      })),
      doors: [{ id: 'door', wallId: 'e', offsetM: 1, widthM: 0.8, heightM: 0.6 }],
    },
    design: {
      repairs: repairs.map((r, i) => ({ id: `r${i + 1}`, ...(typeof r === 'string' ? { repair: r } : r) })),
      ...(more.machines === undefined ? {} : { machines: more.machines }),
    },
  });
}

/** Mean of some months of a case, January 0. */
export function meanOf<T>(
  months: readonly T[],
  numbers: readonly number[],
  pick: (month: T) => number,
): number {
  return numbers.reduce((sum, m) => sum + pick(months[m]), 0) / numbers.length;
}

export const WINTER = [11, 0, 1];
export const SUMMER = [5, 6, 7];
