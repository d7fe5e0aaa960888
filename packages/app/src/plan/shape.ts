import { geometry, type plan } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import type { Thing } from './things.ts';

/** What a thing covers on the plan [m]. */
export type Shape =
  | { readonly is: 'spot'; readonly at: Point; readonly radiusM: number }
  | { readonly is: 'line'; readonly path: readonly Point[]; readonly halfM: number }
  | { readonly is: 'area'; readonly outline: readonly Point[] };

type Walls = plan.ResolvedOutline | null;

/** A spot for things that are drawn as symbols, whatever their size [m]. */
const SYMBOL_M = 0.2;

export const along = (from: Point, to: Point, distanceM: number): Point => {
  const length = geometry.distanceM(from, to);
  const share = length === 0 ? 0 : distanceM / length;
  return { xM: from.xM + (to.xM - from.xM) * share, yM: from.yM + (to.yM - from.yM) * share };
};

/** A wall of the outline by its id. */
export function wallOf(walls: Walls, id: string | undefined): plan.OutlineEdge | undefined {
  return id === undefined ? undefined : walls?.edges.find((edge) => edge.id === id);
}

function onWall(walls: Walls, wallId: string | undefined, offsetM: number, widthM: number): Shape | null {
  const wall = wallOf(walls, wallId);
  if (wall === undefined) return null;
  const { from, to } = wall;
  return { is: 'line', path: [along(from, to, offsetM), along(from, to, offsetM + widthM)], halfM: 0.1 };
}

/** Corners of a rectangle about a middle, turned clockwise. */
export function rectangle(at: Point, widthM: number, depthM: number, turnDeg: number): Point[] {
  const [cos, sin] = [geometry.cosDeg(turnDeg), geometry.sinDeg(turnDeg)];
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([w, d]) => {
    const [x, y] = [(w * widthM) / 2, (d * depthM) / 2];
    return { xM: at.xM + x * cos + y * sin, yM: at.yM - x * sin + y * cos };
  });
}

/** What a thing covers; null for one without a place, such as a vent whose wall is gone. */
export function shapeOf({ kind, value }: Thing, walls: Walls): Shape | null {
  switch (kind) {
    case 'pier':
      return { is: 'area', outline: rectangle(value.at, value.widthM, value.depthM, value.turnDeg) };
    case 'height':
    case 'equipment':
      return { is: 'spot', at: value.at, radiusM: SYMBOL_M };
    case 'zone':
    case 'obstacle':
      return { is: 'area', outline: value.outline };
    case 'girder':
      return { is: 'line', path: [value.from, value.to], halfM: value.widthM / 2 };
    case 'interior-wall':
      return { is: 'line', path: [value.from, value.to], halfM: value.thicknessM / 2 };
    case 'duct':
      return { is: 'line', path: value.path, halfM: value.widthM / 2 };
    case 'drain':
      return { is: 'line', path: value.path.map(({ at }) => at), halfM: 0.05 };
    case 'seam':
      return { is: 'line', path: value.path, halfM: 0.02 };
    case 'vent':
      return onWall(walls, value.wallId, value.offsetM, value.widthM);
    case 'door':
      if (value.kind === 'floor-hatch') {
        if (value.at === undefined) return null;
        return { is: 'area', outline: rectangle(value.at, value.widthM, value.heightM, 0) };
      }
      return onWall(walls, value.wallId, value.offsetM ?? 0, value.widthM);
    case 'wall': {
      const wall = wallOf(walls, value.wallId);
      return wall === undefined ? null : { is: 'line', path: [wall.from, wall.to], halfM: 0.05 };
    }
    case 'joists':
      return null;
  }
}

/** Distance from a place to a shape [m]; zero on or in it. */
export function distanceTo(shape: Shape, at: Point): number {
  switch (shape.is) {
    case 'spot':
      return Math.max(0, geometry.distanceM(shape.at, at) - shape.radiusM);
    case 'area':
      return Math.max(0, geometry.distanceToPolygonM(at, shape.outline));
    case 'line': {
      let least = Number.POSITIVE_INFINITY;
      for (let i = 1; i < shape.path.length; i += 1) {
        least = Math.min(least, geometry.distanceToSegmentM(at, shape.path[i - 1], shape.path[i]));
      }
      return Math.max(0, least - shape.halfM);
    }
  }
}

/** The place by which a shape is held. */
export function anchorOf(shape: Shape): Point {
  switch (shape.is) {
    case 'spot':
      return shape.at;
    case 'line': {
      const [first, second] = shape.path;
      return shape.path.length === 2 ? along(first, second, geometry.distanceM(first, second) / 2) : first;
    }
    case 'area': {
      const sum = shape.outline.reduce((all, p) => ({ xM: all.xM + p.xM, yM: all.yM + p.yM }), {
        xM: 0,
        yM: 0,
      });
      const count = shape.outline.length;
      return { xM: sum.xM / count, yM: sum.yM / count };
    }
  }
}
