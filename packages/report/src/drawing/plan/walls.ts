import type { Item } from '../display-list.ts';
import { along } from '../polygon.ts';
import { gapsOf, hatchesInFloor, noteOpenings, openingItems } from './openings.ts';
import type { PlanView } from './view.ts';
import { type DrawnWall, solidParts, wallPart } from './wall-parts.ts';

/** Walls with their openings. */
export function wallsLayer(view: PlanView, walls: readonly DrawnWall[]): Item[] {
  noteOpenings(view);
  const items: Item[] = [];
  for (const wall of walls) {
    for (const part of solidParts(wall.length, gapsOf(view, wall.id)))
      items.push(...wallPart(view, wall, part));
    items.push(...openingItems(view, wall));
    const middle = [along(wall.from, wall.outerFrom, 0.5), along(wall.to, wall.outerTo, 0.5)] as const;
    view.places.takeLine(...middle, wall.thickness, 0.8);
  }
  items.push(...hatchesInFloor(view));
  return [{ kind: 'layer', name: 'walls', items }];
}
