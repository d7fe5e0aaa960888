import { partitionAreas } from '../geometry/partition-areas.ts';
import type { CompiledScene } from './compiled-scene.ts';

/**
 * Exact areas within the walls, m²: floor that can be seen in principle, and floor under obstacles, which no picture
 * shows. Piers and interior walls stand on neither.
 */
export function seeableFloor({ solids, bars }: CompiledScene): { floorM2: number; coveredM2: number } {
  const rings: (typeof solids.outline)[] = [solids.outline];
  for (const { kind, ring } of solids.rings)
    if (kind === 'pier' || kind === 'interior-wall') rings.push(ring);
  const firstObstacle = rings.length;
  for (const { kind, ring } of [...solids.rings, ...bars]) if (kind === 'obstacle') rings.push(ring);
  const [floorM2, coveredM2] = partitionAreas(
    rings,
    (inside) => {
      if (!inside[0]) return -1;
      for (let i = 1; i < firstObstacle; i += 1) if (inside[i]) return -1;
      for (let i = firstObstacle; i < rings.length; i += 1) if (inside[i]) return 1;
      return 0;
    },
    2,
  ) as [number, number];
  return { floorM2, coveredM2 };
}
