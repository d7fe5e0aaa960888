import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolved } from '../../src/plan/walls.ts';
import { rectangleOf, withPart } from '../../src/screens/space/outline/rectangle.ts';
import {
  azimuthAfter,
  closingOf,
  cornersWalked,
  type Leg,
  lastWall,
  outlineOfLegs,
} from '../../src/screens/space/outline/tape.ts';

const FOOT_NM = 304_800_000;
const ids = () => {
  let next = 0;
  return () => `w${next++}`;
};
const leg = (id: string, feet: number, turnDeg: number): Leg => ({
  id,
  nm: feet * FOOT_NM,
  typed: `${feet}'`,
  turnDeg,
});

const house = [leg('a', 40, 0), leg('b', 30, -90), leg('c', 40, -90), leg('d', 30, -90)];

describe('walls by tape', () => {
  it('walks to the right first, and says which way one faces after a turn', () => {
    const corners = cornersWalked(house.slice(0, 2));
    expect(corners[1]).toEqual({ xM: 12.192, yM: 0 });
    expect(corners[2].xM).toBeCloseTo(12.192, 9);
    expect(corners[2].yM).toBeCloseTo(9.144, 9);
    expect(azimuthAfter([], -90)).toBe(90);
    expect(azimuthAfter(house.slice(0, 2), -90)).toBe(270);
  });

  it('closes a house that was taped right, and refuses one with a wall two feet too long, naming it', () => {
    expect(closingOf(house.slice(0, 2), 'transit')).toBeNull();
    expect(closingOf(house, 'transit')?.verdict).toBe('good');
    const wrong = house.map((wall) => (wall.id === 'c' ? { ...wall, nm: 42 * FOOT_NM } : wall));
    const closing = closingOf(wrong, 'transit');
    expect(closing?.verdict).toBe('poor');
    expect(closing?.hints.filter(({ kind }) => kind === 'length').map(({ legIndex }) => legIndex)).toEqual([
      0, 2,
    ]);
  });

  it('works out the wall back to the start', () => {
    const last = lastWall(house.slice(0, 3), 'd');
    expect(last).toEqual({ id: 'd', nm: 30 * FOOT_NM, turnDeg: -90 });
    expect(lastWall(house, 'e')).toBeNull();
    expect(lastWall([], 'e')).toBeNull();
  });

  it('keeps what was typed, and does not make it up where a wall was worked out', () => {
    const outline = outlineOfLegs([...house.slice(0, 3), { id: 'd', nm: 1, turnDeg: -90 }], 'compass');
    if (outline.kind !== 'traverse') throw new Error('taped walls are a traverse');
    expect(outline.adjustment).toBe('compass');
    expect(outline.legs.map(({ length }) => length.typed)).toEqual(["40'", "30'", "40'", undefined]);
  });
});

const areaM2 = (legs: readonly Leg[]) => {
  const { usable, areaM2: area, issues } = resolved(outlineOfLegs(legs, 'transit'));
  expect(issues).toEqual([]);
  expect(usable).toBe(true);
  return area;
};
const FOOT2_M2 = 0.09290304;

describe('walls from a rectangle', () => {
  const base = () => rectangleOf({ nm: 40 * FOOT_NM, typed: '40' }, { nm: 30 * FOOT_NM, typed: '30' }, ids());
  const part = (kind: 'add' | 'cut', wall: number, offset: number, width: number, depth: number) => ({
    kind,
    leg: wall,
    offsetNm: offset * FOOT_NM,
    width: { nm: width * FOOT_NM },
    depth: { nm: depth * FOOT_NM },
  });

  it('has the area of the rectangle, with a part more or less', () => {
    expect(areaM2(base())).toBeCloseTo(1200 * FOOT2_M2, 6);
    const wider = withPart(base(), part('add', 2, 5, 12, 6), ids()) as Leg[];
    expect(wider).toHaveLength(8);
    expect(areaM2(wider)).toBeCloseTo((1200 + 72) * FOOT2_M2, 6);
    const cut = withPart(base(), part('cut', 1, 4, 10, 7), ids()) as Leg[];
    expect(cut).toHaveLength(8);
    expect(areaM2(cut)).toBeCloseTo((1200 - 70) * FOOT2_M2, 6);
  });

  it('makes one wall of two in line, where a part reaches a corner', () => {
    const ell = withPart(base(), part('cut', 0, 0, 10, 7), ids()) as Leg[];
    expect(ell).toHaveLength(6);
    expect(areaM2(ell)).toBeCloseTo((1200 - 70) * FOOT2_M2, 6);
    const longer = withPart(base(), part('add', 1, 0, 30, 8), ids()) as Leg[];
    expect(longer).toHaveLength(4);
    expect(areaM2(longer)).toBeCloseTo(48 * 30 * FOOT2_M2, 6);
  });

  it('refuses a part that is wider than what is left of the wall', () => {
    expect(withPart(base(), part('add', 1, 20, 10, 5), ids())).not.toBeNull();
    expect(withPart(base(), part('add', 1, 20, 10.5, 5), ids())).toBeNull();
    expect(withPart(base(), part('add', 7, 0, 1, 1), ids())).toBeNull();
  });

  it('closes exactly, whatever parts are added and cut', () => {
    const parts = fc.array(
      fc.record({
        kind: fc.constantFrom('add' as const, 'cut' as const),
        leg: fc.nat(12),
        offset: fc.integer({ min: 0, max: 20 }),
        width: fc.integer({ min: 1, max: 12 }),
        depth: fc.integer({ min: 1, max: 5 }),
      }),
      { maxLength: 5 },
    );
    fc.assert(
      fc.property(parts, (wanted) => {
        const newId = ids();
        let legs: readonly Leg[] = base();
        for (const { kind, leg: wall, offset, width, depth } of wanted) {
          legs = withPart(legs, part(kind, wall, offset, width, depth), () => `p${newId()}`) ?? legs;
        }
        expect(new Set(legs.map(({ id }) => id)).size).toBe(legs.length);
        expect(legs.every(({ nm }) => nm > 0)).toBe(true);
        expect(closingOf(legs, 'transit')?.closure.linearM).toBeLessThan(1e-9);
      }),
      { numRuns: 150 },
    );
  });
});
