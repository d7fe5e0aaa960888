import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coldFactor, coldNotices } from '../../src/dehumidifier/frost.ts';
import { runningPowerW } from '../../src/dehumidifier/heat.ts';
import { efficiencyFloor } from '../../src/dehumidifier/minimum-efficiency.ts';
import { humidistatCycle, runFraction, shortCycleFactor } from '../../src/dehumidifier/part-load.ts';
import { RATING_POINTS } from '../../src/dehumidifier/rating-points.ts';
import { dehumidifierSources } from '../../src/dehumidifier/sources.ts';
import { performanceAt, relativeCapacity, relativeEfficiency } from '../../src/dehumidifier/surfaces.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { convert } from '../../src/units/convert.ts';

const codes = (notices: readonly { code: string }[]) => notices.map(({ code }) => code);

describe('surfaces at and beyond their limits', () => {
  const at65 = convert(65, 'F', 'C');
  it('says where it extrapolates', () => {
    expect(codes(performanceAt(at65, 0.6).notices)).toEqual([]);
    expect(codes(performanceAt(at65 + 0.01, 0.6).notices)).toEqual([]);
    expect(codes(performanceAt(at65 - 0.01, 0.6).notices)).toEqual(['extrapolated']);
    expect(codes(performanceAt(21, 0.4, 'single-unit').notices)).toEqual([]);
    expect(codes(performanceAt(32.2, 0.8, 'single-unit').notices)).toEqual([]);
    expect(codes(performanceAt(20.9, 0.5, 'single-unit').notices)).toEqual(['extrapolated']);
    expect(codes(performanceAt(25, 0.81, 'single-unit').notices)).toEqual(['extrapolated']);
  });

  it('says where nothing is removed, and gives 0 there', () => {
    const dry = performanceAt(25, 0.1);
    expect(dry.value.capacity).toBe(0);
    expect(codes(dry.notices)).toEqual(['no-capacity']);
    expect(relativeCapacity(25, 0.1)).toBe(0);
  });

  it('refuses air beyond reason', () => {
    expect(() => performanceAt(51, 0.5)).toThrow(EngineError);
    expect(() => performanceAt(20, 1.2)).toThrow(/relative humidity/);
  });

  it('is a number of 0 or more everywhere, and power is never endless', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 50, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (t, rh) => {
          const [capacity, efficiency] = [relativeCapacity(t, rh), relativeEfficiency(t, rh)];
          expect(capacity).toBeGreaterThanOrEqual(0);
          expect(efficiency).toBeGreaterThanOrEqual(0);
          const power = runningPowerW(30, 2, t, rh);
          expect(Number.isFinite(power)).toBe(true);
          expect(power).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('removes more from warmer and from moister air, from 5 to 35 °C', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 34, noNaN: true }),
        fc.double({ min: 0.2, max: 0.95, noNaN: true }),
        (t, rh) => {
          expect(relativeCapacity(t + 1, rh)).toBeGreaterThanOrEqual(relativeCapacity(t, rh));
          expect(relativeCapacity(t, rh + 0.05)).toBeGreaterThanOrEqual(relativeCapacity(t, rh));
        },
      ),
    );
  });
});

describe('cycling', () => {
  it('a cycle balances: what comes in over it is what the machine takes out', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 12, noNaN: true }),
        fc.double({ min: 13, max: 60, noNaN: true }),
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        (load, capacity, band) => {
          const { runS, offS, startsPerHour } = humidistatCycle(load, capacity, band);
          expect(runS / (runS + offS)).toBeCloseTo(load / capacity, 10);
          expect(offS).toBeGreaterThanOrEqual(300);
          expect(startsPerHour).toBeCloseTo(3600 / (runS + offS), 10);
        },
      ),
    );
  });

  it('does not cycle without load or at full load', () => {
    expect(humidistatCycle(0, 20, 0.1).startsPerHour).toBe(0);
    expect(humidistatCycle(20, 20, 0.1).startsPerHour).toBe(0);
  });

  it('short cycles lose five minutes per start; long ones nothing more', () => {
    expect(shortCycleFactor(600, 500)).toBeCloseTo(1 - 300 / 600, 12);
    expect(shortCycleFactor(250, 500)).toBe(0);
    expect(shortCycleFactor(900, 900)).toBe(1);
    // 25 minutes: half of the loss.
    expect(shortCycleFactor(600, 900)).toBeCloseTo(1 - 0.5 * (300 / 600), 12);
    expect(shortCycleFactor(0, 900)).toBe(0);
  });

  it('run share rises with the load and stays within 0..1', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (load) => {
        const share = runFraction(load, 25);
        expect(share).toBeGreaterThanOrEqual(Math.min(1, load / 25) - 1e-12);
        expect(share).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('cold air (common practice, no source)', () => {
  it('household machines stop below 18 °C, low-temperature ones below 5.5 °C, or where their maker says', () => {
    expect(coldFactor(18, 'household')).toBe(1);
    expect(coldFactor(17.99, 'household')).toBe(0);
    expect(coldFactor(17, 'household', 15)).toBe(1);
    expect(coldFactor(5.5, 'low-temperature')).toBeCloseTo(0.825, 12);
    expect(coldFactor(5.49, 'low-temperature')).toBe(0);
    expect(coldFactor(13, 'low-temperature')).toBe(1);
    expect(coldFactor(12.99, 'low-temperature')).toBeCloseTo(0.825, 12);
  });

  it('says so', () => {
    expect(codes(coldNotices(22, 0.6, 'household'))).toEqual([]);
    expect(codes(coldNotices(14, 0.6, 'household'))).toEqual(['too-cold']);
    expect(codes(coldNotices(12, 0.45, 'low-temperature'))).toEqual(['coil-may-freeze', 'defrost-time']);
    expect(coldNotices(4, 0.7, 'low-temperature', 7)[0]!.message).toContain('its maker');
  });
});

describe('efficiency floors (10 CFR 430.32(v): portable as summarized in 2016, whole-home from memory)', () => {
  const pints = (n: number) => convert(n, 'pint/day', 'kg/day');
  it.each([
    [pints(24.9), 1.3],
    [pints(25), 1.3],
    [pints(25.1), 1.6],
    [pints(50), 1.6],
    [pints(50.1), 2.8],
  ])('portable of %d kg/day: %d L/kWh', (capacity, floor) => {
    expect(efficiencyFloor('portable', capacity).federalLPerKWh).toBe(floor);
  });

  it.each([
    [8, 1.77, 2.09],
    [8.1, 2.41, 3.3],
  ])('whole-home of %d ft³: %d L/kWh, voluntary %d', (ft3, floor, voluntary) => {
    const found = efficiencyFloor('whole-home', convert(ft3, 'ft3', 'm3'));
    expect(found.federalLPerKWh).toBe(floor);
    expect(found.voluntaryLPerKWh).toBe(voluntary);
  });
});

it('every source id that is referred to exists', () => {
  const ids = new Set<string>(Object.values(dehumidifierSources).map(({ id }) => id));
  for (const { sourceId } of RATING_POINTS) expect(ids).toContain(sourceId);
  expect(ids).toContain(efficiencyFloor('portable', 1).federalSourceId);
  expect(ids).toContain(efficiencyFloor('whole-home', 1).federalSourceId);
});
