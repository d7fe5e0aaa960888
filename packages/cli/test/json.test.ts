import { assess } from '@undercroft/assessment';
import { DEMO_JOBS, type JobInput, readJob } from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { assessmentJson, jsonText } from '../src/json.ts';

describe('jsonText', () => {
  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    '%d is refused by its name, not turned into null',
    (bad) => {
      expect(() => jsonText({ paths: [{ kgPerDay: bad }] })).toThrow(
        `"kgPerDay" is ${bad}, which JSON cannot hold`,
      );
    },
  );

  test('plain data comes back as it was', () => {
    const data = { a: [1.5, -2, 0], b: 'x', c: true };
    expect(JSON.parse(jsonText(data))).toEqual(data);
  });
});

describe('assessmentJson', () => {
  test('walls that close exactly have no precision, and nothing else is missing', () => {
    const { job } = DEMO_JOBS[0];
    const side = { nm: 8_000_000_000 };
    const outline: JobInput['plan']['outline'] = {
      kind: 'traverse',
      firstAzimuthDeg: 90,
      legs: ['south', 'east', 'north', 'west'].map((id) => ({ id, length: side, turnDeg: -90 })),
    };
    const square = readJob({
      ...job,
      plan: { northDeg: 0, ground: { cover: 'bare-earth' }, outline },
    });
    if (!square.ok) throw new Error(JSON.stringify(square.issues));
    const assessment = assess(square.job, undefined, { season: 'none' });
    const read = JSON.parse(assessmentJson(assessment));
    expect(read.geometry.closure).not.toHaveProperty('precision');
    expect(read.geometry.closure.misclosureM).toBe(0);
    expect(read.geometry.floorAreaM2).toBeCloseTo(64, 9);
  });
});
