import { wrapDeg } from '../geometry/bearing.ts';
import { traverseClosure } from './closure.ts';
import type { Course, TraverseLeg } from './courses.ts';

/** How the closing error is spread over the courses. */
export type AdjustmentRule = 'compass' | 'transit';

/**
 * Courses whose latitudes and departures add up to nothing.
 *
 * `compass` (Bowditch): each course takes its share of the closing error by its length. It suits walls whose angles
 * are as doubtful as their lengths, and skews right angles a little.
 * `transit`: latitudes are corrected in proportion to |latitude|, departures to |departure|. Walls along the axes
 * keep their direction, so square corners stay square.
 * The lengths returned are the measured ones. Sources: J. Mahun, Open Access Surveying Library, Traverse
 * Computations, chapter G (compass rule); standard surveying textbooks, from memory (transit rule).
 */
export function adjustCourses(courses: readonly Course[], rule: AdjustmentRule): Course[] {
  const { perimeterM, sumLatitudeM, sumDepartureM } = traverseClosure(courses);
  let latitudes = 0;
  let departures = 0;
  for (const course of courses) {
    latitudes += Math.abs(course.latitudeM);
    departures += Math.abs(course.departureM);
  }
  const share = (part: number, whole: number): number => (whole === 0 ? 0 : part / whole);
  return courses.map((course) => {
    const byLength = share(course.lengthM, perimeterM);
    const ofLatitude = rule === 'compass' ? byLength : share(Math.abs(course.latitudeM), latitudes);
    const ofDeparture = rule === 'compass' ? byLength : share(Math.abs(course.departureM), departures);
    return {
      lengthM: course.lengthM,
      latitudeM: course.latitudeM - sumLatitudeM * ofLatitude,
      departureM: course.departureM - sumDepartureM * ofDeparture,
    };
  });
}

/** Walls whose directions differ from a quarter turn by less than this are square to each other, degrees. */
const SQUARE_DEG = 0.01;

/**
 * Azimuth, degrees 0 to below 90, of the axes along which most of the walls run: the walls that are parallel or
 * square to one another and have the greatest length together, when that is more than half of the perimeter. 0, the
 * plan's own axes, when no such set of walls exists. The transit rule in these axes keeps a house square that was
 * drawn at an angle.
 */
export function squareAxisDeg(legs: readonly TraverseLeg[]): number {
  let perimeterM = 0;
  let best = 0;
  let bestM = 0;
  for (const leg of legs) {
    perimeterM += leg.lengthM;
    let togetherM = 0;
    for (const other of legs) {
      const off = wrapDeg(other.azimuthDeg - leg.azimuthDeg) % 90;
      if (Math.min(off, 90 - off) < SQUARE_DEG) togetherM += other.lengthM;
    }
    if (togetherM > bestM) {
      bestM = togetherM;
      best = wrapDeg(leg.azimuthDeg) % 90;
    }
  }
  return bestM > perimeterM / 2 ? best : 0;
}
