import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  areaOfDifferenceM2,
  areaOfOverlapM2,
  areaOfUnionM2,
  shapeAreaM2,
} from '../../src/geometry/area-of-overlap.ts';
import { cosDeg, sinDeg } from '../../src/geometry/bearing.ts';
import { centroid } from '../../src/geometry/centroid.ts';
import { distanceToBoundaryM } from '../../src/geometry/distance.ts';
import { normalizePolygon } from '../../src/geometry/normalize-polygon.ts';
import { perimeterM } from '../../src/geometry/perimeter.ts';
import type { Point } from '../../src/geometry/point.ts';
import { pointInPolygon } from '../../src/geometry/point-in-polygon.ts';
import { polygonAreaM2, signedAreaM2 } from '../../src/geometry/polygon-area.ts';
import { polygonEdges } from '../../src/geometry/polygon-edges.ts';
import { polygonContacts } from '../../src/geometry/simple-polygon.ts';

/** Simple, mostly concave polygons: corners at growing angles about a middle, each at its own distance.
 * No gap reaches half a turn (1 / (1 + 3 · 0.4) of a whole one), so sides cannot cross. */
const simplePolygon = fc
  .record({
    gaps: fc.array(fc.double({ min: 0.4, max: 1, noNaN: true }), { minLength: 4, maxLength: 14 }),
    radii: fc.array(fc.double({ min: 1, max: 9, noNaN: true }), { minLength: 14, maxLength: 14 }),
    xM: fc.double({ min: -6, max: 6, noNaN: true }),
    yM: fc.double({ min: -6, max: 6, noNaN: true }),
  })
  .map(({ gaps, radii, xM, yM }): Point[] => {
    const total = gaps.reduce((a, b) => a + b, 0);
    let angle = 0;
    return gaps.map((gap, i) => {
      angle += (gap / total) * 2 * Math.PI;
      return { xM: xM + radii[i]! * Math.cos(angle), yM: yM + radii[i]! * Math.sin(angle) };
    });
  });
const point = fc.record({
  xM: fc.double({ min: -16, max: 16, noNaN: true }),
  yM: fc.double({ min: -16, max: 16, noNaN: true }),
});

/** Turns of the line of sight from a point once round the ring: the referee for inside and outside. */
function windingNumber(p: Point, ring: readonly Point[]): number {
  let turned = 0;
  for (let i = 0; i < ring.length; i += 1) {
    const a = { x: ring[i]!.xM - p.xM, y: ring[i]!.yM - p.yM };
    const next = ring[(i + 1) % ring.length]!;
    const b = { x: next.xM - p.xM, y: next.yM - p.yM };
    turned += Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
  }
  return Math.round(turned / (2 * Math.PI));
}

function moved(ring: readonly Point[], angleDeg: number, dx: number, dy: number): Point[] {
  const [s, c] = [sinDeg(angleDeg), cosDeg(angleDeg)];
  return ring.map((p) => ({ xM: c * p.xM - s * p.yM + dx, yM: s * p.xM + c * p.yM + dy }));
}

