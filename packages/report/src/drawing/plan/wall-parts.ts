import type { Item, Spot } from '../display-list.ts';
import { area, line } from '../display-list.ts';
import { distance, grown, heading, isClockwise, leftOf, shift } from '../polygon.ts';
import { type PlanView, pen } from './view.ts';

/** Thickness drawn where none was recorded: a block of 8 in (nominal size, common practice). */
const USUAL_THICKNESS_M = 0.2;

/** A wall on the sheet: inside face from start to end, outside face beside it. */
export interface DrawnWall {
  readonly id: string;
  readonly from: Spot;
  readonly to: Spot;
  readonly outerFrom: Spot;
  readonly outerTo: Spot;
  /** Unit vector along it and away from the space. */
  readonly direction: Spot;
  readonly outward: Spot;
  readonly length: number;
  readonly thickness: number;
}

/** The walls with their thickness, mitered at the corners. */
export function drawnWalls(view: PlanView): DrawnWall[] {
  const { outline, job, scale } = view;
  const { edges } = view.facts.geometry;
  const facts = new Map(job.plan.walls.map((w) => [w.wallId, w]));
  const thick = edges.map((e) => (facts.get(e.id)?.thicknessM ?? USUAL_THICKNESS_M) * scale);
  const outer = grown(outline, thick);
  const side = isClockwise(outline) ? 1 : -1;
  return edges.map((edge, i) => {
    const from = outline[i];
    const to = outline[(i + 1) % outline.length];
    const direction = heading(from, to);
    const left = leftOf(direction);
    return {
      id: edge.id,
      from,
      to,
      outerFrom: outer[i],
      outerTo: outer[(i + 1) % outline.length],
      direction,
      outward: { x: left.x * side, y: left.y * side },
      length: distance(from, to),
      thickness: thick[i],
    };
  });
}

/** A gap in a wall, from and to along its inside face in drawing units. */
export interface Gap {
  readonly from: number;
  readonly to: number;
}

/** Parts of a wall between its gaps. */
export function solidParts(length: number, gaps: readonly Gap[]): Gap[] {
  const parts: Gap[] = [];
  let at = 0;
  for (const gap of [...gaps].sort((a, b) => a.from - b.from)) {
    if (gap.from > at) parts.push({ from: at, to: Math.min(gap.from, length) });
    at = Math.max(at, gap.to);
  }
  if (at < length) parts.push({ from: at, to: length });
  return parts;
}

/** A solid part of a wall: two lines with the wall's tone between. */
export function wallPart(view: PlanView, wall: DrawnWall, part: Gap): Item[] {
  const inside = (d: number) => shift(wall.from, wall.direction, d);
  const outside = (d: number) => shift(inside(d), wall.outward, wall.thickness);
  const a = inside(part.from);
  const b = inside(part.to);
  const outerA = part.from <= 0 ? wall.outerFrom : outside(part.from);
  const outerB = part.to >= wall.length ? wall.outerTo : outside(part.to);
  return [
    area([a, b, outerB, outerA], { fill: 'wall', stroke: pen(view, 'wall', 0.3) }),
    line([a, b], pen(view, 'ink', 0.9)),
    line([outerA, outerB], pen(view, 'ink', 0.9)),
  ];
}
