import { describe, expect, it } from 'vitest';
import { pullDown, slabDryingTimeS, slabWaterLeft, storedWaterKg } from '../../src/dehumidifier/pull-down.ts';

const DAY = 86_400;

describe('slab drying (diffusivity after Wood Handbook and Siau, from memory; D 1.5e-10 m²/s)', () => {
  // Printed in whole days.
  it.each([
    [0.038, 11],
    [0.114, 102],
  ])('%d m thick: %d days', (thickness, days) => {
    expect(Math.abs(slabDryingTimeS(thickness, 1.5e-10) / DAY - days)).toBeLessThanOrEqual(0.5);
  });

  it('19 mm with one face open dries like 38 mm', () => {
    expect(slabDryingTimeS(2 * 0.019, 1.5e-10)).toBe(slabDryingTimeS(0.038, 1.5e-10));
  });

  it('starts full, and later is 8/pi² exp(-t/tau)', () => {
    expect(slabWaterLeft(0, 1e6)).toBe(1);
    // At one time constant the second term is 0.04 % of the first.
    expect(slabWaterLeft(1e6, 1e6) / ((8 / Math.PI ** 2) * Math.exp(-1))).toBeCloseTo(1, 3);
    expect(slabWaterLeft(4e6, 1e6)).toBeCloseTo((8 / Math.PI ** 2) * Math.exp(-4), 12);
  });

  it('the early and the late form meet', () => {
    const series = (t: number) => {
      let sum = 0;
      for (let n = 1; n < 400; n += 2) sum += Math.exp(-n * n * t) / (n * n);
      return (8 / Math.PI ** 2) * sum;
    };
    for (const t of [0.01, 0.0499, 0.0501, 0.2]) expect(slabWaterLeft(t, 1)).toBeCloseTo(series(t), 12);
  });

  it('never rises', () => {
    let before = 1;
    for (let t = 0; t < 6; t += 0.01) {
      const left = slabWaterLeft(t, 1);
      expect(left).toBeLessThanOrEqual(before);
      before = left;
    }
  });
});

describe('pull-down', () => {
  it('20 kg of wood per m² from 9 points above the target: 1.8 kg/m², 216 kg on 120 m², 3.6 kg/day in 60 days', () => {
    const water = storedWaterKg(20 * 120, 0.21, 0.12);
    expect(water / 120).toBeCloseTo(1.8, 10);
    expect(water).toBeCloseTo(216, 8);
    expect(pullDown(water, 60, slabDryingTimeS(0.038, 1.5e-10)).meanKgPerDay).toBeCloseTo(3.6, 10);
  });

  it('the first week of 38 mm joists runs at two to four times the mean', () => {
    const { firstWeekKgPerDay, meanKgPerDay } = pullDown(216, 60, slabDryingTimeS(0.038, 1.5e-10));
    // "First-week release of sheet goods can be 3 times the mean": common practice, no source.
    expect(firstWeekKgPerDay / meanKgPerDay).toBeGreaterThan(2);
    expect(firstWeekKgPerDay / meanKgPerDay).toBeLessThan(5);
  });

  it('refuses what makes no sense, by name', () => {
    expect(() => pullDown(-1, 60, 1e6)).toThrow(/water to remove in kg/);
    expect(() => pullDown(1, 0.5, 1e6)).toThrow(/days planned/);
    expect(() => pullDown(1, 60, Number.NaN)).toThrow(/drying time constant/);
  });
});
