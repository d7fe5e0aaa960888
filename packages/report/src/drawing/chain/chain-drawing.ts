import type { CausesAssessment } from '@undercroft/assessment';
import type { Drawing, Item, Room, Spot } from '../display-list.ts';
import { LabelPlaces } from '../place-labels.ts';
import { fitChain, type SetBox } from './chain-fit.ts';
import { arrowItems, boxItems, label, legend } from './chain-items.ts';
import { type ChainLine, type ChainParts, chainParts } from './chain-parts.ts';
import type { ChainWords } from './chain-words.ts';
import { percent } from './percent.ts';

function description(parts: ChainParts, words: ChainWords): string {
  const title = new Map(parts.boxes.map((b) => [b.key, b.title]));
  const told = parts.lines.map((l) => {
    const share = l.look === 'may-follow' ? '' : ` ${percent(l.weight)}`;
    const against =
      l.look === 'against' ? ` (${words.against})` : l.look === 'not-shown' ? ` (${words.notShown})` : '';
    return `${l.number}. ${title.get(l.from)} ${words.leadsTo} ${title.get(l.to)}${share}${against}`;
  });
  return `${words.title}. ${told.join('; ')}.`;
}

/**
 * The chain of causes in layers: causes left or at the top, what was found in the middle, what may follow right or below,
 * whichever direction fills the room better. An arrow is as wide as its
 * share, which is printed; its number stands for the list of its evidence. Dashed arrows have something against them, dotted
 * ones nothing either way, so that nothing depends on color. Every arrow and its number stand in a layer that names it.
 * @param about draw one finding only, for narrow rooms
 */
export function chainDrawing(
  assessed: CausesAssessment,
  room: Room,
  words: ChainWords,
  about?: string,
): Drawing {
  const parts = chainParts(assessed, words, about);
  const { boxes, layout, direction, unit } = fitChain(parts, words, room, about !== undefined);
  const left = Math.max(1, (room.width / unit - layout.width) / 2);
  const place = (p: Spot): Spot => ({ x: (p.x + left) * unit, y: (p.y + 2) * unit });
  const bottom = (layout.height + 2) * unit;
  const lines = new Map(parts.lines.map((l) => [String(l.number), l]));
  const sets = new Map(boxes.map((b) => [b.box.key, b]));
  const width = Math.max(room.width, (layout.width + 2) * unit);
  const places = new LabelPlaces({ left: 0, top: 0, right: width, bottom });
  for (const b of layout.boxes) {
    const at = place(b);
    places.take({ left: at.x, top: at.y, right: at.x + b.width * unit, bottom: at.y + b.height * unit }, 2);
  }
  const arrows = layout.arrows
    .map((arrow) => ({ l: lines.get(arrow.id) as ChainLine, points: arrow.points.map(place) }))
    .sort((a, b) => b.l.weight - a.l.weight || a.l.number - b.l.number);
  for (const { points } of arrows) {
    for (let i = 1; i < points.length; i += 1) places.takeLine(points[i - 1], points[i], 1, 0.05);
  }
  const key = legend(parts, words, bottom + 16 * unit, width, unit);
  return {
    width,
    height: bottom + 16 * unit + key.height,
    title: words.title,
    description: description(parts, words),
    items: [
      {
        kind: 'layer',
        name: 'arrows',
        items: arrows.map(
          ({ l, points }): Item => ({
            kind: 'layer',
            name: 'arrow',
            of: { kind: 'arrow', id: String(l.number) },
            items: arrowItems(l, points, unit, direction),
          }),
        ),
      },
      {
        kind: 'layer',
        name: 'boxes',
        items: layout.boxes.flatMap((b) => boxItems(sets.get(b.id) as SetBox, place(b), unit)),
      },
      {
        kind: 'layer',
        name: 'numbers',
        items: arrows.map(
          ({ l, points }): Item => ({
            kind: 'layer',
            name: 'number',
            of: { kind: 'arrow', id: String(l.number) },
            items: label(l, points, unit, places),
          }),
        ),
      },
      { kind: 'layer', name: 'legend', items: key.items },
    ],
  };
}
