import { describe, expect, test } from 'vitest';
import { convert } from '../../src/units/index.ts';

function expectNear(actual: number, expected: number, tolerance: number): void {
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);
}

/**
 * Half a unit of the last printed digit, in every row: the factors are definitions or follow from them.
 * NIST SP 811 (2008) Appendix B values are from memory.
 */
const NIST = 'NIST SP 811, from memory';
const DEFINITION = 'definition';
const WATER = 'computed from 1 ft³ = 1728 in³ and 1 gal = 231 in³';
const rows: readonly [number, string, number, string, number, string][] = [
  [1, 'ft3', 7.48052, 'gal', 5e-6, WATER],
  [1, 'ft3/s', 448.831, 'gpm', 5e-4, WATER],
  [1, 'gpm', 0.0630902, 'L/s', 5e-8, WATER],
  [1, 'gpm', 0.227125, 'm3/h', 5e-7, WATER],
  [1, 'in/h', 7.0556, 'um/s', 1e-4, 'computed; a soil-survey glossary prints 7.0572, 0.02 % more'],
  [1, 'um/s', 0.14173, 'in/h', 1e-5, 'computed; the same glossary prints 0.1417'],
  [1, 'inH2O', 248.8, 'Pa', 0.1, 'ASHRAE, water at 60 °F, from memory'],
  [1, 'pint/day', 0.47318, 'L/day', 5e-6, WATER],
  [24, 'pint/day', 0.0052083 * 24 * 24, 'gal/day', 5e-7 * 576, 'computed: 1 pint/day is 0.0052083 gal/h'],
  [
    1,
    'perm',
    57.2135,
    'ng/(s m2 Pa)',
    5e-5,
    'ASTM E96 factor, computed from the grain, foot and inch of mercury',
  ],
  [1, 'Btu/h', 0.2930711, 'W', 5e-8, NIST],
  [1, 'psi', 6894.757, 'Pa', 5e-4, NIST],
  [1, 'inHg', 3386.389, 'Pa', 5e-4, NIST],
  [1, 'psf', 47.88026, 'Pa', 5e-6, NIST],
  [1, 'atm', 101_325, 'Pa', 0, NIST],
  [1, 'mbar', 100, 'Pa', 0, NIST],
  [1, 'ft2 F h/Btu', 0.1761102, 'm2 K/W', 5e-8, NIST],
  [1, 'Btu/(h ft2 F)', 5.678263, 'W/(m2 K)', 5e-7, NIST],
  [1, 'Btu in/(h ft2 F)', 0.1442279, 'W/(m K)', 5e-8, NIST],
  [1, 'mph', 0.44704, 'm/s', 1e-15, NIST],
  [1, 'ft/min', 0.00508, 'm/s', 1e-15, NIST],
  [1, 'gal', 3.785412e-3, 'm3', 5e-10, NIST],
  [1, 'pint', 4.731765e-4, 'm3', 5e-11, NIST],
  [1, 'yd3', 0.7645549, 'm3', 5e-8, NIST],
  [1, 'ft2', 0.09290304, 'm2', 1e-15, NIST],
  [1, 'in2', 6.4516, 'cm2', 1e-14, NIST],
  [1, 'cfm', 4.719474e-4, 'm3/s', 5e-11, NIST],
  [1, 'lb', 0.45359237, 'kg', 0, NIST],
  [1, 'oz', 28.34952, 'g', 5e-6, NIST],
  [1, 'gr', 0.06479891, 'g', 1e-15, NIST],
  [1, 'lb/ft2', 4.882428, 'kg/m2', 5e-7, NIST],
  [1, 'lb/ft3', 16.01846, 'kg/m3', 5e-6, NIST],
  [1, 'ft3/lb', 0.06242796, 'm3/kg', 5e-9, NIST],
  [1, 'hp', 745.6999, 'W', 5e-5, NIST],
  [1, 'Btu', 1055.056 / 3.6e6, 'kWh', 1e-9, NIST],
  [1, 'kWh', 3.6, 'MJ', 1e-15, NIST],
  [1, 'pCi/L', 37, 'Bq/m3', 0, NIST],
  [1, 'rad', 57.29578, 'deg', 5e-6, NIST],
  [1, 'mil', 25.4, 'um', 1e-14, DEFINITION],
  [7000, 'gr/lb', 1, 'kg/kg', 0, DEFINITION],
  [1, 'gr/ft3', 2.288352, 'g/m3', 5e-7, 'computed from the grain and the foot'],
  [1, 'kg/h', 24, 'kg/day', 0, DEFINITION],
  [3, 'week', 21, 'day', 0, DEFINITION],
  [0.25, 'in/ft', 2.0833, '%', 5e-5, 'computed: 1/4 in per ft'],
  [0.125, 'in/ft', 1.0417, '%', 5e-5, 'computed: 1/8 in per ft'],
];

describe('conversion factors', () => {
  test.each(rows)('%d %s = %d %s', (value, from, expected, to, tolerance) => {
    expectNear(convert(value, from, to), expected, tolerance);
    const back = convert(expected, to, from);
    expectNear(back, value, (tolerance / expected) * value + 1e-12 * value);
  });

  // Fixed points of the scales, by definition.
  test.each([
    [32, 'F', 0, 'C'],
    [212, 'F', 100, 'C'],
    [-40, 'C', -40, 'F'],
    [0, 'K', -273.15, 'C'],
    [98.6, 'F', 37, 'C'],
    [9, 'F-difference', 5, 'K'],
  ])('%d %s = %d %s', (value, from, expected, to) => {
    expect(convert(value, from, to)).toBeCloseTo(expected, 12);
  });
});

describe('rain on a roof (computed from the same definitions)', () => {
  test('1 in/h on 1 ft² is 0.0103896 gpm, so 96.25 ft² give 1 gpm', () => {
    const flow = convert(1, 'in/h', 'm/s') * convert(1, 'ft2', 'm2');
    expectNear(convert(flow, 'm3/s', 'gpm'), 0.0103896, 5e-8);
    expectNear(convert(flow * 96.25, 'm3/s', 'gpm'), 1, 1e-5);
  });

  test('1 in on 1000 ft² is 623.38 gal', () => {
    expectNear(convert(convert(1, 'in', 'm') * convert(1000, 'ft2', 'm2'), 'm3', 'gal'), 623.38, 0.01);
  });

  test('70 pints a day are 8.75 gal and 33.12 L a day', () => {
    expectNear(convert(70, 'pint/day', 'gal/day'), 8.75, 1e-12);
    expectNear(convert(70, 'pint/day', 'L/day'), 33.12, 5e-3);
  });
});

describe('permeance', () => {
  // Computed from the perm above; sd by the ISO 13788 air value of 2e-10 kg/(m·s·Pa).
  test.each([
    [0.1, 5.72135],
    [1, 57.2135],
    [10, 572.135],
  ])('%d perm', (perm, ng) => {
    expectNear(convert(perm, 'perm', 'ng/(s m2 Pa)'), ng, 1e-5 * ng);
  });
});
