import { describe, expect, test } from 'vitest';
import { moldClasses, moldParameters } from '../../src/mold/classes.ts';
import { steadyHumidityForMoldIndex, weeksToMoldIndex } from '../../src/mold/constant-air.ts';
import { meetsMoldLimit } from '../../src/mold/criterion.ts';
import { criticalRelativeHumidity } from '../../src/mold/critical-humidity.ts';
import { largestMoldIndex } from '../../src/mold/growth.ts';
import { moldIndexMeaning, moldScales } from '../../src/mold/scale.ts';
import { moldIndexOfSeries } from '../../src/mold/series.ts';
import { cleanSurface, stepMoldIndex } from '../../src/mold/step.ts';
import { thirtyDayCriterion } from '../../src/mold/thirty-day.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';

const sensitive = moldParameters('sensitive');

describe('limits of growth', () => {
  test.each([
    [0, false],
    [0.5, true],
    [49.9, true],
    [50, false],
  ])('saturated air at %d °C', (t, grows) => {
    expect(largestMoldIndex(t, 1, sensitive) > 0).toBe(grows);
    expect(criticalRelativeHumidity(t, sensitive) !== null).toBe(grows);
    expect(steadyHumidityForMoldIndex(t, sensitive) !== null).toBe(grows);
  });

  test('a hair above freezing the curve rounds to saturation and nothing grows', () => {
    expect(largestMoldIndex(1e-20, 1, sensitive)).toBe(0);
  });

  test('the two forms of the critical humidity differ where the curve runs near the floor, by at most 0.2 % RH', () => {
    const held = moldParameters('sensitive', { criticalHumidity: 'never-below-floor' });
    let largest = 0;
    for (let t = 0.25; t < 50; t += 0.25) {
      const gap = criticalRelativeHumidity(t, held)! - criticalRelativeHumidity(t, sensitive)!;
      expect(gap).toBeGreaterThanOrEqual(0);
      largest = Math.max(largest, gap);
    }
    expect(largest).toBeGreaterThan(0.0005);
    expect(largest).toBeLessThan(0.002);
  });

  test('air at the critical humidity stops the decline, air just below does not', () => {
    const at = { index: 1.5, dryHours: 40 };
    stepMoldIndex(at, 25, 0.8, 1, sensitive);
    expect(at).toEqual({ index: 1.5, dryHours: 0 });
    const below = { index: 1.5, dryHours: 40 };
    stepMoldIndex(below, 25, 0.7999, 1, sensitive);
    expect(below.dryHours).toBe(41);
    expect(below.index).toBeLessThan(1.5);
  });
});

describe('stepMoldIndex', () => {
  test('decline: hours 1 to 6, a pause to hour 24, then half as fast', () => {
    const state = { index: 3, dryHours: 0 };
    const original = moldParameters('very-sensitive', { declineFactor: 1 });
    const lost: number[] = [];
    for (let hour = 1; hour <= 26; hour++) {
      const before = state.index;
      stepMoldIndex(state, 15, 0.4, 1, original);
      lost.push(before - state.index);
    }
    const perDay = [...new Set(lost.map((value) => Math.round(24e3 * value)))];
    expect(lost.slice(0, 6).every((value) => Math.abs(24 * value - 0.032) < 1e-9)).toBe(true);
    expect(lost.slice(6, 24).every((value) => value === 0)).toBe(true);
    expect(lost.slice(24).every((value) => Math.abs(24 * value - 0.016) < 1e-9)).toBe(true);
    expect(perDay).toEqual([32, 0, 16]);
  });

  test('ten-minute steps give the decline of hourly ones', () => {
    const hourly = { index: 2, dryHours: 0 };
    const fine = { index: 2, dryHours: 0 };
    for (let i = 0; i < 50; i++) stepMoldIndex(hourly, 11, 0.5, 1, sensitive);
    for (let i = 0; i < 300; i++) stepMoldIndex(fine, 11, 0.5, 1 / 6, sensitive);
    expect(fine.index).toBeCloseTo(hourly.index, 12);
  });

  test('a missing value does not pass for dry air', () => {
    const state = cleanSurface();
    stepMoldIndex(state, 12, Number.NaN, 1, sensitive);
    expect(state.index).toBeNaN();
    stepMoldIndex(state, 12, 0.5, 1, sensitive);
    expect(state.index).toBeNaN();
  });
});

