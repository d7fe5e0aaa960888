import type { Job, Place, Point } from '@undercroft/record';
import { anchorOf, distanceTo, type Shape, shapeOf } from '../../plan/shape.ts';
import { thingsOf } from '../../plan/things.ts';
import { wallsOf } from '../../plan/walls.ts';

type On = NonNullable<Place['on']>;

/** Something drawn on the plan that a reading can belong to. */
export interface PlacedThing {
  readonly kind: On['kind'];
  readonly id: string;
  /** Its number among those of its kind, from 1. */
  readonly number: number;
  readonly at: Point;
  readonly shape: Shape;
}

/** The things of some kinds on the plan, each with the number that it is called by. */
export function placedThings(job: Job, kinds: readonly On['kind'][]): PlacedThing[] {
  const walls = wallsOf(job);
  const counts = new Map<string, number>();
  return thingsOf(job).flatMap((thing) => {
    const kind = kinds.find((one) => one === thing.kind);
    if (kind === undefined) return [];
    const number = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, number);
    const shape = shapeOf(thing, walls);
    return shape === null ? [] : [{ kind, id: thing.value.id, number, at: anchorOf(shape), shape }];
  });
}

/** The thing nearest to a place; null where there is none. */
export function nearestThing(things: readonly PlacedThing[], at: Point): PlacedThing | null {
  let best: PlacedThing | null = null;
  let bestM = Number.POSITIVE_INFINITY;
  for (const thing of things) {
    const away = distanceTo(thing.shape, at);
    if (away < bestM) [best, bestM] = [thing, away];
  }
  return best;
}
