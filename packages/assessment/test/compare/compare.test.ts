import type { Job } from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { assess, compareSurveys, JobError } from '../../src/index.ts';
import { demoJob } from '../season/jobs.ts';
import { afterRepairs } from './after-repairs.ts';

const survey = (job: Job) => ({ job, assessment: assess(job, undefined, { season: 'none' }) });
const before = survey(demoJob('doubted-liner'));
const after = survey(afterRepairs());
const comparison = compareSurveys(before, after);

describe('what changed between two surveys', () => {
  const item = (id: string) => comparison.items.find((i) => i.afterId === id || i.beforeId === id);

  test('every thing that is not as it was, field by field, and no other', () => {
    expect(item('pa6')).toMatchObject({
      kind: 'pier',
      name: 'pier 6',
      change: 'changed',
      fields: [
        { field: 'wrapHeightM', before: 0, after: 0.2032 },
        { field: 'wrapSealed', before: false, after: true },
      ],
      says: 'pier 6: wrap height 0.00 m, now 0.20 m; wrap sealed no, now yes.',
    });
    // Where nobody had noted it, that is said.
    expect(item('pb7')?.says).toBe('pier 14: wrap sealed not noted, now yes.');
    expect(item('pa7')).toBeUndefined();
    expect(item('pa1')).toBeUndefined();
    expect(item('vf1')?.says).toBe('vent 1: state loose board, now sealed.');
    expect(item('vb2')).toBeUndefined();
    expect(item('far-corner')?.fields).toEqual([
      { field: 'ground.cover', before: 'bare-earth', after: 'liner' },
      { field: 'ground.surface', before: 'dark-damp', after: 'average' },
    ]);
    expect(item('dh')?.says).toBe('dehumidifier: facing 270°, now 180°.');
  });

  test('what is gone and what is new', () => {
    expect(item('ob1')).toMatchObject({ change: 'gone', says: 'No longer drawn: Old batts and cans.' });
    expect(item('fan')).toMatchObject({ change: 'new', says: 'Drawn now: circulating fan.' });
  });

  test('a thing that was drawn anew is the one at its place', () => {
    expect(item('se9')).toMatchObject({ beforeId: 'se1', change: 'changed' });
    expect(item('se9')?.fields.map((f) => f.field)).toEqual(['tapedM', 'gapM']);
  });

  test('nothing where nothing changed', () => {
    const same = compareSurveys(before, before);
    expect(same.items).toEqual([]);
    expect(same.criteria).toEqual([]);
    expect(same.findings.every((f) => f.turn === 'still')).toBe(true);
    expect(same.readings.every((r) => r.turn === 'same')).toBe(true);
    expect(same.readings).toHaveLength(before.assessment.readings.length);
  });
});

