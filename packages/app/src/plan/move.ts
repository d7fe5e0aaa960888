import type { plan } from '@undercroft/engine';
import type { Change, Point } from '@undercroft/record';
import { anchorOf, shapeOf } from './shape.ts';
import { type OnWall, onNearestWall } from './snap.ts';
import type { Thing } from './things.ts';

/** A micrometer is finer than any tape; it keeps sums of steps from growing digits. */
const tidy = (meters: number) => Math.round(meters * 1e6) / 1e6;

const shifted = ({ xM, yM }: Point, by: Point): Point => ({ xM: tidy(xM + by.xM), yM: tidy(yM + by.yM) });

/** Where an opening stands whose middle is held at a place on a wall: from the wall's start to its near edge [m]. */
export function offsetAt({ wall, offsetM }: OnWall, widthM: number): number {
  return tidy(Math.min(Math.max(offsetM - widthM / 2, 0), Math.max(0, wall.lengthM - widthM)));
}

/** Any wall is near enough for a vent that is being moved [m]. */
const ANY_WALL_M = 1000;

/** The fields of a thing that change when it is moved by so much; null for one that has no place of its own. */
export function movedFields(
  thing: Thing,
  by: Point,
  walls: plan.ResolvedOutline | null,
): Readonly<Record<string, unknown>> | null {
  switch (thing.kind) {
    case 'pier':
    case 'height':
    case 'equipment':
      return { at: shifted(thing.value.at, by) };
    case 'girder':
    case 'interior-wall':
      return { from: shifted(thing.value.from, by), to: shifted(thing.value.to, by) };
    case 'zone':
    case 'obstacle':
      return { outline: thing.value.outline.map((p) => shifted(p, by)) };
    case 'duct':
    case 'seam':
      return { path: thing.value.path.map((p) => shifted(p, by)) };
    case 'drain':
      return { path: thing.value.path.map((p) => ({ ...p, at: shifted(p.at, by) })) };
    case 'vent':
    case 'door': {
      if (thing.kind === 'door' && thing.value.kind === 'floor-hatch') {
        return thing.value.at === undefined ? null : { at: shifted(thing.value.at, by) };
      }
      const shape = shapeOf(thing, walls);
      if (shape === null || walls === null) return null;
      const place = onNearestWall(walls.edges, shifted(anchorOf(shape), by), ANY_WALL_M);
      if (place === null) return null;
      return { wallId: place.wall.id, offsetM: offsetAt(place, thing.value.widthM) };
    }
    case 'wall':
    case 'joists':
      return null;
  }
}

/** By how much a thing really moves when it is moved by so much: openings stay in a wall. */
export function movesBy(thing: Thing, by: Point, walls: plan.ResolvedOutline | null): Point {
  if (thing.kind !== 'vent' && thing.kind !== 'door') return by;
  const fields = movedFields(thing, by, walls);
  const before = shapeOf(thing, walls);
  if (fields === null || before === null) return by;
  const after = shapeOf({ ...thing, value: { ...thing.value, ...fields } } as Thing, walls);
  if (after === null) return by;
  const [from, to] = [anchorOf(before), anchorOf(after)];
  return { xM: to.xM - from.xM, yM: to.yM - from.yM };
}

/** Changes that set fields of a thing. */
export const settingOf = ({ kind, value }: Thing, fields: Readonly<Record<string, unknown>>): Change[] =>
  Object.entries(fields).map(([field, to]) => ({ do: 'set', kind, item: value.id, field, value: to }));
