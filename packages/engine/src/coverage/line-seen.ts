import { common, type Interval, lengthOf, subtract } from './intervals.ts';

/** How much of something long and narrow was seen. */
export interface LineSeen {
  /** Length that anybody could see: where the open floor reaches it [m]. */
  readonly openM: number;
  readonly seenM: number;
  /** Share of the open length, 0..1; null when nothing of it is open, as on a pier face flush with a wall. */
  readonly seenShare: number | null;
  /** Open stretches that nobody saw, from its start [m]. */
  readonly unseen: readonly Interval[];
  /** Stations that show more than a centimeter of it, in the order given. */
  readonly stations: readonly string[];
}

/** How much of the open stretches of a line some seen stretches cover. */
export function lineSeen(
  open: readonly Interval[],
  seen: readonly Interval[],
  stations: readonly string[],
): LineSeen {
  const openM = lengthOf(open);
  const seenM = lengthOf(common(open, seen));
  const unseen = subtract(open, seen);
  return {
    openM,
    seenM,
    seenShare: openM > 0 ? (unseen.length === 0 ? 1 : seenM / openM) : null,
    unseen,
    stations,
  };
}
