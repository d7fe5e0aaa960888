import type { WallEdge } from '@undercroft/assessment';
import type { Job, Point } from '@undercroft/record';
import type { PlanFacts } from './facts.ts';

/** Points on paper per meter at full size. */
const POINTS_PER_METER = 72 / 0.0254;

/** Scales that a paper plan is drawn to, as they are written on drawings: parts of an inch, or feet to the inch. */
const STANDARD_SCALES = [
  { words: `1/2" = 1'-0"`, ratio: 24 },
  { words: `3/8" = 1'-0"`, ratio: 32 },
  { words: `1/4" = 1'-0"`, ratio: 48 },
  { words: `1" = 5'`, ratio: 60 },
  { words: `1" = 6'`, ratio: 72 },
  { words: `1/8" = 1'-0"`, ratio: 96 },
  { words: `1" = 10'`, ratio: 120 },
  { words: `1/16" = 1'-0"`, ratio: 192 },
  { words: `1" = 20'`, ratio: 240 },
  { words: `1" = 40'`, ratio: 480 },
  { words: `1" = 50'`, ratio: 600 },
  { words: `1" = 100'`, ratio: 1200 },
  { words: `1" = 200'`, ratio: 2400 },
] as const;

/** Room for dimension lines and their lettering around the walls, in units. */
export const MARGIN = 22;

/** How far a door leaf may swing beyond the dimension lines before it needs room of its own, in units. */
const SWING = 8;

/** What a plan needs room for [m], y up: the walls, and on each side the leaf of a door that opens there. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  readonly leaf: Readonly<Record<'left' | 'right' | 'bottom' | 'top', number>>;
}

/** The side of the plan that a wall looks to, by the direction away from the space. */
function outerSide(corners: readonly Point[], edge: WallEdge): 'left' | 'right' | 'bottom' | 'top' {
  let twice = 0;
  corners.forEach((p, i) => {
    const q = corners[(i + 1) % corners.length];
    twice += p.xM * q.yM - q.xM * p.yM;
  });
  const turn = twice > 0 ? 1 : -1;
  const x = (edge.to.yM - edge.from.yM) * turn;
  const y = (edge.from.xM - edge.to.xM) * turn;
  if (Math.abs(x) > Math.abs(y)) return x > 0 ? 'right' : 'left';
  return y > 0 ? 'top' : 'bottom';
}

/** Extent of the drawn plan: corners, walls around them, leaves of the doors outside. */
export function extentOf(job: Job, facts: PlanFacts): Extent {
  const { corners, edges } = facts.geometry;
  const xs = corners.map((p) => p.xM);
  const ys = corners.map((p) => p.yM);
  const wall = Math.max(0.2, ...job.plan.walls.map((w) => w.thicknessM ?? 0));
  const box = {
    left: Math.min(...xs) - wall,
    right: Math.max(...xs) + wall,
    bottom: Math.min(...ys) - wall,
    top: Math.max(...ys) + wall,
  };
  const leaf = { left: 0, right: 0, bottom: 0, top: 0 };
  for (const door of job.plan.doors) {
    const edge = door.kind === 'wall' ? edges.find((e) => e.id === door.wallId) : undefined;
    if (edge === undefined) continue;
    const side = outerSide(corners, edge);
    const face = {
      left: edge.from.xM - box.left,
      right: box.right - edge.from.xM,
      bottom: edge.from.yM - box.bottom,
      top: box.top - edge.from.yM,
    }[side];
    if (face < wall + door.widthM) leaf[side] = Math.max(leaf[side], door.widthM);
  }
  return { ...box, leaf };
}

/** A plan fitted into a field: its scale and how it is written, and where the plan's zero point comes to lie. */
export interface Fit {
  /** Drawing units per meter. */
  readonly scale: number;
  readonly words: string;
  readonly origin: { readonly x: number; readonly y: number };
}

function margins(extent: Extent, scale: number, unit: number) {
  const side = (leaf: number) => MARGIN * unit + Math.max(0, leaf * scale - SWING * unit);
  const { leaf } = extent;
  return { left: side(leaf.left), right: side(leaf.right), bottom: side(leaf.bottom), top: side(leaf.top) };
}

function needed(
  extent: Extent,
  scale: number,
  unit: number,
): { readonly width: number; readonly height: number } {
  const m = margins(extent, scale, unit);
  return {
    width: (extent.right - extent.left) * scale + m.left + m.right,
    height: (extent.top - extent.bottom) * scale + m.bottom + m.top,
  };
}

/** The plan at a scale, in the middle of a field that begins at (0, 0). */
function centered(
  extent: Extent,
  scale: number,
  words: string,
  field: { width: number; height: number },
  unit: number,
): Fit {
  const m = margins(extent, scale, unit);
  const need = needed(extent, scale, unit);
  return {
    scale,
    words,
    origin: {
      x: (field.width - need.width) / 2 + m.left - extent.left * scale,
      y: (field.height - need.height) / 2 + m.top + extent.top * scale,
    },
  };
}

/** The largest scale at which the plan fits a field, to a ten-thousandth. */
function largestScale(extent: Extent, field: { width: number; height: number }, unit: number): number {
  let [low, high] = [
    0,
    Math.max(field.width, field.height) / Math.min(extent.right - extent.left, extent.top - extent.bottom),
  ];
  for (let i = 0; i < 60 && high - low > 1e-4 * high; i++) {
    const middle = (low + high) / 2;
    const need = needed(extent, middle, unit);
    if (need.width <= field.width && need.height <= field.height) low = middle;
    else high = middle;
  }
  return low;
}

/** Fits a plan into a field at the largest standard scale; where even the smallest is too large, at what fits. */
export function fitStandard(extent: Extent, field: { width: number; height: number }, unit: number): Fit {
  const found = STANDARD_SCALES.find(({ ratio }) => {
    const need = needed(extent, POINTS_PER_METER / ratio, unit);
    return need.width <= field.width && need.height <= field.height;
  });
  if (found !== undefined) {
    const words = `${found.words} (1:${found.ratio})`;
    return centered(extent, POINTS_PER_METER / found.ratio, words, field, unit);
  }
  const scale = largestScale(extent, field, unit);
  return centered(extent, scale, `1:${Math.round(POINTS_PER_METER / scale)}`, field, unit);
}

/** Fits a plan to a width, its height at most `highest` times that; the field comes back as high as it needs to be. */
export function fitWidth(
  extent: Extent,
  width: number,
  highest: number,
  unit: number,
): Fit & { readonly height: number } {
  const scale = largestScale(extent, { width, height: width * highest }, unit);
  const { height } = needed(extent, scale, unit);
  return { ...centered(extent, scale, '', { width, height }, unit), height };
}

/** The plan at a scale that was asked for; the field comes back as large as it needs to be. */
export function fitAt(
  extent: Extent,
  scale: number,
  unit: number,
): Fit & { readonly width: number; readonly height: number } {
  const need = needed(extent, scale, unit);
  return { ...centered(extent, scale, '', need, unit), ...need };
}
