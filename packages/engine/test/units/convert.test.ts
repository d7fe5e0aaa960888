import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/index.ts';
import { canonicalUnit, convert, dimensionNames, dimensions, unitNames } from '../../src/units/index.ts';

function message(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof EngineError) return `${error.code}: ${error.message}`;
    throw error;
  }
  throw new Error('expected an EngineError');
}

describe('convert', () => {
  test('names are forgiving about spaces, case, superscripts and degree signs', () => {
    expect(convert(10, 'sq ft', 'm²')).toBeCloseTo(0.9290304, 12);
    expect(convert(77, '°f', '°C')).toBe(25);
    expect(convert(3, 'L per day', 'l/day')).toBe(3);
    expect(convert(2, 'm²·K/W', 'm2 K/W')).toBe(2);
    expect(convert(5, 'CFM', 'm³/h')).toBeCloseTo(8.495, 3);
  });

  test('an unknown unit is refused with the valid ones', () => {
    expect(message(() => convert(1, 'furlong', 'm'))).toMatch(
      /^bad-input: "furlong" is not a known unit here; valid are C, F, K, /,
    );
    expect(message(() => convert(1, 'ft', 'furlong'))).toBe(
      'bad-input: "furlong" is not a known unit here; valid are m, cm, mm, um, ft, in, yd, mil',
    );
    expect(message(() => convert(1, '', 'm'))).toContain('"" is not a known unit');
  });

  test('units of different kinds are refused with the partners of the first', () => {
    expect(message(() => convert(1, 'perm', 'ft'))).toBe(
      'bad-input: perm cannot be converted to ft; it converts to ng/(s m2 Pa), perm',
    );
  });

  test('a value that is no number is refused', () => {
    expect(message(() => convert(Number.NaN, 'ft', 'm'))).toBe(
      'not-finite: the value to convert must be a number; got NaN',
    );
  });
});

describe('the list of units', () => {
  test.each(dimensionNames)('%s names its canonical unit and shows units that it has', (dimension) => {
    const names = unitNames(dimension);
    expect(names[0]).toBe(canonicalUnit(dimension));
    expect(new Set(names).size).toBe(names.length);
    expect(names).toContain(dimensions[dimension].us.unit);
    expect(names).toContain(dimensions[dimension].si.unit);
    const canonical = dimensions[dimension].units.find((unit) => unit.name === names[0]);
    expect(canonical).toMatchObject({ multiply: 1 });
  });
});
