import { describe, expect, test } from 'vitest';
import { type Dimension, formatQuantity, numberWithUnit, parseQuantity } from '../../src/units/index.ts';

function value(text: string, dimension: Dimension): number {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.problem}; ${parsed.hint}`);
  return parsed.value;
}

function refusal(text: string, dimension: Dimension): string {
  const parsed = parseQuantity(text, dimension);
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.value} ${parsed.unit}`);
  return `${parsed.problem}; ${parsed.hint}`;
}

describe('typed quantities', () => {
  test.each<[string, Dimension, number]>([
    ['72F', 'temperature', (40 * 5) / 9],
    ['22C', 'temperature', 22],
    ['22 °C', 'temperature', 22],
    ['-5 °F', 'temperature', (-37 * 5) / 9],
    ['−5C', 'temperature', -5],
    ['300 K', 'temperature', 26.85],
    ['9F', 'temperatureDifference', 5],
    ['65%', 'relativeHumidity', 0.65],
    ['65 % RH', 'relativeHumidity', 0.65],
    ['0.65', 'relativeHumidity', 0.65],
    ['1', 'relativeHumidity', 1],
    ['18%', 'moistureContent', 0.18],
    ['.18', 'moistureContent', 0.18],
    ['25%', 'share', 0.25],
    ['6in', 'length', 0.1524],
    ['12ft6-1/2in', 'length', 3.8227],
    ['12 mil', 'length', 0.0003048],
    ['150 µm', 'length', 0.00015],
    ['2 yd', 'length', 1.8288],
    ['1250 sq ft', 'area', 1250 * 0.09290304],
    ['50cfm', 'flow', (50 * 0.3048 ** 3) / 60],
    ['1/4 in/ft', 'slope', 1 / 48],
    ['1/8"/ft', 'slope', 1 / 96],
    ['1/8 in per ft', 'slope', 1 / 96],
    ['2%', 'slope', 0.02],
    ['R-19', 'thermalResistance', 19 * 0.17611018368],
    ['r19', 'thermalResistance', 19 * 0.17611018368],
    ['19 R', 'thermalResistance', 19 * 0.17611018368],
    ['70 pints/day', 'massFlow', 70 * 0.473176473],
    ['3.5 L/day', 'massFlow', 3.5],
    ['1e-3 kg/s', 'massFlow', 86.4],
    ['4 pCi/L', 'radon', 148],
    ['0.5 ACH', 'airChanges', 0.5],
    ['3 weeks', 'time', 504],
    ['3 weeks', 'weeks', 3],
    ['21 days', 'weeks', 3],
    ['1500', 'resistance', 1500],
    ['300 s/ft', 'resistance', 300 / 0.3048],
    ['1.5', 'dimensionless', 1.5],
    ['-0.02 inH2O', 'pressure', -4.9768],
    ['80 gr/lb', 'humidityRatio', 80 / 7000],
  ])('%s as %s', (text, dimension, expected) => {
    expect(value(text, dimension)).toBeCloseTo(expected, 7);
  });

  test('percent and Fahrenheit leave no rounding dust', () => {
    expect(value('57%', 'relativeHumidity')).toBe(0.57);
    expect(value('212F', 'temperature')).toBe(100);
  });

  test.each<[string, Dimension, string]>([
    ['72', 'temperature', '"72" has no unit; use one of the units C, F, K'],
    ['72X', 'temperature', '"X" is not a unit of temperature; use one of the units C, F, K'],
    ['', 'temperature', 'no temperature was typed; use one of the units C, F, K'],
    ['warm', 'temperature', '"warm" does not start with a number; write the number first, then its unit'],
    [
      '65',
      'relativeHumidity',
      '"65" as a relative humidity without a percent sign would be 6500%; write 65% or a fraction from 0 to 1',
    ],
    [
      '0,65',
      'relativeHumidity',
      '"0,65" has a comma, which could be a decimal mark or a thousands mark; write decimals with a point and thousands without a mark, e.g. 12.5 or 1250',
    ],
    ['1/8', 'slope', '"1/8" has no unit; use one of the units fraction, %, in/ft, mm/m'],
    [
      '12 14 cfm',
      'flow',
      '"14 cfm" after the number in "12 14 cfm" is not a unit; write one number, then its unit',
    ],
    ['1/0 cfm', 'flow', '"1/0 cfm" is not a number; write a number, then its unit'],
  ])('%s as %s is refused', (text, dimension, expected) => {
    expect(refusal(text, dimension)).toBe(expected);
  });

  test('a bare length is asked about as parseLength does', () => {
    expect(refusal('12', 'length')).toContain('it could be 12 ft, 12 in, 12 m or 12 cm');
    expect(refusal('-3 in', 'length')).toContain('is negative');
  });

  test('a number and its unit can be split before the kind is known', () => {
    expect(numberWithUnit('12 1/2 in')).toEqual({ ok: true, number: 12.5, unit: 'in' });
    expect(numberWithUnit('-40F')).toEqual({ ok: true, number: -40, unit: 'F' });
    expect(numberWithUnit('7')).toEqual({ ok: true, number: 7, unit: '' });
    expect(numberWithUnit('-0 C')).toEqual({ ok: true, number: 0, unit: 'C' });
    expect(numberWithUnit('x')).toMatchObject({ ok: false });
  });
});

describe('shown quantities', () => {
  test.each<[number, Dimension, 'us' | 'si', number | undefined, string]>([
    [22.2222, 'temperature', 'us', undefined, '72 °F'],
    [22.2222, 'temperature', 'si', undefined, '22.2 °C'],
    [-0.01, 'temperature', 'si', undefined, '0.0 °C'],
    [5, 'temperatureDifference', 'us', undefined, '9.0 °F'],
    [0.654, 'relativeHumidity', 'us', undefined, '65%'],
    [0.654, 'relativeHumidity', 'si', 1, '65.4%'],
    [3.8227, 'length', 'us', undefined, `12' 6 1/2"`],
    [3.8227, 'length', 'si', undefined, '3.823 m'],
    [3.8227, 'length', 'us', 1, '12.5 ft'],
    [0.0236, 'flow', 'us', undefined, '50 cfm'],
    [0.0236, 'flow', 'si', undefined, '23.6 L/s'],
    [1 / 48, 'slope', 'us', undefined, '0.250 in/ft'],
    [1 / 48, 'slope', 'si', undefined, '2.08%'],
    [33.12, 'massFlow', 'us', 0, '70 pint/day'],
    [148, 'radon', 'us', undefined, '4.0 pCi/L'],
    [3.43281, 'permeance', 'us', undefined, '0.060 perm'],
    [41.5, 'angle', 'si', undefined, '41.5°'],
    [2.5, 'dimensionless', 'us', undefined, '2.50'],
  ])('%d %s in %s', (canonical, dimension, system, digits, expected) => {
    expect(formatQuantity(canonical, dimension, system, digits)).toBe(expected);
  });

  test('refuses what cannot be shown', () => {
    expect(() => formatQuantity(Number.NaN, 'pressure', 'us')).toThrow(
      'a pressure to be shown must be a number; got NaN',
    );
    expect(() => formatQuantity(1, 'pressure', 'us', 13)).toThrow(
      'decimals must be a whole number from 0 to 12; got 13',
    );
    expect(() => formatQuantity(1, 'pressure', 'us', -1)).toThrow('got -1');
  });
});
