import { describe, expect, it } from 'vitest';
import {
  type typedCapacity as Capacity,
  typedCapacity,
  typedHumidity,
  typedNumber,
  typedPrice,
  typedWords,
} from '../../../src/screens/drying/typed.ts';

const value = (typed: ReturnType<typeof Capacity>) => (typed.ok ? typed.value : 'not read');

describe('what is typed in place of a value', () => {
  it.each([
    // 1 kg of water is 2.11338 US pints.
    ['70 pint/day', 'us', 33.122],
    ['70', 'us', 33.122],
    ['33', 'si', 33],
    ['33 L/day', 'us', 33],
    ['33 litros al día', 'us', 33],
    ['70 pintas/día', 'si', 33.122],
  ] as const)('reads the capacity %s in %s units', (text, system, kgPerDay) => {
    expect(value(typedCapacity(text, system))).toBeCloseTo(kgPerDay, 2);
  });

  it.each(['', '0', '-3', '5000 kg/day', 'large', '70 cfm'])('reads no capacity in "%s"', (text) => {
    expect(typedCapacity(text, 'us').ok).toBe(false);
  });

  it('reads a humidity within what a machine holds', () => {
    expect(value(typedHumidity('55'))).toBe(0.55);
    expect(value(typedHumidity('52.5 %'))).toBe(0.525);
    expect(['19', '96', '0.55', '', 'dry'].map((text) => typedHumidity(text).ok)).toEqual(
      Array(5).fill(false),
    );
  });

  it('takes a value away where it is left empty and may be missing', () => {
    expect(value(typedPrice(''))).toBeNull();
    expect(value(typedWords(''))).toBeNull();
    expect(value(typedNumber('', 0, 20, true))).toBeNull();
    expect(typedNumber('', 0, 20, false).ok).toBe(false);
    expect(value(typedPrice('1,480'))).toBe(148_000);
    expect(typedPrice('1.480,00').ok).toBe(false);
  });
});
