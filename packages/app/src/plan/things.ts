import type { Job, Plan } from '@undercroft/record';

/** Kinds of the record that stand on the plan, and the list of the plan that holds each. */
export const LISTS = {
  zone: 'zones',
  obstacle: 'obstacles',
  seam: 'seams',
  drain: 'drains',
  'interior-wall': 'interiorWalls',
  girder: 'girders',
  duct: 'ducts',
  joists: 'joists',
  wall: 'walls',
  vent: 'vents',
  door: 'doors',
  pier: 'piers',
  equipment: 'equipment',
  height: 'heights',
} as const;

export type ThingKind = keyof typeof LISTS;

/** The value of a thing of a kind, as the record holds it. */
export type ThingValue<K extends ThingKind = ThingKind> = Plan[(typeof LISTS)[K]][number];

/** A thing on the plan. */
export type Thing = { [K in ThingKind]: { readonly kind: K; readonly value: ThingValue<K> } }[ThingKind];

/** Names a thing. */
export interface ThingRef {
  readonly kind: ThingKind;
  readonly id: string;
}

export const KINDS = Object.keys(LISTS) as readonly ThingKind[];

/** Everything on the plan, kind by kind, each list in its order. */
export function thingsOf(job: Job | null): Thing[] {
  if (job === null) return [];
  return KINDS.flatMap((kind) => job.plan[LISTS[kind]].map((value) => ({ kind, value }) as Thing));
}

/** The thing of a name; null for one that is not there, or no more. */
export function findThing(job: Job | null, ref: ThingRef | null): Thing | null {
  if (job === null || ref === null) return null;
  const list: readonly { readonly id: string }[] = job.plan[LISTS[ref.kind]];
  const value = list.find(({ id }) => id === ref.id);
  return value === undefined ? null : ({ kind: ref.kind, value } as Thing);
}

export const isThingKind = (kind: string): kind is ThingKind => Object.hasOwn(LISTS, kind);
