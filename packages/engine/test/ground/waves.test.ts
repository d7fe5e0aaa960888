import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { annualWaveFromMonthlyMeans } from '../../src/ground/annual-wave.ts';
import { periodicGroundWave } from '../../src/ground/periodic-wave.ts';
import { annualDamping, annualLagDays, undisturbedGroundC } from '../../src/ground/undisturbed.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Mean of the surface wave over each month, by fine summation. */
function monthlyMeans(wave: { meanC: number; amplitudeK: number; coldestDay: number }): number[] {
  let start = 0;
  return DAYS.map((days) => {
    let sum = 0;
    const parts = days * 24;
    for (let i = 0; i < parts; i++) sum += undisturbedGroundC(wave, 0, start + (i + 0.5) / 24, 6e-7);
    start += days;
    return sum / parts;
  });
}

describe('annual wave from monthly means', () => {
  it('finds the wave the means were taken from', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -10, max: 28, noNaN: true }),
        fc.double({ min: 0.5, max: 18, noNaN: true }),
        fc.double({ min: 1, max: 364, noNaN: true }),
        (meanC, amplitudeK, coldestDay) => {
          const found = annualWaveFromMonthlyMeans(monthlyMeans({ meanC, amplitudeK, coldestDay }));
          expect(found.meanC).toBeCloseTo(meanC, 4);
          expect(found.amplitudeK).toBeCloseTo(amplitudeK, 4);
          expect(found.coldestDay).toBeCloseTo(coldestDay, 2);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('asks for twelve months and names the one that is wrong', () => {
    expect(() => annualWaveFromMonthlyMeans([1, 2, 3])).toThrow(/twelve monthly means/);
    const bad = [5, 6, 7, 8, 9, 88, 11, 12, 13, 14, 15, 16];
    expect(() => annualWaveFromMonthlyMeans(bad)).toThrow(EngineError);
    expect(() => annualWaveFromMonthlyMeans(bad)).toThrow(/month 6/);
  });
});

describe('periodic wave under a surface film (Carslaw and Jaeger 1959 section 2.6, from memory)', () => {
  const YEAR = 365 * 86_400;

  it('becomes the undisturbed wave when the film is perfect', () => {
    const { ratio, lagRad } = periodicGroundWave(1.4, YEAR, 1.5, 6.3e-7, 1e12);
    expect(ratio).toBeCloseTo(annualDamping(1.4, 6.3e-7), 10);
    expect((lagRad * 365) / (2 * Math.PI)).toBeCloseTo(annualLagDays(1.4, 6.3e-7), 8);
  });

  it('agrees with a finite-difference march to the periodic state', () => {
    // Independent referee: explicit scheme, 24 h period, 0.5 cm cells, film on a half cell; error of order (dx)².
    const [k, a, h, period] = [1.3, 5e-7, 4, 86_400];
    const dx = 0.005;
    const cells = 160;
    const dt = 20;
    const c = k / a;
    let t = new Float64Array(cells);
    const want = periodicGroundWave(0.1 + dx / 2, period, k, a, h);
    const probe = 20;
    let sin = 0;
    let cos = 0;
    const steps = (12 * period) / dt;
    for (let n = 0; n < steps; n++) {
      const air = Math.cos((2 * Math.PI * n * dt) / period);
      const next = new Float64Array(t);
      for (let i = 0; i < cells; i++) {
        const up = i === 0 ? (air - t[0]!) / (1 / h + dx / (2 * k)) : (k * (t[i - 1]! - t[i]!)) / dx;
        const down = i === cells - 1 ? 0 : (k * (t[i]! - t[i + 1]!)) / dx;
        next[i] = t[i]! + (dt * (up - down)) / (c * dx);
      }
      t = next;
      if (n >= steps - period / dt) {
        const phase = (2 * Math.PI * (n + 1) * dt) / period;
        cos += (2 * t[probe]! * Math.cos(phase) * dt) / period;
        sin += (2 * t[probe]! * Math.sin(phase) * dt) / period;
      }
    }
    // 1 % of the swing and 0.02 rad: what the grid and the march allow.
    expect(Math.hypot(cos, sin)).toBeCloseTo(want.ratio, 2);
    expect(Math.abs(Math.hypot(cos, sin) / want.ratio - 1)).toBeLessThan(0.01);
    expect(Math.abs(Math.atan2(sin, cos) - want.lagRad)).toBeLessThan(0.02);
  });

  it('stays between nothing and the whole swing', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 2e-7, max: 1.2e-6, noNaN: true }),
        (depth, film, diffusivity) => {
          const { ratio, lagRad } = periodicGroundWave(depth, YEAR, 1.7, diffusivity, film);
          expect(ratio).toBeGreaterThan(0);
          expect(ratio).toBeLessThanOrEqual(1);
          expect(lagRad).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});
