import type { BoundingBox } from '../geometry/bounding-box.ts';
import { boundingBox } from '../geometry/bounding-box.ts';
import { distanceM, type Point } from '../geometry/point.ts';
import { polygonAreaM2, signedAreaM2 } from '../geometry/polygon-area.ts';
import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import { clearHeightAtM } from '../plan/clear-height.ts';
import { pierFootprint } from '../plan/floor-areas.ts';
import { isInsideRing, stripRing } from './rings.ts';
import type { CoverageScene, SceneWall } from './scene.ts';
import { wallPieces } from './wall-pieces.ts';

/** A side of a wall or pier that coverage reports on. */
export interface Face {
  readonly kind: 'wall' | 'interior-wall' | 'pier';
  /** Place in the scene's list; for an outside wall its corner. */
  readonly index: number;
  /** Pier: face 0..3. Interior wall: 0 its right side, 1 its left, walking from start to end. Outside wall: 0. */
  readonly part: number;
  readonly lengthM: number;
}

/** A stretch of the surface of something solid, with the open floor (if any) on its left. */
export interface SolidEdge {
  readonly a: Point;
  readonly b: Point;
  /** Place in `faces`, -1 when nobody asks about it. */
  readonly face: number;
  /** Where its ends lie along the face [m]. */
  readonly uA: number;
  readonly uB: number;
}

/** Footprint of something solid, counter-clockwise. */
export interface SolidRing {
  /** `low`: floor with the joists right above it. */
  readonly kind: 'pier' | 'interior-wall' | 'obstacle' | 'low';
  readonly ring: readonly Point[];
  readonly box: BoundingBox;
}

/** Everything that stands from floor to joists. */
export interface Solids {
  readonly outline: readonly Point[];
  readonly box: BoundingBox;
  readonly rings: readonly SolidRing[];
  readonly edges: readonly SolidEdge[];
  readonly faces: readonly Face[];
}

/**
 * Collects what hides a view whatever the heights: outside walls, interior walls between their openings, piers,
 * obstacles whose height nobody gave, and places where the joists come down to less than the height one can look
 * through.
 * @throws EngineError `bad-geometry` for an outline without area, `not-finite` or `out-of-range` for places and sizes
 */
export function solidsOf(scene: CoverageScene): Solids {
  const { outline } = scene;
  const box = boundingBox(outline);
  if (box === null || outline.length < 3 || polygonAreaM2(outline) <= 1e-9) {
    throw new EngineError('bad-geometry', 'outline: must have at least 3 corners and enclose an area');
  }
  const edges: SolidEdge[] = [];
  const faces: Face[] = [];
  const rings: SolidRing[] = [];
  addOutline(outline, edges, faces);
  const solid = (
    kind: SolidRing['kind'],
    ring: readonly Point[],
    faceOfSide?: (side: number) => number,
  ): void => {
    rings.push({ kind, ring, box: boundingBox(ring)! });
    for (let i = 0; i < ring.length; i += 1) {
      const a = ring[i]!;
      const b = ring[(i + 1) % ring.length]!;
      const length = distanceM(a, b);
      // Walked backward, so that the open floor lies on the left.
      if (length > 0) edges.push({ a: b, b: a, face: faceOfSide?.(i) ?? -1, uA: length, uB: 0 });
    }
  };
  (scene.piers ?? []).forEach((pier, index) => {
    const first = faces.length;
    const ring = pierFootprint(pier);
    for (let part = 0; part < 4; part += 1) {
      faces.push({ kind: 'pier', index, part, lengthM: distanceM(ring[part]!, ring[(part + 1) % 4]!) });
    }
    solid('pier', ring, (side) => first + side);
  });
  (scene.interiorWalls ?? []).forEach((wall, index) => {
    addInteriorWall(wall, index, edges, faces, rings);
  });
  for (const { outline: ring, heightM } of scene.obstacles ?? []) {
    if (heightM === undefined) solid('obstacle', signedAreaM2(ring) < 0 ? [...ring].reverse() : ring);
  }
  for (const ring of lowPlaces(scene, box)) solid('low', ring);
  return { outline, box, rings, edges, faces };
}

function addOutline(outline: readonly Point[], edges: SolidEdge[], faces: Face[]): void {
  const clockwise = signedAreaM2(outline) < 0;
  for (let index = 0; index < outline.length; index += 1) {
    const from = outline[index]!;
    const to = outline[(index + 1) % outline.length]!;
    const lengthM = distanceM(from, to);
    const face = faces.push({ kind: 'wall', index, part: 0, lengthM }) - 1;
    if (lengthM === 0) continue;
    edges.push(
      clockwise ? { a: to, b: from, face, uA: lengthM, uB: 0 } : { a: from, b: to, face, uA: 0, uB: lengthM },
    );
  }
}

function addInteriorWall(
  wall: SceneWall,
  index: number,
  edges: SolidEdge[],
  faces: Face[],
  rings: SolidRing[],
): void {
  const lengthM = distanceM(wall.from, wall.to);
  const right = faces.push({ kind: 'interior-wall', index, part: 0, lengthM }) - 1;
  const left = faces.push({ kind: 'interior-wall', index, part: 1, lengthM }) - 1;
  for (const { from, to, startM, endM } of wallPieces(wall)) {
    const ring = stripRing(
      from,
      to,
      requireRange('interior wall thickness (m)', wall.thicknessM ?? 0, 0, 10),
    );
    if (ring === null) continue;
    rings.push({ kind: 'interior-wall', ring, box: boundingBox(ring)! });
    const [a, b, c, d] = ring as [Point, Point, Point, Point];
    edges.push({ a: b, b: a, face: right, uA: endM, uB: startM });
    edges.push({ a: d, b: c, face: left, uA: startM, uB: endM });
    if (distanceM(b, c) > 0)
      edges.push({ a: c, b, face: -1, uA: 0, uB: 0 }, { a, b: d, face: -1, uA: 0, uB: 0 });
  }
}

/** Below this clear height nothing beyond is seen, m: less than a hand and a lamp. Common practice, no source. */
const LEAST_SIGHT_HEIGHT_M = 0.15;
/** Steps in which low places are marked, m. */
const LOW_CELL_M = 0.25;

/** Where joists come down too low to look under, as strips of cells. */
function lowPlaces({ outline, clearHeights = [] }: CoverageScene, box: BoundingBox): Point[][] {
  const places: Point[][] = [];
  if (!clearHeights.some((sample) => sample.clearHeightM < LEAST_SIGHT_HEIGHT_M)) return places;
  const columns = Math.ceil((box.maxXM - box.minXM) / LOW_CELL_M);
  const rows = Math.ceil((box.maxYM - box.minYM) / LOW_CELL_M);
  for (let row = 0; row < rows; row += 1) {
    const yM = box.minYM + (row + 0.5) * LOW_CELL_M;
    let start = -1;
    for (let column = 0; column <= columns; column += 1) {
      const xM = box.minXM + (column + 0.5) * LOW_CELL_M;
      const low =
        column < columns &&
        isInsideRing(xM, yM, outline) &&
        clearHeightAtM(clearHeights, { xM, yM }) < LEAST_SIGHT_HEIGHT_M;
      if (low && start < 0) start = column;
      if (!low && start >= 0) {
        const left = box.minXM + start * LOW_CELL_M;
        const right = box.minXM + column * LOW_CELL_M;
        places.push(stripRing({ xM: left, yM }, { xM: right, yM }, LOW_CELL_M)!);
        start = -1;
      }
    }
  }
  return places;
}
