/** Cells that hang together: each points, over others, to the first of its space. */
export function spaceForest(count: number): {
  readonly join: (a: number, b: number) => void;
  /** The first cell of a cell's space. */
  readonly first: (cell: number) => number;
} {
  const parent = Int32Array.from({ length: count }, (_, i) => i);
  const first = (cell: number): number => {
    let at = cell;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at]!]!;
      at = parent[at]!;
    }
    return at;
  };
  const join = (a: number, b: number): void => {
    const one = first(a);
    const other = first(b);
    if (one < other) parent[other] = one;
    else parent[one] = other;
  };
  return { join, first };
}

/** Numbers the spaces that hang together through the chosen faces, in the order of their first cells. */
export function joinedSpaces(
  count: number,
  faceA: Int32Array,
  faceB: Int32Array,
  chosen: Uint8Array,
): Int32Array {
  const { join, first } = spaceForest(count);
  for (let f = 0; f < chosen.length; f += 1) if (chosen[f] === 1) join(faceA[f]!, faceB[f]!);
  const space = new Int32Array(count);
  let spaces = 0;
  for (let i = 0; i < count; i += 1) {
    const head = first(i);
    if (head === i) {
      space[i] = spaces;
      spaces += 1;
    } else space[i] = space[head]!;
  }
  return space;
}
