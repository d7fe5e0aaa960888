import type { CausesAssessment } from '@undercroft/assessment';
import { causes, units } from '@undercroft/engine';
import { plain } from '../../words/names.ts';
import { area, type Drawing, type Item, line, type Room, type Spot, type Stroke } from '../display-list.ts';
import { LabelPlaces } from '../place-labels.ts';
import { breakText, textWidth } from '../text-width.ts';
import { type ArrowLook, type ChainBox, type ChainLine, type ChainParts, chainParts } from './chain-parts.ts';
import type { ChainWords } from './chain-words.ts';

const percent = (share: number) => plain(units.formatQuantity(share, 'relativeHumidity', 'us'));

/** Narrowest and widest box, in units of lettering. */
const BOX = { least: 62, most: 104 } as const;
/** Room between columns, where arrows, numbers and shares stand. */
const GAP = { least: 40, most: 74 } as const;
const LINE = 8.6;
const PAD = { x: 5, y: 4.5 } as const;
/** Width of an arrow of no share and of the whole. */
const THICK = { none: 0.7, whole: 6.4 } as const;

const thickness = (weight: number) => THICK.none + (THICK.whole - THICK.none) * weight;

interface SetBox {
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

/** The layout at unit size, as narrow as its columns allow within `room`. */
function layOut(parts: ChainParts, words: ChainWords, room: number) {
  const links = parts.lines.map((l) => ({
    id: String(l.number),
    from: l.from,
    to: l.to,
    thickness: l.look === 'may-follow' ? 1.2 : thickness(l.weight),
  }));
  const laid = (width: number, layerGap: number) => {
    const boxes = setBoxes(parts, words, width);
    const nodes = boxes.map((b) => ({ id: b.box.key, width: b.width, height: b.height }));
    return { boxes, layout: causes.layoutChain(nodes, links, { layerGap, nodeGap: 11 }) };
  };
  const first = laid(BOX.most, GAP.most);
  const columns = 1 + Math.max(0, ...first.layout.boxes.map((b) => b.layer));
  const each = (room + GAP.most) / columns;
  if (each >= BOX.most + GAP.most) return first;
  const gap = Math.max(GAP.least, Math.min(GAP.most, each * 0.4));
  return laid(Math.max(BOX.least, Math.min(BOX.most, (room - (columns - 1) * gap) / columns)), gap);
}

const COLORS: Readonly<Record<ArrowLook, Stroke['color']>> = {
  supported: 'water',
  against: 'notMet',
  'not-shown': 'notShown',
  'may-follow': 'soft',
};

function strokeOf(look: ArrowLook, width: number, unit: number): Stroke {
  const color = COLORS[look];
  if (look === 'against') return { color, width, dash: [5 * unit, 3 * unit] };
  if (look === 'not-shown') return { color, width, dash: [1.4 * unit, 2.4 * unit] };
  return { color, width };
}

/** Head of an arrow that ends level at a spot. */
function head(at: Spot, width: number, unit: number, look: ArrowLook): Item {
  const half = Math.max(2.6 * unit, width * 0.9);
  const back = at.x - 1.5 * half;
  return area([at, { x: back, y: at.y - half }, { x: back, y: at.y + half }], { fill: COLORS[look] });
}

function arrowItems(l: ChainLine, points: readonly Spot[], unit: number): Item[] {
  const width = (l.look === 'may-follow' ? 1.2 : thickness(l.weight)) * unit;
  const tip = points[points.length - 1];
  const cut = tip.x - 1.4 * Math.max(2.6 * unit, width * 0.9);
  const shaft = [...points.filter((p) => p.x < cut), { x: cut, y: tip.y }];
  return [line(shaft, strokeOf(l.look, width, unit)), head(tip, width, unit, l.look)];
}

function boxItems(set: SetBox, at: Spot, unit: number): Item[] {
  const { box, lines } = set;
  const [width, height] = [set.width * unit, set.height * unit];
  const outline = [
    at,
    { x: at.x + width, y: at.y },
    { x: at.x + width, y: at.y + height },
    { x: at.x, y: at.y + height },
  ];
  const look = {
    cause: { fill: 'sheet', stroke: { color: 'ink', width: 0.8 * unit } },
    found: { fill: 'dampEarth', stroke: { color: 'ink', width: 1.5 * unit } },
    follows: { fill: 'sheet', stroke: { color: 'soft', width: 0.8 * unit, dash: [2 * unit, 2 * unit] } },
  } as const;
  const bar: Item[] =
    box.look === 'cause'
      ? [
          area(
            [
              at,
              { x: at.x + 3 * unit, y: at.y },
              { x: at.x + 3 * unit, y: at.y + height },
              { x: at.x, y: at.y + height },
            ],
            { fill: 'ink' },
          ),
        ]
      : [];
  return [
    area(outline, look[box.look]),
    ...bar,
    ...lines.map((text, i): Item => {
      const share = box.share !== undefined && i === lines.length - 1;
      return {
        kind: 'text',
        at: {
          x: at.x + (PAD.x + (box.look === 'cause' ? 1.5 : 0)) * unit,
          y: at.y + (PAD.y + 6.6 + i * LINE) * unit,
        },
        text,
        size: (share ? 7.2 : 7.6) * unit,
        color: box.look === 'follows' || share ? 'soft' : 'ink',
        align: 'start',
        face: share ? 'figures' : 'strong',
      };
    }),
  ];
}

/** Spot of a line at a share of its length in x. */
function along(points: readonly Spot[], share: number): Spot {
  const x = points[0].x + share * (points[points.length - 1].x - points[0].x);
  const after = Math.max(
    1,
    points.findIndex((p) => p.x >= x),
  );
  const [a, b] = [points[after - 1], points[after]];
  const t = b.x === a.x ? 0 : (x - a.x) / (b.x - a.x);
  return { x, y: a.y + t * (b.y - a.y) };
}

/** Where on its arrow a number may stand, best first. */
const PLACES = [0.42, 0.55, 0.3, 0.68, 0.2, 0.8, 0.12, 0.88];

/** Number of an arrow in a ring, with its share behind, on the arrow where it covers least. */
function label(l: ChainLine, points: readonly Spot[], unit: number, places: LabelPlaces): Item[] {
  const share = l.look === 'may-follow' ? '' : percent(l.weight);
  const ring = 4.9 * unit;
  const wide = share === '' ? 0 : textWidth(share, 7 * unit) + 3 * unit;
  const gap = points.length < 2 ? [] : PLACES;
  const spots = gap.map((p) => along(points, p));
  const boxAt = (spot: Spot) => ({
    left: spot.x - ring,
    right: spot.x + ring + wide,
    top: spot.y - ring,
    bottom: spot.y + ring,
  });
  const best = spots.reduce((a, b) => (places.covered(boxAt(b)) < places.covered(boxAt(a)) - 0.5 ? b : a));
  const taken = boxAt(best);
  places.take(taken);
  const middle = best.y + 2.4 * unit;
  return [
    ...(share === ''
      ? []
      : [
          area(
            [
              { x: best.x, y: best.y - 4.2 * unit },
              { x: taken.right + 1 * unit, y: best.y - 4.2 * unit },
              { x: taken.right + 1 * unit, y: best.y + 4.2 * unit },
              { x: best.x, y: best.y + 4.2 * unit },
            ],
            { fill: 'sheet' },
          ),
          {
            kind: 'text',
            at: { x: best.x + ring + 2 * unit, y: middle },
            text: share,
            size: 7 * unit,
            color: 'ink',
            align: 'start',
            face: 'figures',
          } as const,
        ]),
    {
      kind: 'circle',
      at: best,
      radius: ring,
      fill: 'sheet',
      stroke: { color: COLORS[l.look], width: 0.9 * unit },
    },
    {
      kind: 'text',
      at: { x: best.x, y: middle },
      text: String(l.number),
      size: (l.number > 9 ? 6.2 : 6.8) * unit,
      color: 'ink',
      align: 'middle',
      face: 'strong',
    },
  ];
}

function legend(
  parts: ChainParts,
  words: ChainWords,
  top: number,
  width: number,
  unit: number,
): { items: Item[]; height: number } {
  const looks: readonly (readonly [ArrowLook, string])[] = [
    ['supported', words.supported],
    ['against', words.against],
    ['not-shown', words.notShown],
    ['may-follow', words.mayFollow],
  ];
  const kinds: readonly (readonly [ChainBox['look'], string])[] = [
    ['cause', words.cause],
    ['found', words.found],
    ['follows', words.follows],
  ];
  const items: Item[] = [];
  let [x, y] = [0, top];
  const next = (wide: number) => {
    if (x > 0 && x + wide > width) [x, y] = [0, y + 13 * unit];
    const at = { x, y };
    x += wide + 14 * unit;
    return at;
  };
  const text = (words_: string, at: Spot): Item => ({
    kind: 'text',
    at,
    text: words_,
    size: 7 * unit,
    color: 'soft',
    align: 'start',
    face: 'figures',
  });
  for (const [look, name] of kinds) {
    if (!parts.boxes.some((b) => b.look === look)) continue;
    const sample: SetBox = { box: { key: '', title: '', look }, lines: [], width: 18, height: 9 };
    const at = next(22 * unit + textWidth(name, 7 * unit));
    items.push(
      ...boxItems(sample, { x: at.x, y: at.y - 7 * unit }, unit),
      text(name, { x: at.x + 22 * unit, y: at.y }),
    );
  }
  for (const [look, name] of looks) {
    if (!parts.lines.some((l) => l.look === look)) continue;
    const at = next(26 * unit + textWidth(name, 7 * unit));
    const mid = at.y - 2.5 * unit;
    const stroke = strokeOf(look, 2.2 * unit, unit);
    items.push(
      line(
        [
          { x: at.x, y: mid },
          { x: at.x + 16 * unit, y: mid },
        ],
        stroke,
      ),
      head({ x: at.x + 21 * unit, y: mid }, 2.2 * unit, unit, look),
      text(name, { x: at.x + 26 * unit, y: at.y }),
    );
  }
  return { items, height: y - top + 6 * unit };
}

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
 * The chain of causes in layers: causes left, what was found in the middle, what may follow right. An arrow is as wide as its
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
  const wanted = room.textSize / 7.2;
  const [most, least] = room.height === undefined ? [wanted, wanted] : [wanted * 1.4, wanted * 0.7];
  const fits = (laid: ReturnType<typeof layOut>, unit: number) =>
    (laid.layout.width + 2) * unit <= room.width + 0.01 &&
    (room.height === undefined || (laid.layout.height + 2 + 40) * unit <= room.height);
  // On paper the sheet is given: lettering grows to fill it, and gives way before the drawing leaves it.
  let unit = most;
  let set = layOut(parts, words, room.width / unit - 2);
  while (unit > least && !fits(set, unit)) {
    unit = Math.max(least, unit * 0.97);
    set = layOut(parts, words, room.width / unit - 2);
  }
  const { boxes, layout } = set;
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
            items: arrowItems(l, points, unit),
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
