import { describe, expect, it } from 'vitest';
import { pressNumberKey, readNumber, unitSymbol } from '../../src/parts/read-number.ts';

describe('a number as typed', () => {
  it.each([
    ['72', 'temperature', 'us', 22.222],
    ['-4', 'temperature', 'us', -20],
    ['21.5', 'temperature', 'si', 21.5],
    ['21.5 C', 'temperature', 'us', 21.5],
    ['78', 'relativeHumidity', 'us', 0.78],
    ['18.5', 'moistureContent', 'si', 0.185],
    ['3', 'dimensionless', 'us', 3],
    // 4 pCi/L is 148 Bq/m³.
    ['4', 'radon', 'us', 148],
  ] as const)('%s of %s in %s is read', (typed, dimension, system, value) => {
    expect(readNumber(typed, dimension, system)).toBeCloseTo(value, 3);
  });

  it.each(['', '-', '.', '7..2', '12 apples'])('"%s" is none', (typed) => {
    expect(readNumber(typed, 'temperature', 'us')).toBeNull();
  });

  it('has the unit of the system', () => {
    expect(unitSymbol('temperature', 'us')).toBe('°F');
    expect(unitSymbol('radon', 'si')).toBe('Bq/m³');
  });
});

describe('a key of the number pad', () => {
  const pressed = (...keys: string[]) => keys.reduce(pressNumberKey, '');
  it.each([
    [['7', '2', '.', '4'], '72.4'],
    [['.', '5'], '0.5'],
    [['7', '.', '.', '5'], '7.5'],
    [['4', '±'], '-4'],
    [['±', '4', '±'], '4'],
    [['0', '7'], '7'],
    [['1', '8', 'back', '9'], '19'],
  ])('%j gives %s', (keys, text) => {
    expect(pressed(...keys)).toBe(text);
  });
});
