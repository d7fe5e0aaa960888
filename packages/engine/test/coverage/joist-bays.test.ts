import { describe, expect, test } from 'vitest';
import { coverage } from '../../src/coverage/coverage.ts';
import { bayReachM, joistBays } from '../../src/coverage/joist-bays.ts';
import type { JoistBay } from '../../src/coverage/scene.ts';
import { allRound, box, room } from './rooms.ts';

const run = { id: 'j', bearingDeg: 0, spacingM: 0.4, depthM: 0.24, undersideM: 0.8 };

describe('bays between joists', () => {
  test('a bay for each spacing over a rectangle, numbered to the right', () => {
    const bays = joistBays(box(0, 0, 4, 3), run);
    expect(bays).toHaveLength(10);
    bays.forEach((bay, i) => {
      expect(bay.id).toBe(`j-${i + 1}`);
      expect(bay.from.xM).toBeCloseTo(0.2 + 0.4 * i, 9);
      expect([bay.from.yM, bay.to.yM].map((y) => Math.round(y * 1e9) / 1e9)).toEqual([0, 3]);
      expect(bay.widthM).toBeCloseTo(0.4 - 0.038, 12);
    });
    // Running south the right is west.
    const south = joistBays(box(0, 0, 4, 3), { ...run, bearingDeg: 180 });
    expect(south[0]!.from.xM).toBeCloseTo(3.8, 9);
    expect(south[0]!.from.yM).toBeCloseTo(3, 9);
  });

  test('laid out from a joist that was seen', () => {
    const bays = joistBays(box(0, 0, 4, 3), { ...run, through: { xM: 1.05, yM: 2 } });
    expect(bays.map((b) => Math.round(b.from.xM * 100) / 100)).toEqual([
      0.05, 0.45, 0.85, 1.25, 1.65, 2.05, 2.45, 2.85, 3.25, 3.65,
    ]);
  });

  test('a recess cuts a bay in two', () => {
    // A bite out of the east side between y = 1 and y = 2, from x = 2 on.
    const outline = [
      ...box(0, 0, 4, 1).slice(0, 3),
      { xM: 2, yM: 1 },
      { xM: 2, yM: 2 },
      { xM: 4, yM: 2 },
      { xM: 4, yM: 3 },
      { xM: 0, yM: 3 },
    ];
    const bays = joistBays(outline, run);
    expect(bays).toHaveLength(5 + 2 * 5);
  });

  test('how far aside one sees into a bay', () => {
    const bay: JoistBay = {
      id: 'b',
      from: { xM: 3, yM: 0 },
      to: { xM: 3, yM: 4 },
      widthM: 0.36,
      depthM: 0.24,
      undersideM: 0.78,
    };
    // Half of 0.36 m times (1 + 0.48 / 0.24).
    expect(bayReachM(bay, 0.3)).toBeCloseTo(0.18 * 3, 12);
    expect(bayReachM(bay, 0.78)).toBe(0);
    const seenFrom = (xM: number, rangeM = 30): number =>
      coverage({ ...room(6, 4), bays: [bay] }, [{ ...allRound('s', xM, 1), rangeM }]).bays[0]!.seenShare!;
    expect(seenFrom(3 - 0.53)).toBe(1);
    expect(seenFrom(3 + 0.53)).toBe(1);
    expect(seenFrom(3 - 0.55)).toBe(0);
    // Right below, to 1.5 m either way: from y = 0 to 2.5 of 4.
    expect(seenFrom(3, 1.5)).toBeCloseTo(2.5 / 4, 4);
  });

  test('a duct under the joists hides what is above it, not what is before it', () => {
    const bay: JoistBay = {
      id: 'b',
      from: { xM: 3, yM: 0 },
      to: { xM: 3, yM: 4 },
      widthM: 0.36,
      depthM: 0.24,
      undersideM: 0.8,
    };
    const ducts = [
      {
        id: 'd',
        path: [
          { xM: 2, yM: 2 },
          { xM: 4, yM: 2 },
        ],
        widthM: 0.4,
        heightM: 0.2,
        clearanceM: 0.6,
      },
    ];
    // From y = 1, lamp 0.3: the line to the bay at 0.8 enters the duct's heights at 0.6 of the way, so what lies
    // 1 to 1/0.6 times as far as the duct, y 1.8 to 2.2, is hidden: y − 1 from 0.8 to 1.2 / 0.6 = 2.
    const { bays } = coverage({ ...room(6, 4), bays: [bay], ducts }, [allRound('s', 3, 1)]);
    expect(bays[0]!.unseen).toHaveLength(1);
    expect(bays[0]!.unseen[0]!.fromM).toBeCloseTo(1.8, 9);
    expect(bays[0]!.unseen[0]!.toM).toBeCloseTo(3, 9);
  });
});
