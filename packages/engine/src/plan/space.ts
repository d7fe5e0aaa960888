import { centroid } from '../geometry/centroid.ts';
import { distanceToPolygonM } from '../geometry/distance.ts';
import type { Point } from '../geometry/point.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { type ClearHeight, clearHeightOver, type HeightSample } from './clear-height.ts';
import {
  type AreaInput,
  divideFloor,
  type FloorAreas,
  type PierInput,
  pierFootprint,
} from './floor-areas.ts';
import type { PlanIssue } from './issue.ts';
import { type OutlineInput, type ResolvedOutline, resolveOutline } from './outline.ts';
import { type WallAreas, type WallInput, wallAreas } from './walls.ts';

/** A surveyed space. Lists left out are empty. */
export interface SpaceInput {
  readonly outline: OutlineInput;
  /** Bearing of the plan's +y axis, degrees clockwise from true north; 0 by default. */
  readonly northDeg?: number;
  readonly heights?: readonly HeightSample[];
  readonly walls?: readonly WallInput[];
  /** What is not floor at all: slabs, closed-off rooms, solid masonry. */
  readonly holes?: readonly AreaInput[];
  readonly piers?: readonly PierInput[];
  /** Parts of the floor in another condition than the rest; where they overlap, the later one wins. */
  readonly zones?: readonly AreaInput[];
  /** Vents to outdoors with their net free area, m², where it is known. */
  readonly vents?: readonly { readonly netFreeAreaM2?: number }[];
  /** Clear heights, m, for which the share of floor below is wanted. */
  readonly heightLimitsM?: readonly number[];
}

/** Sizes of a surveyed space. */
export interface PlanGeometry extends Omit<FloorAreas, 'issues'>, Omit<WallAreas, 'issues' | 'notices'> {
  readonly outline: ResolvedOutline;
  readonly perimeterM: number;
  readonly centroid: Point;
  /** Null when no clear height was taken. */
  readonly clearHeight: ClearHeight | null;
  /** Open floor times mean clear height, m³: joist bays, ducts and pipes not counted; null without a height. */
  readonly volumeM3: number | null;
  readonly pierCount: number;
  readonly vents: {
    readonly count: number;
    /** Sum over the vents whose net free area is known, m². */
    readonly netFreeAreaM2: number;
    readonly unknownCount: number;
  };
}

/** Sizes of a space, or the reasons why there are none. */
export interface PlanResult {
  /** Null when the outline can't carry figures; the issues say why. */
  readonly geometry: PlanGeometry | null;
  readonly outline: ResolvedOutline;
  readonly issues: readonly PlanIssue[];
  readonly notices: readonly Notice[];
}

/** A height that was drawn this far outside the walls is still taken for this space, m. Common practice. */
const HEIGHT_REACH_M = 0.5;

/**
 * Floor area, perimeter, volume, walls, piers, zones and vents of a space.
 *
 * Bad data gives issues, all collected; what they concern is left out of the figures. Only an outline that encloses
 * no single area leaves nothing to compute. Clear heights: see `clearHeightOver`; division of the floor: `divideFloor`.
 * @throws EngineError `not-finite` or `out-of-range` for numbers that are none, or sizes beyond any house
 */
export function planGeometry(input: SpaceInput): PlanResult {
  const outline = resolveOutline(input.outline, input.northDeg ?? 0);
  const middle = centroid(outline.corners);
  if (!outline.usable || middle === null) {
    return { geometry: null, outline, issues: outline.issues, notices: outline.notices };
  }
  const holes = input.holes ?? [];
  const piers = input.piers ?? [];
  const { issues: floorIssues, ...floor } = divideFloor(outline.corners, holes, piers, input.zones ?? []);
  const heights = usableHeights(outline.corners, input.heights ?? []);
  const open = {
    outer: outline.corners,
    holes: [...holes.map((hole) => hole.outline), ...piers.map(pierFootprint)],
  };
  const clear = clearHeightOver(open, heights.samples, input.heightLimitsM);
  const meanM = clear?.value.meanM ?? null;
  const {
    issues: wallIssues,
    notices: wallNotices,
    ...walls
  } = wallAreas(outline.edges, input.walls ?? [], meanM);
  const vents = ventSum(input.vents ?? []);
  const geometry: PlanGeometry = {
    ...floor,
    ...walls,
    outline,
    perimeterM: outline.perimeterM,
    centroid: middle,
    clearHeight: clear?.value ?? null,
    volumeM3: meanM === null ? null : floor.floorM2 * meanM,
    pierCount: piers.length,
    vents,
  };
  const notices = [...outline.notices, ...(clear?.notices ?? []), ...wallNotices];
  if (vents.unknownCount > 0) {
    notices.push({
      code: 'vent-area-unknown',
      message: `${vents.unknownCount} of ${vents.count} vents have no net free area; the sum leaves them out.`,
    });
  }
  if (clear === null) {
    notices.push({ code: 'no-clear-height', message: 'No clear height was taken, so there is no volume.' });
  }
  return {
    geometry,
    outline,
    issues: [...outline.issues, ...floorIssues, ...heights.issues, ...wallIssues],
    notices,
  };
}

function usableHeights(
  corners: readonly Point[],
  all: readonly HeightSample[],
): { samples: HeightSample[]; issues: PlanIssue[] } {
  const issues: PlanIssue[] = [];
  const samples = all.filter((sample, i) => {
    if (!(sample.clearHeightM > 0)) {
      requireRange('clear height (m)', sample.clearHeightM, Number.NEGATIVE_INFINITY, 20);
      issues.push({
        code: 'bad-size',
        path: `heights[${i}].clearHeightM`,
        found: `${sample.clearHeightM}`,
        expected: 'a clear height above 0 m',
      });
      return false;
    }
    const outsideM = distanceToPolygonM(sample.at, corners);
    if (outsideM <= HEIGHT_REACH_M) return true;
    issues.push({
      code: 'outside-outline',
      path: `heights[${i}].at`,
      found: `a place ${outsideM.toFixed(2)} m outside the walls`,
      expected: 'a place within the walls; this height is not used',
    });
    return false;
  });
  return { samples, issues };
}

function ventSum(vents: readonly { readonly netFreeAreaM2?: number }[]): PlanGeometry['vents'] {
  let netFreeAreaM2 = 0;
  let unknownCount = 0;
  for (const vent of vents) {
    if (vent.netFreeAreaM2 === undefined) unknownCount += 1;
    else netFreeAreaM2 += requireRange('net free area (m²)', vent.netFreeAreaM2, 0, 100);
  }
  return { count: vents.length, netFreeAreaM2, unknownCount };
}
