import { describe, expect, test } from 'vitest';
import type { Point } from '../../src/geometry/point.ts';
import { polygonAreaM2 } from '../../src/geometry/polygon-area.ts';
import { adjustCourses } from '../../src/plan/adjust-courses.ts';
import { traverseClosure } from '../../src/plan/closure.ts';
import { type Course, courseOf, type TraverseLeg } from '../../src/plan/courses.ts';
import { solveTraverse } from '../../src/plan/traverse.ts';

const FT = 0.3048;
const FT2 = FT * FT;

/** Quadrant bearing, e.g. S 68°05′35″ W, as an azimuth. */
function azimuth(ns: 'N' | 'S', degrees: number, minutes: number, seconds: number, ew: 'E' | 'W'): number {
  const angle = degrees + minutes / 60 + seconds / 3600;
  if (ns === 'N') return ew === 'E' ? angle : 360 - angle;
  return ew === 'E' ? 180 - angle : 180 + angle;
}

const within = (got: number, expected: number, tolerance: number): void => {
  expect(Math.abs(got - expected), `got ${got}, expected ${expected}`).toBeLessThanOrEqual(tolerance);
};

const NE = (northFt: number, eastFt: number): Point => ({ xM: eastFt * FT, yM: northFt * FT });

/** J. Mahun, Open Access Surveying Library, Traverse Computations: four-sided example, feet. */
describe('four-sided example', () => {
  const legs: TraverseLeg[] = [
    { id: 'AB', lengthM: 472.68 * FT, azimuthDeg: azimuth('S', 68, 5, 35, 'W') },
    { id: 'BC', lengthM: 216.13 * FT, azimuthDeg: azimuth('N', 19, 46, 0, 'W') },
    { id: 'CD', lengthM: 276.52 * FT, azimuthDeg: azimuth('N', 45, 55, 20, 'E') },
    { id: 'DA', lengthM: 382.24 * FT, azimuthDeg: azimuth('S', 54, 59, 15, 'E') },
  ];

  /** Course, latitude and departure, printed to 0.001 ft. */
  const PRINTED = [
    [0, -176.357, -438.548],
    [1, 203.395, -73.093],
    [2, 192.357, 198.651],
    [3, -219.312, 313.065],
  ] as const;

  test.each(PRINTED)('latitude and departure of course %d', (i, latitude, departure) => {
    const course = courseOf(legs[i]!);
    within(course.latitudeM / FT, latitude, 0.001);
    within(course.departureM / FT, departure, 0.001);
  });

  test('sums as printed', () => {
    const closure = traverseClosure(legs.map(courseOf));
    within(closure.perimeterM / FT, 1347.57, 1e-9);
    within(closure.sumLatitudeM / FT, 0.083, 0.001);
    within(closure.sumDepartureM / FT, 0.075, 0.001);
    within(closure.linearM / FT, 0.1119, 0.001);
  });

  test('precision of the courses as printed, worked out by hand', () => {
    const printed = PRINTED.map(([i, latitude, departure]) => ({
      lengthM: legs[i]!.lengthM,
      latitudeM: latitude * FT,
      departureM: departure * FT,
    }));
    within(traverseClosure(printed).precisionDenominator!, 12_046, 5);
    // Unrounded courses: sums of 0.083 and 0.075 ft, each within half of the last digit, allow 1:11,970 to 1:12,123.
    const unrounded = traverseClosure(legs.map(courseOf)).precisionDenominator!;
    within(unrounded, (11_970 + 12_123) / 2, (12_123 - 11_970) / 2);
  });

  test('corners adjusted by the compass rule, as printed to 0.001 ft', () => {
    const { corners, verdict, issues } = solveTraverse({ legs, start: NE(500, 2000), adjustment: 'compass' });
    const printed = [NE(500, 2000), NE(323.614, 1561.426), NE(526.996, 1488.321), NE(719.336, 1686.956)];
    printed.forEach((point, i) => {
      within(corners[i]!.yM / FT, point.yM / FT, 0.001);
      within(corners[i]!.xM / FT, point.xM / FT, 0.001);
    });
    expect(verdict).toBe('good');
    expect(issues).toEqual([]);
  });

  test('area of the adjusted corners, worked out from the printed cross products', () => {
    const { areaM2 } = solveTraverse({ legs, start: NE(500, 2000), adjustment: 'compass' });
    within(areaM2 / FT2, 102_935.7, 0.5);
    within(areaM2 / FT2 / 43_560, 2.3631, 0.00005);
  });
});

