import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  convert,
  dimensionNames,
  formatFeetInches,
  formatMetric,
  formatQuantity,
  parseLength,
  parseQuantity,
  unitNames,
} from '../../src/units/index.ts';

const finite = { noNaN: true, noDefaultInfinity: true } as const;

describe('conversions', () => {
  test('there and back returns the value, for every pair of units', () => {
    for (const dimension of dimensionNames) {
      for (const from of unitNames(dimension)) {
        for (const to of unitNames(dimension)) {
          for (const value of [-37.25, 0, 0.0625, 1, 98.6, 12_345.678]) {
            const back = convert(convert(value, from, to), to, from);
            // A scale with another zero (Kelvin) loses digits of small values: relative to 1000, not to the value.
            expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(1000, Math.abs(value)));
          }
        }
      }
    }
  });

  test('every unit name is read back in its own dimension', () => {
    for (const dimension of dimensionNames) {
      for (const unit of unitNames(dimension)) {
        if (unit === '1') continue;
        const parsed = parseQuantity(`0.5 ${unit}`, dimension);
        expect(parsed.ok, `0.5 ${unit} as ${dimension}`).toBe(true);
        if (parsed.ok) expect(parsed.unit).toBe(unitNames(dimension)[0]);
      }
    }
  });
});

describe('lengths', () => {
  test('what is printed in feet and inches is read back to the same 64th', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 64 * 12 * 300 }), (sixtyFourths) => {
        const nanometers = sixtyFourths * 396_875;
        const parsed = parseLength(formatFeetInches(nanometers / 1e9, { denominator: 64 }));
        expect(parsed).toMatchObject({ ok: true, nanometers });
      }),
      { numRuns: 1000 },
    );
  });

  test('rounding to a 16th moves a length by at most 1/32 in', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, ...finite }), (meters) => {
        const parsed = parseLength(formatFeetInches(meters));
        expect(parsed.ok).toBe(true);
        if (parsed.ok) {
          expect(Math.abs(parsed.nanometers / 1e9 - meters)).toBeLessThanOrEqual(0.0254 / 32 + 1e-9);
        }
      }),
      { numRuns: 1000 },
    );
  });

  test('metric lengths come back to half a millimeter', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, ...finite }), (meters) => {
        const parsed = parseLength(formatMetric(meters));
        expect(parsed.ok).toBe(true);
        if (parsed.ok) expect(Math.abs(parsed.nanometers / 1e9 - meters)).toBeLessThanOrEqual(0.0005 + 1e-9);
      }),
    );
  });

  test('every way to write feet, inches and 16ths gives the same integer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99 }),
        fc.integer({ min: 0, max: 11 }),
        fc.integer({ min: 1, max: 15 }),
        (feet, inches, sixteenths) => {
          const expected = (feet * 192 + inches * 16 + sixteenths) * 4 * 396_875;
          for (const text of [
            `${feet} ${inches} ${sixteenths}/16`,
            `${feet}-${inches}-${sixteenths}/16`,
            `${feet}' ${inches} ${sixteenths}/16"`,
            `${feet}ft${inches}-${sixteenths}/16in`,
            `${feet}′${inches} ${sixteenths}⁄16″`,
            `${feet * 12 + inches} ${sixteenths}/16 in`,
            `${feet * 12 + inches + sixteenths / 16}"`,
          ]) {
            expect(parseLength(text)).toMatchObject({ ok: true, nanometers: expected });
          }
        },
      ),
    );
  });

  test('no text makes it throw, and what is refused says why', () => {
    const piece = fc.constantFrom(
      '1',
      '12',
      '3/4',
      '1/3',
      '½',
      "'",
      '"',
      ' ',
      '-',
      'ft',
      'in',
      'm',
      '.',
      ',',
      '’',
      'x',
    );
    const typed = fc.array(piece, { maxLength: 9 }).map((pieces) => pieces.join(''));
    fc.assert(
      fc.property(fc.oneof(typed, fc.string()), (text) => {
        const parsed = parseLength(text);
        if (parsed.ok) expect(Number.isSafeInteger(parsed.nanometers) && parsed.nanometers >= 0).toBe(true);
        else expect(parsed.problem.length * parsed.hint.length).toBeGreaterThan(0);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('shown quantities', () => {
  test('are read back within the shown digits', () => {
    for (const dimension of dimensionNames) {
      if (dimension === 'length') continue;
      for (const system of ['us', 'si'] as const) {
        fc.assert(
          fc.property(fc.double({ min: 0, max: 1, ...finite }), (value) => {
            const text = formatQuantity(value, dimension, system, 9);
            const parsed = parseQuantity(text, dimension);
            expect(parsed.ok, `${text} as ${dimension}`).toBe(true);
            if (parsed.ok) expect(Math.abs(parsed.value - value)).toBeLessThan(1e-6);
          }),
          { numRuns: 20 },
        );
      }
    }
  });
});
