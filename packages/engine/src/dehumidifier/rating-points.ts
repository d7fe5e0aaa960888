import { convert } from '../units/convert.ts';
import { relativeCapacity, relativeEfficiency } from './surfaces.ts';

/** Test air that a label speaks of. */
export type RatingPointKey = '80F-60' | '73F-60' | '65F-60';

/** A standard test air. */
export interface RatingPoint {
  readonly key: RatingPointKey;
  readonly title: string;
  readonly temperatureC: number;
  readonly relativeHumidity: number;
  /** Id of the source. */
  readonly sourceId: string;
}

/** The test airs in use. A capacity without one of these says nothing: the same machine reads 1 : 0.84 : 0.66. */
export const RATING_POINTS: readonly RatingPoint[] = [
  {
    key: '80F-60',
    title: '80 °F and 60 % (labels before June 2019, and the trade still)',
    temperatureC: convert(80, 'F', 'C'),
    relativeHumidity: 0.6,
    sourceId: 'aham-dh-1-2008',
  },
  {
    key: '73F-60',
    title: '73 °F and 60 % (whole-home machines, federal test)',
    temperatureC: convert(73, 'F', 'C'),
    relativeHumidity: 0.6,
    sourceId: 'doe-appendix-x1',
  },
  {
    key: '65F-60',
    title: '65 °F and 60 % (portable machines, federal test)',
    temperatureC: convert(65, 'F', 'C'),
    relativeHumidity: 0.6,
    sourceId: 'doe-appendix-x1',
  },
];

/** The rating point of a key. */
export function ratingPoint(key: RatingPointKey): RatingPoint {
  return RATING_POINTS.find((point) => point.key === key)!;
}

/**
 * Capacity at another test air, in the unit it was given in. By the generic surface: a machine of the same kind, not
 * this machine; published label pairs give 0.60 to 0.71 from 80 °F to 65 °F where the surface gives 0.66.
 * Source: generic surface attributed to Winkler et al. 2011, normalized.
 */
export function convertCapacity(capacity: number, from: RatingPointKey, to: RatingPointKey): number {
  const a = ratingPoint(from);
  const b = ratingPoint(to);
  return (
    (capacity * relativeCapacity(b.temperatureC, b.relativeHumidity)) /
    relativeCapacity(a.temperatureC, a.relativeHumidity)
  );
}

/**
 * Efficiency (water per kWh) at another test air. Limits as `convertCapacity`. The federal integrated factor also counts
 * standby, which this leaves out.
 */
export function convertEfficiency(litersPerKWh: number, from: RatingPointKey, to: RatingPointKey): number {
  const a = ratingPoint(from);
  const b = ratingPoint(to);
  return (
    (litersPerKWh * relativeEfficiency(b.temperatureC, b.relativeHumidity)) /
    relativeEfficiency(a.temperatureC, a.relativeHumidity)
  );
}
