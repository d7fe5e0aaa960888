import { expect, it } from 'vitest';
import { rowOfPiers } from '../../src/screens/space/draw/piers.ts';

const from = { xM: 1, yM: 2 };

it('stands piers at the spacing that was taped, as many as reach the far end', () => {
  const row = rowOfPiers(from, { xM: 8.3, yM: 2 }, 2.4384);
  expect(row.map(({ xM }) => Number(xM.toFixed(4)))).toEqual([1, 3.4384, 5.8768, 8.3152]);
  expect(row.every(({ yM }) => yM === 2)).toBe(true);
});

it('leaves a pier out that would stand far past the end', () => {
  expect(rowOfPiers(from, { xM: 1, yM: 6.6 }, 2.5)).toHaveLength(2);
  expect(rowOfPiers(from, { xM: 1, yM: 6.7 }, 2.5)).toHaveLength(3);
});

it('makes no row of a spacing that is none, or of hundreds', () => {
  expect(rowOfPiers(from, { xM: 9, yM: 2 }, 0)).toEqual([]);
  expect(rowOfPiers(from, { xM: 9, yM: 2 }, 0.04)).toEqual([]);
  expect(rowOfPiers(from, { xM: 9, yM: 2 }, 0.0405)).toHaveLength(198);
});
