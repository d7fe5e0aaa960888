/** Position of the first element of a sorted list for which `before` no longer holds; its length if it holds for all. */
export function firstNot<T>(sorted: readonly T[], before: (element: T) => boolean): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (before(sorted[middle])) low = middle + 1;
    else high = middle;
  }
  return low;
}
