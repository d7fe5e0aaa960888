import { isSurveyed, type JobInput, readJob, type SurveyedJob } from '@undercroft/record';
import { demoJob } from '../season/jobs.ts';

const signed = { when: '2027-08-10T09:00:00-04:00', who: 'Ruth Castellane' };

/**
 * The doubted liner a year later: piers wrapped but one, vents sealed but for one that nobody looked at, the corner lined,
 * drier but for one joist. Invented, as the job is.
 */
export function afterRepairs(): SurveyedJob {
  const job = demoJob('doubted-liner');
  const { plan, readings } = job;
  const after = {
    ...job,
    header: { ...job.header, title: 'Weir Street 212: a year after the repair', surveyedOn: '2027-08-10' },
    plan: {
      ...plan,
      piers: plan.piers.map((p) => (p.id === 'pa7' ? p : { ...p, wrapHeightM: 0.2032, wrapSealed: true })),
      vents: plan.vents.map((v) => (v.id === 'vb2' ? v : { ...v, state: 'sealed' as const })),
      zones: plan.zones.map((z) =>
        z.id === 'far-corner'
          ? { ...z, ground: { cover: 'liner' as const, surface: 'average' as const } }
          : z,
      ),
      // Cleared away.
      obstacles: [],
      // The machine was turned to the middle of the space; a second one stands in the corner.
      equipment: [
        ...plan.equipment.map((e) => (e.id === 'dh' ? { ...e, facingDeg: 180 } : e)),
        { id: 'fan', kind: 'circulating-fan' as const, at: { xM: 14, yM: 7 } },
      ],
      // Drawn anew from scratch, a hand's breadth off: another id at the same place.
      seams: plan.seams.map((s) => (s.id === 'se1' ? { ...s, id: 'se9', tapedM: 15.8, gapM: 0 } : s)),
    },
    readings: {
      ...readings,
      // Readings of a visit have ids of their own.
      air: readings.air.map((r) => ({
        ...r,
        ...signed,
        id: `n-${r.id}`,
        temperatureC: r.where === 'crawl' ? 21 : r.temperatureC,
        relativeHumidity: r.where === 'crawl' ? 0.5 : r.relativeHumidity - 0.02,
      })),
      surface: readings.surface.map((r) => ({
        ...r,
        ...signed,
        id: `n-${r.id}`,
        temperatureC: r.temperatureC + 3,
      })),
      wood: readings.wood
        .filter((r) => r.member !== 'sill')
        .map((r, i) => ({
          ...r,
          ...signed,
          id: `n-${r.id}`,
          shown: i === 0 ? r.shown + 0.03 : r.shown - 0.04,
          place: { at: { xM: r.place.at!.xM + 0.3, yM: r.place.at!.yM } },
        })),
      observations: readings.observations
        .filter((o) => o.quantity !== 'moldGrowthPresent')
        .map((o) => (o.quantity === 'dischargeCheckValve' ? { ...o, ...signed, value: true } : o)),
    },
    media: {
      ...job.media,
      photos: job.media.photos.map((p) => ({ ...p, takenAt: p.takenAt.replace('2026', '2027') })),
    },
    findings: [
      { ...job.findings[0], ...signed },
      {
        id: 'late',
        defect: 'open-vent',
        title: 'One vent loose again',
        place: { on: { kind: 'vent' as const, id: 'vb2' } },
        photoIds: [],
        observationIds: [],
        ...signed,
      },
    ],
    acceptance: [
      ...job.acceptance,
      {
        id: 'ac-all-piers',
        criterion: 'LIN-08a',
        title: 'Every pier wrapped',
        claimed: true,
        photoIds: [],
        when: '2026-10-02T12:00:00-04:00',
        who: 'Crew of October',
      },
      {
        id: 'ac-dry',
        criterion: 'AIR-99',
        title: 'Left dry',
        claimed: true,
        photoIds: [],
        when: '2026-10-02T12:00:00-04:00',
        who: 'Crew of October',
      },
    ],
  } satisfies JobInput;
  const read = readJob(after);
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
  if (!isSurveyed(read.job)) throw new Error('a job without walls');
  return read.job;
}
