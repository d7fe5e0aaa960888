import { units } from '@undercroft/engine';
import type { Ground } from '@undercroft/record';
import type { ColorName } from '../../look/tokens.ts';
import type { Item, Spot } from '../display-list.ts';
import { area, drawnFor } from '../display-list.ts';
import { hatchLines, speckle } from '../hatch.ts';
import { boxAt, boxOf, isInside } from '../polygon.ts';
import { breakText } from '../text-width.ts';
import type { Word } from './spanish.ts';
import { dashed, LETTERING, letterNear, type PlanView, pen } from './view.ts';

interface Cover {
  readonly key: string;
  readonly words: Word;
  readonly tint: ColorName;
}

/** How a floor looks on the plan: its cover, and for bare ground how wet it is. */
function coverOf({ cover, surface }: Ground): Cover {
  if (surface === 'standing-water') return { key: 'water', words: 'Standing water', tint: 'standingWater' };
  if (cover === 'liner') return { key: 'liner', words: 'Ground liner', tint: 'liner' };
  if (cover === 'slab') return { key: 'slab', words: 'Slab', tint: 'slab' };
  if (cover === 'gravel') return { key: 'gravel', words: 'Gravel', tint: 'gravel' };
  const damp = surface === 'wet' || surface === 'dark-damp';
  return damp
    ? { key: 'damp-earth', words: 'Bare earth, damp or wet', tint: 'dampEarth' }
    : { key: 'bare-earth', words: 'Bare earth', tint: 'bareEarth' };
}

/** Each cover has a texture of its own, so that grey print tells them apart; a liner and a slab are plain. */
function textured(view: PlanView, { key, tint }: Cover, outline: readonly Spot[]): Item[] {
  const { unit } = view;
  const base = area(outline, { fill: tint });
  const earth = pen(view, 'hatch', 0.45);
  if (key === 'water') return [base, ...hatchLines(outline, 0, 6 * unit, pen(view, 'wetting', 0.35))];
  if (key === 'gravel') return [base, ...speckle(outline, 6 * unit, pen(view, 'hatch', 0.9), 'dot')];
  if (key === 'bare-earth') return [base, ...speckle(outline, 17 * unit, earth, 'dash')];
  if (key === 'damp-earth') return [base, ...speckle(outline, 9 * unit, earth, 'dash')];
  if (key === 'slab') return [base, ...hatchLines(outline, 45, 26 * unit, pen(view, 'rule', 0.4))];
  return [base];
}

function noteCover(view: PlanView, cover: Cover): void {
  view.legend.add(cover.key, cover.words, (at) => {
    const { left, top, right, bottom } = boxAt(
      at.x - 11 * view.unit,
      at.y - 4 * view.unit,
      22 * view.unit,
      8 * view.unit,
    );
    const outline = [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
    ];
    return [...textured(view, cover, outline), area(outline, { stroke: pen(view, 'soft', 0.4) })];
  });
}

/** The floor with its zones as tints and textures, cut at the walls. */
export function floorLayer(view: PlanView): Item[] {
  const { job, outline } = view;
  const everywhere = coverOf(job.plan.ground);
  noteCover(view, everywhere);
  const items = [...textured(view, everywhere, outline)];
  for (const zone of job.plan.zones) {
    const cover = coverOf(zone.ground);
    noteCover(view, cover);
    const shape = zone.outline.map(view.toSheet);
    const edge = area(shape, { stroke: dashed(view, 'soft', 0.5, 3, 2) });
    items.push(...drawnFor('zone', zone.id, [...textured(view, cover, shape), edge]));
  }
  return [{ kind: 'layer', name: 'floor', within: outline, items }];
}

/** A spot well inside a zone and inside the walls: the middle of its box, or the nearest of a grid of spots to it. */
function middleOf(shape: readonly Spot[], outline: readonly Spot[]): Spot | undefined {
  const box = boxOf(shape);
  const middle = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  let best: Spot | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= 20; i++) {
    for (let j = 0; j <= 20; j++) {
      const spot = {
        x: box.left + ((box.right - box.left) * i) / 20,
        y: box.top + ((box.bottom - box.top) * j) / 20,
      };
      const away = Math.hypot(spot.x - middle.x, spot.y - middle.y);
      if (away < least && isInside(spot, shape) && isInside(spot, outline)) {
        best = spot;
        least = away;
      }
    }
  }
  return best;
}

/** Names of the zones with their areas. */
export function zoneLabels(view: PlanView): Item[] {
  const { job, facts, outline, unit } = view;
  const items = job.plan.zones.flatMap((zone) => {
    const at = middleOf(zone.outline.map(view.toSheet), outline);
    if (at === undefined) return [];
    const size = LETTERING.ordinary;
    const measured = facts.geometry.zones.find((z) => z.id === zone.id);
    const lines = breakText(zone.name, 92 * unit, size * unit).slice(0, 3);
    if (measured !== undefined)
      lines.push(units.formatQuantity(measured.areaM2, 'area', view.style.system, 0));
    return drawnFor('zone', zone.id, letterNear(view, { at, lines, gap: 1, reach: 60 }));
  });
  return [{ kind: 'layer', name: 'zones', items }];
}
