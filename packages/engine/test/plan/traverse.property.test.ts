import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adjustCourses } from '../../src/plan/adjust-courses.ts';
import { blunderHints } from '../../src/plan/blunder-hints.ts';
import { traverseClosure } from '../../src/plan/closure.ts';
import { courseOf, type TraverseLeg } from '../../src/plan/courses.ts';
import { solveTraverse } from '../../src/plan/traverse.ts';

const legs = fc.array(
  fc.record({
    lengthM: fc.double({ min: 0.1, max: 40, noNaN: true }),
    azimuthDeg: fc.double({ min: 0, max: 360, noNaN: true }),
  }),
  { minLength: 3, maxLength: 20 },
);
const rule = fc.constantFrom('compass' as const, 'transit' as const);

/** Legs of a round that closes: corners at growing angles about a middle. */
const closedLegs = fc
  .array(fc.double({ min: 2, max: 9, noNaN: true }), { minLength: 4, maxLength: 10 })
  .map((radii): TraverseLeg[] => {
    const corner = (i: number) => {
      const k = i % radii.length;
      const angle = (2 * Math.PI * k) / radii.length;
      return [radii[k]! * Math.cos(angle), radii[k]! * Math.sin(angle)] as const;
    };
    return radii.map((_, i) => {
      const [[x0, y0], [x1, y1]] = [corner(i), corner(i + 1)];
      return {
        lengthM: Math.hypot(x1 - x0, y1 - y0),
        azimuthDeg: (Math.atan2(x1 - x0, y1 - y0) * 180) / Math.PI,
      };
    });
  });

describe('adjustment', () => {
  test('whatever was measured, adjusted courses close', () => {
    fc.assert(
      fc.property(legs, rule, (measured, how) => {
        const { sumLatitudeM, sumDepartureM } = traverseClosure(adjustCourses(measured.map(courseOf), how));
        expect(Math.hypot(sumLatitudeM, sumDepartureM)).toBeLessThan(1e-9);
      }),
    );
  });

  test('a round that closes is left as it is', () => {
    fc.assert(
      fc.property(closedLegs, rule, (measured, how) => {
        const courses = measured.map(courseOf);
        adjustCourses(courses, how).forEach((course, i) => {
          expect(Math.abs(course.latitudeM - courses[i]!.latitudeM)).toBeLessThan(1e-12);
          expect(Math.abs(course.departureM - courses[i]!.departureM)).toBeLessThan(1e-12);
        });
      }),
    );
  });

  test('by the compass rule, turning all directions turns the corners and nothing else', () => {
    fc.assert(
      fc.property(legs, fc.double({ min: 0, max: 360, noNaN: true }), (measured, turnDeg) => {
        const plain = solveTraverse({ legs: measured, adjustment: 'compass' });
        const turned = solveTraverse({
          legs: measured.map((leg) => ({ ...leg, azimuthDeg: leg.azimuthDeg + turnDeg })),
          adjustment: 'compass',
        });
        expect(Math.abs(turned.areaM2 - plain.areaM2)).toBeLessThan(1e-8);
        plain.corners.forEach((corner, i) => {
          const other = turned.corners[i]!;
          const reach = Math.hypot(corner.xM, corner.yM) - Math.hypot(other.xM, other.yM);
          expect(Math.abs(reach)).toBeLessThan(1e-9);
        });
      }),
    );
  });

  test('the one wall that was misread is always among the hints, with the right correction', () => {
    const misread = fc.double({ min: 0.5, max: 3, noNaN: true });
    fc.assert(
      fc.property(closedLegs, fc.nat(9), misread, (true_, place, byM) => {
        const index = place % true_.length;
        const measured = true_.map((leg, i) => (i === index ? { ...leg, lengthM: leg.lengthM + byM } : leg));
        const hint = blunderHints(measured, 'compass').find(
          ({ kind, legIndex }) => kind === 'length' && legIndex === index,
        );
        expect(hint!.changeM).toBeCloseTo(-byM, 9);
      }),
    );
  });
});
