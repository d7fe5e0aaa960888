import { describe, expect, test } from 'vitest';
import {
  formatFeetInches,
  formatMetric,
  metersFromNanometers,
  nanometersFromMeters,
} from '../../src/units/index.ts';

describe('feet, inches and fractions', () => {
  test.each<[number, number, string]>([
    [3.8227, 16, `12' 6 1/2"`],
    [3.8227, 1, `12' 7"`],
    [3.81, 16, `12' 6"`],
    [0.3048, 16, `1' 0"`],
    [0.3047, 16, `1' 0"`],
    [0.303, 16, `11 15/16"`],
    [0.0127, 16, `1/2"`],
    [0, 16, '0"'],
    [0.0001, 16, '0"'],
    [-0.0001, 16, '0"'],
    [-0.0762, 16, '-3"'],
    [0.000396875, 64, '1/64"'],
    [0.0015875, 64, '1/16"'],
    [1.8256, 2, `6' 0"`],
    [3.6576 + 0.0047625, 8, `12' 1/4"`],
  ])('%d m to 1/%d in is %s', (meters, denominator, expected) => {
    expect(formatFeetInches(meters, { denominator })).toBe(expected);
  });

  test('sixteenths unless asked otherwise', () => {
    expect(formatFeetInches(1 + 0.0015875)).toBe(`3' 3 7/16"`);
  });

  test('refuses what no tape has', () => {
    expect(() => formatFeetInches(2, { denominator: 10 })).toThrow(
      'a tape is read to 1, 2, 4, 8, 16, 32 or 64 parts of an inch; got 10',
    );
    expect(() => formatFeetInches(Number.NaN)).toThrow('length in m must be a number; got NaN');
    expect(() => formatMetric(Number.POSITIVE_INFINITY)).toThrow(
      'length in m must be a number; got Infinity',
    );
  });
});

describe('metric lengths', () => {
  test.each<[number, string]>([
    [3.8227, '3.823 m'],
    [1, '1.000 m'],
    [0.9996, '1.000 m'],
    [0.9994, '999 mm'],
    [0.1651, '165 mm'],
    [0, '0 mm'],
    [-0.0001, '0 mm'],
    [-0.02, '-20 mm'],
    [-2.5, '-2.500 m'],
  ])('%d m', (meters, expected) => {
    expect(formatMetric(meters)).toBe(expected);
  });

  test('nanometers', () => {
    expect(metersFromNanometers(396_875)).toBe(0.000396875);
    expect(nanometersFromMeters(3.81)).toBe(3_810_000_000);
    expect(nanometersFromMeters(1.0000000006)).toBe(1_000_000_001);
  });
});
