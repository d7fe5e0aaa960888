import type { Job } from '@undercroft/record';
import { readJob } from '@undercroft/record';
import { expect, it } from 'vitest';
import { fallOfSpots, levelSheet } from '../src/levels.ts';

const IN = 0.0254;
const when = '2031-05-14T09:20:00-04:00';

function jobWith(readings: unknown): Job {
  const read = readJob({
    format: 'undercroft-job',
    version: 2,
    id: 'levels-job',
    header: { title: 'Levels' },
    house: {},
    plan: {},
    readings,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.job;
}

const level = (id: string, setupId: string, xM: number, readingM: number, on = 'floor') => ({
  id,
  setupId,
  at: { xM, yM: 1 },
  readingM,
  on,
  when,
  who: 'S',
});

it('carries the height of the instrument from set-up to set-up over a shared point', () => {
  // Worked by hand: line of sight 48 in over the floor, then a second set-up that reads the same stone 10 in higher.
  const sheet = levelSheet(
    jobWith({
      levelSetups: [
        { id: 'a', method: 'rod', instrumentHeightM: 48 * IN },
        { id: 'b', method: 'laser-plane' },
      ],
      levels: [
        level('near', 'a', 0, 48 * IN),
        level('stone', 'a', 3, 50 * IN),
        level('stone-again', 'b', 3.02, 40 * IN),
        level('far', 'b', 6, 43 * IN),
        level('joist', 'b', 6, -20 * IN, 'joist'),
      ],
    }),
  );
  expect(sheet.datum).toBe('floor');
  const heights = Object.fromEntries(sheet.spots.map((s) => [s.id, s.heightM / IN]));
  expect(heights.near).toBeCloseTo(0, 9);
  expect(heights.stone).toBeCloseTo(-2, 9);
  expect(heights.far).toBeCloseTo(-5, 9);
  expect(heights.joist).toBeCloseTo(58, 9);
  expect(sheet.setups.map((s) => (s.instrumentHeightM ?? Number.NaN) / IN)).toEqual([
    expect.closeTo(48, 9),
    expect.closeTo(38, 9),
  ]);
  expect(sheet.looseSetupIds).toEqual([]);
});

it('tells the fall between two points, and names a set-up that hangs in the air', () => {
  const sheet = levelSheet(
    jobWith({
      levelSetups: [
        { id: 'a', method: 'rod' },
        { id: 'lost', method: 'rod' },
      ],
      levels: [
        level('up', 'a', 0, 30 * IN, 'drain-invert'),
        level('down', 'a', 96 * IN, 31 * IN, 'drain-invert'),
        level('elsewhere', 'lost', 9, 30 * IN),
      ],
    }),
  );
  expect(sheet.datum).toBe('first-point');
  expect(sheet.looseSetupIds).toEqual(['lost']);
  expect(sheet.spots.map((s) => s.id)).toEqual(['up', 'down']);
  const fall = fallOfSpots(sheet, 'up', 'down');
  // 1 in in 8 ft is 1/8 in per foot: just what a drain of 4 in wants.
  expect((fall?.fallM ?? 0) / IN).toBeCloseTo(1, 9);
  expect(fall?.lengthM).toBeCloseTo(96 * IN, 9);
  expect((fall?.requiredFallM ?? 0) / IN).toBeCloseTo(1, 9);
  expect(fallOfSpots(sheet, 'down', 'up')?.verdict).toBe('back-fall');
  expect(fallOfSpots(sheet, 'up', 'up')).toBeNull();
  expect(fallOfSpots(sheet, 'up', 'elsewhere')).toBeNull();
});
