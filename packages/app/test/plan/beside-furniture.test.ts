import { describe, expect, it } from 'vitest';
import { fittedBeside } from '../../src/plan/beside-furniture.ts';
import { fitted, toScreen } from '../../src/plan/viewport.ts';

const room = { width: 390, height: 700 };
const margins = { left: 54, right: 50, top: 58, bottom: 46 };
const above = { left: 174, right: 382, top: 8, bottom: 72 };
const below = { left: 8, right: 330, top: 620, bottom: 692 };

describe('a plan between the buttons that lie over it', () => {
  it('is as large as it may where it does not come under them', () => {
    const flat = { leftM: 0, rightM: 8, bottomM: 0, topM: 4 };
    expect(fittedBeside(flat, room, margins, above, below)).toEqual(fitted(flat, room, margins));
  });

  it('has every corner free where it would', () => {
    const tall = { leftM: 1, rightM: 5, bottomM: -1, topM: 9 };
    expect(toScreen(fitted(tall, room, margins), { xM: 5, yM: 9 }).y).toBeLessThan(above.bottom);
    const view = fittedBeside(tall, room, margins, above, below);
    expect(toScreen(view, { xM: 5, yM: 9 }).y).toBeGreaterThan(above.bottom + 30);
    expect(toScreen(view, { xM: 1, yM: -1 }).y).toBeLessThan(below.top - 30);
  });

  it('knows of nothing in the way before anything is drawn', () => {
    const tall = { leftM: 1, rightM: 5, bottomM: -1, topM: 9 };
    expect(fittedBeside(tall, room, margins, null, null)).toEqual(fitted(tall, room, margins));
  });
});
