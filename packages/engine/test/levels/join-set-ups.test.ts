import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { joinSetUps } from '../../src/levels/join-set-ups.ts';
import type { RodReading } from '../../src/levels/level-survey.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';

const readings = (taken: Readonly<Record<string, number>>): { readings: RodReading[] } => ({
  readings: Object.entries(taken).map(([pointId, readingM]) => ({ pointId, readingM })),
});
const heights = (survey: ReturnType<typeof joinSetUps>) =>
  Object.fromEntries(survey.points.map((point) => [point.pointId, point.heightM]));

describe('joining set-ups', () => {
  test('one set-up: heights from its first point, the error is that of a reading', () => {
    const survey = joinSetUps({ setUps: [readings({ sump: 1.5, a: 1.4, b: 1.25 })] });
    expect(survey.points.map((point) => point.pointId)).toEqual(['sump', 'a', 'b']);
    expect(heights(survey)).toEqual({
      sump: 0,
      a: expect.closeTo(0.1, 12),
      b: expect.closeTo(0.25, 12),
    });
    expect(survey).toMatchObject({
      spreadM: null,
      sigmaFrom: 'reading-error',
      sigmaM: 0.0015875,
      joins: [],
      issues: [],
    });
  });

  test('a known point gives heights above it', () => {
    const survey = joinSetUps({
      setUps: [readings({ a: 1.4, bench: 1.1 })],
      datum: { pointId: 'bench', heightM: 30 },
    });
    expect(heights(survey)).toEqual({ a: expect.closeTo(29.7, 12), bench: 30 });
  });

  test('an upside-down rod reads a joist above the plane', () => {
    const survey = joinSetUps({
      setUps: [
        {
          readings: [
            { pointId: 'ground', readingM: 0.7 },
            { pointId: 'joist', readingM: 0.35, rod: 'inverted' },
          ],
        },
      ],
    });
    expect(heights(survey).joist).toBeCloseTo(1.05, 12);
  });

  test('a later set-up is shifted by the mean difference; the spread becomes the error', () => {
    const survey = joinSetUps({
      setUps: [
        readings({ a: 1.5, b: 1.4, c: 1.2 }),
        // Instrument 0.300, 0.306 and 0.294 m higher as seen from a, b and c: mean 0.300, spread 0.006.
        readings({ a: 1.8, b: 1.706, c: 1.494, d: 2.0 }),
      ],
    });
    expect(survey.joins).toEqual([
      {
        setUpIndex: 1,
        sharedPointIds: ['a', 'b', 'c'],
        shiftM: expect.closeTo(0.3, 12),
        spreadM: expect.closeTo(0.006, 12),
      },
    ]);
    expect(survey.sigmaM).toBeCloseTo(0.006, 12);
    expect(survey.sigmaFrom).toBe('spread');
    // a is at −1.5 in both; d lies 0.2 m below it, b is the mean of 0.1 and 0.094 above it.
    expect(heights(survey).d).toBeCloseTo(-0.2, 12);
    expect(heights(survey).b).toBeCloseTo(0.097, 12);
    expect(survey.points.map((point) => point.readingCount)).toEqual([2, 2, 2, 1]);
  });

  test('shared points that agree by chance do not make an error smaller than a reading', () => {
    const survey = joinSetUps({
      setUps: [readings({ a: 1.5, b: 1.4 }), readings({ a: 1.75, b: 1.65, c: 1.1 })],
    });
    expect(survey.spreadM).toBeCloseTo(0, 12);
    expect(survey).toMatchObject({ sigmaFrom: 'reading-error', sigmaM: 0.0015875 });
  });

  test('one shared point joins, but says nothing about the error', () => {
    const survey = joinSetUps({
      setUps: [readings({ a: 1.5 }), readings({ a: 1.7, b: 1.6 })],
      readingErrorM: 0.002,
    });
    expect(survey.joins[0]!.spreadM).toBeNull();
    expect(survey).toMatchObject({ spreadM: null, sigmaM: 0.002 });
  });

  test('repeated readings of one set-up count for the error', () => {
    const survey = joinSetUps({
      setUps: [
        {
          readings: [
            { pointId: 'a', readingM: 1.5 },
            { pointId: 'b', readingM: 1.3 },
            { pointId: 'a', readingM: 1.508 },
          ],
        },
      ],
    });
    // Two readings 8 mm apart: standard deviation 8/√2 mm.
    expect(survey.spreadM).toBeCloseTo(0.008 / Math.SQRT2, 12);
    expect(heights(survey).b).toBeCloseTo(1.504 - 1.3, 12);
  });

  test('set-ups joined through one that comes later in the list', () => {
    const survey = joinSetUps({
      setUps: [readings({ a: 1.5 }), readings({ c: 1.1, d: 0.9 }), readings({ a: 2.0, c: 1.8 })],
    });
    expect(survey.joins.map((join) => join.setUpIndex)).toEqual([2, 1]);
    expect(heights(survey).d).toBeCloseTo(0.4, 12);
    expect(survey.issues).toEqual([]);
  });

  test('a set-up without a shared point is left out and said', () => {
    const survey = joinSetUps({ setUps: [readings({ a: 1.5 }), readings({ z: 1.1 })] });
    expect(survey.points.map((point) => point.pointId)).toEqual(['a']);
    expect(survey.issues).toMatchObject([{ code: 'no-shared-point', path: 'setUps[1]' }]);
  });

  test('a datum that was not read is an issue', () => {
    const survey = joinSetUps({
      setUps: [readings({ a: 1.5, b: 1.2 })],
      datum: { pointId: 'bench', heightM: 10 },
    });
    expect(survey.issues).toMatchObject([{ code: 'datum-not-read', found: 'bench' }]);
    expect(heights(survey).a).toBe(0);
  });

  test('a misread shared point is noticed', () => {
    const agree = { a: 1.7, b: 1.6, c: 1.4 };
    const first = readings({ a: 1.5, b: 1.4, c: 1.2 });
    const codes = (c: number) =>
      joinSetUps({ setUps: [first, readings({ ...agree, c })] }).notices.map((notice) => notice.code);
    expect(codes(1.4 + 4 * 0.0015875 - 1e-6)).toEqual([]);
    expect(codes(1.4 + 4 * 0.0015875 + 1e-6)).toEqual(['set-ups-disagree']);
  });

  test('nothing read, nothing leveled', () => {
    expect(joinSetUps({ setUps: [] }).points).toEqual([]);
    expect(joinSetUps({ setUps: [{ readings: [] }, readings({ a: 1 })] }).points).toHaveLength(1);
  });

  test('a reading that is none is refused, naming it', () => {
    const bad = { setUps: [readings({ a: 1.5 }), readings({ a: 1.4, b: Number.NaN })] };
    expect(() => joinSetUps(bad)).toThrow(EngineError);
    expect(() => joinSetUps(bad)).toThrow('set-up 2, reading 2 (m) must be a number');
  });

  test('heights come back whatever the instrument heights, when readings carry no error', () => {
    const ground = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 4, maxLength: 12 });
    const instruments = fc.array(fc.double({ min: 2, max: 5, noNaN: true }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(ground, instruments, (z, planes) => {
        // Each set-up reads a window of the points; windows overlap by at least one.
        const span = Math.ceil(z.length / planes.length) + 1;
        const setUps = planes.map((plane, k) => ({
          readings: z.flatMap((height, i) =>
            i >= k * (span - 1) && i < k * (span - 1) + span
              ? [{ pointId: `p${i}`, readingM: plane - height }]
              : [],
          ),
        }));
        for (const { pointId, heightM } of joinSetUps({ setUps }).points) {
          expect(Math.abs(heightM - (z[Number(pointId.slice(1))]! - z[0]!))).toBeLessThan(1e-12);
        }
      }),
    );
  });
});
