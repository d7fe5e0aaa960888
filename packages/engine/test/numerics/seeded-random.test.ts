import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/numerics/seeded-random.ts';

const draw = (seed: number, count: number): number[] => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, random);
};

describe('seeded random numbers', () => {
  it('repeat for the same seed and differ for another', () => {
    expect(draw(7, 50)).toEqual(draw(7, 50));
    expect(draw(7, 50)).not.toEqual(draw(8, 50));
  });

  it('lie in 0 to below 1 and are even: mean, variance and tenths of 100 000 draws', () => {
    const numbers = draw(20240, 100_000);
    const tenths = new Array<number>(10).fill(0);
    let sum = 0;
    let squares = 0;
    for (const x of numbers) {
      expect(x >= 0 && x < 1).toBe(true);
      tenths[Math.floor(10 * x)]!++;
      sum += x;
      squares += x * x;
    }
    const mean = sum / numbers.length;
    // Four standard errors of an even distribution.
    expect(Math.abs(mean - 1 / 2)).toBeLessThan(4 * Math.sqrt(1 / 12 / 100_000));
    expect(squares / numbers.length - mean * mean).toBeCloseTo(1 / 12, 3);
    for (const count of tenths) expect(Math.abs(count - 10_000)).toBeLessThan(4 * Math.sqrt(9000));
  });

  it('do not follow one another: no correlation with the next draw', () => {
    const numbers = draw(5, 100_000);
    let product = 0;
    for (let i = 1; i < numbers.length; i++) product += (numbers[i - 1]! - 0.5) * (numbers[i]! - 0.5);
    expect(Math.abs((12 * product) / numbers.length)).toBeLessThan(4 / Math.sqrt(100_000));
  });

  it('take any whole, broken, negative or large seed', () => {
    for (const seed of [0, -1, 3.9, 2 ** 40 + 5, Number.MAX_SAFE_INTEGER]) {
      expect(draw(seed, 3).every((x) => x >= 0 && x < 1)).toBe(true);
    }
    expect(draw(3.9, 5)).toEqual(draw(3, 5));
  });
});
