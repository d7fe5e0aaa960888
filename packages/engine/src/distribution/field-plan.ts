import type { CoverageScene } from '../coverage/scene.ts';

/**
 * What bounds the air of a crawl space, in plan coordinates [m]: outside walls, interior walls with their openings,
 * piers and full-height obstacles as solid, ducts and girders as faces that leave part of the height open, obstacles
 * of known height as less room.
 */
export interface FieldPlan
  extends Pick<
    CoverageScene,
    'outline' | 'interiorWalls' | 'piers' | 'obstacles' | 'ducts' | 'girders' | 'clearHeights'
  > {
  /** Clear height where none was taken [m], 0.1 to 4. Needed when `clearHeights` is empty. */
  readonly heightM?: number;
}
