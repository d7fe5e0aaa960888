import { DEMO_JOBS, readJob } from '@undercroft/record';
import { expect, it } from 'vitest';
import { assess, meaningOf, valueAgainstCriteria } from '../src/index.ts';

function demoJob(id: string) {
  const read = readJob(DEMO_JOBS.find((one) => one.job.id === id)?.job);
  if (!read.ok) throw new Error(`the demo job ${id} is not read`);
  return read.job;
}

const bare = readJob({
  format: 'undercroft-job',
  version: 2,
  id: 'bare',
  header: { title: 'No walls yet', elevationM: 210 },
  plan: {},
});
if (!bare.ok) throw new Error('the bare job is not read');

it('says of a reading that is typed what the assessment says once it is in the record', () => {
  const job = demoJob('demo-neglected-vented');
  const { readings } = assess(job, undefined, { season: 'none' });
  const of = (kind: 'air' | 'surface' | 'wood') =>
    readings
      .filter((r) => r.kind === kind)
      .map((r) => ({ means: r.means, figures: r.figures, state: r.state }));
  const drafts = [
    ...job.readings.air.map((reading) => ({ kind: 'air', reading }) as const),
    ...job.readings.surface.map((reading) => ({ kind: 'surface', reading }) as const),
    ...job.readings.wood.map((reading) => ({ kind: 'wood', reading }) as const),
  ];
  expect(drafts.length).toBeGreaterThan(5);
  // Outdoor air is told against the mean of the space, which the record holds either way.
  expect(
    drafts.map((draft) => {
      const { means, figures, state } = meaningOf(job, draft);
      return { means, figures, state };
    }),
  ).toEqual([...of('air'), ...of('surface'), ...of('wood')]);
});

it('needs no walls, and corrects wood step by step', () => {
  const meaning = meaningOf(bare.job, {
    kind: 'wood',
    reading: {
      id: 'typed',
      member: 'joist',
      place: {},
      shown: 0.18,
      meterScale: 'douglas-fir',
      calibrationC: 21.1,
      meterCorrects: 'nothing',
      species: 'southern-pine',
      woodTemperatureC: 10,
      when: '2031-05-14T09:20:00-04:00',
      who: 'S',
    },
  });
  const { moistureContent, temperatureChange = 0, speciesChange = 0 } = meaning.figures;
  // Cold wood reads too dry: 0.5 % for each 10 °F (Wood Handbook FPL-GTR-282), here 11.1 K are 20 °F.
  expect(temperatureChange).toBeCloseTo(0.01, 3);
  expect(0.18 + temperatureChange + speciesChange).toBeCloseTo(moistureContent, 12);
});

it('holds a value against what code and practice ask, what binds most first', () => {
  const job = demoJob('demo-doubted-liner');
  const rows = valueAgainstCriteria(job, 'seamLapWidthM', 0.01);
  expect(rows.length).toBeGreaterThan(1);
  expect(rows.every((row) => row.verdict === 'not-met')).toBe(true);
  const order = ['code', 'standard', 'guide', 'practice'];
  const places = rows.map((row) => order.indexOf(row.kind));
  expect(places).toEqual([...places].sort((a, b) => a - b));
  const wide = valueAgainstCriteria(job, 'seamLapWidthM', 0.6);
  expect(wide.every((row) => row.verdict === 'met')).toBe(true);
  // A value that cannot be real is not held against anything.
  expect(valueAgainstCriteria(job, 'seamLapWidthM', 6_000)).toEqual([]);
});
