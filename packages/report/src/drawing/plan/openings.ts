import { area, drawnFor, type Item, line, type Spot } from '../display-list.ts';
import { arcPoints, shift } from '../polygon.ts';
import { type PlanView, pen } from './view.ts';
import { type DrawnWall, type Gap, solidParts, wallPart } from './wall-parts.ts';

type Vent = PlanView['job']['plan']['vents'][number];
type Door = PlanView['job']['plan']['doors'][number];

/** The gap of a vent or door; its offset runs from the start of the wall to its near edge. */
const gapOf = (view: PlanView, opening: { offsetM?: number; widthM: number }): Gap => ({
  from: (opening.offsetM ?? 0) * view.scale,
  to: ((opening.offsetM ?? 0) + opening.widthM) * view.scale,
});

/** Whether a vent lets air through as it stands. */
const isOpen = ({ state }: Vent) => state === undefined || state === 'open' || state === 'screened';

/** Vents and doors of one wall. */
export function openingItems(view: PlanView, wall: DrawnWall): Item[] {
  const { vents, doors } = view.job.plan;
  return [
    ...vents
      .filter((v) => v.wallId === wall.id)
      .flatMap((v) => drawnFor('vent', v.id, ventItems(view, wall, gapOf(view, v), isOpen(v)))),
    ...wallDoors(doors, wall.id).flatMap((d) =>
      drawnFor('door', d.id, doorItems(view, wall, gapOf(view, d))),
    ),
  ];
}

/** Gaps that vents and doors leave in a wall. */
export function gapsOf(view: PlanView, wallId: string): Gap[] {
  const { vents, doors } = view.job.plan;
  return [...vents.filter((v) => v.wallId === wallId), ...wallDoors(doors, wallId)].map((o) =>
    gapOf(view, o),
  );
}

const wallDoors = (doors: readonly Door[], wallId: string) =>
  doors.filter((d) => d.kind === 'wall' && d.wallId === wallId);

/** Hatches in the floor above the space. */
export const hatchesInFloor = (view: PlanView): Item[] =>
  view.job.plan.doors.flatMap((d) =>
    d.kind === 'floor-hatch' ? drawnFor('door', d.id, hatchItems(view, d)) : [],
  );

/** A break in the wall with a short cross bar; one that was closed has a stroke across the break as well. */
function ventItems(view: PlanView, wall: DrawnWall, gap: Gap, open: boolean): Item[] {
  const { direction, outward, thickness } = wall;
  const inside = (d: number) => shift(wall.from, direction, d);
  const jamb = (d: number) => line([inside(d), shift(inside(d), outward, thickness)], pen(view, 'ink', 0.7));
  const center = shift(inside((gap.from + gap.to) / 2), outward, thickness / 2);
  const reach = thickness / 2 + 2 * view.unit;
  const bar = line([shift(center, outward, -reach), shift(center, outward, reach)], pen(view, 'ink', 1));
  const closed = line([inside(gap.from), shift(inside(gap.to), outward, thickness)], pen(view, 'ink', 0.7));
  return [jamb(gap.from), jamb(gap.to), bar, ...(open ? [] : [closed])];
}

/** An opening with its leaf drawn open to the outside and the swing as an arc. */
function doorItems(view: PlanView, wall: DrawnWall, gap: Gap): Item[] {
  const { direction, outward, thickness } = wall;
  const face = (d: number) => shift(shift(wall.from, direction, d), outward, thickness);
  const jamb = (d: number) => line([shift(wall.from, direction, d), face(d)], pen(view, 'ink', 0.7));
  const leaf = gap.to - gap.from;
  const hinge = face(gap.from);
  const start = (Math.atan2(outward.y, outward.x) * 180) / Math.PI;
  const end = (Math.atan2(direction.y, direction.x) * 180) / Math.PI;
  const turn = ((end - start + 540) % 360) - 180;
  return [
    jamb(gap.from),
    jamb(gap.to),
    line([hinge, shift(hinge, outward, leaf)], pen(view, 'ink', 1)),
    line(arcPoints(hinge, leaf, start, start + turn), pen(view, 'ink', 0.4)),
  ];
}

