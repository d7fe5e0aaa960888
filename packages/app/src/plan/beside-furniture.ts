import { fitted, type Margins, type Room, type Span, type Viewport } from './viewport.ts';

/** A rectangle that lies over the plan, from the upper left corner of the view [px]. */
export interface Covering {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A corner of the walls is hit so far from where it is drawn [px]. */
const REACH = 30;

/**
 * The viewport that shows a span whole; where a corner of it would lie under the buttons above or what stands below, it
 * is drawn between them, so that every corner can be tapped.
 */
export function fittedBeside(
  span: Span,
  room: Room,
  margins: Margins,
  above: Covering | null,
  below: Covering | null,
): Viewport {
  const free = fitted(span, room, margins);
  const walls: Covering = {
    left: free.x + span.leftM * free.pxPerM,
    right: free.x + span.rightM * free.pxPerM,
    top: free.y - span.topM * free.pxPerM,
    bottom: free.y - span.bottomM * free.pxPerM,
  };
  const isCovered = (by: Covering | null) =>
    by !== null &&
    by.left < walls.right + REACH &&
    by.right > walls.left - REACH &&
    by.top < walls.bottom + REACH &&
    by.bottom > walls.top - REACH;
  if (!isCovered(above) && !isCovered(below)) return free;
  return fitted(span, room, {
    ...margins,
    top: margins.top + (above?.bottom ?? 0),
    bottom: margins.bottom + (below === null ? 0 : room.height - below.top),
  });
}

/** Where an element that lies over a view is; null of one that is not shown. */
export function coveringOf(view: HTMLElement | null, name: string): Covering | null {
  const element = view?.querySelector<HTMLElement>(name);
  if (!element || element.offsetWidth === 0) return null;
  const { offsetLeft: left, offsetTop: top, offsetWidth, offsetHeight } = element;
  return { left, top, right: left + offsetWidth, bottom: top + offsetHeight };
}
