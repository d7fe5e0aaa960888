import { causes } from '@undercroft/engine';
import type { Room } from '../display-list.ts';
import { breakText } from '../text-width.ts';
import type { ChainBox, ChainParts } from './chain-parts.ts';
import type { ChainWords } from './chain-words.ts';
import { percent } from './percent.ts';

/** Narrowest and widest box, in units of lettering. */
const BOX = { least: 56, most: 104 } as const;
/** Room between columns, where arrows, numbers and shares stand. */
const GAP = { least: 46, most: 74 } as const;
/** The same where a single finding is drawn in little room. */
const NARROW = { box: 46, gap: 30 } as const;
/** Height of a line in a box. */
export const LINE = 8.6;
/** Between the edge of a box and its lettering. */
export const PAD = { x: 5, y: 4.5 } as const;
/** Width of an arrow of no share and of the whole. */
const THICK = { none: 0.7, whole: 6.4 } as const;

/** Width of an arrow by its share, in units of lettering. */
export const thickness = (weight: number) => THICK.none + (THICK.whole - THICK.none) * weight;

/** A box with its lettering set, in units of lettering. */
export interface SetBox {
  readonly box: ChainBox;
  readonly lines: readonly string[];
  readonly width: number;
  readonly height: number;
}

function setBoxes(parts: ChainParts, words: ChainWords, width: number): SetBox[] {
  return parts.boxes.map((box) => {
    const title = breakText(box.title, width - 2 * PAD.x, 7.6, 'strong');
    const lines = box.share === undefined ? title : [...title, `${percent(box.share)} ${words.ofAll}`];
    return { box, lines, width, height: lines.length * LINE + 2 * PAD.y };
  });
}

/** Where the chain leads. */
export type Direction = 'right' | 'down';

/** Room between layers that lie below one another. */
const GAP_DOWN = { least: 30, most: 44 } as const;

/** Boxes and arrows in their places, in units of lettering. */
export interface LaidOut {
  readonly boxes: readonly SetBox[];
  readonly layout: causes.Layout;
  readonly direction: Direction;
}

/** Lays the chain out with boxes and gaps of a size. */
type LayOut = (direction: Direction, width: number, layerGap: number) => LaidOut;

/** How the parts of a chain are laid out. What stands above what is found once: it holds for every size. */
function layOutOf(parts: ChainParts, words: ChainWords): LayOut {
  const links = parts.lines.map((l) => ({
    id: String(l.number),
    from: l.from,
    to: l.to,
    thickness: l.look === 'may-follow' ? 1.2 : thickness(l.weight),
  }));
  let order: causes.Layout['order'] | undefined;
  return (direction, width, layerGap) => {
    const boxes = setBoxes(parts, words, width);
    const nodes = boxes.map((b) => ({ id: b.box.key, width: b.width, height: b.height }));
    const gaps = { layerGap, nodeGap: direction === 'right' ? 11 : 12, direction };
    const layout = causes.layoutChain(nodes, links, order === undefined ? gaps : { ...gaps, order });
    order = layout.order;
    return { boxes, layout, direction };
  };
}

interface Place {
  readonly width: number;
  readonly height: number;
}

/** The layout in units of lettering, as wide as its place allows, its boxes no wider than they need. */
function inPlace(
  layOut: LayOut,
  direction: Direction,
  room: Place,
  least: { readonly box: number; readonly gap: number },
): LaidOut {
  if (direction === 'right') {
    const first = layOut(direction, BOX.most, GAP.most);
    const columns = 1 + Math.max(0, ...first.layout.boxes.map((b) => b.layer));
    const each = (room.width + GAP.most) / columns;
    if (each >= BOX.most + GAP.most) return first;
    const gap = Math.max(least.gap, Math.min(GAP.most, each * 0.4));
    const width = (room.width - (columns - 1) * gap) / columns;
    return layOut(direction, Math.max(least.box, Math.min(BOX.most, width)), gap);
  }
  for (let width: number = BOX.most; width > least.box; width -= 6) {
    const wide = layOut(direction, width, GAP_DOWN.least);
    if (wide.layout.width > room.width) continue;
    const rows = Math.max(1, ...wide.layout.boxes.map((b) => b.layer));
    const spare = Number.isFinite(room.height) ? (room.height - wide.layout.height) / rows : GAP_DOWN.most;
    const gap = Math.max(GAP_DOWN.least, Math.min(GAP_DOWN.most, GAP_DOWN.least + spare));
    return gap === GAP_DOWN.least ? wide : layOut(direction, width, gap);
  }
  return layOut(direction, least.box, GAP_DOWN.least);
}

/** Share of its room that a drawing may take and still fit. */
const FITS = 1.0001;

/** How closely the largest lettering is searched: to a hundredth. */
const HALVINGS = 6;

/** On a screen lettering may be this much smaller than asked, where that spares scrolling. */
const SCREEN_LEAST = 0.85;

/** Height that the key of the signs takes below the drawing. */
const KEY_HEIGHT = 40;

/**
 * The direction and the lettering at which the drawing fills its room best. On a screen the lettering is given and gives way
 * a little; the drawing is wider than the room where it fits in neither direction. On paper the sheet is
 * given: lettering grows to fill it, and gives way before the drawing leaves it.
 */
export function fitChain(
  parts: ChainParts,
  words: ChainWords,
  room: Room,
  isOne: boolean,
): LaidOut & { readonly unit: number } {
  const least = isOne ? NARROW : { box: BOX.least, gap: GAP.least };
  const layOut = layOutOf(parts, words);
  const wanted = room.textSize / 7.2;
  const at = (direction: Direction, unit: number) => {
    const height = room.height === undefined ? Number.POSITIVE_INFINITY : room.height / unit - KEY_HEIGHT - 2;
    const set = inPlace(layOut, direction, { width: room.width / unit - 2, height }, least);
    const over = Math.max(set.layout.width / (room.width / unit - 2), set.layout.height / height);
    return { ...set, unit, over };
  };
  const largest = (direction: Direction) => {
    const [most, smallest] = room.height === undefined ? [1, SCREEN_LEAST] : [1.5, 0.6];
    const first = at(direction, wanted * most);
    if (first.over <= FITS) return first;
    let best = at(direction, wanted * smallest);
    if (best.over > FITS) return room.height === undefined ? first : best;
    let [low, high] = [best.unit, first.unit];
    for (let step = 0; step < HALVINGS; step += 1) {
      const tried = at(direction, (low + high) / 2);
      if (tried.over <= FITS) [best, low] = [tried, tried.unit];
      else high = tried.unit;
    }
    return best;
  };
  const [right, down] = [largest('right'), largest('down')];
  if (right.over > FITS || down.over > FITS) return right.over <= down.over ? right : down;
  return right.unit >= down.unit ? right : down;
}
