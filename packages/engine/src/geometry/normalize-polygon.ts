import { distanceM, type Point, requireFinitePoints, SAME_PLACE_M } from './point.ts';
import { signedAreaM2 } from './polygon-area.ts';

/** A ring of corners without repeats, counter-clockwise, the first corner not repeated at the end. */
export interface NormalPolygon {
  readonly corners: readonly Point[];
  /** For each corner, its index in the input. */
  readonly inputIndices: readonly number[];
  /** True when the input ran clockwise and its order was turned round. */
  readonly reversed: boolean;
  /** Input indices of corners that were left out because they repeat the corner before them. */
  readonly repeated: readonly number[];
  /** Area, m², not negative; exactly 0 when what remains is a line or a point. */
  readonly areaM2: number;
}

/**
 * Puts a polygon into one form: corners that repeat the one before are left out (so is a closing corner), the order
 * is counter-clockwise, the first corner stays first. What is left of a degenerate ring may have fewer than three
 * corners; then the area is 0 and the order is the input's.
 * @param toleranceM corners nearer than this to the one before repeat it, m
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function normalizePolygon(ring: readonly Point[], toleranceM: number = SAME_PLACE_M): NormalPolygon {
  requireFinitePoints('polygon', ring);
  const kept: number[] = [];
  const repeated: number[] = [];
  for (let i = 0; i < ring.length; i += 1) {
    const before = kept.at(-1);
    if (before !== undefined && distanceM(ring[before]!, ring[i]!) <= toleranceM) repeated.push(i);
    else kept.push(i);
  }
  while (kept.length > 1 && distanceM(ring[kept.at(-1)!]!, ring[kept[0]!]!) <= toleranceM) {
    repeated.push(kept.pop()!);
  }
  const area = signedAreaM2(kept.map((i) => ring[i]!));
  let reach = 0;
  for (const i of kept) reach = Math.max(reach, distanceM(ring[kept[0]!]!, ring[i]!));
  const flat = Math.abs(area) <= toleranceM * reach;
  const reversed = !flat && area < 0;
  if (reversed) kept.splice(1, kept.length - 1, ...kept.slice(1).reverse());
  return {
    corners: kept.map((i) => ring[i]!),
    inputIndices: kept,
    reversed,
    repeated: repeated.sort((a, b) => a - b),
    areaM2: flat ? 0 : Math.abs(area),
  };
}
