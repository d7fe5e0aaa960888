import { describe, expect, test } from 'vitest';
import type { Point } from '../../src/geometry/point.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { pierFootprint } from '../../src/plan/floor-areas.ts';
import { planGeometry, type SpaceInput } from '../../src/plan/space.ts';

const box = (x0: number, y0: number, x1: number, y1: number): Point[] => [
  { xM: x0, yM: y0 },
  { xM: x1, yM: y0 },
  { xM: x1, yM: y1 },
  { xM: x0, yM: y1 },
];

/** An ell of 12 by 6 m with 5 by 3 m on its west end: 87 m², 42 m round. */
const ELL: SpaceInput['outline'] = {
  kind: 'corners',
  corners: (
    [
      ['south', 0, 0],
      ['east', 12, 0],
      ['north', 12, 6],
      ['inner', 5, 6],
      ['top', 5, 9],
      ['west', 0, 9],
    ] as const
  ).map(([id, xM, yM]) => ({ id, at: { xM, yM } })),
};

const codesAndPaths = (input: SpaceInput) =>
  planGeometry(input).issues.map((issue) => [issue.code, issue.path]);

describe('a space', () => {
  test('plain outline: areas, no volume without a height', () => {
    const { geometry, issues, notices } = planGeometry({ outline: ELL });
    expect(geometry).toMatchObject({
      grossM2: 87,
      floorM2: 87,
      holesM2: 0,
      piersM2: 0,
      elsewhereM2: 87,
      zones: [],
      perimeterM: 42,
      exposedPerimeterM: 42,
      clearHeight: null,
      volumeM3: null,
      wallAreaM2: null,
      pierCount: 0,
      vents: { count: 0, netFreeAreaM2: 0, unknownCount: 0 },
    });
    expect(issues).toEqual([]);
    expect(notices.map((notice) => notice.code)).toEqual(['wall-height-unknown', 'no-clear-height']);
    expect(geometry!.centroid.xM).toBeCloseTo((72 * 6 + 15 * 2.5) / 87, 12);
  });

  test('one clear height is taken for the whole floor, and said', () => {
    const { geometry, notices } = planGeometry({
      outline: ELL,
      heights: [{ at: { xM: 2, yM: 2 }, clearHeightM: 0.8 }],
    });
    expect(geometry!.volumeM3).toBeCloseTo(87 * 0.8, 10);
    expect(geometry!.wallAreaM2).toBeCloseTo(42 * 0.8, 10);
    expect(notices.map((notice) => notice.code)).toEqual(['one-clear-height', 'wall-height-assumed']);
  });

  test('holes and piers come off the floor, overlaps once, parts outside not at all', () => {
    const { geometry } = planGeometry({
      outline: ELL,
      holes: [{ outline: box(8, 0, 11, 4) }, { outline: box(10, 3, 14, 5) }],
      piers: [
        { at: { xM: 3, yM: 3 }, widthM: 0.4, depthM: 0.5 },
        { at: { xM: 10, yM: 2 }, widthM: 0.4, depthM: 0.4 },
      ],
      heights: [{ at: { xM: 2, yM: 2 }, clearHeightM: 0.9 }],
    });
    // Holes 12 and, within the walls, 4 m², of which 1 m² is in both; one pier stands in a hole.
    expect(geometry!.holesM2).toBeCloseTo(15, 12);
    expect(geometry!.piersM2).toBeCloseTo(0.2, 12);
    expect(geometry!.floorM2).toBeCloseTo(87 - 15 - 0.2, 12);
    expect(geometry!.grossM2).toBeCloseTo(87, 12);
    expect(geometry!.pierCount).toBe(2);
    expect(geometry!.volumeM3).toBeCloseTo((87 - 15 - 0.2) * 0.9, 10);
  });

  test('zones: clipped to the floor, the later one wins, the rest is elsewhere', () => {
    const { geometry } = planGeometry({
      outline: ELL,
      holes: [{ outline: box(0, 0, 1, 1) }],
      zones: [
        { id: 'wet', outline: box(-3, -3, 4, 5) },
        { id: 'lined', outline: box(2, 2, 7, 8) },
      ],
    });
    // Lined: 5 by 6 less the 2 by 2 beyond the notch. Wet: 4 by 5 less the hole and the 2 by 3 now lined.
    expect(geometry!.zones).toEqual([
      { id: 'wet', index: 0, areaM2: expect.closeTo(20 - 1 - 6, 10), drawnAreaM2: 56 },
      { id: 'lined', index: 1, areaM2: expect.closeTo(30 - 4, 10), drawnAreaM2: 30 },
    ]);
    expect(geometry!.elsewhereM2).toBeCloseTo(86 - 13 - 26, 10);
  });

  test('walls: own heights, exposed ones, unknown and repeated ids', () => {
    const { geometry, issues, notices } = planGeometry({
      outline: ELL,
      heights: [{ at: { xM: 2, yM: 2 }, clearHeightM: 0.8 }],
      walls: [
        { wallId: 'south', heightM: 1.1 },
        { wallId: 'inner', outdoors: false },
        { wallId: 'attic', heightM: 2 },
        { wallId: 'south', heightM: 3 },
      ],
    });
    expect(geometry!.exposedPerimeterM).toBe(39);
    expect(geometry!.wallAreaM2).toBeCloseTo(12 * 1.1 + 30 * 0.8, 10);
    expect(geometry!.exposedWallAreaM2).toBeCloseTo(12 * 1.1 + 27 * 0.8, 10);
    expect(issues.map((issue) => [issue.code, issue.path, issue.found])).toEqual([
      ['unknown-wall', 'walls[2].wallId', 'attic'],
      ['wall-described-twice', 'walls[3].wallId', 'south'],
    ]);
    expect(notices.find((notice) => notice.code === 'wall-height-assumed')!.message).toBe(
      '5 of 6 walls have no height of their own; the mean clear height, 0.80 m, is used.',
    );
  });

  test('vents: known areas add up, unknown ones are counted', () => {
    const { geometry, notices } = planGeometry({
      outline: ELL,
      vents: [{ netFreeAreaM2: 0.02 }, {}, { netFreeAreaM2: 0.035 }],
    });
    expect(geometry!.vents).toEqual({ count: 3, netFreeAreaM2: expect.closeTo(0.055, 12), unknownCount: 1 });
    expect(notices.map((notice) => notice.code)).toContain('vent-area-unknown');
  });

  test('what is misplaced or has no size is an issue with its path', () => {
    expect(
      codesAndPaths({
        outline: ELL,
        holes: [{ outline: box(20, 0, 22, 2) }],
        piers: [
          { at: { xM: 3, yM: 3 }, widthM: 0, depthM: 0.4 },
          { at: { xM: 9, yM: 8 }, widthM: 0.3, depthM: 0.4 },
        ],
        zones: [
          { outline: [...box(1, 1, 4, 5).slice(0, 2), { xM: 1, yM: 5 }, { xM: 5, yM: 4 }] },
          { outline: box(12, 0, 15, 5) },
        ],
        heights: [
          { at: { xM: 12.4, yM: 3 }, clearHeightM: 0.7 },
          { at: { xM: 12.6, yM: 3 }, clearHeightM: 0.7 },
          { at: { xM: 2, yM: 3 }, clearHeightM: 0 },
        ],
      }),
    ).toEqual([
      ['outside-outline', 'holes[0].outline'],
      ['bad-size', 'piers[0]'],
      ['outside-outline', 'piers[1].at'],
      ['crosses-itself', 'zones[0].outline'],
      ['outside-outline', 'zones[1].outline'],
      ['outside-outline', 'heights[1].at'],
      ['bad-size', 'heights[2].clearHeightM'],
    ]);
  });

  test('an outline that cannot carry figures gives none, with the reason', () => {
    const result = planGeometry({
      outline: { kind: 'corners', corners: [{ at: { xM: 0, yM: 0 } }, { at: { xM: 4, yM: 1 } }] },
    });
    expect(result.geometry).toBeNull();
    expect(result.issues.map((issue) => issue.code)).toEqual(['too-few-corners']);
  });

  test('numbers that are none are refused', () => {
    const heights = [{ at: { xM: 2, yM: 2 }, clearHeightM: Number.NaN }];
    expect(() => planGeometry({ outline: ELL, heights })).toThrow(EngineError);
    const piers = [{ at: { xM: Number.NaN, yM: 2 }, widthM: 0.4, depthM: 0.3 }];
    expect(() => planGeometry({ outline: ELL, piers })).toThrow(EngineError);
    expect(() => planGeometry({ outline: ELL, vents: [{ netFreeAreaM2: -1 }] })).toThrow(EngineError);
  });
});

test('a pier is turned clockwise about its middle', () => {
  const [first, second] = pierFootprint({ at: { xM: 5, yM: 3 }, widthM: 2, depthM: 1, turnDeg: 90 });
  // Its lower left corner goes to the upper left, its lower right one to the lower left.
  expect(first).toEqual({ xM: 4.5, yM: 4 });
  expect(second).toEqual({ xM: 4.5, yM: 2 });
});
