import { area, type Item, line, type Spot } from '../display-list.ts';
import { leftOf, shift } from '../polygon.ts';
import { fitText, textWidth } from '../text-width.ts';
import { LETTERING, lettering, type PlanView, pen } from './view.ts';

const FOOT_M = 0.3048;

/**
 * North arrow. The plan's y axis points to a bearing from true north, so true north lies that angle to its left.
 * @param northDeg bearing of the plan's y axis [degrees clockwise from true north]
 */
export function northArrow(view: PlanView, center: Spot, northDeg: number): Item {
  const { unit } = view;
  const angle = (-northDeg * Math.PI) / 180;
  const north = { x: Math.sin(angle), y: -Math.cos(angle) };
  const side = leftOf(north);
  const tip = shift(center, north, 11 * unit);
  const tail = shift(center, north, -11 * unit);
  const wing = (by: number) => shift(shift(center, north, -6 * unit), side, by * unit);
  const letter = shift(center, north, 17 * unit);
  return {
    kind: 'layer',
    name: 'north',
    items: [
      { kind: 'circle', at: center, radius: 11 * unit, stroke: pen(view, 'soft', 0.4) },
      line([tail, tip], pen(view, 'ink', 0.8)),
      area([tip, wing(5), shift(center, north, -3 * unit)], { fill: 'ink' }),
      area([tip, wing(-5), shift(center, north, -3 * unit)], {
        fill: 'sheet',
        stroke: pen(view, 'ink', 0.5),
      }),
      lettering(view, { x: letter.x, y: letter.y + 3 * unit }, 'N', {
        align: 'middle',
        face: 'strong',
        size: 8,
      }),
    ],
  };
}

/** Feet that a scale bar may show in all; the largest that fits is taken. */
const BARS_FT = [2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000];

/** Scale bar in feet with a tick for round meters below. Its left end lies at `at`. */
export function scaleBar(view: PlanView, at: Spot, room: number): Item {
  const { unit, scale } = view;
  const foot = FOOT_M * scale;
  const feet = BARS_FT.filter((ft) => ft * foot <= room).at(-1) ?? BARS_FT[0];
  const parts = feet % 5 === 0 ? 5 : 2;
  const step = (feet * foot) / parts;
  const height = 3.2 * unit;
  const small = { align: 'middle', size: LETTERING.small } as const;
  const items: Item[] = [];
  for (let i = 0; i < parts; i++) {
    const x = at.x + i * step;
    items.push(
      area(
        [
          { x, y: at.y },
          { x: x + step, y: at.y },
          { x: x + step, y: at.y + height },
          { x, y: at.y + height },
        ],
        { fill: i % 2 === 0 ? 'ink' : 'sheet', stroke: pen(view, 'ink', 0.5) },
      ),
    );
  }
  const numbers = step >= 14 * unit ? Array.from({ length: parts + 1 }, (_, i) => i) : [0, parts];
  for (const i of numbers) {
    const text = i === parts ? `${feet} ft` : String((feet * i) / parts);
    items.push(lettering(view, { x: at.x + i * step, y: at.y - 2.5 * unit }, text, small));
  }
  const meters = feet * FOOT_M < 1 ? 0.5 : 10 ** Math.floor(Math.log10(feet * FOOT_M));
  const x = at.x + meters * scale;
  items.push(
    line(
      [
        { x, y: at.y + height },
        { x, y: at.y + height + 4 * unit },
      ],
      pen(view, 'ink', 0.8),
    ),
    lettering(view, { x, y: at.y + height + 10.5 * unit }, `${meters} m`, small),
  );
  return { kind: 'layer', name: 'scale-bar', items };
}

/** A field of the title block: small label over its value. */
export interface TitleField {
  readonly label: string;
  readonly value: string;
  /** Share of the width. */
  readonly share: number;
}

/** Height of the title block, in units. */
export const TITLE_HEIGHT = 27;

/** Title block across the foot of a drawing. */
export function titleBlock(view: PlanView, at: Spot, width: number, fields: readonly TitleField[]): Item {
  const { unit } = view;
  const height = TITLE_HEIGHT * unit;
  const shares = fields.reduce((sum, f) => sum + f.share, 0);
  const rule = pen(view, 'ink', 0.9);
  const thin = pen(view, 'soft', 0.4);
  const items: Item[] = [
    area(
      [
        at,
        { x: at.x + width, y: at.y },
        { x: at.x + width, y: at.y + height },
        { x: at.x, y: at.y + height },
      ],
      { stroke: rule },
    ),
  ];
  let x = at.x;
  for (const [i, field] of fields.entries()) {
    const room = (width * field.share) / shares;
    if (i > 0) {
      items.push(
        line(
          [
            { x, y: at.y },
            { x, y: at.y + height },
          ],
          thin,
        ),
      );
    }
    const size = [9.2, 8, LETTERING.ordinary].find(
      (s) => textWidth(field.value, s * unit) <= room - 10 * unit,
    );
    const value = fitText(field.value, room - 10 * unit, (size ?? LETTERING.ordinary) * unit);
    items.push(
      lettering(view, { x: x + 5 * unit, y: at.y + 9 * unit }, field.label, {
        color: 'soft',
        size: LETTERING.small,
      }),
      lettering(view, { x: x + 5 * unit, y: at.y + 20.5 * unit }, value, {
        size: size ?? LETTERING.ordinary,
      }),
    );
    x += room;
  }
  return { kind: 'layer', name: 'title-block', items };
}