function hatchItems(view: PlanView, door: Door): Item[] {
  if (door.at === undefined) return [];
  const at = view.toSheet(door.at);
  const [w, h] = [(door.widthM * view.scale) / 2, (door.heightM * view.scale) / 2];
  const corners = [
    { x: at.x - w, y: at.y - h },
    { x: at.x + w, y: at.y - h },
    { x: at.x + w, y: at.y + h },
    { x: at.x - w, y: at.y + h },
  ];
  view.places.take({ left: at.x - w, right: at.x + w, top: at.y - h, bottom: at.y + h });
  view.legend.add('hatch', 'Hatch in the floor above', (p) => [
    area(
      [
        { x: p.x - 6 * view.unit, y: p.y - 4 * view.unit },
        { x: p.x + 6 * view.unit, y: p.y - 4 * view.unit },
        { x: p.x + 6 * view.unit, y: p.y + 4 * view.unit },
        { x: p.x - 6 * view.unit, y: p.y + 4 * view.unit },
      ],
      { stroke: pen(view, 'ink', 0.7, [3, 1.5]) },
    ),
  ]);
  return [
    area(corners, { stroke: pen(view, 'ink', 0.7, [3, 1.5]) }),
    line([corners[0], corners[2]], pen(view, 'ink', 0.4, [3, 1.5])),
  ];
}

/** A short wall about a spot for the legend, with a gap in its middle where wanted. */
function sampleWall(view: PlanView, at: Spot, gap: number): { wall: DrawnWall; gaps: Gap[] } {
  const { unit } = view;
  const from = { x: at.x - 11 * unit, y: at.y + 2.5 * unit };
  const to = { x: at.x + 11 * unit, y: at.y + 2.5 * unit };
  const wall: DrawnWall = {
    id: '',
    from,
    to,
    outerFrom: shift(from, { x: 0, y: -1 }, 5 * unit),
    outerTo: shift(to, { x: 0, y: -1 }, 5 * unit),
    direction: { x: 1, y: 0 },
    outward: { x: 0, y: -1 },
    length: 22 * unit,
    thickness: 5 * unit,
  };
  return { wall, gaps: gap === 0 ? [] : [{ from: (11 - gap / 2) * unit, to: (11 + gap / 2) * unit }] };
}

function sample(view: PlanView, at: Spot, gap: number, inGap: (wall: DrawnWall, gap: Gap) => Item[]): Item[] {
  const { wall, gaps } = sampleWall(view, at, gap);
  const parts = solidParts(wall.length, gaps).flatMap((part) => wallPart(view, wall, part));
  return [...parts, ...gaps.flatMap((g) => inGap(wall, g))];
}

/** Puts the openings of the plan into the legend. */
export function noteOpenings(view: PlanView): void {
  const { legend, job } = view;
  const { vents, doors } = job.plan;
  legend.add('wall', 'Outside wall', (at) => sample(view, at, 0, () => []));
  if (vents.some(isOpen))
    legend.add('vent-open', 'Vent, open', (at) =>
      sample(view, at, 10, (wall, gap) => ventItems(view, wall, gap, true)),
    );
  if (vents.some((v) => !isOpen(v)))
    legend.add('vent-shut', 'Vent, shut or sealed', (at) =>
      sample(view, at, 10, (wall, gap) => ventItems(view, wall, gap, false)),
    );
  if (doors.some((d) => d.kind === 'wall'))
    legend.add(
      'door',
      'Access door',
      (at) =>
        sample(view, { x: at.x, y: at.y + 3 * view.unit }, 8, (wall, gap) => doorItems(view, wall, gap)),
      18,
    );
}

/** How far a door leaf reaches out from the outside face of a wall, zero where it has none [drawing units]. */
export function leafReach(view: PlanView, wallId: string): number {
  const leaves = view.job.plan.doors.filter((d) => d.kind === 'wall' && d.wallId === wallId);
  return Math.max(0, ...leaves.map((d) => d.widthM * view.scale));
}
