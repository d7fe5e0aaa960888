import { describe, expect, test } from 'vitest';
import { fallBetween, reachFalls, smallestProvableSlope } from '../../src/levels/fall.ts';
import { instrumentHeightM, pointHeightM, relativeHeightsM } from '../../src/levels/instrument.ts';
import {
  EIGHTH_INCH_PER_FOOT,
  leastDrainSlope,
  QUARTER_INCH_PER_FOOT,
  requiredFallM,
  SIXTEENTH_INCH_PER_FOOT,
} from '../../src/levels/required-slope.ts';
import { trappedWater } from '../../src/levels/trapped-water.ts';

const FT = 0.3048;
const IN = 0.0254;

const within = (got: number, expected: number, tolerance: number): void => {
  expect(Math.abs(got - expected), `got ${got}, expected ${expected}`).toBeLessThanOrEqual(tolerance);
};

/** Expected values worked out by hand, apart from this code; where the tolerance is 1e-12 only units round. */
describe('one set-up', () => {
  test('benchmark 100.00, backsight 4.50, foresight 6.25 ft', () => {
    const instrument = instrumentHeightM(100 * FT, 4.5 * FT);
    within(instrument / FT, 104.5, 1e-12);
    within(pointHeightM(instrument, 6.25 * FT) / FT, 98.25, 1e-12);
  });
});

describe('slopes', () => {
  test('1/8 and 1/4 in per foot in percent', () => {
    within(100 * EIGHTH_INCH_PER_FOOT, 1.0417, 1e-4);
    within(100 * QUARTER_INCH_PER_FOOT, 2.0833, 1e-4);
  });

  test('35 ft at 1/8 in per foot falls 4.375 in', () => {
    within(requiredFallM(35 * FT, EIGHTH_INCH_PER_FOOT) / IN, 4.375, 1e-12);
  });

  test('22 ft of condensate drain at 1/8 in per foot falls 2.75 in', () => {
    within(requiredFallM(22 * FT, EIGHTH_INCH_PER_FOOT) / IN, 2.75, 1e-12);
  });

  test('1/16 in of error over 10 ft can prove 0.0737 %', () => {
    within(100 * smallestProvableSlope(IN / 16, 10 * FT), 0.0737, 1e-4);
  });

  // City of Chicago plumbing code Table 18-29-704.1; sizes at, just inside and just outside its lines.
  test.each([
    [1.25, QUARTER_INCH_PER_FOOT],
    [2.5, QUARTER_INCH_PER_FOOT],
    [2.99, QUARTER_INCH_PER_FOOT],
    [3, EIGHTH_INCH_PER_FOOT],
    [4, EIGHTH_INCH_PER_FOOT],
    [6, EIGHTH_INCH_PER_FOOT],
    [7.99, EIGHTH_INCH_PER_FOOT],
    [8, SIXTEENTH_INCH_PER_FOOT],
    [10, SIXTEENTH_INCH_PER_FOOT],
  ])('least slope of %d in pipe', (inches, slope) => {
    expect(leastDrainSlope(inches * IN)).toBe(slope);
  });
});

describe('drain line under a laser: 18.00, 19.25, 20.50, 20.25, 22.00 in at 0 to 40 ft', () => {
  const heights = relativeHeightsM([18, 19.25, 20.5, 20.25, 22].map((reading) => reading * IN));
  const line = heights.map((heightM, i) => ({ stationM: i * 10 * FT, heightM }));
  const falls = reachFalls(line, IN / 16, EIGHTH_INCH_PER_FOOT);

  test('heights from the first reading', () => {
    [0, -1.25, -2.5, -2.25, -4].forEach((expected, i) => {
      within(heights[i]! / IN, expected, 1e-9);
    });
  });

  test.each([
    [0, 1.25, 1.0417],
    [1, 1.25, 1.0417],
    [2, -0.25, -0.2083],
    [3, 1.75, 1.4583],
  ])('reach %d: fall and slope', (i, fall, percent) => {
    within(falls[i]!.fallM / IN, fall, 1e-9);
    within(100 * falls[i]!.slope, percent, 1e-4);
  });

  test('the third reach falls back', () => {
    expect(falls[2]!.verdict).toBe('back-fall');
    expect(falls[3]!.verdict).toBe('ok');
  });

  test('water stands 0.25 in deep at 20 ft, from 18 to 30 ft', () => {
    const water = trappedWater(line);
    within(water.depthsM[2]! / IN, 0.25, 1e-6);
    within(water.deepestM / IN, 0.25, 1e-6);
    within(water.deadLengthM / FT, 12, 1e-6);
    expect(water.pools).toHaveLength(1);
    within(water.pools[0]!.fromM / FT, 18, 1e-6);
    within(water.pools[0]!.toM / FT, 30, 1e-6);
    within(water.pools[0]!.spillHeightM / IN, -2.25, 1e-9);
    expect(water.depthsM.filter((depth) => depth > 0)).toHaveLength(1);
  });
});

test('the error of a fall is the root of two of the error of a height', () => {
  within(fallBetween(1.2, 1.1, 7, 0.003, 0.01).uncertaintyM, 0.004_242_64, 1e-8);
});
