import { type LinePoint, requireLine } from './fall.ts';

/** A stretch of line that lies below the level at which its water can run on. */
export interface Pool {
  readonly fromM: number;
  readonly toM: number;
  /** Height of the water when the pool just spills, m. */
  readonly spillHeightM: number;
  /** Greatest depth below the spill level, m. */
  readonly depthM: number;
}

/** Water that a line holds back. */
export interface TrappedWater {
  /** For each point, how far it lies below the spill level downstream of it, m. */
  readonly depthsM: readonly number[];
  readonly pools: readonly Pool[];
  /** Length of line below the spill level, m. */
  readonly deadLengthM: number;
  readonly deepestM: number;
}

/** A shallower pool is rounding in heights that were read equal, m. */
const NO_DEPTH_M = 1e-9;

/**
 * Where water stands in a line that has run empty by gravity: the spill level at a point is the greatest height from
 * there on downstream, and what lies below it holds water. The line runs straight between its points, and the last
 * point spills freely. A stretch at spill level holds none. Fewer than two points hold nothing.
 * Depths within the error of the survey (see `fallBetween`) are no proof of standing water.
 * @param line inverts in the direction of flow, stations never falling back
 * @throws EngineError `not-finite`, `out-of-range` or `bad-input` for points that are no numbers or go backward
 */
export function trappedWater(line: readonly LinePoint[]): TrappedWater {
  requireLine(line);
  const depthsM = new Array<number>(line.length).fill(0);
  /** Wet stretches, from the downstream end up. */
  const pools: Pool[] = [];
  let spill = Number.NEGATIVE_INFINITY;
  let deadLengthM = 0;
  let deepestM = 0;
  for (let i = line.length - 1; i >= 0; i -= 1) {
    const here = line[i]!;
    const below = line[i + 1];
    if (below !== undefined) {
      const wet = wetStretch(here, below, spill);
      if (wet !== null) {
        deadLengthM += wet.toM - wet.fromM;
        addUpstream(pools, wet);
      }
    }
    spill = Math.max(spill, here.heightM);
    depthsM[i] = spill - here.heightM;
    deepestM = Math.max(deepestM, depthsM[i]!);
  }
  return { depthsM, pools: pools.reverse(), deadLengthM, deepestM };
}

/** The part of a reach that lies below a level which its lower end does not pass; null when none of it does. */
function wetStretch(up: LinePoint, down: LinePoint, spill: number): Pool | null {
  const upDepth = spill - up.heightM;
  const downDepth = spill - down.heightM;
  if (Math.max(upDepth, downDepth) < NO_DEPTH_M) return null;
  const lengthM = down.stationM - up.stationM;
  // The lower end is never above the spill level, so the line leaves the water at most once, toward its upper end.
  const dryM = upDepth < 0 ? (lengthM * -upDepth) / (downDepth - upDepth) : 0;
  return {
    fromM: up.stationM + dryM,
    toM: down.stationM,
    spillHeightM: spill,
    depthM: Math.max(upDepth, downDepth),
  };
}

/** Joins a wet stretch to the pool just downstream of it when both stand at one level. */
function addUpstream(pools: Pool[], wet: Pool): void {
  const next = pools.at(-1);
  if (next !== undefined && next.fromM === wet.toM && next.spillHeightM === wet.spillHeightM) {
    pools[pools.length - 1] = { ...next, fromM: wet.fromM, depthM: Math.max(next.depthM, wet.depthM) };
  } else {
    pools.push(wet);
  }
}