describe('polygons', () => {
  test('area and perimeter do not depend on place, turn, or first corner', () => {
    const shift = fc.double({ min: -100, max: 100, noNaN: true });
    const turn = fc.double({ min: 0, max: 360, noNaN: true });
    fc.assert(
      fc.property(simplePolygon, turn, shift, shift, fc.nat(13), (ring, angle, dx, dy, start) => {
        const first = start % ring.length;
        const other = moved([...ring.slice(first), ...ring.slice(0, first)], angle, dx, dy);
        expect(Math.abs(signedAreaM2(other) - signedAreaM2(ring))).toBeLessThan(1e-10);
        expect(Math.abs(perimeterM(other) - perimeterM(ring))).toBeLessThan(1e-10);
        const [want, got] = [moved([centroid(ring)!], angle, dx, dy)[0]!, centroid(other)!];
        expect(Math.hypot(want.xM - got.xM, want.yM - got.yM)).toBeLessThan(1e-9);
      }),
    );
  });

  test('the sweep measures the same area as cross products', () => {
    fc.assert(
      fc.property(simplePolygon, (ring) => {
        expect(Math.abs(shapeAreaM2({ outer: ring }) - polygonAreaM2(ring))).toBeLessThan(1e-11);
      }),
    );
  });

  test('point in polygon agrees with the winding number', () => {
    fc.assert(
      fc.property(simplePolygon, point, (ring, p) => {
        fc.pre(distanceToBoundaryM(p, ring) > 1e-6);
        expect(pointInPolygon(p, ring)).toBe(windingNumber(p, ring) === 0 ? 'outside' : 'inside');
      }),
      { numRuns: 2000 },
    );
  });

  test('corners and places on walls are on the edge', () => {
    fc.assert(
      fc.property(simplePolygon, fc.double({ min: 0, max: 1, noNaN: true }), (ring, t) => {
        for (const { from, to } of polygonEdges(ring)) {
          const on = { xM: from.xM + t * (to.xM - from.xM), yM: from.yM + t * (to.yM - from.yM) };
          expect(pointInPolygon(on, ring)).toBe('edge');
        }
      }),
    );
  });

  test('a step along the outward normal leads out, against it leads in', () => {
    fc.assert(
      fc.property(simplePolygon, fc.boolean(), (drawn, turnedRound) => {
        const ring = turnedRound ? [...drawn].reverse() : drawn;
        for (const { from, to, lengthM, outwardNormalDeg } of polygonEdges(ring)) {
          fc.pre(lengthM > 1e-3);
          const middle = { xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 };
          const step = (by: number): Point => ({
            xM: middle.xM + by * sinDeg(outwardNormalDeg),
            yM: middle.yM + by * cosDeg(outwardNormalDeg),
          });
          expect(pointInPolygon(step(1e-6), ring)).toBe('outside');
          expect(pointInPolygon(step(-1e-6), ring)).toBe('inside');
        }
      }),
    );
  });

  test('the normal form is its own normal form, whichever way it was drawn', () => {
    fc.assert(
      fc.property(simplePolygon, (ring) => {
        const [head, ...tail] = ring;
        const there = normalizePolygon(ring);
        const back = normalizePolygon([head!, ...tail.reverse()]);
        expect(back.corners).toEqual(there.corners);
        expect(normalizePolygon(there.corners).corners).toEqual(there.corners);
        expect(signedAreaM2(there.corners)).toBeGreaterThan(0);
      }),
    );
  });

  test('swapping two corners that are not neighbors of a convex polygon makes it cross', () => {
    const convex = fc
      .integer({ min: 5, max: 12 })
      .chain((n) =>
        fc.record({ n: fc.constant(n), i: fc.nat(n - 1), gap: fc.integer({ min: 1, max: n - 1 }) }),
      );
    fc.assert(
      fc.property(convex, ({ n, i, gap }) => {
        const ring = Array.from({ length: n }, (_, k) => ({
          xM: 5 * Math.cos((2 * Math.PI * k) / n),
          yM: 3 * Math.sin((2 * Math.PI * k) / n),
        }));
        expect(polygonContacts(ring)).toEqual([]);
        const j = (i + gap) % n;
        [ring[i], ring[j]] = [ring[j]!, ring[i]!];
        const contacts = polygonContacts(ring);
        expect(contacts.some((c) => c.kind === 'cross')).toBe(true);
        for (const { edgeA, edgeB, at } of contacts) {
          for (const e of [edgeA, edgeB]) {
            expect(distanceToBoundaryM(at, [ring[e]!, ring[(e + 1) % n]!])).toBeLessThan(1e-9);
          }
        }
      }),
    );
  });
});

/** m²: rounding in coordinates up to 50 m, with a margin of a thousand. */
const SLACK_M2 = 1e-9;

describe('overlaps', () => {
  test('overlap is symmetric, within bounds, and adds up with difference and union', () => {
    fc.assert(
      fc.property(simplePolygon, simplePolygon, (ringA, ringB) => {
        const [a, b] = [{ outer: ringA }, { outer: ringB }];
        const [areaA, areaB] = [polygonAreaM2(ringA), polygonAreaM2(ringB)];
        const overlap = areaOfOverlapM2(a, b);
        expect(Math.abs(areaOfOverlapM2(b, a) - overlap)).toBeLessThan(SLACK_M2);
        expect(overlap).toBeGreaterThanOrEqual(0);
        expect(overlap).toBeLessThan(Math.min(areaA, areaB) + SLACK_M2);
        expect(Math.abs(overlap + areaOfDifferenceM2(a, b) - areaA)).toBeLessThan(SLACK_M2);
        expect(Math.abs(areaOfUnionM2([a, b]) - (areaA + areaB - overlap))).toBeLessThan(SLACK_M2);
      }),
      { numRuns: 300 },
    );
  });

  test('turning both shapes changes no area', () => {
    const turn = fc.double({ min: 0, max: 360, noNaN: true });
    fc.assert(
      fc.property(simplePolygon, simplePolygon, turn, (ringA, ringB, angle) => {
        const before = areaOfOverlapM2({ outer: ringA }, { outer: ringB });
        const after = areaOfOverlapM2(
          { outer: moved(ringA, angle, 31, -17) },
          { outer: moved(ringB, angle, 31, -17) },
        );
        expect(Math.abs(after - before)).toBeLessThan(SLACK_M2);
      }),
      { numRuns: 300 },
    );
  });

  test('a shape overlaps itself by its whole area', () => {
    fc.assert(
      fc.property(simplePolygon, (ring) => {
        const area = polygonAreaM2(ring);
        expect(Math.abs(areaOfOverlapM2({ outer: ring }, { outer: ring }) - area)).toBeLessThan(SLACK_M2);
      }),
    );
  });
});
