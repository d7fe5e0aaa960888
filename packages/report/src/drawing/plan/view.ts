import { isSurveyed, type Job, type Point, type SurveyedJob } from '@undercroft/record';
import type { ColorName } from '../../look/tokens.ts';
import type { Item, Spot, Stroke, TextItem } from '../display-list.ts';
import { line } from '../display-list.ts';
import { LabelPlaces } from '../place-labels.ts';
import type { Box } from '../polygon.ts';
import { textWidth } from '../text-width.ts';
import type { PlanFacts } from './facts.ts';
import { Legend } from './legend.ts';
import { ON_PAPER, type PlanStyle } from './style.ts';

/** What every part of the plan is drawn with. */
export interface PlanView {
  readonly job: SurveyedJob;
  readonly facts: PlanFacts;
  readonly style: PlanStyle;
  /** Drawing units per meter. */
  readonly scale: number;
  /** One unit of lettering and line weight: a 72nd of an inch on Letter paper, more on a screen. */
  readonly unit: number;
  /** Inside of the walls on the sheet. */
  readonly outline: readonly Spot[];
  /** Where the plan may draw. */
  readonly frame: Box;
  readonly places: LabelPlaces;
  readonly legend: Legend;
  toSheet(point: Point): Spot;
}

/** Ordinary lettering, in units; small lettering is never under 6.5 points on Letter paper. */
export const LETTERING = { ordinary: 7.2, small: 6.6 } as const;

/** @throws RangeError for a job without walls or ground, of which there can be no assessment either */
export function planView(
  job: Job,
  facts: PlanFacts,
  placed: { readonly scale: number; readonly origin: Spot; readonly frame: Box; readonly unit: number },
  style: PlanStyle = ON_PAPER,
): PlanView {
  if (!isSurveyed(job)) throw new RangeError('a job without walls or ground has no plan to draw');
  const { scale, origin, frame, unit } = placed;
  const toSheet = (p: Point): Spot => ({ x: origin.x + p.xM * scale, y: origin.y - p.yM * scale });
  return {
    job,
    facts,
    style,
    scale,
    unit,
    frame,
    outline: facts.geometry.corners.map(toSheet),
    places: new LabelPlaces(frame),
    legend: new Legend(style),
    toSheet,
  };
}

export const pen = (view: PlanView, color: ColorName, width: number, dash?: readonly number[]): Stroke => ({
  color,
  width: width * view.unit,
  ...(dash === undefined ? {} : { dash: dash.map((d) => d * view.unit) }),
});

export const dashed = (view: PlanView, color: ColorName, width: number, ...dash: number[]): Stroke =>
  pen(view, color, width, dash);

/** Text on the plan; `size` in units. */
export function lettering(
  view: PlanView,
  at: Spot,
  text: string,
  style: Partial<Pick<TextItem, 'align' | 'color' | 'face' | 'turnDeg'>> & { readonly size?: number } = {},
): TextItem {
  const { size = LETTERING.ordinary, ...rest } = style;
  return {
    kind: 'text',
    at,
    text,
    size: size * view.unit,
    color: 'ink',
    align: 'start',
    face: 'figures',
    ...rest,
  };
}

/** A label that belongs to a spot. */
export interface Label {
  readonly at: Spot;
  readonly lines: readonly string[];
  /** Distance to keep from the spot, in units. */
  readonly gap: number;
  /** How far it may go, in units. A label that must stand goes far and gets a leader. */
  readonly reach: number;
  readonly color?: ColorName;
  /** Dropped where it would cover something, instead of covering it. */
  readonly optional?: boolean;
  readonly size?: number;
}

const LEADING = 1.12;

/** Letters a label where it covers least, with a leader where that is far away. Nothing where it had to be dropped. */
export function letterNear(view: PlanView, label: Label): Item[] {
  const { unit, places } = view;
  const size = (label.size ?? LETTERING.ordinary) * unit;
  const width = Math.max(...label.lines.map((l) => textWidth(l, size)));
  const height = (label.lines.length - 1) * size * LEADING + size;
  const placed = places.find({
    at: label.at,
    width: width + 2 * unit,
    height: height + unit,
    gap: label.gap * unit,
    reach: label.reach * unit,
  });
  const { box } = placed;
  const mayGo = label.optional === true || view.style.lettering === 'free';
  if (mayGo && placed.covered > 0.12 * width * height) return [];
  places.take(box);
  const texts = label.lines.map((text, i) =>
    lettering(view, { x: box.left + unit, y: box.top + size * (0.88 + i * LEADING) }, text, {
      size: size / unit,
      color: label.color ?? 'ink',
    }),
  );
  if (placed.away <= (label.gap + 6) * unit) return texts;
  const end = {
    x: Math.min(Math.max(label.at.x, box.left), box.right),
    y: Math.min(Math.max(label.at.y, box.top), box.bottom),
  };
  places.takeLine(label.at, end, 0, 0.3);
  return [line([label.at, end], pen(view, 'soft', 0.4)), ...texts];
}
