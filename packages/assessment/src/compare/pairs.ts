import type { Point } from '@undercroft/record';

/** Something with an id and, perhaps, a place. */
export interface Placed<T> {
  readonly id: string;
  readonly at?: Point;
  /** Only things of one sort are taken for each other: a kind, a member, a surface. */
  readonly sort: string;
  readonly item: T;
}

/** Two things that are taken to be one and the same. */
export interface Pair<T> {
  readonly before: Placed<T>;
  readonly after: Placed<T>;
  /** Absent where either has no place. */
  readonly apartM?: number;
}

export interface Paired<T> {
  readonly pairs: readonly Pair<T>[];
  readonly gone: readonly Placed<T>[];
  readonly fresh: readonly Placed<T>[];
}

const apart = (a: Point, b: Point): number => Math.hypot(a.xM - b.xM, a.yM - b.yM);

function pairOf<T>(before: Placed<T>, after: Placed<T>): Pair<T> {
  const known = before.at !== undefined && after.at !== undefined;
  return { before, after, ...(known ? { apartM: apart(before.at, after.at) } : {}) };
}

/**
 * Which of some things before is which of those after: by id where the record went on, else the nearest of the same sort
 * within a distance, nearest pairs first; each is taken once.
 * @param byId false for readings, of which each visit has new ones
 */
export function pairUp<T>(
  before: readonly Placed<T>[],
  after: readonly Placed<T>[],
  withinM: number,
  byId: boolean,
): Paired<T> {
  const left = new Set(before);
  const right = new Set(after);
  const pairs: Pair<T>[] = [];
  const take = (a: Placed<T>, b: Placed<T>) => {
    left.delete(a);
    right.delete(b);
    pairs.push(pairOf(a, b));
  };
  if (byId) {
    const known = new Map(after.map((b) => [b.id, b]));
    for (const a of before) {
      const b = known.get(a.id);
      if (b !== undefined && b.sort === a.sort) take(a, b);
    }
  }
  const near = [...left].flatMap((a) =>
    [...right].flatMap((b) =>
      a.sort === b.sort && a.at !== undefined && b.at !== undefined && apart(a.at, b.at) <= withinM
        ? [{ a, b, m: apart(a.at, b.at) }]
        : [],
    ),
  );
  near.sort((p, q) => p.m - q.m || (p.a.id < q.a.id ? -1 : 1) || (p.b.id < q.b.id ? -1 : 1));
  for (const { a, b } of near) if (left.has(a) && right.has(b)) take(a, b);
  const order = new Map(before.map((a, i) => [a, i]));
  pairs.sort((p, q) => (order.get(p.before) ?? 0) - (order.get(q.before) ?? 0));
  return { pairs, gone: before.filter((a) => left.has(a)), fresh: after.filter((b) => right.has(b)) };
}
