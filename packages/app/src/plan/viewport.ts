import type { Point } from '@undercroft/record';

/** A place on the screen [px], from the upper left corner of the view. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Room {
  readonly width: number;
  readonly height: number;
}

/** Which part of the plan is in view: its scale, and where its zero point lies on the screen [px]. */
export interface Viewport extends Spot {
  readonly pxPerM: number;
}

/** Scales between which a plan can be looked at [px per meter]: a whole street, and a pier that fills a phone. */
const SCALES = { least: 4, most: 800 } as const;

/** Room that dimension lines, lettering and open doors need around the walls [px]. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Of a plan that is not drawn yet. */
export const USUAL_MARGINS: Margins = { left: 54, right: 54, top: 54, bottom: 54 };

export const toScreen = (view: Viewport, { xM, yM }: Point): Spot => ({
  x: view.x + xM * view.pxPerM,
  y: view.y - yM * view.pxPerM,
});

export const toPlan = (view: Viewport, { x, y }: Spot): Point => ({
  xM: (x - view.x) / view.pxPerM,
  yM: (view.y - y) / view.pxPerM,
});

/** Zoomed by a factor, within the scales that make sense; what lies under the spot stays there. */
export function zoomedAbout(view: Viewport, spot: Spot, factor: number): Viewport {
  const pxPerM = Math.min(SCALES.most, Math.max(SCALES.least, view.pxPerM * factor));
  const k = pxPerM / view.pxPerM;
  return { pxPerM, x: spot.x + (view.x - spot.x) * k, y: spot.y + (view.y - spot.y) * k };
}

export const moved = (view: Viewport, by: Spot): Viewport => ({
  ...view,
  x: view.x + by.x,
  y: view.y + by.y,
});

/** A span of the plan that is wanted in view. */
export interface Span {
  readonly leftM: number;
  readonly rightM: number;
  readonly bottomM: number;
  readonly topM: number;
}

/** The span of some points; null of none. */
export function spanOf(points: readonly Point[]): Span | null {
  if (points.length === 0) return null;
  const xs = points.map((p) => p.xM);
  const ys = points.map((p) => p.yM);
  return {
    leftM: Math.min(...xs),
    rightM: Math.max(...xs),
    bottomM: Math.min(...ys),
    topM: Math.max(...ys),
  };
}

/** The viewport that shows a span as large as the room allows, in its middle; in little room with less around it. */
export function fitted(span: Span, room: Room, margins: Margins = USUAL_MARGINS): Viewport {
  const across = Math.min(1, (room.width * 0.4) / (margins.left + margins.right));
  const down = Math.min(1, (room.height * 0.4) / (margins.top + margins.bottom));
  const left = margins.left * across;
  const top = margins.top * down;
  const inside = {
    width: room.width - left - margins.right * across,
    height: room.height - top - margins.bottom * down,
  };
  const width = Math.max(span.rightM - span.leftM, 0.5);
  const height = Math.max(span.topM - span.bottomM, 0.5);
  const wanted = Math.min(inside.width / width, inside.height / height);
  const pxPerM = Math.min(SCALES.most, Math.max(SCALES.least, wanted));
  return {
    pxPerM,
    x: left + inside.width / 2 - ((span.leftM + span.rightM) / 2) * pxPerM,
    y: top + inside.height / 2 + ((span.bottomM + span.topM) / 2) * pxPerM,
  };
}

/** Moved no farther than it takes to have a point in view, some way from the edges. */
export function keepingInView(view: Viewport, point: Point, room: Room, edge = 56): Viewport {
  const spot = toScreen(view, point);
  const need = (at: number, size: number) => {
    const margin = Math.min(edge, size / 2);
    return at < margin ? margin - at : at > size - margin ? size - margin - at : 0;
  };
  const by = { x: need(spot.x, room.width), y: need(spot.y, room.height) };
  return by.x === 0 && by.y === 0 ? view : moved(view, by);
}
