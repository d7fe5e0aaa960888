import { describe, expect, test } from 'vitest';
import type { CoverageScene, Station } from '../../src/coverage/scene.ts';
import { hiddenBehind } from '../../src/coverage/shadows.ts';
import { visibleRegion } from '../../src/coverage/visible-region.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { allRound, box, room } from './rooms.ts';

const lookAll = allRound('s', 2, 3);

describe('cases worked by hand', () => {
  test('an empty room is seen whole from inside, from a wall and from a corner', () => {
    for (const at of [
      { xM: 2, yM: 3 },
      { xM: 5, yM: 0 },
      { xM: 9, yM: 6 },
    ]) {
      expect(visibleRegion(room(9, 6), { ...lookAll, at }).areaM2).toBeCloseTo(54, 9);
    }
  });

  test('a quarter view of short range is a quarter disk; half of it looking along a wall', () => {
    const view = { ...lookAll, at: { xM: 4, yM: 2 }, fieldOfViewDeg: 90, rangeM: 1.5 };
    expect(visibleRegion(room(9, 6), { ...view, bearingDeg: 77 }).areaM2).toBeCloseTo(
      (Math.PI * 2.25) / 4,
      9,
    );
    const along = { ...view, at: { xM: 4, yM: 0 }, bearingDeg: 90 };
    expect(visibleRegion(room(9, 6), along).areaM2).toBeCloseTo((Math.PI * 2.25) / 8, 9);
  });

  test('bearings run clockwise from +y', () => {
    const narrow = { ...lookAll, fieldOfViewDeg: 2, bearingDeg: 90 };
    // East of (2, 3) the wall at x = 9 is 7 m away: the slice is 49 tan 1°.
    const { areaM2, polygon } = visibleRegion(room(9, 6), narrow);
    expect(areaM2).toBeCloseTo(49 * Math.tan(Math.PI / 180), 9);
    expect(Math.max(...polygon.map((p) => p.xM))).toBe(9);
  });

  test('a pier hides the floor behind it', () => {
    // From (0, 2) a pier face from y = 1.5 to 2.5 at x = 2 hides, to x = 6, a trapezoid of widths 1 and 3, length 4.
    const scene = { ...room(6, 4), piers: [{ id: 'p', at: { xM: 2.25, yM: 2 }, widthM: 0.5, depthM: 1 }] };
    expect(visibleRegion(scene, { ...lookAll, at: { xM: 0, yM: 2 } }).areaM2).toBeCloseTo(24 - 8, 9);
  });

  test('an interior wall hides all but what its opening shows, whatever its thickness is', () => {
    // From (0, 2), through a gap y 1.5 to 2.5 at x = 2: beyond it a trapezoid of widths 1 and 3, length 4.
    const wall = {
      id: 'w',
      from: { xM: 2, yM: 0 },
      to: { xM: 2, yM: 4 },
      openings: [{ offsetM: 1.5, widthM: 1 }],
    };
    const at = { xM: 0, yM: 2 };
    const thin = visibleRegion({ ...room(6, 4), interiorWalls: [wall] }, { ...lookAll, at });
    expect(thin.areaM2).toBeCloseTo(8 + 8, 9);
    // 0.4 m thick, x 1.8 to 2.2: the far edge of the gap, at 2.2, is the tighter one.
    const thick = visibleRegion(
      { ...room(6, 4), interiorWalls: [{ ...wall, thicknessM: 0.4 }] },
      { ...lookAll, at },
    );
    const beyond = ((1 + 6 / 2.2) / 2) * 3.8;
    expect(thick.areaM2).toBeCloseTo(1.8 * 4 + 0.4 * 1 + beyond, 9);
  });

  test('a low pile hides a strip, a hanging duct what its underside cuts off', () => {
    const at = { xM: 0, yM: 2 };
    // Pile 0.1 m high, x 1 to 2, wall to wall; lamp 0.3 m: hidden from x = 1 to 2 · 0.3 / 0.2 = 3.
    const pile = { ...room(6, 4), obstacles: [{ id: 'o', outline: box(1, 0, 2, 4), heightM: 0.1 }] };
    expect(visibleRegion(pile, { ...lookAll, at }).areaM2).toBeCloseTo(24 - 8, 9);
    // Duct with its underside at 0.2 m, x 1 to 1.5, up to the joists: seen to x = 1 · 0.3 / 0.1 = 3.
    const duct = {
      id: 'd',
      path: [
        { xM: 1.25, yM: 0 },
        { xM: 1.25, yM: 4 },
      ],
      widthM: 0.5,
    };
    const under = (clearanceM: number, heightM = 0.025): number =>
      visibleRegion({ ...room(6, 4), ducts: [{ ...duct, clearanceM, heightM }] }, { ...lookAll, at }).areaM2;
    expect(under(0.2, 5)).toBeCloseTo(12, 9);
    // The same duct only 25 mm high: over its top, 0.225 m, one sees from x = 1.5 · 0.3 / 0.075 = 6 on: nothing more.
    expect(under(0.2, 0.025)).toBeCloseTo(12, 9);
    // A pipe as thin as 5 mm: seen again from x = 1.5 · 0.3 / 0.095 on.
    expect(under(0.2, 0.005)).toBeCloseTo(12 + (6 - 0.45 / 0.095) * 4, 9);
    // At the lamp's height and above it hides no floor.
    expect(under(0.3, 5)).toBeCloseTo(24, 9);
    expect(under(0.5, 5)).toBeCloseTo(24, 9);
    // The camera held lower sees under it.
    const low = { ...lookAll, at, heightM: 0.15 };
    expect(
      visibleRegion({ ...room(6, 4), ducts: [{ ...duct, clearanceM: 0.2, heightM: 5 }] }, low).areaM2,
    ).toBeCloseTo(24, 9);
  });

  test('a duct of unknown clearance hides all beyond it and says so', () => {
    const scene = {
      ...room(6, 4),
      ducts: [
        {
          id: 'd7',
          path: [
            { xM: 3, yM: 0 },
            { xM: 3, yM: 4 },
          ],
          widthM: 0.4,
        },
      ],
    };
    const region = visibleRegion(scene, lookAll);
    expect(region.areaM2).toBeCloseTo(2.8 * 4, 9);
    expect(region.notices).toHaveLength(1);
    expect(region.notices[0]).toMatchObject({ code: 'duct-clearance-unknown' });
    expect(region.notices[0]!.message).toContain('d7');
  });

  test('piers in a row, seen exactly end on, hide one straight strip', () => {
    const piers = [2, 3, 4, 5].map((xM) => ({ id: `${xM}`, at: { xM, yM: 2 }, widthM: 0.4, depthM: 0.4 }));
    // From (0, 2): the first pier's face at x = 1.8, half height 0.2, hides to x = 6 a trapezoid; all others lie in it.
    const area = visibleRegion({ ...room(6, 4), piers }, { ...lookAll, at: { xM: 0, yM: 2 } }).areaM2;
    expect(area).toBeCloseTo(24 - ((0.4 + (0.4 * 6) / 1.8) / 2) * 4.2, 9);
  });

  test('a place whose joists come down to the ground hides what lies behind', () => {
    const heights = [
      { at: { xM: 3, yM: 2 }, clearHeightM: 0.05 },
      { at: { xM: 1, yM: 2 }, clearHeightM: 0.9 },
      { at: { xM: 5, yM: 2 }, clearHeightM: 0.9 },
    ];
    const all = visibleRegion({ ...room(6, 4) }, { ...lookAll, at: { xM: 1, yM: 2 } }).areaM2;
    const some = visibleRegion(
      { ...room(6, 4), clearHeights: heights },
      { ...lookAll, at: { xM: 1, yM: 2 } },
    );
    expect(some.areaM2).toBeLessThan(all - 0.5);
    expect(some.areaM2).toBeGreaterThan(all / 2);
  });

  test('a mark a little inside a wall is put in front of it, one far outside sees nothing', () => {
    const slip = visibleRegion(room(9, 6), { ...lookAll, at: { xM: -0.29, yM: 3 } });
    expect(slip.areaM2).toBeCloseTo(54, 6);
    const outside = visibleRegion(room(9, 6), { ...lookAll, at: { xM: -0.31, yM: 3 } });
    expect(outside).toMatchObject({ areaM2: 0, polygon: [] });
    expect(outside.notices[0]!.code).toBe('station-not-in-space');
  });
});

