import { describe, expect, test } from 'vitest';
import { adopt, baseCatalogue, criteria, overlays } from '../../src/criteria/index.ts';
import { readPrinted } from './printed-limits.ts';

const rows = [
  ...criteria,
  ...adopt(baseCatalogue, overlays).amendments.flatMap(({ after }) => (after ? [after] : [])),
].filter(({ limit }) => limit !== undefined);

/** Rows whose source rules in metric units, so that the US figure is the rounded one. */
const METRIC_FIRST = new Set(['RAD-02a', 'RAD-02b', 'EXS-01']);

describe('each limit is one figure in two systems', () => {
  test.each(rows.map((row) => [`${row.id} ${row.limit?.us} = ${row.limit?.si}`, row] as const))(
    '%s',
    (_name, row) => {
      const kept = [row.limit?.value].flat() as number[];
      const us = readPrinted(row.limit?.us ?? '');
      const si = readPrinted(row.limit?.si ?? '');
      const [exact, rounded] = METRIC_FIRST.has(row.id) ? [si, us] : [us, si];
      expect(exact.values).toHaveLength(kept.length);
      expect(rounded.values).toHaveLength(kept.length);
      kept.forEach((value, index) => {
        // Kept limits are written with at least eight digits.
        expect(Math.abs(value - exact.values[index])).toBeLessThanOrEqual(1e-7 * Math.abs(value));
        // Codes round either way: 16 in is printed as 407 mm.
        expect(Math.abs(value - rounded.values[index])).toBeLessThanOrEqual(rounded.step);
      });
    },
  );

  test('the reader of printed figures knows its units', () => {
    expect(readPrinted('3 1/4 in').values[0]).toBeCloseTo(0.08255, 12);
    expect(readPrinted('3-4 in').values).toEqual([expect.closeTo(0.0762, 12), expect.closeTo(0.1016, 12)]);
    expect(readPrinted('-0.004 in w.c.').values[0]).toBeCloseTo(-0.99536, 10);
    expect(() => readPrinted('6 cubits')).toThrow(/cubits/);
  });
});
