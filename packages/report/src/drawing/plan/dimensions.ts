import { type Item, line, type Spot } from '../display-list.ts';
import { along, around, type Box, shift } from '../polygon.ts';
import { textWidth } from '../text-width.ts';
import { leafReach } from './openings.ts';
import { lengthIn } from './style.ts';
import { LETTERING, lettering, type PlanView, pen } from './view.ts';
import type { DrawnWall } from './wall-parts.ts';

/** Distance of a dimension line from the outside of its wall, in units. */
const OUT = 11;
/** Shortest wall that gets a dimension, in units; shorter ones are counted on the sheet. */
const SHORTEST = 9;

/** Walls dimensioned, and how many were too short on the sheet for it. */
export interface Dimensions {
  readonly items: readonly Item[];
  readonly leftOut: number;
}

/**
 * Length of each wall: as it was taped, or where the corners were given, as it follows from them. A closing error is
 * spread only in what is drawn, not in what is written.
 */
function lengthsM(view: PlanView): Map<string, number> {
  const { outline } = view.job.plan;
  if (outline.kind === 'traverse') return new Map(outline.legs.map((leg) => [leg.id, leg.length.nm * 1e-9]));
  return new Map(view.facts.geometry.edges.map((e) => [e.id, e.lengthM]));
}

/** Direction of reading along a wall: from the left or from below, never upside down. */
function readable(direction: Spot): { readonly turnDeg: number } {
  const angle = (Math.atan2(direction.y, direction.x) * 180) / Math.PI;
  if (angle > 90.5) return { turnDeg: angle - 180 };
  return { turnDeg: angle <= -90.5 ? angle + 180 : angle > 89.5 ? -90 : angle };
}

/** Upright squares in a row that together cover a slanted line of lettering, closer than one box around it. */
function squaresAlong(middle: Spot, direction: Spot, length: number, side: number): Box[] {
  const count = Math.max(1, Math.ceil(length / side));
  return Array.from({ length: count }, (_, i) => {
    const at = shift(middle, direction, ((i + 0.5) / count - 0.5) * length);
    return around(at, side / 2);
  });
}

function dimension(view: PlanView, wall: DrawnWall, meters: number): Item[] | undefined {
  const { unit, places } = view;
  const text = lengthIn(view.style, meters);
  const size = LETTERING.ordinary * unit;
  const width = textWidth(text, size);
  if (wall.length < SHORTEST * unit) return undefined;
  const leaf = leafReach(view, wall.id);
  const out = wall.thickness + Math.max(OUT * unit, leaf === 0 ? 0 : leaf + 5 * unit);
  const [a, b] = [shift(wall.from, wall.outward, out), shift(wall.to, wall.outward, out)];
  const { turnDeg } = readable(wall.direction);
  const angle = (turnDeg * Math.PI) / 180;
  // The lettering stands on the reader's upper side of the dimension line.
  const up = { x: Math.sin(angle), y: -Math.cos(angle) };
  const middle = along(a, b, 0.5);
  const reading = { x: Math.cos(angle), y: Math.sin(angle) };
  const body = (lift: number) => squaresAlong(shift(middle, up, lift), reading, width + 3 * unit, size);
  const covered = (lift: number) => body(lift).reduce((sum, box) => sum + places.covered(box), 0);
  const [over, below] = [4.4 * unit, -5 * unit];
  const lift = covered(over) <= covered(below) + 1 ? over : below;
  if (covered(lift) > 0.35 * width * size) return undefined;
  for (const box of body(lift)) places.take(box);
  places.takeLine(a, b, 1, 0.5);
  const tick = (end: Spot): Item => {
    const slash = { x: Math.cos(angle) * 0.7 + up.x * 0.7, y: Math.sin(angle) * 0.7 + up.y * 0.7 };
    return line([shift(end, slash, -3 * unit), shift(end, slash, 3 * unit)], pen(view, 'ink', 0.9));
  };
  const helper = (inner: Spot, end: Spot): Item =>
    line(
      [shift(inner, wall.outward, wall.thickness + 2.5 * unit), shift(end, wall.outward, 2.5 * unit)],
      thin,
    );
  const thin = pen(view, 'soft', 0.4);
  const baseline = shift(middle, up, lift - 0.36 * size);
  return [
    line([a, b], thin),
    helper(wall.from, a),
    helper(wall.to, b),
    tick(a),
    tick(b),
    lettering(view, baseline, text, { align: 'middle', turnDeg }),
  ];
}

/** Dimension lines outside the walls, in feet and inches; the longest walls first. */
export function dimensionsLayer(view: PlanView, walls: readonly DrawnWall[]): Dimensions {
  const lengths = lengthsM(view);
  let leftOut = 0;
  const items = [...walls]
    .sort((a, b) => b.length - a.length)
    .flatMap((wall) => {
      const meters = lengths.get(wall.id);
      const drawn = meters === undefined ? undefined : dimension(view, wall, meters);
      if (drawn === undefined) leftOut += 1;
      return drawn ?? [];
    });
  return { items: [{ kind: 'layer', name: 'dimensions', items }], leftOut };
}
