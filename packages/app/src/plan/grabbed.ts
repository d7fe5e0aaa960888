import type { Point } from '@undercroft/record';

/** Something of the plan that a finger took hold of. */
export interface Grabbed {
  readonly kind: string;
  readonly id: string;
  /** By how much it is moved when the finger is there [m]. Called for each frame: quick, without rendering. */
  move(to: Point): Point;
  /** It stays there. False where nothing was changed. */
  drop(to: Point): Promise<boolean>;
}
