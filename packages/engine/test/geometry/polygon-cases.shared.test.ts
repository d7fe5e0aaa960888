import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { boundingBox } from '../../src/geometry/bounding-box.ts';
import { partitionAreas } from '../../src/geometry/partition-areas.ts';
import { perimeterM } from '../../src/geometry/perimeter.ts';
import type { Point } from '../../src/geometry/point.ts';
import { polygonAreaM2 } from '../../src/geometry/polygon-area.ts';
import { polygonContacts } from '../../src/geometry/simple-polygon.ts';

const shared = process.env.UNDERCROFT_SHARED;
if (!shared) {
  // biome-ignore lint/suspicious/noConsole: a suite that does not run must say so
  console.warn('geometry: house outlines and polygon boolean cases did NOT run: set UNDERCROFT_SHARED');
}

type Ring = [number, number][];
type Polygon = Ring[];
type Multi = Polygon[];

const read = (...path: string[]): unknown => JSON.parse(readFileSync(join(shared!, 'data', ...path), 'utf8'));
const ringOf = (ring: Ring): Point[] => ring.map(([xM, yM]) => ({ xM, yM }));
const isPolygon = (input: Polygon | Multi): input is Polygon =>
  input.flat(2).some((x) => typeof x === 'number');
const multiOf = (input: Polygon | Multi): Multi => (isPolygon(input) ? [input] : input);

describe.skipIf(!shared)('house outlines (needs UNDERCROFT_SHARED)', () => {
  test.each([
    ['house_outlines_us_city.geojson', 279],
    ['house_outlines_nordic_town.geojson', 250],
  ])('%s: area and perimeter match the columns, none crosses itself', (file, count) => {
    const { features } = read('outlines', file) as {
      features: {
        properties: { id: string; n_vertices: number; area_m2: number; perimeter_m: number };
        geometry: { coordinates: Polygon };
      }[];
    };
    expect(features).toHaveLength(count);
    for (const { properties, geometry } of features) {
      const ring = ringOf(geometry.coordinates[0]!).slice(0, -1);
      expect(ring, properties.id).toHaveLength(properties.n_vertices);
      // Columns are printed to 0.01; the last digit may fall either way.
      const area = polygonAreaM2(ring);
      expect(Math.abs(area - properties.area_m2), `${properties.id} area ${area}`).toBeLessThan(0.00501);
      const around = perimeterM(ring);
      expect(Math.abs(around - properties.perimeter_m), `${properties.id} ${around}`).toBeLessThan(0.00501);
      expect(polygonContacts(ring), properties.id).toEqual([]);
    }
  });
});

type Operation = 'union' | 'intersection' | 'xor' | 'difference';
const counts: Record<Operation, (in0: boolean, others: readonly boolean[]) => boolean> = {
  union: (first, others) => first || others.some(Boolean),
  intersection: (first, others) => first && others.every(Boolean),
  xor: (first, others) => [first, ...others].filter(Boolean).length % 2 === 1,
  difference: (first, others) => first && !others.some(Boolean),
};

/** How the rings of one polygon make its inside. The two sets differ where rings lie within each other's holes. */
type Inside = (rings: readonly boolean[]) => boolean;
const outerLessHoles: Inside = ([outer, ...holes]) => outer! && !holes.some(Boolean);
const evenOdd: Inside = (rings) => rings.filter(Boolean).length % 2 === 1;

/** Area of the result of a boolean operation, by one sweep over all rings of all shapes. */
function resultArea(operation: Operation, shapes: readonly Multi[], insideOf: Inside): number {
  const rings: Point[][] = [];
  const places = shapes.map((multi) =>
    multi.map((polygon) => polygon.map((ring) => rings.push(ringOf(ring)) - 1)),
  );
  const classify = (inside: readonly boolean[]): number => {
    const [first, ...others] = places.map((multi) =>
      multi.some((indices) => insideOf(indices.map((index) => inside[index]!))),
    );
    return counts[operation](first!, others) ? 0 : -1;
  };
  return partitionAreas(rings, classify, 1)[0]!;
}

function expectArea(
  label: string,
  operation: Operation,
  shapes: readonly Multi[],
  insideOf: Inside,
  expected: Multi,
): void {
  const got = resultArea(operation, shapes, insideOf);
  // Cross products, apart from the sweep under test: outer rings less their holes.
  const want = expected.reduce(
    (sum, [outer, ...holes]) =>
      sum + polygonAreaM2(ringOf(outer!)) - holes.reduce((s, hole) => s + polygonAreaM2(ringOf(hole)), 0),
    0,
  );
  const points = shapes.flat(2).flatMap(ringOf);
  const box = boundingBox(points) ?? { minXM: 0, minYM: 0, maxXM: 0, maxYM: 0 };
  const width = box.maxXM - box.minXM;
  const height = box.maxYM - box.minYM;
  const largest = points.reduce((most, p) => Math.max(most, Math.abs(p.xM), Math.abs(p.yM)), 0);
  // 1e-9 of the box round everything; and what half a last digit in each printed corner does to an area, which is
  // more than that where a case is only a few digits wide.
  const tolerance = 1e-9 * width * height + Number.EPSILON * largest * (width + height);
  expect(Math.abs(got - want), `${label} ${operation}: got ${got}, expected ${want}`).toBeLessThanOrEqual(
    tolerance,
  );
}

/** Expected results whose own pieces cover each other, so that their area is not the sum over the pieces. */
const OVERLAPPING_RESULTS = ['fatal4 union'];

describe.skipIf(!shared)('polygon boolean cases (needs UNDERCROFT_SHARED)', () => {
  test('set a: every result that two geometry libraries agree on', () => {
    const cases = read('polygons', 'polygon_boolean_cases_a.json') as Record<
      string,
      {
        args: (Polygon | Multi)[];
        expected: Record<string, Multi>;
        area_cross_check: Record<string, string>;
      }
    >;
    let checked = 0;
    for (const [name, { args, expected, area_cross_check }] of Object.entries(cases)) {
      for (const [operation, verdict] of Object.entries(area_cross_check)) {
        if (verdict !== 'agrees') continue;
        const result = multiOf((expected[operation] ?? expected.all)!);
        expectArea(name, operation as Operation, args.map(multiOf), outerLessHoles, result);
        checked += 1;
      }
    }
    expect(checked).toBe(146);
  });

  test('set b: every result that two geometry libraries agree on', () => {
    const cases = read('polygons', 'polygon_boolean_cases_b.json') as Record<
      string,
      {
        subject: Polygon | Multi;
        clip: Polygon | Multi;
        expected: { operation: string; result: Multi; area_cross_check: string }[];
      }
    >;
    let checked = 0;
    for (const [name, { subject, clip, expected }] of Object.entries(cases)) {
      for (const { operation, result, area_cross_check } of expected) {
        if (area_cross_check !== 'agrees') continue;
        if (OVERLAPPING_RESULTS.includes(`${name} ${operation}`)) continue;
        const shapes = [multiOf(subject), multiOf(clip)];
        if (operation === 'diff_ba') shapes.reverse();
        const one = operation.startsWith('diff') ? 'difference' : (operation as Operation);
        expectArea(name, one, shapes, evenOdd, multiOf(result));
        checked += 1;
      }
    }
    expect(checked).toBe(55);
  });
});
