import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { PlanIssue } from './issue.ts';
import type { OutlineEdge } from './outline.ts';

/** What is known of one wall of the outline. */
export interface WallInput {
  /** Id of the corner or leg that the wall was given by. */
  readonly wallId: string;
  /** Inside height from the floor of the space to the sill, m. */
  readonly heightM?: number;
  /** False where another room of the house or a slab lies behind it; true by default. */
  readonly outdoors?: boolean;
}

/** One wall with its area. */
export interface WallArea {
  readonly edge: OutlineEdge;
  readonly outdoors: boolean;
  /** Null when neither the wall's height nor a clear height is known. */
  readonly heightM: number | null;
  /** True when the mean clear height stands in for the wall's own. */
  readonly heightAssumed: boolean;
  readonly areaM2: number | null;
}

/** The walls of a space together. */
export interface WallAreas {
  readonly walls: readonly WallArea[];
  /** Length of walls that have outdoors or open ground behind them, m. */
  readonly exposedPerimeterM: number;
  /** Area of all walls, m²; null when the height of any of them is unknown. */
  readonly wallAreaM2: number | null;
  /** Area of the walls that have outdoors behind them, m²; null when the height of any of them is unknown. */
  readonly exposedWallAreaM2: number | null;
  readonly issues: readonly PlanIssue[];
  readonly notices: readonly Notice[];
}

/**
 * Wall areas and exposed perimeter. A wall that no one described is taken to stand outdoors; a wall without a height
 * gets the mean clear height, and a notice says of how many walls that is so.
 * @param edges walls of the resolved outline
 * @param described what is known of them; ids that are no wall's, and second descriptions of a wall, are issues
 * @param clearHeightM mean clear height, m, or null when no height was taken
 * @throws EngineError `not-finite` or `out-of-range` for a wall height that is not from 0 to 20 m
 */
export function wallAreas(
  edges: readonly OutlineEdge[],
  described: readonly WallInput[],
  clearHeightM: number | null,
): WallAreas {
  const issues: PlanIssue[] = [];
  const facts = new Map<string, WallInput>();
  const known = new Set(edges.map((edge) => edge.id));
  described.forEach((wall, i) => {
    if (wall.heightM !== undefined) requireRange('wall height (m)', wall.heightM, 0, 20);
    const path = `walls[${i}].wallId`;
    if (!known.has(wall.wallId)) {
      issues.push({
        code: 'unknown-wall',
        path,
        found: wall.wallId,
        expected: 'the id of a corner or leg of the outline',
      });
    } else if (facts.has(wall.wallId)) {
      issues.push({
        code: 'wall-described-twice',
        path,
        found: wall.wallId,
        expected: 'one description for each wall; the first is used',
      });
    } else facts.set(wall.wallId, wall);
  });
  const walls = edges.map((edge): WallArea => {
    const fact = edge.id === undefined ? undefined : facts.get(edge.id);
    const heightM = fact?.heightM ?? clearHeightM;
    return {
      edge,
      outdoors: fact?.outdoors ?? true,
      heightM,
      heightAssumed: fact?.heightM === undefined && heightM !== null,
      areaM2: heightM === null ? null : heightM * edge.lengthM,
    };
  });
  const exposed = walls.filter((wall) => wall.outdoors);
  return {
    walls,
    exposedPerimeterM: exposed.reduce((sum, wall) => sum + wall.edge.lengthM, 0),
    wallAreaM2: totalM2(walls),
    exposedWallAreaM2: totalM2(exposed),
    issues,
    notices: heightNotices(walls, clearHeightM),
  };
}

function totalM2(walls: readonly WallArea[]): number | null {
  let sum = 0;
  for (const { areaM2 } of walls) {
    if (areaM2 === null) return null;
    sum += areaM2;
  }
  return sum;
}

function heightNotices(walls: readonly WallArea[], clearHeightM: number | null): Notice[] {
  const assumed = walls.filter((wall) => wall.heightAssumed).length;
  const unknown = walls.filter((wall) => wall.heightM === null).length;
  const notices: Notice[] = [];
  if (assumed > 0 && clearHeightM !== null) {
    notices.push({
      code: 'wall-height-assumed',
      message: `${assumed} of ${walls.length} walls have no height of their own; the mean clear height, ${clearHeightM.toFixed(2)} m, is used.`,
    });
  }
  if (unknown > 0) {
    notices.push({
      code: 'wall-height-unknown',
      message: `${unknown} of ${walls.length} walls have no height, and no clear height was taken; there is no wall area.`,
    });
  }
  return notices;
}
