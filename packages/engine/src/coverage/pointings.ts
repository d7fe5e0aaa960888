import { wrapDeg } from '../geometry/bearing.ts';

/** Steps of bearings, degrees: finer than anyone points a camera. */
const STEP_DEG = 1;
/** Kept free at each side of a picture, degrees, for a hand that is not quite steady. Common practice, no source. */
const MARGIN_DEG = 2;

/**
 * The fewest bearings, degrees clockwise from +y, ascending, in which pictures must be taken so that each of some
 * directions lies well within one of them. Exact in whole degrees: one of the pictures may be taken to begin at one of
 * the directions, and then each next one begins at the first direction not yet held.
 * @param directionsDeg where there is something to be seen
 * @param fieldOfViewDeg what one picture takes in; a full turn needs one picture
 */
export function pointings(directionsDeg: readonly number[], fieldOfViewDeg: number): number[] {
  if (directionsDeg.length === 0) return [];
  if (fieldOfViewDeg >= 360) return [0];
  const count = Math.round(360 / STEP_DEG);
  const wanted = new Uint8Array(count);
  for (const direction of directionsDeg) wanted[Math.floor(wrapDeg(direction) / STEP_DEG) % count] = 1;
  const held = Math.max(1, Math.floor((fieldOfViewDeg - 2 * MARGIN_DEG) / STEP_DEG));
  let best: number[] | null = null;
  for (let start = 0; start < count; start += 1) {
    if (wanted[start] === 0) continue;
    const bearings: number[] = [];
    for (let at = 0; at < count; ) {
      if (wanted[(start + at) % count] === 0) {
        at += 1;
        continue;
      }
      let last = at;
      for (let k = at; k < Math.min(count, at + held); k += 1)
        if (wanted[(start + k) % count] === 1) last = k;
      // The middle of what this picture must hold, which leaves the most at both sides.
      bearings.push(wrapDeg((start + (at + last + 1) / 2) * STEP_DEG));
      at += held;
    }
    if (best === null || bearings.length < best.length) best = bearings;
  }
  return best!.sort((a, b) => a - b);
}
