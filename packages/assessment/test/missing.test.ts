import { DEMO_JOBS, readJob } from '@undercroft/record';
import { expect, it } from 'vitest';
import { assess, missingOf } from '../src/index.ts';

const bare = readJob({
  format: 'undercroft-job',
  version: 2,
  id: 'bare',
  header: { title: 'No walls yet' },
  plan: {},
});
if (!bare.ok) throw new Error('the bare job is not read');

it('asks for walls, ground and first readings before anything else', () => {
  expect(missingOf(bare.job, null).map((one) => one.key)).toEqual([
    'walls',
    'ground',
    'reading-air',
    'reading-outdoor-air',
    'reading-wood',
    'reading-surface',
  ]);
});

it.each(DEMO_JOBS)('lists once what $job.id lacks, what tells causes apart first', (demo) => {
  const read = readJob(demo.job);
  if (!read.ok) throw new Error('the demo job is not read');
  const assessment = assess(read.job, undefined, { season: 'none' });
  const wanted = missingOf(read.job, assessment);
  expect(new Set(wanted.map((one) => one.key)).size).toBe(wanted.length);
  const gains = wanted.flatMap((one) => one.for.gainBits ?? []);
  expect(gains).toEqual([...gains].sort((a, b) => b - a));
  const firstWaiting = wanted.findIndex((one) => one.for.gainBits === undefined && one.kind !== 'reading');
  expect(wanted.slice(firstWaiting).every((one) => one.for.gainBits === undefined)).toBe(true);
  const asked = wanted.filter((one) => one.kind === 'answer').map((one) => one.question);
  expect([...asked].sort()).toEqual(assessment.openQuestions.map((one) => one.question).sort());
  // An answer that is given is not asked for again.
  const [question] = assessment.openQuestions;
  const answered = {
    ...read.job,
    readings: {
      ...read.job.readings,
      answers: [
        ...read.job.readings.answers,
        {
          id: 'given',
          question: question.question,
          answer: question.answers.includes('no') ? false : question.answers[0],
          when: '2031-05-14T09:20:00-04:00',
          who: 'S',
        },
      ],
    },
  };
  const after = missingOf(answered, assess(answered, undefined, { season: 'none' }));
  expect(after.map((one) => one.key)).not.toContain(`answer-${question.question}`);
});

it('puts guesses that move the year before what only criteria wait for', () => {
  const read = readJob(DEMO_JOBS[0].job);
  if (!read.ok) throw new Error('the demo job is not read');
  const assessment = assess(read.job, undefined, { season: 'none' });
  const influence = {
    key: 'soilConductivity',
    title: 'Soil',
    low: 1,
    high: 2,
    unit: 'W/(m·K)',
    onHumidity: 0.6,
    onMold: 0.2,
    share: 0.36,
  };
  const season = { chances: { influences: [influence, { ...influence, key: 'weather', share: 0.5 }] } };
  const wanted = missingOf(read.job, {
    ...assessment,
    season: season as unknown as typeof assessment.season,
  });
  const at = wanted.findIndex((one) => one.kind === 'guess');
  expect(wanted.filter((one) => one.kind === 'guess').map((one) => one.key)).toEqual([
    'guess-soilConductivity',
  ]);
  expect(wanted.slice(at + 1).every((one) => one.for.gainBits === undefined)).toBe(true);
  expect(wanted.slice(0, at).some((one) => one.kind === 'answer')).toBe(false);
});
