import { shapeAreaM2 } from '../geometry/area-of-overlap.ts';
import { wrapDeg } from '../geometry/bearing.ts';
import { type NormalPolygon, normalizePolygon } from '../geometry/normalize-polygon.ts';
import { perimeterM } from '../geometry/perimeter.ts';
import { distanceM, type Point } from '../geometry/point.ts';
import { polygonEdges } from '../geometry/polygon-edges.ts';
import { polygonContacts } from '../geometry/simple-polygon.ts';
import type { Notice } from '../numerics/notice.ts';
import { type PlanIssue, wallName } from './issue.ts';
import { solveTraverse, type TraverseInput, type TraverseResult } from './traverse.ts';

/** The walls round a space: as corners in plan coordinates, or as taped. */
export type OutlineInput =
  | {
      readonly kind: 'corners';
      /** The wall from a corner to the next one bears the corner's id. */
      readonly corners: readonly { readonly id?: string; readonly at: Point }[];
    }
  | ({ readonly kind: 'traverse' } & TraverseInput);

/** One wall of the resolved outline. Bearings are clockwise from true north, degrees 0 to below 360. */
export interface OutlineEdge {
  /** Id of the corner or leg the wall was given by. */
  readonly id?: string;
  /** Place in `edges`, and of its first corner in `corners`. */
  readonly index: number;
  /** Place of the corner or leg in the input. */
  readonly inputIndex: number;
  readonly from: Point;
  readonly to: Point;
  readonly lengthM: number;
  readonly bearingDeg: number;
  readonly outwardNormalDeg: number;
}

/** An outline brought into one form. */
export interface ResolvedOutline {
  /** True when the outline encloses one area that figures can be based on; issues say why not. */
  readonly usable: boolean;
  /** Counter-clockwise, without repeats; the first corner is the first of the input. */
  readonly corners: readonly Point[];
  readonly edges: readonly OutlineEdge[];
  readonly areaM2: number;
  readonly perimeterM: number;
  /** How the taping came out; null for an outline given by corners. */
  readonly traverse: TraverseResult | null;
  readonly issues: readonly PlanIssue[];
  readonly notices: readonly Notice[];
}

/** Corners nearer than this are one corner, m; finer than any tape in a crawl space is read. Common practice. */
const SAME_CORNER_M = 0.001;

/**
 * Corners, walls, area and perimeter of a space, counter-clockwise whichever way it was walked. Everything wrong is
 * listed: too few corners, no area, corners that repeat (left out), walls that cross or touch (named by their place
 * in the input, counted from 1, and their id), a taped round that does not close.
 * @param northDeg bearing of the plan's +y axis, degrees clockwise from true north; added to every bearing
 * @throws EngineError `not-finite` for a coordinate, length or angle that is no finite number
 */
export function resolveOutline(outline: OutlineInput, northDeg = 0): ResolvedOutline {
  const traverse = outline.kind === 'traverse' ? solveTraverse(outline) : null;
  const given = outline.kind === 'traverse' ? outline.legs : outline.corners;
  const ids = given.map((item) => item.id);
  const points = traverse
    ? traverse.corners
    : outline.kind === 'corners'
      ? outline.corners.map((c) => c.at)
      : [];
  const normal = normalizePolygon(points, SAME_CORNER_M);
  const inputWalls = wallsOfEdges(points, normal);
  const name = (edge: number): string => wallName(inputWalls[edge]!, ids[inputWalls[edge]!]);
  const list = outline.kind === 'traverse' ? 'legs' : 'corners';

  const issues: PlanIssue[] = [...(traverse?.issues ?? [])];
  for (const index of normal.repeated) {
    issues.push({
      code: 'repeated-corner',
      path: `${list}[${index}]`,
      found: `the same place as another corner, ${placeText(points[index]!)}`,
      expected: 'each corner once',
    });
  }
  if (normal.corners.length < 3 && traverse?.corners.length !== 0) {
    issues.push({
      code: 'too-few-corners',
      path: list,
      found: `${normal.corners.length}`,
      expected: 'at least 3 different corners',
    });
  }
  // On one line every wall runs over the others, which says no more than that there is no area.
  const contacts = polygonContacts(normal.corners, SAME_CORNER_M).filter(
    ({ kind }) => normal.areaM2 > 0 || kind === 'cross',
  );
  if (normal.corners.length >= 3 && normal.areaM2 === 0) {
    const found = contacts.length > 0 ? 'loops that cancel each other out' : 'corners on one line';
    issues.push({ code: 'no-area', path: list, found, expected: 'an enclosed area' });
  }
  for (const { kind, edgeA, edgeB, at } of contacts) {
    const verb = kind === 'cross' ? 'cross' : kind === 'touch' ? 'touch' : 'run over each other';
    issues.push({
      code: kind === 'touch' ? 'touches-itself' : 'crosses-itself',
      path: list,
      found: `${name(edgeA)} and ${name(edgeB)} ${verb} at ${placeText(at)}`,
      expected: 'walls that meet only at their corners',
    });
  }
  return {
    usable: normal.areaM2 > 0 && contacts.every((c) => c.kind === 'touch') && isWoundOnce(normal),
    corners: normal.corners,
    edges: edgesOf(normal, inputWalls, ids, northDeg),
    areaM2: normal.areaM2,
    perimeterM: perimeterM(normal.corners),
    traverse,
    issues,
    notices: traverse?.notices ?? [],
  };
}

/** False where parts of the outline run clockwise and others not, as in a bow tie through one corner. */
function isWoundOnce({ corners, areaM2 }: NormalPolygon): boolean {
  return Math.abs(shapeAreaM2({ outer: corners }) - areaM2) <= 1e-6 * areaM2;
}

/**
 * For each side of the normal form the input wall it stands for. Where repeats were left out, several input walls lie
 * between two kept corners; the longest is the one that was meant.
 */
function wallsOfEdges(points: readonly Point[], normal: NormalPolygon): number[] {
  const { inputIndices, reversed } = normal;
  const n = points.length;
  return inputIndices.map((here, k) => {
    const next = inputIndices[(k + 1) % inputIndices.length]!;
    const [first, end] = reversed ? [next, here] : [here, next];
    let wall = first;
    let longest = -1;
    for (let i = first, steps = 0; steps < n && (steps === 0 || i !== end); i = (i + 1) % n, steps += 1) {
      const length = distanceM(points[i]!, points[(i + 1) % n]!);
      if (length > longest) {
        longest = length;
        wall = i;
      }
    }
    return wall;
  });
}

function edgesOf(
  normal: NormalPolygon,
  inputWalls: readonly number[],
  ids: readonly (string | undefined)[],
  northDeg: number,
): OutlineEdge[] {
  return polygonEdges(normal.corners).map((edge) => {
    const inputIndex = inputWalls[edge.index]!;
    const id = ids[inputIndex];
    return {
      ...edge,
      ...(id === undefined ? {} : { id }),
      inputIndex,
      bearingDeg: wrapDeg(edge.bearingDeg + northDeg),
      outwardNormalDeg: wrapDeg(edge.outwardNormalDeg + northDeg),
    };
  });
}

function placeText(at: Point): string {
  return `x ${at.xM.toFixed(2)} m, y ${at.yM.toFixed(2)} m`;
}
