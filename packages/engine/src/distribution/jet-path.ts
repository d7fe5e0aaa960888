import { cosDeg, sinDeg } from '../geometry/bearing.ts';
import type { Point } from '../geometry/point.ts';
import type { FieldMesh } from './mesh.ts';

/** A face that a jet crosses. */
export interface JetCrossing {
  readonly face: number;
  /** 1 when the jet runs from the face's A to its B, else -1. */
  readonly sign: 1 | -1;
  /** From the outlet, m. */
  readonly distanceM: number;
}

/** The way of a jet through cells. */
export interface JetPath {
  /** Faces in order, up to the first that is closed or open for less than half the height. */
  readonly crossings: readonly JetCrossing[];
  /** Way from the outlet to what ends it, m; the end of what was asked for when nothing does. */
  readonly freeRunM: number;
}

/** A jet does not pass a face that is less open than this. */
const PASSED_SHARE = 0.5;

/**
 * The cells that a jet from an outlet crosses one after the other, along a line through the middle of its first cell.
 * @param from the outlet
 * @param cell the cell that it lies in
 * @param bearingDeg direction, degrees clockwise from the plan's +y axis
 * @param reachM how far to look, m
 */
export function jetPath(
  mesh: FieldMesh,
  from: Point,
  cell: number,
  bearingDeg: number,
  reachM: number,
): JetPath {
  const { grid } = mesh;
  const ux = sinDeg(bearingDeg);
  const uy = cosDeg(bearingDeg);
  const startX = grid.minXM + (mesh.column[cell]! + 0.5) * grid.cellXM;
  const startY = grid.minYM + (mesh.row[cell]! + 0.5) * grid.cellYM;
  // Part of the way that lies between the outlet and the middle of its cell.
  const ahead = (startX - from.xM) * ux + (startY - from.yM) * uy;
  const stepX = ux === 0 ? Number.POSITIVE_INFINITY : grid.cellXM / Math.abs(ux);
  const stepY = uy === 0 ? Number.POSITIVE_INFINITY : grid.cellYM / Math.abs(uy);
  let nextX = stepX / 2;
  let nextY = stepY / 2;
  let at = cell;
  const crossings: JetCrossing[] = [];
  for (;;) {
    const acrossX = nextX <= nextY;
    const distanceM = ahead + (acrossX ? nextX : nextY);
    if (distanceM > reachM + 1e-9) return { crossings, freeRunM: reachM };
    const forward = acrossX ? ux > 0 : uy > 0;
    const face = faceToward(mesh, at, acrossX, forward);
    if (face < 0 || mesh.openShare[face]! < PASSED_SHARE || mesh.opening[face] === 0) {
      return { crossings, freeRunM: Math.max(0, distanceM) };
    }
    if (distanceM > 1e-9) crossings.push({ face, sign: forward ? 1 : -1, distanceM });
    at = forward ? mesh.faceB[face]! : mesh.faceA[face]!;
    if (acrossX) nextX += stepX;
    else nextY += stepY;
  }
}

/** The face of a cell toward the next or the last column or row; -1 for none. */
export function faceToward(mesh: FieldMesh, cell: number, acrossX: boolean, forward: boolean): number {
  const faces = acrossX ? mesh.faceRight : mesh.faceUp;
  if (forward) return faces[cell]!;
  const { grid, column, row, cellAt } = mesh;
  const c = column[cell]! - (acrossX ? 1 : 0);
  const r = row[cell]! - (acrossX ? 0 : 1);
  if (c < 0 || r < 0) return -1;
  const before = cellAt[r * grid.columns + c]!;
  return before < 0 ? -1 : faces[before]!;
}
