import type { ColorName } from '../look/tokens.ts';

/** A place on the drawing, in drawing units (points on paper, pixels on a screen), x to the right, y down. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Stroke {
  readonly color: ColorName;
  readonly width: number;
  /** Lengths of dashes and gaps in turn; absent for a solid line. */
  readonly dash?: readonly number[];
}

/** A line through points, not closed. */
export interface LineItem {
  readonly kind: 'line';
  readonly points: readonly Spot[];
  readonly stroke: Stroke;
}

/** Closed outlines filled together; a point inside two of them is outside (even-odd). */
export interface AreaItem {
  readonly kind: 'area';
  readonly outlines: readonly (readonly Spot[])[];
  readonly fill?: ColorName;
  readonly stroke?: Stroke;
}

export interface CircleItem {
  readonly kind: 'circle';
  readonly at: Spot;
  readonly radius: number;
  readonly fill?: ColorName;
  readonly stroke?: Stroke;
}

export interface TextItem {
  readonly kind: 'text';
  /** Where the baseline starts, has its middle or ends, by `align`. */
  readonly at: Spot;
  readonly text: string;
  readonly size: number;
  readonly color: ColorName;
  readonly align: 'start' | 'middle' | 'end';
  readonly face: Face;
  /** Turn about `at` [degrees, clockwise]. */
  readonly turnDeg?: number;
}

/** Items of one subject; with `within`, cut off at that outline. */
export interface LayerItem {
  readonly kind: 'layer';
  readonly name: string;
  readonly within?: readonly Spot[];
  /** The thing of the record that these items draw. */
  readonly of?: ItemRef;
  readonly items: readonly Item[];
}

/** Names a thing of the record: its kind in the log and its id. */
export interface ItemRef {
  readonly kind: string;
  readonly id: string;
}

export type Face = 'text' | 'strong' | 'figures';
export type Item = LineItem | AreaItem | CircleItem | TextItem | LayerItem;

/** A finished drawing: what to draw, in order, on a sheet of this size. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** What it shows, in words, for those who do not see it. */
  readonly description: string;
  readonly items: readonly Item[];
  /** Drawing units per meter, where the drawing is to scale. */
  readonly unitsPerMeter?: number;
}

/** Room for a drawing. Without a height it takes the height that it needs. */
export interface Room {
  readonly width: number;
  readonly height?: number;
  /** Size of ordinary lettering; line widths follow it. */
  readonly textSize: number;
}

export const line = (points: readonly Spot[], stroke: Stroke): LineItem => ({ kind: 'line', points, stroke });

export const area = (outline: readonly Spot[], paint: Pick<AreaItem, 'fill' | 'stroke'>): AreaItem => ({
  kind: 'area',
  outlines: [outline],
  ...paint,
});

/** Items that draw one thing of the record, so that a screen finds them again. Nothing where there is nothing to draw. */
export const drawnFor = (kind: string, id: string, items: readonly Item[]): LayerItem[] =>
  items.length === 0 ? [] : [{ kind: 'layer', name: kind, of: { kind, id }, items }];

/** Every item below, layers opened. */
export function flatten(items: readonly Item[]): Exclude<Item, LayerItem>[] {
  return items.flatMap((item) => (item.kind === 'layer' ? flatten(item.items) : [item]));
}
