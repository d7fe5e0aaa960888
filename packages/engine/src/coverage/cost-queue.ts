/** Cells by cost, cheapest first; of equal costs the lower cell. */
export function costQueue(): { add(cell: number, cost: number): void; take(): number } {
  const cells: number[] = [];
  const costs: number[] = [];
  const before = (i: number, j: number): boolean => {
    const a = costs[i]!;
    const b = costs[j]!;
    return a < b || (a === b && cells[i]! < cells[j]!);
  };
  const swap = (i: number, j: number): void => {
    const cell = cells[i]!;
    const cost = costs[i]!;
    cells[i] = cells[j]!;
    costs[i] = costs[j]!;
    cells[j] = cell;
    costs[j] = cost;
  };
  return {
    add(cell, cost) {
      let i = cells.push(cell) - 1;
      costs.push(cost);
      for (let up = (i - 1) >> 1; i > 0 && before(i, up); i = up, up = (i - 1) >> 1) swap(i, up);
    },
    take() {
      if (cells.length === 0) return -1;
      swap(0, cells.length - 1);
      const cell = cells.pop()!;
      costs.pop();
      for (let i = 0; ; ) {
        let least = i;
        if (2 * i + 1 < cells.length && before(2 * i + 1, least)) least = 2 * i + 1;
        if (2 * i + 2 < cells.length && before(2 * i + 2, least)) least = 2 * i + 2;
        if (least === i) return cell;
        swap(i, least);
        i = least;
      }
    },
  };
}
