import type { Spot } from './viewport.ts';

/** What a finger, a mouse or a wheel means to a plan. Spots are px from its upper left corner. */
export interface GestureHandlers {
  /** A finger came down and moved at once: true where it takes hold of something, false where it moves the plan. */
  grab(at: Spot): boolean;
  drag(to: Spot): void;
  drop(at: Spot): void;
  /** What was taken hold of goes back to where it was. */
  letGo(): void;
  pan(by: Spot): void;
  zoom(about: Spot, factor: number): void;
  /** All fingers are up, or the wheel rests. */
  rest(): void;
  tap(at: Spot): void;
}

/** So far a finger may slide and still have tapped [px]. */
const SLIDE = { touch: 12, mouse: 5 } as const;

/** A second tap at the same place within this time is a drop of water or a tremor [ms, px]. */
const SAME_TAP = { ms: 300, px: 24 } as const;

/** So long after its last turn a wheel rests [ms]. */
const WHEEL_REST = 150;

/** Listens on an element; gives the function that stops it. Acts when a finger is lifted, never when it comes down. */
export function listen(element: HTMLElement, handlers: GestureHandlers): () => void {
  const down = new Map<number, Spot>();
  let start: Spot | null = null;
  let doing: 'nothing' | 'wait' | 'pan' | 'drag' | 'pinch' = 'nothing';
  let lastTap = { at: { x: 0, y: 0 }, when: Number.NEGATIVE_INFINITY };
  let wheel: ReturnType<typeof setTimeout> | undefined;

  // Measured when a finger comes down: to measure for each event would lay out the page each time.
  let box = { left: 0, top: 0 };
  const spotOf = (event: MouseEvent): Spot => ({ x: event.clientX - box.left, y: event.clientY - box.top });
  const away = (a: Spot, b: Spot) => Math.hypot(a.x - b.x, a.y - b.y);

  const onDown = (event: PointerEvent) => {
    if (event.button > 0 || (event.target as Element).closest('button, a, input, select')) return;
    element.setPointerCapture(event.pointerId);
    if (down.size === 0) box = element.getBoundingClientRect();
    const at = spotOf(event);
    down.set(event.pointerId, at);
    if (down.size === 1) {
      start = at;
      doing = 'wait';
    } else if (down.size === 2) {
      if (doing === 'drag') handlers.letGo();
      doing = 'pinch';
    }
  };

  const onMove = (event: PointerEvent) => {
    const before = down.get(event.pointerId);
    if (before === undefined || start === null) return;
    const at = spotOf(event);
    if (doing === 'wait') {
      if (away(start, at) <= (event.pointerType === 'mouse' ? SLIDE.mouse : SLIDE.touch)) return;
      doing = handlers.grab(start) ? 'drag' : 'pan';
      if (doing === 'pan') handlers.pan({ x: at.x - start.x, y: at.y - start.y });
    } else if (doing === 'pan') {
      handlers.pan({ x: at.x - before.x, y: at.y - before.y });
    } else if (doing === 'pinch') {
      const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
      if (other !== undefined && away(other, before) > 0) {
        const middle = (p: Spot): Spot => ({ x: (p.x + other.x) / 2, y: (p.y + other.y) / 2 });
        const [from, to] = [middle(before), middle(at)];
        handlers.pan({ x: to.x - from.x, y: to.y - from.y });
        handlers.zoom(to, away(other, at) / away(other, before));
      }
    }
    down.set(event.pointerId, at);
    if (doing === 'drag') handlers.drag(at);
  };

  const tapped = (at: Spot) => {
    const when = performance.now();
    const again = when - lastTap.when < SAME_TAP.ms && away(at, lastTap.at) < SAME_TAP.px;
    lastTap = { at, when };
    if (!again) handlers.tap(at);
  };

  const onUp = (event: PointerEvent) => {
    if (!down.delete(event.pointerId)) return;
    const was = doing;
    if (was === 'drag') {
      if (event.type === 'pointerup') handlers.drop(spotOf(event));
      else handlers.letGo();
    }
    if (down.size > 0) {
      // One finger of a pinch stays down: it moves the plan on, but its lifting is no tap.
      doing = 'pan';
      return;
    }
    doing = 'nothing';
    if (was === 'wait' && event.type === 'pointerup') tapped(spotOf(event));
    else if (was !== 'wait') handlers.rest();
  };

  const onWheel = (event: WheelEvent) => {
    event.preventDefault();
    box = element.getBoundingClientRect();
    const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
    if (event.shiftKey) handlers.pan({ x: -(event.deltaX + event.deltaY) * lines, y: 0 });
    else handlers.zoom(spotOf(event), Math.exp(-event.deltaY * lines * (event.ctrlKey ? 0.01 : 0.0015)));
    clearTimeout(wheel);
    wheel = setTimeout(handlers.rest, WHEEL_REST);
  };

  element.addEventListener('pointerdown', onDown);
  element.addEventListener('pointermove', onMove);
  element.addEventListener('pointerup', onUp);
  element.addEventListener('pointercancel', onUp);
  element.addEventListener('wheel', onWheel, { passive: false });
  return () => {
    clearTimeout(wheel);
    element.removeEventListener('pointerdown', onDown);
    element.removeEventListener('pointermove', onMove);
    element.removeEventListener('pointerup', onUp);
    element.removeEventListener('pointercancel', onUp);
    element.removeEventListener('wheel', onWheel);
  };
}
