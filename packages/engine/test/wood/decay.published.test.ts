import { describe, expect, test } from 'vitest';
import { decayInitiationDays, decayRiskOfSeries, soundWood, stepDecay } from '../../src/wood/decay.ts';
import { decayDoseOfDay, decayDoseOfSeries, decayRating } from '../../src/wood/decay-dose.ts';

/**
 * °C, RH %, days to a start, mass loss % per 30 days, mass loss % after 12 months of 30 days. Worked out by a second
 * program from the coefficients of Viitanen et al. 2010, which are recalled from memory.
 */
const BROWN_ROT = [
  [5, 97, 67.3, 1.44, 14.1],
  [10, 96, 58.6, 1.7, 17.1],
  [10, 98, 33.6, 2.6, 28.3],
  [20, 97, 24.0, 3.56, 39.8],
  [20, 100, 9.2, 4.91, 57.3],
] as const;

describe('brown rot by humidity and temperature', () => {
  test.each(BROWN_ROT)('%d °C, %d percent RH', (t, rh, days, perMonth, afterYear) => {
    // Half a percent, or half of the last printed digit.
    expect(Math.abs(decayInitiationDays(t, rh / 100) - days)).toBeLessThanOrEqual(
      Math.max(0.005 * days, 0.05),
    );
    const running = { progress: 1, massLoss: 0 };
    for (let hour = 0; hour < 720; hour++) stepDecay(running, t, rh / 100, 1);
    expect(Math.abs(100 * running.massLoss - perMonth)).toBeLessThanOrEqual(
      Math.max(0.005 * perMonth, 0.005),
    );
    const state = soundWood();
    for (let hour = 0; hour < 8640; hour++) stepDecay(state, t, rh / 100, 1);
    // The hourly coefficients are rounded: up to 2 % more than the closed form of the monthly ones.
    expect(100 * state.massLoss).toBeGreaterThan(afterYear * 0.995);
    expect(100 * state.massLoss).toBeLessThan(afterYear * 1.02);
  });

  test.each([
    [0, 0.99, false],
    [0.5, 0.99, true],
    [12, 0.95, false],
    [12, 0.951, true],
  ])('active at %d °C, RH %d', (t, h, active) => {
    expect(Number.isFinite(decayInitiationDays(t, h))).toBe(active);
  });

  test('an interrupted start is forgotten in two years', () => {
    const state = { progress: 1, massLoss: 0.03 };
    for (let hour = 0; hour < 8760; hour++) stepDecay(state, 14, 0.6, 1);
    expect(state.progress).toBeCloseTo(0.5, 9);
    stepDecay(state, 14, 0.6, 20_000);
    expect(state).toEqual({ progress: 0, massLoss: 0.03 });
  });

  test('risk of a series', () => {
    const run = (t: number, h: number, hours: number) =>
      decayRiskOfSeries(new Float64Array(hours).fill(t), new Float64Array(hours).fill(h));
    expect(run(20, 0.9, 5000).risk).toBe('none');
    // 24.0 days to a start.
    expect(run(20, 0.97, 23 * 24).risk).toBe('building-up');
    expect(run(20, 0.97, 25 * 24).risk).toBe('likely');
    expect(run(20, 0.97, 24).notices.map((n) => n.code)).toEqual(['recalled-model']);
    expect(run(30.1, 0.97, 24).notices.map((n) => n.code)).toEqual(['recalled-model', 'outside-range']);
    expect(() => run(20, 97, 24)).toThrow(/step 0/);
    expect(() => decayRiskOfSeries([21], [0.96], 0)).toThrow(/hours per step/);
  });
});

/** Worked out by a second program from coefficients recalled from memory. */
describe('dose-response', () => {
  const tolerance = 0.001;

  test.each([
    ['logistic', 24, 20, 0],
    ['logistic', 28, 20, 0.587],
    ['logistic', 30, 20, 0.621],
    ['logistic', 60, 30, 0.969],
    ['simplified', 20, 20, 0.296],
    ['simplified', 30, 15, 0.5],
    ['simplified', 40, 30, 1],
  ] as const)('%s, %d percent MC at %d °C', (model, mc, t, dose) => {
    expect(Math.abs(decayDoseOfDay(t, mc / 100, model) - dose)).toBeLessThanOrEqual(tolerance);
  });

  test.each([
    [325, 0.501],
    [500, 1.22],
    [1000, 3.147],
  ])('rating at a dose of %d days', (dose, rating) => {
    expect(Math.abs(decayRating(dose) - rating)).toBeLessThanOrEqual(tolerance);
  });

  test.each([
    [20, 20, 1097],
    [30, 15, 650],
    [40, 30, 325],
  ])('simplified: onset of wood at %d percent MC and %d °C after %d days', (mc, t, days) => {
    const run = (count: number) =>
      decayDoseOfSeries(new Float64Array(count).fill(t), new Float64Array(count).fill(mc / 100), 'simplified')
        .risk;
    expect(run(days - 2)).toBe('building-up');
    expect(run(days + 1)).toBe('likely');
  });

  test('wood too dry for the model adds nothing', () => {
    expect(decayDoseOfSeries([22, 23], [0.199, 0.18], 'simplified').risk).toBe('none');
    expect(decayDoseOfSeries([22, 23], [0.24, 0.249], 'logistic').risk).toBe('none');
    expect(decayDoseOfSeries([-3, 0], [0.4, 0.5], 'logistic').risk).toBe('none');
    expect(() => decayDoseOfSeries([22, 23], [0.3, 24], 'logistic')).toThrow(/day 1: moisture content/);
    expect(() => decayDoseOfSeries([22], [], 'logistic')).toThrow(/got 1 and 0/);
  });
});
