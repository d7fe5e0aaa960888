import { SAME_PLACE_M } from '../geometry/point.ts';
import type { Blockers } from './blockers.ts';

const TURN = 2 * Math.PI;
/** Slices thinner than this hold nothing but rounding, radians: a tenth of a nanometer at 100 m. */
const THIN_RAD = 1e-12;

/** What is nearest over a range of directions. */
export interface SightSpan {
  /** The piece that is seen; `OPEN` where nothing stands within range, `BLIND` where there is no view at all. */
  readonly blocker: number;
  /** Directions, radians counter-clockwise from where the sweep began. */
  readonly fromRad: number;
  readonly toRad: number;
  /** Shares 0..1 of the piece from a to b between which it is seen; 0 and 0 for no piece. */
  readonly fromShare: number;
  readonly toShare: number;
}

/** Nothing stands within range. */
export const OPEN = -1;
/** No view: the direction leads out of the open floor. */
export const BLIND = -2;

/**
 * What is seen from a place, direction by direction: the nearest piece of the border of the open floor.
 *
 * The directions of all piece ends are sorted; between two neighboring ones the nearest piece does not change, since
 * pieces do not cross (`blockersOf`), and is found among the few pieces that the middle direction meets. So aligned
 * corners, shared corners and views along a wall need no special cases: they make slices of no width. Time grows
 * as n log n for n pieces, plus n times the number of pieces that one line of sight meets, which in a crawl space is
 * a handful.
 *
 * A viewer in the open sees fronts only. One on a wall or in a corner also looks for backs: a direction that meets a
 * back first leads out of the open floor and gives `BLIND`.
 * @param startRad where the sweep begins, radians counter-clockwise from +x
 * @param widthRad how far it goes, up to a full turn
 * @param rangeM pieces farther than this are passed over for a viewer in the open
 */
export function sweepFrom(
  blockers: Blockers,
  xM: number,
  yM: number,
  startRad: number,
  widthRad: number,
  rangeM: number,
): SightSpan[] {
  const near = piecesInView(blockers, xM, yM, rangeM);
  const onSurface = near === null;
  const { pieces, fromRad, toRad } = anglesOf(
    blockers,
    near ?? piecesAround(blockers, xM, yM),
    xM,
    yM,
    startRad,
  );
  const events = sortedEvents(fromRad, toRad);
  const active: number[] = [];
  for (let k = 0; k < pieces.length; k += 1) if (toRad[k]! < fromRad[k]!) active.push(k);

  const spans: SightSpan[] = [];
  const nothing = onSurface || rangeM === Number.POSITIVE_INFINITY ? BLIND : OPEN;
  let seen = BLIND;
  let seenFrom = 0;
  let now = 0;
  const close = (at: number): void => {
    if (at <= seenFrom) return;
    const blocker = seen < 0 ? seen : pieces[seen]!;
    const share = (rad: number): number => {
      if (seen < 0 || rad === fromRad[seen]) return 0;
      return rad === toRad[seen] ? 1 : shareAt(blockers, blocker, xM, yM, startRad + rad);
    };
    spans.push({ blocker, fromRad: seenFrom, toRad: at, fromShare: share(seenFrom), toShare: share(at) });
  };
  for (let e = 0; ; e += 1) {
    const eventRad =
      e < events.length ? (events[e]! >= 0 ? fromRad[events[e]!]! : toRad[~events[e]!]!) : TURN;
    const next = Math.min(eventRad, widthRad);
    if (next - now > THIN_RAD) {
      let found = nearestOf(blockers, pieces, active, xM, yM, startRad + (now + next) / 2, onSurface);
      if (found < 0) found = nothing;
      else if (onSurface && !isFront(blockers, pieces[found]!, xM, yM)) found = BLIND;
      if (found !== seen) {
        close(now);
        seen = found;
        seenFrom = now;
      }
      now = next;
    }
    if (e >= events.length || eventRad >= widthRad) break;
    const event = events[e]!;
    if (event >= 0) active.push(event);
    else {
      const place = active.indexOf(~event);
      if (place >= 0) active.splice(place, 1);
    }
  }
  close(widthRad);
  return spans;
}

/** Pieces that show their front within range; null when the viewer stands on one. */
function piecesInView(b: Blockers, xM: number, yM: number, rangeM: number): number[] | null {
  const pieces: number[] = [];
  const range2 = rangeM * rangeM;
  for (let i = 0; i < b.count; i += 1) {
    const distance2 = distance2To(b, i, xM, yM);
    if (distance2 <= SAME_PLACE_M * SAME_PLACE_M) return null;
    if (distance2 <= range2 && isFront(b, i, xM, yM)) pieces.push(i);
  }
  return pieces;
}

