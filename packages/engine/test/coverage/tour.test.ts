import { describe, expect, test } from 'vitest';
import { EXACT_VISITS, shortestTour } from '../../src/coverage/tour.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';

type Place = readonly [number, number];
const distances = (places: readonly Place[]): number[][] =>
  places.map(([x, y]) => places.map(([u, v]) => Math.hypot(x - u, y - v)));
const randomPlaces = (seed: number, count: number): Place[] => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => [12 * random(), 7 * random()] as const);
};

/** The shortest by trying every order. */
function byTrying(between: number[][], isRound: boolean): number {
  let best = Number.POSITIVE_INFINITY;
  const go = (at: number, left: readonly number[], sum: number): void => {
    if (left.length === 0) best = Math.min(best, isRound ? sum + between[at]![0]! : sum);
    for (const next of left)
      go(
        next,
        left.filter((x) => x !== next),
        sum + between[at]![next]!,
      );
  };
  go(0, between.map((_, i) => i).slice(1), 0);
  return best;
}

describe('order of visits', () => {
  test.each([true, false])('as trying every order, back to the start: %s', (isRound) => {
    for (let seed = 1; seed <= 40; seed += 1) {
      const between = distances(randomPlaces(seed, 2 + (seed % 7)));
      const tour = shortestTour(between, isRound);
      expect(tour.lengthM).toBeCloseTo(byTrying(between, isRound), 9);
      expect(tour).toMatchObject({ proven: true, lowerBoundM: tour.lengthM });
      expect([...tour.order].sort((a, b) => a - b)).toEqual(between.map((_, i) => i).slice(1));
    }
  });

  test('places on a circle, more than are tried exactly: round it', () => {
    for (const count of [EXACT_VISITS + 2, 25, 40]) {
      const places = Array.from({ length: count }, (_, i): Place => {
        // Scattered numbering, so that the order given is no help.
        const rad = (2 * Math.PI * ((i * 7) % count)) / count;
        return [5 * Math.cos(rad), 5 * Math.sin(rad)];
      });
      expect(new Set(places.map(String)).size).toBe(count);
      const tour = shortestTour(distances(places), true);
      const perimeter = count * 10 * Math.sin(Math.PI / count);
      expect(tour.lengthM).toBeCloseTo(perimeter, 9);
      expect(tour.lowerBoundM).toBeLessThanOrEqual(perimeter + 1e-9);
      expect(tour.lowerBoundM).toBeGreaterThan(0.999 * perimeter);
    }
  });

  test('places on a line without return: to the far end', () => {
    const places = [0, ...[9, 2, 7, 4, 11, 1, 13, 5, 3, 8, 10, 6, 12, 15, 14, 16]].map((x): Place => [x, 0]);
    const tour = shortestTour(distances(places), false);
    expect(tour.lengthM).toBeCloseTo(16, 9);
    expect(tour.lowerBoundM).toBeLessThanOrEqual(16 + 1e-9);
    expect(tour.lowerBoundM).toBeGreaterThan(15.9);
  });

  test.each([true, false])('long tours keep to their bound and close to it, back: %s', (isRound) => {
    for (let seed = 1; seed <= 8; seed += 1) {
      const tour = shortestTour(distances(randomPlaces(seed, 15 + 5 * seed)), isRound);
      expect(tour.lowerBoundM).toBeLessThanOrEqual(tour.lengthM);
      // Optimal tours of random places lie within a few percent of this bound (Held and Karp; Johnson, recalled).
      expect(tour.lowerBoundM).toBeGreaterThan(0.93 * tour.lengthM);
    }
  });

  test('the bound never exceeds the best of a case just small enough to try exactly', async () => {
    const { tourBoundM } = await import('../../src/coverage/tour-bound.ts');
    for (let seed = 50; seed < 90; seed += 1) {
      for (const isRound of [true, false]) {
        const between = distances(randomPlaces(seed, 3 + (seed % 9)));
        const { lengthM } = shortestTour(between, isRound);
        const bound = tourBoundM(between, isRound, lengthM);
        expect(bound).toBeLessThanOrEqual(lengthM + 1e-9);
        expect(bound).toBeGreaterThan(0.85 * lengthM);
      }
    }
  });

  test('no visits, no way', () => {
    expect(shortestTour([[0]], true)).toEqual({ order: [], lengthM: 0, lowerBoundM: 0, proven: true });
  });
});
