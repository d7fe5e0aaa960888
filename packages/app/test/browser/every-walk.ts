import { expect } from 'vitest';
import { lookAt } from './every-look.ts';
import { everyPlace, type Place } from './every-place.ts';
import { axeFaults } from './harness.ts';
import { tooNarrow } from './narrow.ts';
import type { Walker } from './walker.ts';

/** Goes to a place; one that cannot be reached is a fault, and the walk goes on. */
async function reached(place: Place, walker: Walker): Promise<boolean> {
  try {
    await place.reach(walker);
    return true;
  } catch (error) {
    expect.soft(String(error), place.name).toBe('reached');
    return false;
  }
}

/** Everywhere, in the dark and by daylight: no fault that axe finds, and nothing that the page complains about. */
export async function expectNoFaults(walker: Walker): Promise<void> {
  const on = walker.isDesk ? 'desk' : 'phone';
  for (const place of everyPlace(walker.isDesk)) {
    if (!(await reached(place, walker))) continue;
    for (const ground of ['under', 'daylight'] as const) {
      await walker.wear(ground);
      expect.soft(await axeFaults(walker.page), `${place.name}, ${ground}`).toEqual([]);
      await lookAt(walker.page, `${on}-${ground}-${place.name}`);
    }
  }
  expect(walker.heard).toEqual([]);
}

/** Everywhere: nothing scrolls sideways, no text of a control is cut off, tools keep their size. */
export async function expectRoom(walker: Walker, name: string): Promise<void> {
  for (const place of everyPlace(walker.isDesk)) {
    if (!(await reached(place, walker))) continue;
    expect.soft(await tooNarrow(walker.page), place.name).toEqual([]);
    await lookAt(walker.page, `${name}-${place.name}`);
  }
  expect(walker.heard).toEqual([]);
}
