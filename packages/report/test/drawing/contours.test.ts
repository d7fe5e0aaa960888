import type { FieldGridMap } from '@undercroft/assessment';
import { describe, expect, test } from 'vitest';
import { fieldColor } from '../../src/drawing/air/air-bands.ts';
import { partsAbove } from '../../src/drawing/air/contours.ts';

/** A map of a known function of the place; null where there is no floor. */
function mapOf(
  f: (xM: number, yM: number) => number | null,
  columns = 20,
  rows = 12,
): FieldGridMap & { values: (number | null)[] } {
  const [originXM, originYM, cellXM, cellYM] = [-1, 2, 0.25, 0.5];
  const values = Array.from({ length: columns * rows }, (_, k) =>
    f(originXM + ((k % columns) + 0.5) * cellXM, originYM + (Math.floor(k / columns) + 0.5) * cellYM),
  );
  const nothing = values.map(() => null);
  return {
    originXM,
    originYM,
    cellXM,
    cellYM,
    columns,
    rows,
    relativeHumidity: values,
    dewPointC: nothing,
    woodMoisture: nothing,
    values,
  };
}

describe('contours of the air', () => {
  test('a field that rises evenly is cut where it has the value, at any size of cell', () => {
    const map = mapOf((x) => 0.5 + 0.1 * x);
    const rings = partsAbove(map, map.values, [0.6]).get(0.6) ?? [];
    // 0.6 lies at x = 1 m; the rest of the ring runs outside the floor, which begins at y = 2 m and ends at 8 m.
    const onFloor = rings.flat().filter((p) => p.yM > 2.3 && p.yM < 7.7 && p.xM < 3.5);
    expect(onFloor.length).toBeGreaterThan(4);
    for (const p of onFloor) expect(p.xM).toBeCloseTo(1, 6);
  });

  test('a round field is cut in a circle', () => {
    const map = mapOf((x, y) => 1 - 0.1 * Math.hypot(x - 1.5, y - 5), 20, 12);
    const rings = partsAbove(map, map.values, [0.87]).get(0.87) ?? [];
    expect(rings).toHaveLength(1);
    for (const p of rings[0]) expect(Math.hypot(p.xM - 1.5, p.yM - 5)).toBeCloseTo(1.3, 1);
  });

  test('runs out over the edge of the floor, and draws nothing where nothing is that humid', () => {
    const map = mapOf((x) => (x > 2 ? null : 0.9));
    const [ring] = partsAbove(map, map.values, [0.8]).get(0.8) ?? [];
    const right = Math.max(...ring.map((p) => p.xM));
    expect(right).toBeGreaterThan(2);
    expect(partsAbove(map, map.values, [0.95]).get(0.95)).toEqual([]);
    const none = mapOf(() => null);
    expect(partsAbove(none, none.values, [0.5]).size).toBe(0);
  });

  test('each humidity has its band of color, each edge belonging to the damper one', () => {
    expect(fieldColor(0.2)).toBe('field0');
    expect(fieldColor(0.5)).toBe('field1');
    expect(fieldColor(0.699)).toBe('field4');
    expect(fieldColor(0.7)).toBe('field5');
    expect(fieldColor(1.02)).toBe('field10');
  });
});
