import type { FieldRange, PlaceFinder, PlaceWords } from '@undercroft/assessment';
import { percent, tapedFrom, toward } from './print-coverage.ts';

/** A share with its range where that is more than nothing, e.g. `92 % (90 to 92 %)`. */
export function rangeText({ low, value, high }: FieldRange): string {
  const [from, to] = [percent(low), percent(high)];
  return from === to ? percent(value) : `${percent(value)} (${from.replace(' %', '')} to ${to})`;
}

/** A figure with its range, in so many decimals. */
export function figureRange({ low, value, high }: FieldRange, decimals: number): string {
  const [from, to] = [low.toFixed(decimals), high.toFixed(decimals)];
  return from === to ? value.toFixed(decimals) : `${value.toFixed(decimals)} (${from} to ${to})`;
}

/** Places by tape from walls, directions by the compass. */
export const placeWords = (place: PlaceFinder): PlaceWords => ({
  at: (at) => tapedFrom(place.fromWalls(at)),
  toward: (bearingDeg) => toward(place.compassDeg(bearingDeg)),
  percent,
});
