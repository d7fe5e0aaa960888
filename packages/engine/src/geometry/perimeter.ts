import { distanceM, type Point, requireFinitePoints } from './point.ts';

/**
 * Length of the closed line through the corners, m, the way back to the first corner included. Fewer than two
 * corners give 0; two give the way there and back.
 * @throws EngineError `not-finite` for a coordinate that is no finite number
 */
export function perimeterM(ring: readonly Point[]): number {
  requireFinitePoints('polygon', ring);
  let sum = 0;
  for (let i = 0; i < ring.length; i += 1) sum += distanceM(ring[i]!, ring[(i + 1) % ring.length]!);
  return sum;
}
