import { area, type Item, line, type Spot, type Stroke } from '../display-list.ts';
import type { LabelPlaces } from '../place-labels.ts';
import { textWidth } from '../text-width.ts';
import { type Direction, LINE, PAD, type SetBox, thickness } from './chain-fit.ts';
import type { ArrowLook, ChainBox, ChainLine, ChainParts } from './chain-parts.ts';
import type { ChainWords } from './chain-words.ts';
import { percent } from './percent.ts';

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

/** Head of an arrow that ends at a spot, pointing where the chain leads. */
function head(at: Spot, width: number, unit: number, look: ArrowLook, direction: Direction): Item {
  const half = Math.max(2.6 * unit, width * 0.9);
  const back = 1.5 * half;
  const outline =
    direction === 'right'
      ? [at, { x: at.x - back, y: at.y - half }, { x: at.x - back, y: at.y + half }]
      : [at, { x: at.x - half, y: at.y - back }, { x: at.x + half, y: at.y - back }];
  return area(outline, { fill: COLORS[look] });
}

/** An arrow as wide as its share, with its head. */
export function arrowItems(
  l: ChainLine,
  points: readonly Spot[],
  unit: number,
  direction: Direction,
): Item[] {
  const width = (l.look === 'may-follow' ? 1.2 : thickness(l.weight)) * unit;
  const tip = points[points.length - 1];
  // The shaft ends at the middle of the head; drawn together a little, it arrives there level.
  const back = 1.2 * Math.max(2.6 * unit, width * 0.9);
  const axis = direction === 'right' ? 'x' : 'y';
  const first = points[0][axis];
  const kept = (tip[axis] - back - first) / (tip[axis] - first);
  const shaft = points.map((p) => ({ ...p, [axis]: first + kept * (p[axis] - first) }));
  return [line(shaft, strokeOf(l.look, width, unit)), head(tip, width, unit, l.look, direction)];
}

/** A box: a cause has a bar, what was found is filled, what may follow is dashed. */
export function boxItems(set: SetBox, at: Spot, unit: number): Item[] {
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

/** Spot of a line at a share of its length. */
function along(points: readonly Spot[], share: number): Spot {
  const lengths = points.slice(1).map((p, i) => Math.hypot(p.x - points[i].x, p.y - points[i].y));
  let left = share * lengths.reduce((a, b) => a + b, 0);
  for (const [i, length] of lengths.entries()) {
    if (left <= length) {
      const [a, b] = [points[i], points[i + 1]];
      const t = length === 0 ? 0 : left / length;
      return { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
    }
    left -= length;
  }
  return points[points.length - 1];
}

/** Where on its arrow a number may stand, best first. */
const PLACES = [0.42, 0.5, 0.34, 0.58, 0.27, 0.66, 0.2, 0.75];

/** What it costs to stand at the next best place, in covered area of a square unit of lettering. */
const LESS_GOOD = 5;

/** Number of an arrow in a ring, with its share behind, on the arrow where it covers least. */
export function label(l: ChainLine, points: readonly Spot[], unit: number, places: LabelPlaces): Item[] {
  const share = l.look === 'may-follow' ? '' : percent(l.weight);
  const ring = 4.9 * unit;
  const wide = share === '' ? 0 : textWidth(share, 7 * unit) + 3 * unit;
  const spots = PLACES.map((p) => along(points, p));
  const clear = 2 * unit;
  const boxAt = (spot: Spot) => ({
    left: spot.x - ring - clear,
    right: spot.x + ring + wide + clear,
    top: spot.y - ring,
    bottom: spot.y + ring,
  });
  const costs = spots.map((spot, i) => places.covered(boxAt(spot)) + i * LESS_GOOD * unit * unit);
  const best = spots[costs.indexOf(Math.min(...costs))];
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
              { x: taken.right - 1 * unit, y: best.y - 4.2 * unit },
              { x: taken.right - 1 * unit, y: best.y + 4.2 * unit },
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

/** What boxes and lines stand for, in rows. */
export function legend(
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
    const stroke = strokeOf(look, (look === 'may-follow' ? 1.2 : 2.2) * unit, unit);
    items.push(
      line(
        [
          { x: at.x, y: mid },
          { x: at.x + 16 * unit, y: mid },
        ],
        stroke,
      ),
      head({ x: at.x + 21 * unit, y: mid }, 2.2 * unit, unit, look, 'right'),
      text(name, { x: at.x + 26 * unit, y: at.y }),
    );
  }
  return { items, height: y - top + 6 * unit };
}
