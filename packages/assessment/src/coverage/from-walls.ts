import type { Point } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import type { FromWall } from './coverage-assessment.ts';
import type { NameOf } from './names.ts';

type Walls = Pick<GeometryResult, 'edges'>;

/** Distance of a place from each wall, nearest first. */
function wallsNear({ xM, yM }: Point, { edges }: Walls) {
  return edges
    .map(({ id, from, to, bearingDeg }) => {
      const [ex, ey] = [to.xM - from.xM, to.yM - from.yM];
      const along = ((xM - from.xM) * ex + (yM - from.yM) * ey) / (ex * ex + ey * ey);
      const t = Math.min(1, Math.max(0, along));
      const distanceM = Math.hypot(xM - from.xM - t * ex, yM - from.yM - t * ey);
      return { wallId: id, distanceM, bearingDeg };
    })
    .sort((a, b) => a.distanceM - b.distanceM);
}

/** Two walls by which a place is found with a tape: the nearest, and the nearest that runs across it. */
export function fromWalls(at: Point, walls: Walls, nameOf: NameOf): FromWall[] {
  const near = wallsNear(at, walls);
  const [first] = near;
  const across = near.find(({ bearingDeg }) => {
    const turn = Math.abs(((bearingDeg - first.bearingDeg) % 180) + 180) % 180;
    return turn > 30 && turn < 150;
  });
  return [first, ...(across === undefined ? [] : [across])].map(({ wallId, distanceM }) => ({
    wallId,
    name: nameOf('wall', wallId),
    distanceM,
  }));
}
