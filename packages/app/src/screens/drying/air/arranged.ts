import type { ArrangementAsked, DistributionBand } from '@undercroft/assessment';
import type { Point } from '@undercroft/record';

/** Something that blows, on the plan: index 0 is the machine, the rest are fans. */
export interface Blower {
  readonly at: Point;
  readonly bearingDeg: number;
}

/** An arrangement that somebody tries. */
export interface Arranged {
  readonly machine: Blower & { readonly ductTo: Point | null };
  readonly fans: readonly Blower[];
  /** Of a suggestion; absent for as found. */
  readonly sensor?: Point;
  readonly setRelativeHumidity?: number;
}

/** Most fans that can be tried. */
export const MOST_FANS = 3;
/** By so much one press turns [degrees], and one key moves: 1 ft [m]. */
export const TURN_DEG = 15;
export const STEP_M = 0.3048;

type Placed = Pick<DistributionBand, 'machine' | 'fans'>;

/** An arrangement of the assessment as one to try. */
export function arrangedOf({ machine, fans }: Placed): Arranged {
  const { intake, outlet, ducted, bearingDeg, sensor, setRelativeHumidity } = machine;
  const middle = { xM: (intake.xM + outlet.xM) / 2, yM: (intake.yM + outlet.yM) / 2 };
  return {
    machine: {
      at: ducted ? intake : middle,
      bearingDeg: bearingDeg ?? 0,
      ductTo: ducted ? outlet : null,
    },
    fans: fans.map((fan) => ({ at: fan.at, bearingDeg: fan.bearingDeg })),
    ...(sensor === undefined ? {} : { sensor }),
    setRelativeHumidity,
  };
}

/** What is asked of the engine for it. */
export function askedOf({ machine, fans, sensor, setRelativeHumidity }: Arranged): ArrangementAsked {
  return {
    machine: {
      ...machine,
      sensor: sensor ?? null,
      ...(setRelativeHumidity === undefined ? {} : { setRelativeHumidity }),
    },
    fans,
  };
}

/** The blower of an index, 0 for the machine. */
export const blowerOf = (now: Arranged, index: number): Blower | undefined =>
  index === 0 ? now.machine : now.fans[index - 1];

/** The arrangement with one blower changed. */
export function withBlower(now: Arranged, index: number, change: Partial<Blower>): Arranged {
  if (index === 0) return { ...now, machine: { ...now.machine, ...change } };
  return { ...now, fans: now.fans.map((fan, i) => (i === index - 1 ? { ...fan, ...change } : fan)) };
}

/** The blower nearest to a place, within reach; null where there is none. */
export function nearest(now: Arranged, at: Point, reachM: number): number | null {
  const away = [now.machine, ...now.fans].map((b) => Math.hypot(b.at.xM - at.xM, b.at.yM - at.yM));
  const least = Math.min(...away);
  return least <= reachM ? away.indexOf(least) : null;
}

/** The middle of a ring of corners. */
export function middleOf(corners: readonly Point[]): Point {
  const n = Math.max(1, corners.length);
  return {
    xM: corners.reduce((sum, p) => sum + p.xM, 0) / n,
    yM: corners.reduce((sum, p) => sum + p.yM, 0) / n,
  };
}
