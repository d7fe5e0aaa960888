import { type Point, requireFinitePoints } from '../geometry/point.ts';
import { requireRange } from '../numerics/require-range.ts';
import { BLIND, OPEN, type SightSpan, sweepFrom } from './angular-sweep.ts';
import type { CompiledScene } from './compiled-scene.ts';
import { addArc, chordInRange } from './range-circle.ts';
import { type Station, USUAL_VIEW } from './scene.ts';
import { standingPlace } from './standing-place.ts';

/** What one station sees of floor and surfaces, heights of bars left aside. */
export interface StationView {
  readonly station: Station;
  /** Where it was taken to stand; null when it is nowhere near the open floor, and then nothing is seen. */
  readonly eye: Point | null;
  readonly eyeM: number;
  /** Ring of what is seen, arcs of the range as chords inside them. */
  readonly polygon: readonly Point[];
  /** Area within, arcs counted in full [m²]. */
  readonly areaM2: number;
  /** Stretches of faces within range and at no less than the least angle. */
  readonly faces: readonly SeenStretch[];
}

/** A stretch of a face, between two distances along it [m]. */
export interface SeenStretch {
  readonly face: number;
  readonly fromM: number;
  readonly toM: number;
  /** The same two places in the plan. */
  readonly from: Point;
  readonly to: Point;
}

/**
 * Looks around from a station.
 * @param maxIncidenceDeg a surface seen at a flatter view than this from its normal does not count as seen
 * @throws EngineError `not-finite` or `out-of-range`: bearing from −3600 to 3600°, field of view 0.1 to 360°, range
 *   0.01 m and more, height 0 to 20 m
 */
export function viewFrom(compiled: CompiledScene, station: Station, maxIncidenceDeg: number): StationView {
  const { at, bearingDeg, fieldOfViewDeg, rangeM } = station;
  const name = `station ${station.id}`;
  requireFinitePoints(name, [at]);
  const bearing = requireRange(`${name}: bearing (degrees)`, bearingDeg, -3600, 3600);
  const width = requireRange(`${name}: field of view (degrees)`, fieldOfViewDeg, 0.1, 360);
  if (rangeM !== Number.POSITIVE_INFINITY) requireRange(`${name}: range (m)`, rangeM, 0.01, 1e6);
  const eyeM = requireRange(`${name}: height (m)`, station.heightM ?? USUAL_VIEW.heightM, 0, 20);
  const eye = standingPlace(compiled, at);
  if (eye === null) return { station, eye, eyeM, polygon: [], areaM2: 0, faces: [] };

  const widthRad = (width * Math.PI) / 180;
  const startRad = ((90 - bearing) * Math.PI) / 180 - widthRad / 2;
  const spans = sweepFrom(compiled.blockers, eye.xM, eye.yM, startRad, widthRad, rangeM);
  return {
    station,
    eye,
    eyeM,
    ...drawView(compiled, eye, spans, startRad, width === 360, rangeM, maxIncidenceDeg),
  };
}

function drawView(
  { blockers: b }: CompiledScene,
  eye: Point,
  spans: readonly SightSpan[],
  startRad: number,
  fullTurn: boolean,
  rangeM: number,
  maxIncidenceDeg: number,
): { polygon: Point[]; areaM2: number; faces: SeenStretch[] } {
  const polygon: Point[] = [];
  const faces: SeenStretch[] = [];
  const reach = Math.tan((maxIncidenceDeg * Math.PI) / 180);
  let areaM2 = 0;
  let connected = fullTurn && spans.every((span) => span.blocker !== BLIND);
  for (const { blocker, fromRad, toRad, fromShare, toShare } of spans) {
    if (blocker === BLIND) {
      connected = false;
      continue;
    }
    if (!connected) polygon.push(eye);
    connected = true;
    if (blocker === OPEN) {
      areaM2 += addArc(polygon, eye, rangeM, startRad + fromRad, startRad + toRad);
      continue;
    }
    const p = pointOn(b.ax[blocker]!, b.ay[blocker]!, b.bx[blocker]!, b.by[blocker]!, fromShare);
    const q = pointOn(b.ax[blocker]!, b.ay[blocker]!, b.bx[blocker]!, b.by[blocker]!, toShare);
    const chord = chordInRange(eye, p, q, rangeM);
    if (chord === null) {
      areaM2 += addArc(polygon, eye, rangeM, startRad + fromRad, startRad + toRad);
      continue;
    }
    const s = chord.from === 0 ? p : pointOn(p.xM, p.yM, q.xM, q.yM, chord.from);
    const t = chord.to === 1 ? q : pointOn(p.xM, p.yM, q.xM, q.yM, chord.to);
    if (chord.from > 0) areaM2 += addArc(polygon, eye, rangeM, startRad + fromRad, radTo(eye, s));
    polygon.push(s, t);
    areaM2 += ((s.xM - eye.xM) * (t.yM - eye.yM) - (t.xM - eye.xM) * (s.yM - eye.yM)) / 2;
    if (chord.to < 1) areaM2 += addArc(polygon, eye, rangeM, radTo(eye, t), startRad + toRad);
    if (b.face[blocker]! >= 0) addStretch(faces, b, blocker, eye, s, t, reach);
  }
  return { polygon, areaM2, faces };
}

function pointOn(ax: number, ay: number, bx: number, by: number, share: number): Point {
  if (share === 0) return { xM: ax, yM: ay };
  if (share === 1) return { xM: bx, yM: by };
  return { xM: ax + share * (bx - ax), yM: ay + share * (by - ay) };
}

function radTo(eye: Point, p: Point): number {
  return Math.atan2(p.yM - eye.yM, p.xM - eye.xM);
}

/** Adds the part of s to t that is not seen too flat: no farther from the eye's foot on the line than `reach` times
 * the eye's distance from the line. */
function addStretch(
  faces: SeenStretch[],
  b: CompiledScene['blockers'],
  piece: number,
  eye: Point,
  s: Point,
  t: Point,
  reach: number,
): void {
  const ax = b.ax[piece]!;
  const ay = b.ay[piece]!;
  const length = Math.hypot(b.bx[piece]! - ax, b.by[piece]! - ay);
  const ex = (b.bx[piece]! - ax) / length;
  const ey = (b.by[piece]! - ay) / length;
  const foot = (eye.xM - ax) * ex + (eye.yM - ay) * ey;
  const away = Math.abs((eye.xM - ax) * ey - (eye.yM - ay) * ex);
  const from = Math.max((s.xM - ax) * ex + (s.yM - ay) * ey, foot - reach * away);
  const to = Math.min((t.xM - ax) * ex + (t.yM - ay) * ey, foot + reach * away);
  if (!(to > from)) return;
  const sign = b.uB[piece]! > b.uA[piece]! ? 1 : -1;
  const uFrom = b.uA[piece]! + sign * from;
  const uTo = b.uA[piece]! + sign * to;
  const p = { xM: ax + from * ex, yM: ay + from * ey };
  const q = { xM: ax + to * ex, yM: ay + to * ey };
  const face = b.face[piece]!;
  faces.push(
    sign > 0
      ? { face, fromM: uFrom, toM: uTo, from: p, to: q }
      : { face, fromM: uTo, toM: uFrom, from: q, to: p },
  );
}