describe('readings side by side', () => {
  const pair = (id: string) => comparison.readings.find((r) => r.beforeId === id);

  test('are of one kind and one place', () => {
    for (const r of comparison.readings) {
      expect(r.afterId).toBe(`n-${r.beforeId}`);
      if (r.apartM !== undefined) expect(r.apartM).toBeLessThanOrEqual(1);
    }
    expect(pair('wd2')?.apartM).toBeCloseTo(0.3, 9);
    // The sill was not read again.
    expect(comparison.unpaired).toEqual({ before: ['wd8'], after: [] });
  });

  test('tell drier air from warmer air', () => {
    const air = pair('air-3');
    const was = before.assessment.readings.find((r) => r.id === 'air-3')!.figures;
    const humidity = air?.figures.find((f) => f.figure === 'relativeHumidity');
    expect(humidity).toMatchObject({ before: 0.765, after: 0.5 });
    expect(humidity?.difference).toBeCloseTo(-0.265, 9);
    expect(air?.turn).toBe('better');
    expect(air?.means).toContain(`${(1000 * was.humidityRatio).toFixed(1)} g of water per kg`);
    expect(air?.means).not.toContain('by its temperature alone');
    // Air of the same water, heated by 6 K, is drier in percent only.
    const warm = afterRepairs();
    const [first] = warm.readings.air.filter((r) => r.where === 'crawl');
    first.temperatureC = 29.8;
    first.relativeHumidity = 0.42;
    const heated = compareSurveys(before, survey(warm)).readings.find((r) => r.afterId === first.id);
    expect(heated).toMatchObject({ turn: 'better' });
    expect(heated?.means).toContain('by its temperature alone: it holds no less water');
  });

  test('a wetter joist is worse, the others drier, each corrected', () => {
    expect(pair('wd1')).toMatchObject({ turn: 'worse' });
    expect(pair('wd1')?.means).toMatch(/ % now, corrected: wetter\./);
    expect(pair('wd4')).toMatchObject({ turn: 'better' });
    expect(pair('wd4')?.means).toMatch(/drier\. It was to be watched and is dry enough\./);
  });

  test('a surface is held against the dew point, not against itself', () => {
    expect(pair('sf-2')).toMatchObject({ turn: 'better' });
    expect(pair('sf-2')?.means).toMatch(
      /K below the dew point and is .* K above the dew point now|K above the dew point and is/,
    );
  });

  test('what lies within the doubt of the instruments is no change', () => {
    const close = { ...before.job, readings: structuredClone(before.job.readings) };
    close.readings.air.forEach((r, i) => {
      r.relativeHumidity += i % 2 === 0 ? 0.03 : -0.03;
    });
    close.readings.wood.forEach((r) => {
      r.shown += 0.009;
    });
    const { readings } = compareSurveys(before, survey(close));
    for (const r of readings.filter((x) => x.kind !== 'surface')) expect(r.turn, r.beforeId).toBe('same');
    close.readings.air.forEach((r, i) => {
      r.relativeHumidity += i % 2 === 0 ? 0.01 : -0.01;
    });
    const turned = compareSurveys(before, survey(close)).readings.filter((r) => r.turn !== 'same');
    expect(turned.filter((r) => r.kind === 'air').length).toBe(
      close.readings.air.filter((r) => r.where === 'crawl').length,
    );
  });

  test('farther apart than asked for they have no partner', () => {
    const strict = compareSurveys(before, after, { withinM: 0.2 });
    expect(strict.readings.filter((r) => r.kind === 'wood')).toEqual([]);
    expect(strict.unpaired.before.filter((id) => id.startsWith('wd'))).toHaveLength(8);
  });
});

describe('criteria that turned', () => {
  const turn = (id: string) => comparison.criteria.find((c) => c.id === id)?.turn;

  test('what was mended, and what still is not met', () => {
    for (const c of comparison.criteria.filter((x) => x.turn === 'mended')) {
      expect(before.assessment.criteria.find((x) => x.id === c.id)?.verdict).toBe('not-met');
      expect(after.assessment.criteria.find((x) => x.id === c.id)?.verdict).toBe('met');
    }
    expect(comparison.criteria.filter((c) => c.turn === 'mended').map((c) => c.title)).toEqual([
      'Check valve on the discharge',
      'Check valve on the discharge, plumbing chapter',
    ]);
    expect(comparison.stillNotMet).toContain('LIN-08a');
    expect(turn('LIN-08a')).toBeUndefined();
  });

  test('what nobody measured again is no longer shown, never broken', () => {
    const lost = comparison.criteria.filter((c) => c.turn === 'no-longer-shown');
    expect(lost.length).toBeGreaterThan(0);
    for (const c of lost) expect(c.after).toBe('not-shown');
    const silent = {
      ...afterRepairs(),
      readings: { ...afterRepairs().readings, observations: [], wood: [] },
    };
    const { criteria } = compareSurveys(before, survey(silent));
    for (const c of criteria.filter((x) => x.turn === 'broken' || x.turn === 'now-not-met')) {
      expect(c.after, c.id).toBe('not-met');
    }
  });
});

