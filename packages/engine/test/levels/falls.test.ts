import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fallBetween, type LinePoint, reachFalls, smallestProvableSlope } from '../../src/levels/fall.ts';
import { invertFromTopM, pointHeightM, relativeHeightsM } from '../../src/levels/instrument.ts';
import { leastDrainSlope, requiredFallM } from '../../src/levels/required-slope.ts';
import { trappedWater } from '../../src/levels/trapped-water.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';

const line = (...points: readonly (readonly [number, number])[]): LinePoint[] =>
  points.map(([stationM, heightM]) => ({ stationM, heightM }));

describe('readings', () => {
  test('an upside-down rod against a joist adds', () => {
    expect(pointHeightM(2, 0.75, 'inverted')).toBe(2.75);
    expect(pointHeightM(2, 0.75)).toBe(1.25);
  });

  test('invert of a pipe from its top', () => {
    // 4.7 in outside, 4.0 in bore: wall 0.35 in, so the invert lies 4.35 in below the top.
    expect(invertFromTopM(0.5, 4.7 * 0.0254, 0.35 * 0.0254)).toBeCloseTo(0.5 - 4.35 * 0.0254, 12);
    expect(() => invertFromTopM(0.5, 0.1, 0.0501)).toThrow('pipe wall (m) must be from 0 to 0.05');
  });

  test('readings that are none are refused, naming which', () => {
    expect(relativeHeightsM([])).toEqual([]);
    expect(() => relativeHeightsM([1.2, Number.NaN])).toThrow('reading 2 (m) must be a number');
    expect(() => pointHeightM(2, -0.1)).toThrow(EngineError);
    expect(() => pointHeightM(2, 30.1)).toThrow(EngineError);
  });
});

describe('verdict on a fall', () => {
  // Error of a fall: √2 · 3 mm = 4.243 mm; required over 8 m at 1/100: 80 mm.
  test.each([
    [-4.3, 'back-fall'],
    [-4.2, 'undecided'],
    [0, 'undecided'],
    [4.2, 'undecided'],
    [4.3, 'flat'],
    [79.9, 'flat'],
    [80.1, 'ok'],
  ])('a fall of %d mm is %s', (fallMm, verdict) => {
    expect(fallBetween(1 + fallMm / 1000, 1, 8, 0.003, 0.01).verdict).toBe(verdict);
  });

  test('limits belong to undecided and to ok', () => {
    const u = Math.SQRT2 * 0.003;
    expect(fallBetween(u, 0, 8, 0.003, 0.01).verdict).toBe('undecided');
    expect(fallBetween(0, u, 8, 0.003, 0.01).verdict).toBe('undecided');
    expect(fallBetween(0.25, 0, 8, 0.003, 0.03125).verdict).toBe('ok');
  });

  test('what a survey can prove is what it calls decided', () => {
    const sigma = fc.double({ min: 1e-4, max: 0.02, noNaN: true });
    const length = fc.double({ min: 0.5, max: 40, noNaN: true });
    fc.assert(
      fc.property(sigma, length, (sigmaM, lengthM) => {
        const least = smallestProvableSlope(sigmaM, lengthM) * lengthM;
        expect(fallBetween(least * 1.0001, 0, lengthM, sigmaM, 0).verdict).toBe('ok');
        expect(fallBetween(least * 0.9999, 0, lengthM, sigmaM, 0).verdict).toBe('undecided');
      }),
    );
  });

  test('a step in the line makes no reach; going upstream is refused', () => {
    expect(reachFalls(line([0, 1], [4, 0.9], [4, 0.5], [9, 0.4]), 0.001, 0.01)).toHaveLength(2);
    expect(reachFalls([], 0.001, 0.01)).toEqual([]);
    expect(() => reachFalls(line([0, 1], [4, 0.9], [3, 0.8]), 0.001, 0.01)).toThrow(
      'points must go downstream: station 3 m of point 3 is before 4 m',
    );
  });

  test('a line without length and slopes out of range are refused', () => {
    expect(() => fallBetween(1, 0.9, 0, 0.001, 0.01)).toThrow(EngineError);
    expect(() => fallBetween(1, 0.9, 5, -0.001, 0.01)).toThrow(EngineError);
    expect(() => smallestProvableSlope(0.001, 0)).toThrow(EngineError);
    expect(() => requiredFallM(5, 1.01)).toThrow(EngineError);
    expect(() => leastDrainSlope(0)).toThrow(EngineError);
  });
});

