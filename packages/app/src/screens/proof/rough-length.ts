import { useLength } from '../../plan/length.ts';

/** Where somebody crawls to is not known closer than this: an inch [m]. */
const INCH_M = 0.0254;

/** Gives a length [m] to the inch, for places that nobody taped. */
export function useRoughLength(): (meters: number) => string {
  const length = useLength();
  return (meters) => length(Math.round(meters / INCH_M) * INCH_M);
}
