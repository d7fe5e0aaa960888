import { describe, expect, test } from 'vitest';
import { day, moment } from '../../src/words/dates.ts';
import { plain, shortSource } from '../../src/words/names.ts';
import { both, evidenceText, measureText, tapeText } from '../../src/words/quantities.ts';

/** No-break spaces as plain ones, to read the expected texts. */
const spaced = (text: string) => text.replaceAll('\u00a0', ' ');

describe('measures in trade units first, metric behind', () => {
  // Exact conversions: 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 mil = 0.001 in, 1 pCi/L = 37 Bq/m³.
  const rows = [
    { value: 0.1016, unit: 'm', text: '4" (102 mm)' },
    { value: 0.0064, unit: 'm', text: '0.252 in (6.4 mm)', why: 'a near miss of 1/4 in' },
    { value: 0.00635, unit: 'm', text: '1/4" (6.35 mm)' },
    { value: 1.778, unit: 'm', text: `5' 10" (1.778 m)` },
    { value: 0.00038, unit: 'm', text: '14.96 mil (0.38 mm)' },
    { value: 0, unit: 'm', text: '0" (0 mm)' },
    { value: -0.0254, unit: 'm', text: '−1" (−25.4 mm)' },
    { value: 59, unit: 'Bq/m³', text: '1.595 pCi/L (59 Bq/m³)' },
    { value: 2.4, unit: 'm²', text: '25.83 ft² (2.4 m²)' },
    { value: 0.003, unit: 'm²', text: '4.65 in² (30 cm²)' },
    { value: 0.0024, unit: 'm/s', text: '0.0024 m/s' },
    { value: 2.6, unit: 'm/s', text: '5.816 mph (2.6 m/s)' },
    { value: 0.6551, unit: 'fraction', text: '65.51%' },
    { value: -5.765, unit: 'K', text: '−10.38 °F (−5.765 K)' },
    { value: 3, unit: 'count', text: '3' },
    { value: 500, unit: 's/m', text: '500 s/m' },
    { value: 1.7e-12, unit: 'kg/(m²·s·Pa)', text: '0.02971 perm (1.7 ng/(s·m²·Pa))' },
  ];

  test.each(rows)('$value $unit is $text', ({ value, unit, text }) => {
    expect(spaced(measureText(value, unit))).toBe(text);
  });

  test('a share follows the manner of its limit', () => {
    expect(spaced(measureText(1 / 351.8, 'fraction', 'at least 1/150'))).toBe('1/351.8');
    expect(spaced(measureText(0.22, 'fraction', 'at most 8 points'))).toBe('22 points');
    expect(spaced(measureText(0.0104166, 'fraction', 'at least 1/8 in per ft'))).toBe('0.125 in/ft (1.04%)');
  });

  test('answers are yes and no', () => {
    expect(evidenceText(true, 'yes-no', 'no')).toBe('yes');
    expect(evidenceText(false, 'yes-no', 'yes')).toBe('no');
  });

  test('one text where both systems write alike', () => {
    expect(both(0.65, 'relativeHumidity')).toBe('65%');
  });

  test('sizes of a space to a quarter of an inch', () => {
    expect(spaced(tapeText(0.7293))).toBe(`2' 4 3/4" (0.73 m)`);
  });

  test('number and unit do not part', () => {
    expect(both(22.4, 'temperature')).toBe('72\u00a0°F (22.4\u00a0°C)');
  });
});

test('dates as people in the United States write them, in the time of the place', () => {
  expect(day('2031-05-14')).toBe('May 14, 2031');
  expect(moment('2031-05-04T09:20:00-04:00')).toBe('May 4, 2031, 09:20');
});

test('a citation with a short name is cut to it', () => {
  expect(shortSource('Council, Residential Code for Dwellings (IRC), 2018, R408.2')).toEqual({
    short: 'IRC, 2018, R408.2',
    name: { short: 'IRC', full: 'Council, Residential Code for Dwellings' },
  });
  expect(shortSource('Handbook (2009), levels')).toEqual({ short: 'Handbook (2009), levels' });
});

test('percent signs close up, minus signs are true ones', () => {
  expect(plain('at most 60 %, -8.9 to -0.9 kg')).toBe('at most 60%, −8.9 to −0.9 kg');
});
