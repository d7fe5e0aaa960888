import { angleBetweenDeg, bearingDeg, wrapDeg } from '../geometry/bearing.ts';
import { distanceM, type Point } from '../geometry/point.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { alongLine } from './rings.ts';
import type { Station } from './scene.ts';

/** A clip as marked on the plan. */
export interface MarkedClip {
  readonly id: string;
  /** Where the camera was at some times in the clip, with its bearing where it was noted. */
  readonly marks: readonly { readonly atS: number; readonly at: Point; readonly bearingDeg?: number }[];
  /** Bearing for marks without their own; without either the camera is taken to look the way it goes. */
  readonly bearingDeg?: number;
  readonly fieldOfViewDeg: number;
  readonly rangeM: number;
  readonly heightM?: number;
}

/** Stations no farther apart than this along the path, m. Common practice, no source. */
const STEP_M = 0.5;
/** A turn from one station to the next of no more than this share of the field of view. */
const TURN_SHARE = 1 / 3;

/**
 * The stations that a clip amounts to: along the straight lines between its marks, in the order of their times, at
 * least every half meter and every third of the field of view that the camera turns. Between two marks the camera
 * turns evenly, the shorter way. Ids are `<clip>@<seconds>s`.
 *
 * A clip that stands still without a bearing gives no stations and a notice, because nobody knows where it looked.
 * @throws EngineError `not-finite` or `out-of-range` for a time below 0, a field of view not from 0.1 to 360°, or
 *   figures that are none
 */
export function stationsOfClip(clip: MarkedClip): { stations: Station[]; notices: Notice[] } {
  const view = {
    fieldOfViewDeg: requireRange(`clip ${clip.id}: field of view (degrees)`, clip.fieldOfViewDeg, 0.1, 360),
    rangeM: clip.rangeM,
    ...(clip.heightM === undefined ? {} : { heightM: clip.heightM }),
  };
  const marks = [...clip.marks].sort((a, b) => a.atS - b.atS);
  for (const { atS } of marks) requireRange(`clip ${clip.id}: time of a mark (s)`, atS, 0, 1e6);
  const bearings = marks.map((_, i) => bearingAt(clip, marks, i));
  const stations: Station[] = [];
  const notices: Notice[] = [];
  const add = (atS: number, at: Point, bearing: number | null): void => {
    if (bearing === null) return;
    stations.push({ id: `${clip.id}@${Math.round(atS * 100) / 100}s`, at, bearingDeg: bearing, ...view });
  };
  marks.forEach((mark, i) => {
    add(mark.atS, mark.at, bearings[i]!);
    const next = marks[i + 1];
    const from = bearings[i]!;
    if (!next || from === null) return;
    const to = bearings[i + 1] ?? from;
    const way = distanceM(mark.at, next.at);
    const turn = angleBetweenDeg(from, to) * (wrapDeg(to - from) > 180 ? -1 : 1);
    const steps = Math.ceil(
      Math.max(way / STEP_M, Math.abs(turn) / (TURN_SHARE * view.fieldOfViewDeg)) - 1e-9,
    );
    for (let k = 1; k < steps; k += 1) {
      const share = k / steps;
      const at = alongLine(mark.at, next.at, share * way);
      add(mark.atS + share * (next.atS - mark.atS), at, wrapDeg(from + share * turn));
    }
  });
  if (marks.length > 0 && stations.length === 0) {
    notices.push({
      code: 'no-direction',
      message: `Clip ${clip.id} stands still and no bearing was noted, so it shows nothing for certain.`,
    });
  }
  return { stations, notices };
}

/** Own bearing, the clip's, the way to the next different place, or the way from the last one. */
function bearingAt(clip: MarkedClip, marks: MarkedClip['marks'], i: number): number | null {
  const known = marks[i]!.bearingDeg ?? clip.bearingDeg;
  if (known !== undefined) return wrapDeg(known);
  const here = marks[i]!.at;
  for (let k = i + 1; k < marks.length; k += 1) {
    const ahead = bearingDeg(here, marks[k]!.at);
    if (ahead !== null) return ahead;
  }
  for (let k = i - 1; k >= 0; k -= 1) {
    const behind = bearingDeg(marks[k]!.at, here);
    if (behind !== null) return behind;
  }
  return null;
}