describe('what is hidden behind a bar', () => {
  test.each([
    // eye, target, underside, top, near, far
    [0.3, 0, 0, 0.1, 1, 1.5],
    [0.3, 0, 0.2, 9, 3, 1e5],
    [0.3, 0, 0, 0.3, 1, 1e5],
    [0.3, 0, 0.3, 0.6, null, null],
    [0.3, 0, 0.29, 0.6, 30, 1e5],
    [0.3, 0.9, 0.5, 0.7, 1.5, 3],
    [0.3, 0.9, 0, 0.2, null, null],
    [0.3, 0.9, 0, 0.45, 4, 1e5],
    [0.3, 0.3, 0.2, 0.4, 1, 1e5],
    [0.3, 0.3, 0.3, 0.4, null, null],
  ] as const)('eye %s, target %s, body %s to %s', (eye, target, underside, top, near, far) => {
    const hidden = hiddenBehind(eye, target, underside, top);
    if (near === null) expect(hidden).toBeNull();
    else {
      expect(hidden!.near).toBeCloseTo(near, 9);
      expect(hidden!.far).toBeCloseTo(far, 9);
    }
  });
});

describe('refusals', () => {
  const bad = (scene: CoverageScene, station: Partial<Station>, code: string, words: string): void => {
    let thrown: unknown;
    try {
      visibleRegion(scene, { ...lookAll, ...station });
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(EngineError);
    expect((thrown as EngineError).code).toBe(code);
    expect((thrown as EngineError).message).toContain(words);
  };

  test('figures that are none', () => {
    bad(room(9, 6), { fieldOfViewDeg: 0 }, 'out-of-range', 'station s: field of view');
    bad(room(9, 6), { fieldOfViewDeg: 361 }, 'out-of-range', 'field of view');
    bad(room(9, 6), { rangeM: Number.NaN }, 'not-finite', 'range');
    bad(room(9, 6), { at: { xM: Number.NaN, yM: 1 } }, 'not-finite', 'station s');
    bad({ outline: box(0, 0, 5, 0) }, {}, 'bad-geometry', 'outline');
    const ducts = [
      {
        id: 'd',
        path: [
          { xM: 1, yM: 1 },
          { xM: 2, yM: 1 },
        ],
        widthM: -1,
      },
    ];
    bad({ ...room(9, 6), ducts }, {}, 'out-of-range', 'width of duct d');
  });
});