test('area from coordinates: the same library prints 250,550 ft², rounded from 250,552', () => {
  const corners = [NE(600, 1000), NE(254.542, 1209.288), NE(97.543, 566.876), NE(470.303, 397.969)];
  within(polygonAreaM2(corners) / FT2, 250_552, 5);
});

/** Purdue University, ASM 215: five-sided example, feet; latitudes and departures as printed. */
describe('five-sided example', () => {
  const courses: Course[] = (
    [
      [285.1, 255.88, 125.72],
      [610.45, -153.7, 590.78],
      [720.48, -694.28, -192.54],
      [203.0, 202.91, -6.02],
      [647.02, 388.48, -517.41],
    ] as const
  ).map(([length, latitude, departure]) => ({
    lengthM: length * FT,
    latitudeM: latitude * FT,
    departureM: departure * FT,
  }));

  test('misclosure', () => {
    const closure = traverseClosure(courses);
    within(closure.sumLatitudeM / FT, -0.71, 0.001);
    within(closure.sumDepartureM / FT, 0.53, 0.001);
    within(closure.linearM / FT, 0.886, 0.001);
    // The source prints 1/2771 because it divides by the error rounded to 0.89.
    within(closure.precisionDenominator!, 2783, 1);
    within(closure.perimeterM / FT / 0.89, 2771, 1);
  });

  test('second corner by the compass rule, as printed to 0.01 ft', () => {
    const [first] = adjustCourses(courses, 'compass');
    within(10_000 + first!.latitudeM / FT, 10_255.96, 0.01);
    within(10_000 + first!.departureM / FT, 10_125.66, 0.01);
  });
});

/** A taped room; expected values worked out by hand from the rules, apart from this code. */
describe('tape loop of a square-cornered room', () => {
  const legs: TraverseLeg[] = (
    [
      [40.0, 90],
      [18.0, 0],
      [12.1, 270],
      [10.0, 0],
      [28.0, 270],
      [28.2, 180],
    ] as const
  ).map(([length, azimuthDeg]) => ({ lengthM: length * FT, azimuthDeg }));

  test('misclosure', () => {
    const closure = traverseClosure(legs.map(courseOf));
    within(closure.perimeterM / FT, 136.3, 1e-9);
    within(closure.sumDepartureM / FT, -0.1, 1e-3);
    within(closure.sumLatitudeM / FT, -0.2, 1e-3);
    within(closure.linearM / FT, 0.2236, 1e-3);
    within(closure.precisionDenominator!, 610, 1);
  });

  test('transit rule: corners stay square', () => {
    const { corners, areaM2, axisDeg } = solveTraverse({ legs, adjustment: 'transit' });
    const expected = [
      [0, 0],
      [40.05, 0],
      [40.05, 18.064],
      [27.965, 18.064],
      [27.965, 28.1],
      [0, 28.1],
    ] as const;
    expected.forEach(([east, north], i) => {
      within(corners[i]!.xM / FT, east, 0.001);
      within(corners[i]!.yM / FT, north, 0.001);
    });
    expect(corners[1]!.yM).toBe(0);
    expect(corners[2]!.xM).toBe(corners[1]!.xM);
    within(areaM2 / FT2, 1004.11, 0.01);
    expect(axisDeg).toBe(0);
  });

  test('compass rule: corners are skewed', () => {
    const { corners, areaM2, axisDeg } = solveTraverse({ legs, adjustment: 'compass' });
    within(corners[1]!.xM / FT, 40.029, 0.001);
    within(corners[1]!.yM / FT, 0.059, 0.001);
    within(areaM2 / FT2, 1004.31, 0.01);
    expect(axisDeg).toBeNull();
  });
});
