import { criteria } from '@undercroft/engine';
import { describe, expect, it } from 'vitest';
import { findQuantities } from '../../../src/screens/measure/find-quantity.ts';
import { quantityText, readQuantity, typedAs } from '../../../src/screens/measure/quantity-unit.ts';
import { QUANTITY_ES } from '../../../src/screens/measure/quantity-words.ts';
import { QUESTIONS_ES } from '../../../src/screens/missing/question-words.ts';

const { quantities, facts } = criteria;

describe('quantities and questions in Spanish', () => {
  it('have words for every one of them, and for nothing else', () => {
    expect(Object.keys(QUANTITY_ES).sort()).toEqual(Object.keys(quantities).sort());
    expect(Object.keys(QUESTIONS_ES).sort()).toEqual(Object.keys(facts).sort());
  });
});

describe('the search for a quantity', () => {
  it('finds it in either language, without accents', () => {
    expect(findQuantities('seam lap', 'en')[0].key).toBe('seamLapWidthM');
    expect(findQuantities('traslape union', 'es')[0].key).toBe('seamLapWidthM');
    expect(findQuantities('traslape union', 'en')[0].key).toBe('seamLapWidthM');
    expect(findQuantities('no such thing', 'en')).toEqual([]);
  });

  it('puts words that begin with what is typed first, and what is wanted before all', () => {
    expect(findQuantities('lap', 'en')[0].title.toLowerCase()).toMatch(/\blap/);
    expect(
      findQuantities('', 'en', ['radonBqPerM3', 'moldAreaM2'])
        .slice(0, 2)
        .map((q) => q.key),
    ).toEqual(['radonBqPerM3', 'moldAreaM2']);
    expect(findQuantities('', 'en')).toHaveLength(Object.keys(quantities).length);
  });
});

function asNumber(key: criteria.QuantityKey) {
  const typed = typedAs(quantities[key]);
  if (typed.as !== 'number') throw new Error(`${key} is not typed as a number`);
  return typed;
}

describe('the unit in which a quantity is typed', () => {
  it('is a tape for lengths, and mils for sheets', () => {
    expect(typedAs(quantities.seamLapWidthM)).toEqual({ as: 'tape', signed: false });
    expect(typedAs(quantities.drainInvertBelowFloorM)).toEqual({ as: 'tape', signed: true });
    expect(readQuantity('12', asNumber('linerThicknessM'), 'us')).toBeCloseTo(12 * 25.4e-6, 9);
    expect(readQuantity('0.3', asNumber('linerThicknessM'), 'si')).toBeCloseTo(0.0003, 12);
  });

  it('is that of the trade, and the record gets its own', () => {
    // 1/8 in per foot, 1 perm, 60 gpm.
    expect(readQuantity('0.125', asNumber('drainFallSlope'), 'us')).toBeCloseTo(1 / 96, 9);
    expect(readQuantity('1', asNumber('linerPermeanceNg'), 'us')).toBeCloseTo(57.2135, 3);
    expect(readQuantity('60 gpm', asNumber('pumpFlowLPerS'), 'us')).toBeCloseTo(60 * (3.785411784 / 60), 6);
    expect(readQuantity('19', asNumber('floorInsulationRsi'), 'us')).toBeCloseTo(19 / 5.678263, 4);
    expect(readQuantity('9', asNumber('carbonMonoxidePpm'), 'us')).toBe(9);
  });

  it.each(
    Object.values(quantities)
      .filter((q) => q.unit !== 'yes-no')
      .map((q) => [q.key, q] as const),
  )('%s is shown and read back', (_, quantity) => {
    const [low, high] = quantity.range ?? [0, 1];
    const value = low + 0.25 * (high - low);
    for (const system of ['us', 'si'] as const) {
      const typed = typedAs(quantity);
      const text = quantityText(quantity, value, system);
      expect(text).not.toBe('');
      if (typed.as !== 'number' || typed.kept === undefined) continue;
      const back = readQuantity(text, typed, system);
      // What is shown is rounded to the digits that people read.
      expect(Math.abs((back ?? Number.NaN) - value)).toBeLessThanOrEqual(0.05 * Math.abs(value) + 0.06);
    }
  });
});
