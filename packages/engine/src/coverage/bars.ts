import { type BoundingBox, boundingBox } from '../geometry/bounding-box.ts';
import { isConvex } from '../geometry/convexity.ts';
import type { Point } from '../geometry/point.ts';
import { signedAreaM2 } from '../geometry/polygon-area.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { alongLine, stripRing } from './rings.ts';
import type { CoverageScene } from './scene.ts';

/** Something that one may see or crawl over or under: it fills the heights from its underside to its top. */
export interface Bar {
  readonly kind: 'obstacle' | 'duct' | 'girder' | 'lintel';
  readonly id: string;
  /** Footprint, counter-clockwise. */
  readonly ring: readonly Point[];
  readonly convex: boolean;
  readonly box: BoundingBox;
  readonly undersideM: number;
  readonly topM: number;
}

/**
 * Obstacles of known height, ducts leg by leg, girders of known clearance, and lintels over openings in interior
 * walls. A notice names the ducts whose clearance nobody gave.
 * @throws EngineError `not-finite` or `out-of-range` for sizes that are no sizes
 */
export function barsOf(scene: CoverageScene): { bars: Bar[]; notices: Notice[] } {
  const bars: Bar[] = [];
  const notices: Notice[] = [];
  const add = (
    kind: Bar['kind'],
    id: string,
    ring: readonly Point[] | null,
    underside: number,
    top: number,
  ) => {
    if (ring === null || !(top > underside)) return;
    const ordered = signedAreaM2(ring) < 0 ? [...ring].reverse() : ring;
    bars.push({
      kind,
      id,
      ring: ordered,
      convex: isConvex(ordered),
      box: boundingBox(ordered)!,
      undersideM: underside,
      topM: top,
    });
  };
  for (const { id, outline, heightM } of scene.obstacles ?? []) {
    if (heightM === undefined) continue;
    add('obstacle', id, outline, 0, requireRange(`height of obstacle ${id} (m)`, heightM, 0, 1000));
  }
  const unknown: string[] = [];
  for (const { id, path, widthM, heightM, clearanceM } of scene.ducts ?? []) {
    if (clearanceM === undefined) unknown.push(id);
    const width = requireRange(`width of duct ${id} (m)`, widthM, 0, 100);
    const underside = requireRange(`clearance of duct ${id} (m)`, clearanceM ?? 0, 0, 1000);
    const high =
      heightM === undefined ? undefined : requireRange(`height of duct ${id} (m)`, heightM, 0, 1000);
    const top = clearanceM === undefined || high === undefined ? Number.POSITIVE_INFINITY : underside + high;
    for (let leg = 0; leg + 1 < path.length; leg += 1) {
      add('duct', id, legRing(path, leg, width), underside, top);
    }
  }
  if (unknown.length > 0) {
    notices.push({
      code: 'duct-clearance-unknown',
      message: `No clearance is known under ${unknown.length === 1 ? 'duct' : 'ducts'} ${unknown.join(', ')}; nothing is taken as seen through or passed under there.`,
    });
  }
  for (const { id, from, to, widthM, clearanceM } of scene.girders ?? []) {
    if (clearanceM === undefined) continue;
    const width = requireRange(`width of girder ${id} (m)`, widthM, 0, 100);
    const underside = requireRange(`clearance of girder ${id} (m)`, clearanceM, 0, 1000);
    add('girder', id, stripRing(from, to, width), underside, Number.POSITIVE_INFINITY);
  }
  for (const wall of scene.interiorWalls ?? []) {
    for (const { offsetM, widthM, heightM } of wall.openings ?? []) {
      if (heightM === undefined) continue;
      const start = alongLine(wall.from, wall.to, offsetM);
      const ring = stripRing(start, alongLine(wall.from, wall.to, offsetM + widthM), wall.thicknessM ?? 0);
      const underside = requireRange(`opening height in wall ${wall.id} (m)`, heightM, 0, 1000);
      add('lintel', wall.id, ring, underside, Number.POSITIVE_INFINITY);
    }
  }
  return { bars, notices };
}

/** One leg of a duct, carried on by half its width at bends so that no gap opens there. */
function legRing(path: readonly Point[], leg: number, widthM: number): Point[] | null {
  const a = path[leg]!;
  const b = path[leg + 1]!;
  const length = Math.hypot(b.xM - a.xM, b.yM - a.yM);
  if (length === 0) return null;
  const from = leg > 0 ? alongLine(a, b, -widthM / 2) : a;
  const to = leg + 2 < path.length ? alongLine(a, b, length + widthM / 2) : b;
  return stripRing(from, to, widthM);
}
