import type { CoverageAssessment } from '@undercroft/assessment';
import type { Point } from '@undercroft/record';
import { area, drawnFor, type Item, line, type Spot } from '../display-list.ts';
import { hatchLines } from '../hatch.ts';
import { onSheet } from '../plan/structure.ts';
import { LETTERING, letterNear, type PlanView, pen } from '../plan/view.ts';
import type { DrawnWall } from '../plan/wall-parts.ts';
import { along, boxAt, boxOf, distance, heading, leftOf, shift, turnedRectangle } from '../polygon.ts';

/** Twice the area of a ring of the plan, positive for an outer one, negative for a hole. */
const turn = (ring: readonly Point[]): number =>
  ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length];
    return sum + a.xM * b.yM - b.xM * a.yM;
  }, 0);

/** Dark and hatched, so that it reads in grey print and for those who see no colors. */
function dark(view: PlanView, outline: readonly Spot[]): Item[] {
  return [
    area(outline, { fill: 'rule' }),
    ...hatchLines(outline, 45, 3.4 * view.unit, pen(view, 'ink', 0.55)),
    area(outline, { stroke: pen(view, 'ink', 0.7) }),
  ];
}

function sampleField(view: PlanView, at: Spot): Spot[] {
  const { left, top, right, bottom } = boxAt(
    at.x - 11 * view.unit,
    at.y - 4 * view.unit,
    22 * view.unit,
    8 * view.unit,
  );
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}

/** The floor: light where pictures show it, dark where none does. */
export function floorShownLayer(view: PlanView, { unseen, pictures }: CoverageAssessment): Item[] {
  const { legend, outline, toSheet } = view;
  const lit = area(outline, { fill: 'sheet' });
  if (pictures.length > 0) {
    legend.add('floor-shown', 'Floor that pictures show', (at) => [
      area(sampleField(view, at), { fill: 'sheet', stroke: pen(view, 'soft', 0.4) }),
    ]);
  }
  if (unseen.length > 0)
    legend.add('floor-unseen', 'Floor in no picture', (at) => dark(view, sampleField(view, at)));
  for (const { rings } of unseen) {
    for (const ring of rings) view.places.take(boxOf(ring.map(toSheet)), 0.5);
  }
  // Largest first, so that what lies within the hole of a larger part is drawn after it.
  const items = unseen.flatMap(({ rings }) => [
    ...rings.filter((r) => turn(r) > 0).flatMap((r) => dark(view, r.map(toSheet))),
    ...rings
      .filter((r) => turn(r) < 0)
      .map((r) => r.map(toSheet))
      .map((r) => area(r, { fill: 'sheet', stroke: pen(view, 'ink', 0.7) })),
  ]);
  // Under something that stands on the floor no picture shows it either.
  const covered = view.job.plan.obstacles
    .filter((o) => !o.noGo || o.heightM !== undefined)
    .map((o) => area(o.outline.map(toSheet), { fill: 'rule' }));
  return [{ kind: 'layer', name: 'floor-shown', within: outline, items: [lit, ...items, ...covered] }];
}

const bar = (view: PlanView, from: Spot, to: Spot): Item => line([from, to], pen(view, 'notMet', 2.2));

function noteBar(view: PlanView): void {
  view.legend.add('face-unseen', 'Wall or pier face in no picture', (at) => [
    bar(view, { x: at.x - 11 * view.unit, y: at.y }, { x: at.x + 11 * view.unit, y: at.y }),
  ]);
}

/** Shorter stretches of a wall than this are left over between pictures, m. */
const LEAST_STRETCH_M = 0.15;

/** Stretches of walls that no picture shows, as bars along their inside. */
export function wallsUnseenLayer(
  view: PlanView,
  { walls, interiorWalls }: CoverageAssessment,
  drawn: readonly DrawnWall[],
): Item[] {
  const long = (u: { readonly fromM: number; readonly toM: number }) => u.toM - u.fromM > LEAST_STRETCH_M;
  const items = [
    ...walls.flatMap(({ id, unseen }) => {
      const wall = drawn.find((w) => w.id === id);
      if (wall === undefined) return [];
      const inside = (m: number) =>
        shift(shift(wall.from, wall.direction, m * view.scale), wall.outward, -1.8 * view.unit);
      return unseen.filter(long).map(({ fromM, toM }) => bar(view, inside(fromM), inside(toM)));
    }),
    ...interiorWalls.flatMap(({ id, side, unseen }) => {
      const wall = view.job.plan.interiorWalls.find((w) => w.id === id);
      if (wall === undefined) return [];
      const [from, to] = [view.toSheet(wall.from), view.toSheet(wall.to)];
      const direction = heading(from, to);
      const off = (wall.thicknessM * view.scale) / 2 + 1.8 * view.unit;
      const at = (m: number) =>
        shift(shift(from, direction, m * view.scale), leftOf(direction), side === 'left' ? off : -off);
      return unseen.filter(long).map(({ fromM, toM }) => bar(view, at(fromM), at(toM)));
    }),
  ];
  if (items.length === 0) return [];
  noteBar(view);
  return [{ kind: 'layer', name: 'walls-unseen', items }];
}

/** Corners of a face on the sheet: face 0 looks down the plan, 1 to the right, 2 up, 3 to the left, before the pier is turned. */
const FACE_ENDS = [
  [0, 1],
  [1, 2],
  [2, 3],
  [3, 0],
] as const;

/** Faces of piers that no picture shows, as bars, with the number of the pier. */
export function pierFacesLayer(view: PlanView, { piers }: CoverageAssessment): Item[] {
  const items = piers.flatMap((shown) => {
    const pier = view.job.plan.piers.find((p) => p.id === shown.id);
    const hidden = shown.faces.filter((f) => f.share !== undefined && f.share < 0.9);
    if (pier === undefined || hidden.length === 0) return [];
    const at = view.toSheet(pier.at);
    const body = turnedRectangle(
      at,
      onSheet(90 + pier.turnDeg),
      pier.widthM * view.scale + 2.4 * view.unit,
      pier.depthM * view.scale + 2.4 * view.unit,
    );
    const corners = lowerLeftFirst(body, at, pier.turnDeg);
    const bars = hidden.map(({ face }) => {
      const [a, b] = FACE_ENDS[face];
      return bar(view, corners[a], corners[b]);
    });
    const number = shown.name.slice(shown.name.lastIndexOf(' ') + 1);
    const label = letterNear(view, {
      at,
      lines: [`P${number}`],
      gap: 3 + distance(at, along(corners[0], corners[1], 0.5)) / view.unit,
      reach: 40,
      size: LETTERING.small,
    });
    return drawnFor('pier', pier.id, [...bars, ...label]);
  });
  if (items.length === 0) return [];
  noteBar(view);
  return [{ kind: 'layer', name: 'pier-faces-unseen', items }];
}

/** The corners of a turned body in the order that the faces of a pier are counted in: counter-clockwise from lower left. */
function lowerLeftFirst(body: readonly Spot[], center: Spot, turnDeg: number): Spot[] {
  const x = onSheet(90 + turnDeg);
  const y = onSheet(turnDeg);
  const cornerAt = (sx: number, sy: number) =>
    body.find(({ x: px, y: py }) => {
      const [dx, dy] = [px - center.x, py - center.y];
      return Math.sign(dx * x.x + dy * x.y) === sx && Math.sign(dx * y.x + dy * y.y) === sy;
    }) as Spot;
  return [cornerAt(-1, -1), cornerAt(1, -1), cornerAt(1, 1), cornerAt(-1, 1)];
}
