import { describe, expect, it } from 'vitest';
import { measureText, moneyText, monthNames, parseMoney, shownDay } from '../../src/parts/measure.ts';

describe('a figure of the assessment', () => {
  it.each([
    [0.003, 'm', '0.118 in', '3 mm'],
    [3.048, 'm', `10' 0"`, '3.048 m'],
    [22.4, '°C', '72 °F', '22.4 °C'],
    [0.0137, 'kg/m³', '0.0137 kg/m³', '0.0137 kg/m³'],
    [0.005, 'fraction', '0.5%', '0.5%'],
    // 1 perm is 57.2135 ng/(s·m²·Pa).
    [5.72135e-12, 'kg/(m²·s·Pa)', '0.1 perm', '5.72 ng/(s·m²·Pa)'],
    [1.29e-4, 'm/s^0.5', '0.000129 m/s^0.5', '0.000129 m/s^0.5'],
    [4e-5, 'm/s^0.5', '4.00e-5 m/s^0.5', '4.00e-5 m/s^0.5'],
    // 1 kg of water is 2.11338 US pints.
    [8.288, 'kg/day', '17.5 pint/day', '8.29 kg/day'],
    [1.5, '1', '1.5', '1.5'],
    [0, 'kg/day', '0 pint/day', '0 kg/day'],
  ])('%d %s is written %s or %s', (value, unit, us, si) => {
    expect(measureText(value, unit, 'us')).toBe(us);
    expect(measureText(value, unit, 'si')).toBe(si);
  });
});

describe('a price', () => {
  it.each([
    ['4150', 415_000],
    ['$4,150.5', 415_050],
    [' 12,345,678.90 ', 1_234_567_890],
    ['0', 0],
    ['19.99', 1999],
  ])('%s is so many cents', (typed, cents) => {
    expect(parseMoney(typed)).toBe(cents);
  });

  it.each(['', '4.150,00', '1,50', '-3', '3.999', 'four', '1e3', '99999999999999999'])(
    '%s is none',
    (typed) => {
      expect(parseMoney(typed)).toBeUndefined();
    },
  );

  it('is written as it can be typed', () => {
    for (const cents of [0, 5, 100, 415_050, 1_234_567_890]) {
      expect(parseMoney(moneyText(cents, 'en'))).toBe(cents);
      expect(parseMoney(moneyText(cents, 'es'))).toBe(cents);
    }
    expect(moneyText(-1550, 'en')).toBe('-$15.50');
  });
});

it('keeps a day the day that it is', () => {
  expect(shownDay('2026-07-21', 'en')).toBe('Jul 21, 2026');
  expect(shownDay('2026-07-21', 'es')).toBe('21 jul 2026');
  expect(shownDay('no day', 'en')).toBe('no day');
  expect(monthNames('es', 'long')[0]).toBe('enero');
});