describe('trapped water', () => {
  test('a line that falls all the way holds none', () => {
    expect(trappedWater(line([0, 1], [5, 0.9], [9, 0.9], [12, 0.2]))).toEqual({
      depthsM: [0, 0, 0, 0],
      pools: [],
      deadLengthM: 0,
      deepestM: 0,
    });
  });

  test('two bellies, each to its own spill level', () => {
    const water = trappedWater(line([0, 1.0], [4, 0.6], [6, 0.8], [10, 0.4], [13, 0.7], [15, 0.1]));
    // First belly: spills at 0.8, wet from 4 − 4·(0.2/0.4) = 2 to 6. Second: at 0.7, from 10 − 4·(0.3/0.4) = 7 to 13.
    expect(water.pools).toEqual([
      { fromM: expect.closeTo(2, 9), toM: 6, spillHeightM: 0.8, depthM: expect.closeTo(0.2, 9) },
      { fromM: expect.closeTo(7, 9), toM: 13, spillHeightM: 0.7, depthM: expect.closeTo(0.3, 9) },
    ]);
    expect(water.deadLengthM).toBeCloseTo(10, 9);
    expect(water.deepestM).toBeCloseTo(0.3, 9);
  });

  test('a line that only rises is wet from end to end', () => {
    const water = trappedWater(line([0, 0.1], [3, 0.3], [8, 0.5]));
    expect(water.pools).toEqual([{ fromM: 0, toM: 8, spillHeightM: 0.5, depthM: expect.closeTo(0.4, 9) }]);
    expect(water.depthsM[1]).toBeCloseTo(0.2, 9);
  });

  test('rounding in equal heights is no pool', () => {
    const water = trappedWater(line([0, 0.3], [6, 0.1 + 0.2], [9, 0.3]));
    expect(water).toMatchObject({ pools: [], deadLengthM: 0 });
    expect(trappedWater(line([0, 0.3], [6, 0.3001], [9, 0.3])).deadLengthM).toBe(6);
  });

  test('fewer than two points hold nothing', () => {
    expect(trappedWater([]).deadLengthM).toBe(0);
    expect(trappedWater(line([3, 1])).depthsM).toEqual([0]);
  });

  test('dead length agrees with walking the line in small steps', () => {
    const millimeters = fc.integer({ min: 0, max: 1000 }).map((mm) => mm / 1000);
    const heights = fc.array(millimeters, { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(heights, (z) => {
        const points = z.map((heightM, i) => ({ stationM: 2 * i, heightM }));
        const water = trappedWater(points);
        const perReach = 400;
        const steps = (z.length - 1) * perReach;
        const heightAt = (step: number): number => {
          const i = Math.min(z.length - 2, Math.floor(step / perReach));
          const t = step / perReach - i;
          return z[i]! + t * (z[i + 1]! - z[i]!);
        };
        let wet = 0;
        let spill = Number.NEGATIVE_INFINITY;
        for (let step = steps; step >= 0; step -= 1) {
          spill = Math.max(spill, heightAt(step));
          if (heightAt(step) < spill - 1e-9) wet += 2 / perReach;
        }
        // Each end of a wet stretch is found to one step.
        expect(Math.abs(water.deadLengthM - wet)).toBeLessThanOrEqual((z.length * 2 * 2) / perReach);
        const total = water.pools.reduce((sum, pool) => sum + pool.toM - pool.fromM, 0);
        expect(total).toBeCloseTo(water.deadLengthM, 9);
        expect(water.deepestM).toBe(Math.max(...water.depthsM));
      }),
      { numRuns: 200 },
    );
  });
});
