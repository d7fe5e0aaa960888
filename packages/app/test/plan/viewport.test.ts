import { describe, expect, it } from 'vitest';
import { fitted, keepingInView, toPlan, toScreen, zoomedAbout } from '../../src/plan/viewport.ts';

const view = { pxPerM: 40, x: 30, y: 500 };

describe('the part of a plan that is in view', () => {
  it('leads from the plan to the screen and back, y up', () => {
    expect(toScreen(view, { xM: 2, yM: 3 })).toEqual({ x: 110, y: 380 });
    expect(toPlan(view, { x: 110, y: 380 })).toEqual({ xM: 2, yM: 3 });
  });

  it('keeps what lies under the fingers when it is zoomed, and stops at scales that make no sense', () => {
    const spot = { x: 200, y: 100 };
    const before = toPlan(view, spot);
    const after = toPlan(zoomedAbout(view, spot, 1.7), spot);
    expect(after.xM).toBeCloseTo(before.xM, 12);
    expect(after.yM).toBeCloseTo(before.yM, 12);
    expect(zoomedAbout(view, spot, 1e6).pxPerM).toBe(800);
    expect(zoomedAbout(view, spot, 1e-6).pxPerM).toBe(4);
  });

  it('shows a span whole and in the middle', () => {
    const room = { width: 390, height: 600 };
    const span = { leftM: -2, rightM: 10, bottomM: 1, topM: 9 };
    const fit = fitted(span, room);
    const low = toScreen(fit, { xM: span.leftM, yM: span.bottomM });
    const high = toScreen(fit, { xM: span.rightM, yM: span.topM });
    expect(low.x).toBeGreaterThanOrEqual(0);
    expect(high.x).toBeLessThanOrEqual(room.width);
    expect(high.y).toBeGreaterThanOrEqual(0);
    expect(low.y).toBeLessThanOrEqual(room.height);
    expect((low.x + high.x) / 2).toBeCloseTo(room.width / 2, 9);
    expect((low.y + high.y) / 2).toBeCloseTo(room.height / 2, 9);
  });

  it('moves no farther than it takes to keep a point in view', () => {
    const room = { width: 390, height: 160 };
    expect(keepingInView({ ...view, y: 80 }, { xM: 3, yM: 0 }, room)).toEqual({ ...view, y: 80 });
    const moved = keepingInView(view, { xM: 3, yM: 0 }, room);
    expect(toScreen(moved, { xM: 3, yM: 0 })).toEqual({ x: 150, y: 160 - 56 });
  });
});
