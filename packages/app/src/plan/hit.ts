import type { plan } from '@undercroft/engine';
import type { Job, Point } from '@undercroft/record';
import { distanceTo, shapeOf } from './shape.ts';
import { KINDS, type Thing, type ThingRef, thingsOf } from './things.ts';

/** Of two things at one place the one drawn later, which lies above, is meant. */
const RANK = new Map(KINDS.map((kind, index) => [kind, index]));

/** Things within reach of a place, the one that is meant first: what lies under the finger before what is near it. */
export function hitsAt(
  job: Job | null,
  walls: plan.ResolvedOutline | null,
  at: Point,
  reachM: number,
): Thing[] {
  return thingsOf(job)
    .flatMap((thing) => {
      const shape = shapeOf(thing, walls);
      const away = shape === null ? Number.POSITIVE_INFINITY : distanceTo(shape, at);
      // A floor zone is meant only by a tap inside of it.
      if (away > (thing.kind === 'zone' ? 0 : reachM)) return [];
      return [{ thing, away }];
    })
    .sort(
      (a, b) =>
        Number(isBroad(a.thing)) - Number(isBroad(b.thing)) ||
        a.away - b.away ||
        (RANK.get(b.thing.kind) ?? 0) - (RANK.get(a.thing.kind) ?? 0),
    )
    .map(({ thing }) => thing);
}

/** What fills much of the floor, or a whole wall, is meant only where nothing else is. */
const isBroad = ({ kind }: Thing) => kind === 'zone' || kind === 'wall' || kind === 'obstacle';

/** The next of the hits after the one that is selected: tapping again goes on to what lies below. */
export function nextHit(hits: readonly Thing[], selected: ThingRef | null): Thing | null {
  const now = hits.findIndex(({ kind, value }) => kind === selected?.kind && value.id === selected.id);
  return hits[(now + 1) % Math.max(1, hits.length)] ?? null;
}