/** All pieces but those that the viewer stands on: seen edge on, they hide nothing. */
function piecesAround(b: Blockers, xM: number, yM: number): number[] {
  const pieces: number[] = [];
  for (let i = 0; i < b.count; i += 1) {
    if (distance2To(b, i, xM, yM) > SAME_PLACE_M * SAME_PLACE_M) pieces.push(i);
  }
  return pieces;
}

function distance2To(b: Blockers, i: number, xM: number, yM: number): number {
  const px = xM - b.ax[i]!;
  const py = yM - b.ay[i]!;
  const ex = b.bx[i]! - b.ax[i]!;
  const ey = b.by[i]! - b.ay[i]!;
  const t = Math.min(1, Math.max(0, (px * ex + py * ey) / (ex * ex + ey * ey)));
  return (px - t * ex) ** 2 + (py - t * ey) ** 2;
}

function isFront(b: Blockers, i: number, xM: number, yM: number): boolean {
  return (b.bx[i]! - b.ax[i]!) * (yM - b.ay[i]!) - (b.by[i]! - b.ay[i]!) * (xM - b.ax[i]!) > 0;
}

/**
 * Directions of the right and left end of each piece as the viewer sees it, from the start of the sweep. Pieces seen
 * edge on are left out.
 */
function anglesOf(
  b: Blockers,
  candidates: readonly number[],
  xM: number,
  yM: number,
  startRad: number,
): { pieces: number[]; fromRad: number[]; toRad: number[] } {
  const pieces: number[] = [];
  const fromRad: number[] = [];
  const toRad: number[] = [];
  for (const i of candidates) {
    const toA = turnFrom(startRad, Math.atan2(b.ay[i]! - yM, b.ax[i]! - xM));
    const toB = turnFrom(startRad, Math.atan2(b.by[i]! - yM, b.bx[i]! - xM));
    const front = isFront(b, i, xM, yM);
    const from = front ? toA : toB;
    const to = front ? toB : toA;
    const extent = to < from ? to - from + TURN : to - from;
    // Rounding may turn a piece seen edge on inside out: it would seem to fill the rest of the circle.
    if (extent <= THIN_RAD || extent > Math.PI) continue;
    pieces.push(i);
    fromRad.push(from);
    toRad.push(to);
  }
  return { pieces, fromRad, toRad };
}

function turnFrom(startRad: number, rad: number): number {
  let turn = rad - startRad;
  while (turn < 0) turn += TURN;
  while (turn >= TURN) turn -= TURN;
  return turn;
}

/** Ends of pieces in the order of their directions: k where piece k begins, ~k where it ends. */
function sortedEvents(fromRad: readonly number[], toRad: readonly number[]): number[] {
  const events: number[] = [];
  for (let k = 0; k < fromRad.length; k += 1) events.push(k, ~k);
  const radOf = (event: number): number => (event >= 0 ? fromRad[event]! : toRad[~event]!);
  return events.sort((p, q) => radOf(p) - radOf(q) || p - q);
}

/**
 * Which of the active pieces a direction meets first; -1 for none. A wall of no thickness is a front and a back in one
 * place, and the front is what is seen: with `behind`, backs count as a hair farther away.
 */
function nearestOf(
  b: Blockers,
  pieces: readonly number[],
  active: readonly number[],
  xM: number,
  yM: number,
  rad: number,
  behind: boolean,
): number {
  const dx = Math.cos(rad);
  const dy = Math.sin(rad);
  let nearest = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k < active.length; k += 1) {
    const i = pieces[active[k]!]!;
    const ex = b.bx[i]! - b.ax[i]!;
    const ey = b.by[i]! - b.ay[i]!;
    let distance = ((b.ax[i]! - xM) * ey - (b.ay[i]! - yM) * ex) / (dx * ey - dy * ex);
    if (behind && !isFront(b, i, xM, yM)) distance += SAME_PLACE_M;
    if (distance > 0 && distance < least) {
      least = distance;
      nearest = active[k]!;
    }
  }
  return nearest;
}

/** Where along a piece a direction meets it. */
function shareAt(b: Blockers, i: number, xM: number, yM: number, rad: number): number {
  const dx = Math.cos(rad);
  const dy = Math.sin(rad);
  const ex = b.bx[i]! - b.ax[i]!;
  const ey = b.by[i]! - b.ay[i]!;
  const share = ((b.ax[i]! - xM) * dy - (b.ay[i]! - yM) * dx) / (dx * ey - dy * ex);
  return Math.min(1, Math.max(0, share));
}
