import { distanceM, type Point } from './point.ts';

/** Length of an open path through points, m; 0 for fewer than two. Kernel: unchecked. */
export function pathLengthM(path: readonly Point[]): number {
  let length = 0;
  for (let i = 1; i < path.length; i += 1) length += distanceM(path[i - 1]!, path[i]!);
  return length;
}
