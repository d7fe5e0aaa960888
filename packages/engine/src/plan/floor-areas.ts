import { areaOfOverlapM2, shapeAreaM2 } from '../geometry/area-of-overlap.ts';
import { cosDeg, sinDeg } from '../geometry/bearing.ts';
import { partitionAreas } from '../geometry/partition-areas.ts';
import type { Point } from '../geometry/point.ts';
import { polygonContacts } from '../geometry/simple-polygon.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { PlanIssue } from './issue.ts';

/** A pier or post as it stands on the floor: `widthM` along x and `depthM` along y before it is turned. */
export interface PierInput {
  readonly id?: string;
  /** Middle of the footprint. */
  readonly at: Point;
  readonly widthM: number;
  readonly depthM: number;
  /** Turn about its middle, degrees clockwise seen from above; 0 by default. */
  readonly turnDeg?: number;
}

/** A part of the floor with an outline of its own. */
export interface AreaInput {
  readonly id?: string;
  readonly outline: readonly Point[];
}

/** One zone as it lies on the floor. */
export interface ZoneArea {
  readonly id?: string;
  /** Place in the input. */
  readonly index: number;
  /** Floor that this zone has for itself: inside the walls, clear of holes and piers, not taken by a later zone. */
  readonly areaM2: number;
  /** Area as drawn, m²; what is circled twice is not counted. */
  readonly drawnAreaM2: number;
}

/** How the area within the walls is made up; `floorM2`, `holesM2` and `piersM2` add up to `grossM2`. */
export interface FloorAreas {
  /** Within the walls. */
  readonly grossM2: number;
  /** Open floor: gross less holes and piers. */
  readonly floorM2: number;
  /** Covered by holes within the walls; overlapping holes count once. */
  readonly holesM2: number;
  /** Footprints of piers within the walls and clear of holes; overlapping piers count once. */
  readonly piersM2: number;
  readonly zones: readonly ZoneArea[];
  /** Floor in no zone. */
  readonly elsewhereM2: number;
  readonly issues: readonly PlanIssue[];
}

/**
 * Corners of a pier's footprint, counter-clockwise.
 * @throws EngineError `not-finite` or `out-of-range` for sides that are not from 0 to 1,000 m, or no number
 */
export function pierFootprint(pier: PierInput): Point[] {
  const halfWidth = requireRange('pier width (m)', pier.widthM, 0, 1000) / 2;
  const halfDepth = requireRange('pier depth (m)', pier.depthM, 0, 1000) / 2;
  const turn = requireRange('pier turn (degrees)', pier.turnDeg ?? 0, -3600, 3600);
  const [sine, cosine] = [sinDeg(turn), cosDeg(turn)];
  const corner = (x: number, y: number): Point => ({
    xM: pier.at.xM + x * cosine + y * sine,
    yM: pier.at.yM - x * sine + y * cosine,
  });
  return [
    corner(-halfWidth, -halfDepth),
    corner(halfWidth, -halfDepth),
    corner(halfWidth, halfDepth),
    corner(-halfWidth, halfDepth),
  ];
}

/**
 * Divides the area within an outline into holes, piers, zones and the floor elsewhere. A hole wins over a pier, a
 * pier over any zone, a later zone over an earlier one. Parts outside the outline count nothing; those that lie
 * wholly outside, or have no area, are issues.
 * @param outline corners of a usable outline
 * @param holes what is not floor at all: slabs, closed-off rooms, solid masonry
 * @throws EngineError `not-finite` or `out-of-range` for sizes and places that are no finite numbers or no sizes
 */
export function divideFloor(
  outline: readonly Point[],
  holes: readonly AreaInput[],
  piers: readonly PierInput[],
  zones: readonly AreaInput[],
): FloorAreas {
  const footprints = piers.map(pierFootprint);
  const holeStart = 1;
  const pierStart = holeStart + holes.length;
  const zoneStart = pierStart + piers.length;
  const rings = [outline, ...holes.map((h) => h.outline), ...footprints, ...zones.map((z) => z.outline)];
  const [elsewhere, hole, pier, firstZone] = [0, 1, 2, 3];
  const areas = partitionAreas(
    rings,
    (inside) => {
      if (!inside[0]) return -1;
      for (let i = holeStart; i < pierStart; i += 1) if (inside[i]) return hole;
      for (let i = pierStart; i < zoneStart; i += 1) if (inside[i]) return pier;
      for (let i = rings.length - 1; i >= zoneStart; i -= 1) if (inside[i]) return firstZone + i - zoneStart;
      return elsewhere;
    },
    firstZone + zones.length,
  );
  const zoneAreas = zones.map((zone, index) => ({
    ...(zone.id === undefined ? {} : { id: zone.id }),
    index,
    areaM2: areas[firstZone + index]!,
    drawnAreaM2: shapeAreaM2({ outer: zone.outline }),
  }));
  const floorM2 = areas[elsewhere]! + zoneAreas.reduce((sum, zone) => sum + zone.areaM2, 0);
  return {
    grossM2: floorM2 + areas[hole]! + areas[pier]!,
    floorM2,
    holesM2: areas[hole]!,
    piersM2: areas[pier]!,
    zones: zoneAreas,
    elsewhereM2: areas[elsewhere]!,
    issues: [
      ...placeIssues(
        outline,
        'holes',
        'outline',
        holes.map((h) => h.outline),
      ),
      ...placeIssues(outline, 'piers', 'at', footprints),
      ...placeIssues(
        outline,
        'zones',
        'outline',
        zones.map((z) => z.outline),
      ),
    ],
  };
}

/** Less is rounding in the corners of a turned footprint of no width, m². */
const NO_AREA_M2 = 1e-9;

/** Parts that have no area, cross themselves, or lie nowhere within the walls. */
function placeIssues(
  outline: readonly Point[],
  list: string,
  field: string,
  rings: readonly (readonly Point[])[],
): PlanIssue[] {
  const issues: PlanIssue[] = [];
  for (let i = 0; i < rings.length; i += 1) {
    const ring = rings[i]!;
    const areaM2 = shapeAreaM2({ outer: ring });
    const crossing = polygonContacts(ring).find((contact) => contact.kind === 'cross');
    if (crossing) {
      issues.push({
        code: 'crosses-itself',
        path: `${list}[${i}].${field}`,
        found: `sides ${crossing.edgeA + 1} and ${crossing.edgeB + 1} cross`,
        expected: 'sides that meet only at their corners; what is circled twice is not counted',
      });
    }
    if (areaM2 < NO_AREA_M2) {
      issues.push({
        code: 'bad-size',
        path: `${list}[${i}]`,
        found: 'no area',
        expected: 'sides or corners that enclose an area',
      });
    } else if (areaOfOverlapM2({ outer: outline }, { outer: ring }) <= 1e-9 * areaM2) {
      issues.push({
        code: 'outside-outline',
        path: `${list}[${i}].${field}`,
        found: 'a place wholly outside the walls',
        expected: 'a place within the walls',
      });
    }
  }
  return issues;
}
