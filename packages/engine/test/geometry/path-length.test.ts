import { describe, expect, it } from 'vitest';
import { pathLengthM } from '../../src/geometry/path-length.ts';

describe('length of a path', () => {
  it('adds up its legs and does not close', () => {
    expect(
      pathLengthM([
        { xM: 1, yM: 2 },
        { xM: 4, yM: 6 },
        { xM: 4, yM: 8.5 },
      ]),
    ).toBe(7.5);
  });

  it('is nothing for fewer than two points', () => {
    expect(pathLengthM([])).toBe(0);
    expect(pathLengthM([{ xM: 3, yM: 3 }])).toBe(0);
  });
});