describe('moldIndexOfSeries', () => {
  test('a surface that only dries has its largest index at the start', () => {
    const result = moldIndexOfSeries([14, 13, 12], [0.5, 0.55, 0.6], {
      parameters: sensitive,
      startIndex: 2,
    });
    expect(result.maximumIndex).toBe(2);
    expect(result.hourOfMaximum).toBe(0);
    expect(result.finalIndex).toBeLessThan(2);
    expect('hourly' in result).toBe(false);
  });

  test('the hour of the largest index counts hours, not steps', () => {
    const options = { parameters: sensitive, hoursPerStep: 0.5 };
    expect(moldIndexOfSeries([21, 22, 23, 24], [0.91, 0.92, 0.93, 0.4], options).hourOfMaximum).toBe(1.5);
  });

  test('gaps, percent and uneven series are refused, naming the step', () => {
    const options = { parameters: sensitive };
    expect(() => moldIndexOfSeries([12, 13], [0.7, Number.NaN], options)).toThrow(/step 1: .*got 13 and NaN/);
    expect(() => moldIndexOfSeries([12, 13], [70, 71], options)).toThrow(
      /step 0: .*relative humidity from 0 to 1/,
    );
    expect(() => moldIndexOfSeries([12, 13], [0.7], options)).toThrow(/got 2 and 1/);
    expect(() => moldIndexOfSeries([], [], options)).toThrow(EngineError);
    expect(() => moldIndexOfSeries([12], [0.7], { ...options, hoursPerStep: 0 })).toThrow(/hours per step/);
    expect(() => moldIndexOfSeries([12], [0.7], { ...options, startIndex: 7 })).toThrow(/index at the start/);
  });
});

describe('moldParameters', () => {
  test('overrides reach the result and leave the class alone', () => {
    expect(moldParameters('sensitive', { woodFactor: 0.5 }).woodFactor).toBe(0.5);
    expect(moldClasses.sensitive.parameters.woodFactor).toBe(1);
  });

  test('figures that make no sense are refused by name', () => {
    expect(() => moldParameters('sensitive', { declineFactor: -0.1 })).toThrow(/declineFactor/);
    expect(() => moldParameters('sensitive', { humidityFloor: 80 })).toThrow(/humidityFloor/);
    expect(() => moldParameters('sensitive', { ceilingQuadratic: 4 })).toThrow(/must not fall/);
  });

  test('no growth intensity, no growth', () => {
    const inert = moldParameters('sensitive', { earlyGrowth: 0, lateGrowth: 0 });
    const air = { temperatureC: 22, relativeHumidity: 0.96, parameters: inert, index: 2 };
    expect(weeksToMoldIndex(air).weeks).toBe('never');
  });
});

describe('meetsMoldLimit', () => {
  test.each([
    [2.99, true],
    [3, true],
    [3.0001, false],
  ])('%d', (index, met) => {
    expect(meetsMoldLimit(index)).toBe(met);
  });

  test('a stricter limit', () => {
    expect(meetsMoldLimit(1.2, 1)).toBe(false);
    expect(() => meetsMoldLimit(Number.NaN)).toThrow(EngineError);
  });
});

describe('thirtyDayCriterion (ASHRAE 160-2009)', () => {
  const WINDOW = 720;
  const run = (t: number, h: number, hours = WINDOW) =>
    thirtyDayCriterion(new Float64Array(hours).fill(t), new Float64Array(hours).fill(h));

  test.each([
    [18, 0.7999, true],
    [18, 0.8, false],
    [5, 0.85, false],
    [40, 0.86, false],
    [4.99, 0.87, null],
    [40.01, 0.88, null],
  ])('30 days of %d °C and RH %d', (t, h, met) => {
    expect(run(t, h, WINDOW + 3).met).toBe(met);
  });

  test('one hour short of 30 days is not shown', () => {
    const result = run(18, 0.9, WINDOW - 1);
    expect(result.met).toBeNull();
    expect(result.notices.map((n) => n.code)).toEqual(['series-too-short']);
  });

  test('finds the dampest window', () => {
    const h = Float64Array.from({ length: 2000 }, (_, i) => (i >= 500 && i < 500 + WINDOW ? 0.79 : 0.6));
    const result = thirtyDayCriterion(new Float64Array(2000).fill(16), h);
    expect(result.met).toBe(true);
    expect(result.hourOfLargest).toBe(500 + WINDOW - 1);
    expect(result.largestMeanRelativeHumidity).toBeCloseTo(0.79, 9);
  });

  test('gaps are refused', () => {
    expect(() => thirtyDayCriterion([12, 13], [0.6, Number.NaN])).toThrow(/step 1/);
  });
});

describe('moldIndexMeaning', () => {
  test.each([
    [0, 'no growth'],
    [2.99, 'several local colonies, seen only under a microscope'],
    [3, 'visible on less than 10 % of the surface, or on less than 50 % under a microscope'],
    [6, 'heavy and tight growth on about all of the surface'],
  ])('2010 wording at %d', (index, meaning) => {
    expect(moldIndexMeaning(index)).toBe(meaning);
  });

  test('the 2007 wording differs and is only known from 3 to 5', () => {
    expect(moldIndexMeaning(3.4, '2007')).toBe('visible on 10 to 30 % of the surface');
    expect(moldIndexMeaning(2.4, '2007')).toBeNull();
    expect(moldIndexMeaning(6, '2007')).toBeNull();
    expect(moldScales['2007'].source.id).not.toBe(moldScales['2010'].source.id);
  });
});
