import type { ColorName } from '../look/tokens.ts';
import type { Item, Spot } from './display-list.ts';
import { area, line } from './display-list.ts';

/** Marks that stand for a verdict or a state. Each has its own shape, so that none depends on its color. */
export type MarkName = 'met' | 'not-met' | 'not-shown' | 'fine' | 'watch' | 'alarm';

/** The word that stands beside each mark. */
export const MARK_WORDS: Readonly<Record<MarkName, string>> = {
  met: 'Met',
  'not-met': 'Not met',
  'not-shown': 'Not shown',
  fine: 'Fine',
  watch: 'Watch',
  alarm: 'Alarm',
};

const COLORS: Readonly<Record<MarkName, ColorName>> = {
  met: 'met',
  'not-met': 'notMet',
  'not-shown': 'notShown',
  fine: 'met',
  watch: 'watch',
  alarm: 'notMet',
};

/** The outline of the mark's body about (0, 0), one unit from middle to edge. */
function body(name: MarkName): Spot[] {
  const spots = (list: readonly (readonly [number, number])[]) => list.map(([x, y]) => ({ x, y }));
  if (name === 'not-met' || name === 'alarm')
    return spots([
      [0, -1.1],
      [1.1, 0],
      [0, 1.1],
      [-1.1, 0],
    ]);
  if (name === 'watch')
    return spots([
      [0, -1],
      [1.05, 0.85],
      [-1.05, 0.85],
    ]);
  return spots([
    [-0.9, -0.9],
    [0.9, -0.9],
    [0.9, 0.9],
    [-0.9, 0.9],
  ]);
}

/** A mark about a spot. `size` is its height. */
export function mark(name: MarkName, at: Spot, size: number): Item[] {
  const unit = size / 2.2;
  const color = COLORS[name];
  const move = (points: readonly Spot[]) =>
    points.map((p) => ({ x: at.x + p.x * unit, y: at.y + p.y * unit }));
  const pen = (points: readonly (readonly [number, number])[], ink: ColorName, width = 0.28): Item =>
    line(move(points.map(([x, y]) => ({ x, y }))), { color: ink, width: width * unit });
  const open = { kind: 'circle', at, radius: unit * 0.92, fill: 'sheet' } as const;
  if (name === 'not-shown') {
    return [
      { ...open, stroke: { color, width: 0.24 * unit } },
      {
        kind: 'text',
        at: { x: at.x, y: at.y + 0.5 * unit },
        text: '?',
        size: 1.45 * unit,
        color: 'ink',
        align: 'middle',
        face: 'strong',
      },
    ];
  }
  if (name === 'fine') {
    return [
      { ...open, radius: unit * 0.78, stroke: { color, width: 0.3 * unit } },
      { kind: 'circle', at, radius: unit * 0.25, fill: color },
    ];
  }
  const shape = area(move(body(name)), { fill: color });
  if (name === 'met')
    return [
      shape,
      pen(
        [
          [-0.5, 0.02],
          [-0.12, 0.42],
          [0.52, -0.42],
        ],
        'sheet',
      ),
    ];
  if (name === 'not-met')
    return [
      shape,
      pen(
        [
          [-0.36, -0.36],
          [0.36, 0.36],
        ],
        'sheet',
      ),
      pen(
        [
          [0.36, -0.36],
          [-0.36, 0.36],
        ],
        'sheet',
      ),
    ];
  const stem: (readonly [number, number])[] = [
    [0, -0.5],
    [0, 0.18],
  ];
  const point: (readonly [number, number])[] = [
    [0, 0.4],
    [0, 0.62],
  ];
  return [shape, pen(stem, 'sheet', 0.24), pen(point, 'sheet', 0.24)];
}
