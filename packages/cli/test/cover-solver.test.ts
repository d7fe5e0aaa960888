import { coverage } from '@undercroft/engine';
import { describe, expect, test } from 'vitest';
import { solveCover } from '../src/cover-solver.ts';

type Problem = Parameters<coverage.CoverSolver>[0];

/** Whole numbers below a limit, the same in every run (a linear congruential generator). */
function dice(seed: number): (limit: number) => number {
  let state = seed;
  return (limit) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
}

function randomProblem(seed: number, candidateCount: number, rowCount: number, most: number): Problem {
  const roll = dice(seed);
  const rows = Array.from({ length: rowCount }, () => [
    ...new Set(Array.from({ length: 1 + roll(most) }, () => roll(candidateCount))),
  ]);
  return { candidateCount, rows };
}

/** Size of the smallest choice, by trying every one. */
function smallestByEnumeration({ candidateCount, rows }: Problem): number {
  const masks = rows.map((row) => row.reduce((mask, c) => mask | (1 << c), 0));
  let least = candidateCount;
  for (let choice = 0; choice < 1 << candidateCount; choice += 1) {
    if (!masks.every((mask) => (mask & choice) !== 0)) continue;
    let size = 0;
    for (let rest = choice; rest !== 0; rest &= rest - 1) size += 1;
    least = Math.min(least, size);
  }
  return least;
}

const covers = ({ rows }: Problem, chosen: readonly number[]) =>
  rows.every((row) => row.some((c) => chosen.includes(c)));

describe('the solver for the fewest stations', () => {
  test('agrees with enumeration on small problems', async () => {
    for (let seed = 1; seed <= 25; seed += 1) {
      const problem = randomProblem(seed, 5 + (seed % 8), 6 + seed, 4);
      const solution = await solveCover(problem);
      const least = smallestByEnumeration(problem);
      expect(solution?.chosen, `case ${seed}`).toHaveLength(least);
      expect(covers(problem, solution?.chosen ?? [])).toBe(true);
      expect(Math.ceil((solution?.lowerBound ?? 0) - 1e-6)).toBe(least);
    }
  });

  test("agrees with the engine's own search where that proves its answer", async () => {
    let compared = 0;
    for (let seed = 1; seed <= 6; seed += 1) {
      const problem = randomProblem(100 + seed, 45, 120, 6);
      const own = coverage.setCover(problem);
      if (!own.proven) continue;
      compared += 1;
      expect((await solveCover(problem))?.chosen, `case ${seed}`).toHaveLength(own.chosen.length);
    }
    expect(compared).toBeGreaterThan(3);
  });

  test('proves what a search that is cut short leaves open', async () => {
    let open = 0;
    for (let seed = 1; seed <= 8; seed += 1) {
      // Rows of three: the bound of the linear program is often too low for them.
      const roll = dice(seed);
      const rows = Array.from({ length: 36 }, () => {
        const row = new Set<number>();
        while (row.size < 3) row.add(roll(16));
        return [...row];
      });
      const problem = { candidateCount: 16, rows };
      const cut = coverage.setCover(problem, 0);
      if (!cut.proven) open += 1;
      const helped = await coverage.setCoverWith(problem, solveCover, 0);
      expect(helped, `case ${seed}`).toMatchObject({ proven: true, gap: 0 });
      expect(helped.chosen).toHaveLength(smallestByEnumeration(problem));
      expect(helped.lowerBound).toBeGreaterThanOrEqual(cut.lowerBound);
    }
    expect(open).toBeGreaterThan(0);
  });

  test('chooses nothing where there is nothing to see', async () => {
    expect(await solveCover({ candidateCount: 3, rows: [] })).toEqual({ chosen: [], lowerBound: 0 });
  });

  test('gives the same choice again', async () => {
    const problem = randomProblem(11, 30, 80, 5);
    expect(await solveCover(problem)).toEqual(await solveCover(problem));
  });
});