describe('findings', () => {
  const finding = (id: string) => comparison.findings.find((f) => f.beforeId === id || f.afterId === id);

  test('found again, found now, or gone where a later picture shows the place', () => {
    expect(finding('f1')).toMatchObject({ turn: 'still', beforeId: 'f1', afterId: 'f1' });
    expect(finding('late')).toMatchObject({ turn: 'new' });
    expect(finding('f8')).toMatchObject({ turn: 'gone' });
    expect(finding('f8')?.says).toContain('a later picture shows the place');
  });

  test('not gone where nobody looked', () => {
    const blind = { ...afterRepairs(), media: { photos: [], clips: [], audio: [] } };
    const { findings, headline } = compareSurveys(before, survey(blind));
    expect(findings.filter((f) => f.turn === 'gone')).toEqual([]);
    expect(findings.filter((f) => f.turn === 'unseen').length).toBe(before.job.findings.length - 1);
    expect(headline).toContain('neither found again nor looked at');
  });
});

describe('what was claimed', () => {
  const claim = (id: string) => comparison.claims.find((c) => c.id === id);

  test('and is not, by its criterion', () => {
    expect(claim('ac-all-piers')).toMatchObject({
      state: 'is-not',
      criterion: 'LIN-08a',
      who: 'Crew of October',
    });
    expect(comparison.headline).toContain('Claimed as done and not so: Every pier wrapped.');
  });

  test('and holds, judged on the things that it names and no others', () => {
    // Nine piers were named; the tenth that lacks its wrap is not among them.
    expect(claim('ac-piers')).toMatchObject({ state: 'holds', criterion: 'LIN-08a' });
    const torn = afterRepairs();
    const pier = torn.plan.piers.find((p) => p.id === 'pb7')!;
    pier.wrapHeightM = 0.05;
    const again = compareSurveys(before, survey(torn)).claims.find((c) => c.id === 'ac-piers');
    expect(again).toMatchObject({ state: 'is-not' });
    expect(again?.says).toMatch(
      /^Claimed of the \d+ things that it names, and of no others, and it is not so: /,
    );
  });

  test('and is shown by nothing', () => {
    expect(claim('ac-dry')).toMatchObject({ state: 'not-shown' });
    expect(claim('ac-dry')?.criterion).toBeUndefined();
  });
});

describe('what a reader must know', () => {
  test('the weather, where outdoor air differs or was not read', () => {
    const humid = afterRepairs();
    const outdoor = humid.readings.air.find((r) => r.where === 'outdoor')!;
    outdoor.relativeHumidity = 0.4;
    const { notices } = compareSurveys(before, survey(humid));
    expect(notices.find((n) => n.code === 'weather')?.message).toContain(
      'part of the difference is the weather',
    );
    const indoors = afterRepairs();
    indoors.readings.air = indoors.readings.air.filter((r) => r.where !== 'outdoor');
    const unread = compareSurveys(before, survey(indoors)).notices;
    expect(unread.find((n) => n.code === 'weather')?.message).toContain('not read at both visits');
  });

  test('another floor, and surveys the wrong way round', () => {
    const other = compareSurveys(before, survey(demoJob('sound-closed')));
    expect(other.notices.map((n) => n.code)).toContain('other-floor');
    expect(compareSurveys(after, before).notices.map((n) => n.code)).toContain('wrong-order');
    expect(comparison.notices.map((n) => n.code)).not.toContain('wrong-order');
  });

  test('a job without walls cannot be compared', () => {
    const { outline: _, ...plan } = before.job.plan;
    expect(() => compareSurveys({ ...before, job: { ...before.job, plan } }, after)).toThrow(JobError);
  });

  test('the same input gives the same comparison', () => {
    expect(JSON.stringify(compareSurveys(before, after))).toBe(JSON.stringify(comparison));
  });
});
