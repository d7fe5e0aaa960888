import type { Item, Spot, Stroke } from './display-list.ts';
import { line } from './display-list.ts';
import { boxOf, isInside } from './polygon.ts';

/**
 * Parallel lines over an area, cut at its outline (even-odd, so that it may fold back on itself).
 * @param angleDeg direction of the lines, clockwise from the right
 */
export function hatchLines(
  outline: readonly Spot[],
  angleDeg: number,
  spacing: number,
  stroke: Stroke,
): Item[] {
  const angle = (angleDeg * Math.PI) / 180;
  const along = { x: Math.cos(angle), y: Math.sin(angle) };
  const across = { x: -along.y, y: along.x };
  const turned = outline.map((p) => ({
    x: p.x * along.x + p.y * along.y,
    y: p.x * across.x + p.y * across.y,
  }));
  const { top, bottom } = boxOf(turned);
  const items: Item[] = [];
  for (let row = Math.ceil(top / spacing); row * spacing < bottom; row++) {
    const y = row * spacing;
    const cuts = crossings(turned, y);
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      const back = (x: number): Spot => ({
        x: x * along.x + y * across.x,
        y: x * along.y + y * across.y,
      });
      items.push(line([back(cuts[i]), back(cuts[i + 1])], stroke));
    }
  }
  return items;
}

/** Where a level line crosses an outline, from left to right. */
function crossings(outline: readonly Spot[], y: number): number[] {
  const cuts: number[] = [];
  for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
    const a = outline[i];
    const b = outline[j];
    if (a.y > y !== b.y > y) cuts.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
  }
  return cuts.sort((p, q) => p - q);
}

/** Short strokes scattered over an area in a fixed pattern, as earth is drawn; or dots, as gravel is. */
export function speckle(
  outline: readonly Spot[],
  spacing: number,
  stroke: Stroke,
  mark: 'dash' | 'dot',
): Item[] {
  const { left, top, right, bottom } = boxOf(outline);
  const items: Item[] = [];
  for (let row = 0, y = top + spacing / 2; y < bottom; y += spacing, row++) {
    for (let x = left + (row % 2 === 0 ? 0.3 : 0.8) * spacing; x < right; x += spacing) {
      if (!isInside({ x, y }, outline)) continue;
      const half = spacing * (mark === 'dash' ? 0.11 : 0.02);
      items.push(
        line(
          [
            { x: x - half, y: y + half },
            { x: x + half, y: y - half },
          ],
          stroke,
        ),
      );
    }
  }
  return items;
}
