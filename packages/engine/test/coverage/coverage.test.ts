import { describe, expect, test } from 'vitest';
import { coverage } from '../../src/coverage/coverage.ts';
import type { CoverageScene } from '../../src/coverage/scene.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { allRound, box, room } from './rooms.ts';

const pier = (id: string, xM: number, yM: number) => ({ id, at: { xM, yM }, widthM: 0.4, depthM: 0.4 });

describe('floor', () => {
  test('a debris corner behind a wall that nobody looked round is brought up', () => {
    // Wall from (4, 0) to (4, 2.5) in a room of 6 by 4; the corner behind it holds debris, a pier and a vent.
    const scene: CoverageScene = {
      ...room(6, 4),
      interiorWalls: [{ id: 'iw', from: { xM: 4, yM: 0 }, to: { xM: 4, yM: 2.5 } }],
      piers: [pier('near', 1.5, 3.4), pier('behind', 5.5, 0.7)],
      vents: [
        { id: 'v-west', edge: 3, offsetM: 1, widthM: 0.4 },
        { id: 'v-behind', edge: 1, offsetM: 0.2, widthM: 0.4 },
      ],
      things: [
        { id: 'boards', kind: 'debris', at: { xM: 4.4, yM: 0.3 } },
        { id: 'pump', kind: 'equipment', at: { xM: 0.4, yM: 0.4 } },
        { id: 'wet', kind: 'zone', outline: box(4.5, 0.2, 5, 1) },
      ],
    };
    const seen = coverage(scene, [allRound('s1', 1, 2.5)]);
    const [region, ...others] = seen.unseenRegions;
    // From (1, 2.5) all of x > 4, y < 2.5 is hidden: 2 by 2.5 m less the pier.
    expect(region!.areaM2).toBeCloseTo(5 - 0.16, 1);
    expect(region!.within.xM).toBeGreaterThan(4);
    expect(region!.within.yM).toBeLessThan(2.5);
    const names = region!.standsIn.map(({ kind, id }) => `${kind} ${id}`);
    expect(names).toEqual([
      'pier behind',
      'debris boards',
      'zone wet',
      'vent v-behind',
      'interior-wall iw',
      'wall 0',
      'wall 1',
    ]);
    for (const other of others) expect(other.standsIn.map((s) => s.id)).not.toContain('boards');
    // Somebody looks round the wall: nothing of it is left.
    const after = coverage(scene, [allRound('s1', 1, 2.5), allRound('s2', 4.3, 2.4)]);
    expect(after.unseenRegions.flatMap((r) => r.standsIn.map((s) => s.id))).not.toContain('boards');
    expect(after.floorShare).toBeGreaterThan(0.98);
  });

  test('each station is credited with what it adds', () => {
    // Two half disks of radius 1 along a wall, 1 m apart, looking away from it: lens 2(π/3 − √3/4), half of it each.
    const half = { bearingDeg: 0, fieldOfViewDeg: 180, rangeM: 1 };
    const stations = [3, 4].map((xM) => ({ id: `s${xM}`, at: { xM, yM: 0 }, ...half }));
    const seen = coverage(room(8, 3), stations, { cellM: 0.02 });
    const disk = Math.PI / 2;
    const lens = Math.PI / 3 - Math.sqrt(3) / 4;
    expect(seen.floorM2).toBeCloseTo(24, 9);
    expect(seen.floorSeenM2).toBeCloseTo(2 * disk - lens, 2);
    expect(Math.abs(seen.floorSeenM2 - (2 * disk - lens))).toBeLessThan(seen.floorErrorM2);
    const [a, b] = seen.perStation;
    expect(a!.floorM2).toBeCloseTo(disk, 2);
    expect(a!.newM2).toBe(a!.floorM2);
    expect(b!.newM2).toBeCloseTo(disk - lens, 2);
    expect(a!.onlyM2).toBeCloseTo(disk - lens, 2);
    expect(seen.floorShare).toBeCloseTo(seen.floorSeenM2 / 24, 12);
  });

  test('floor under stored things is not floor that was seen', () => {
    const scene = {
      ...room(5, 4),
      obstacles: [
        { id: 'stack', outline: box(2, 1, 3, 2.5) },
        { id: 'boards', outline: box(4, 3, 4.5, 3.4), heightM: 0.05 },
      ],
    };
    const seen = coverage(scene, [
      allRound('s1', 1, 3.5),
      allRound('s2', 4.5, 0.5),
      allRound('s3', 0.5, 0.5),
    ]);
    expect(seen.coveredM2).toBeCloseTo(1.5 + 0.2, 9);
    expect(seen.floorM2).toBeCloseTo(20 - 1.7, 9);
    expect(seen.floorShare).toBeGreaterThan(0.97);
  });

  test('an unseen ring has an outer and an inner border', () => {
    // Only a disk in the middle is seen.
    const seen = coverage(room(4, 4), [{ ...allRound('s', 2, 2), rangeM: 1 }]);
    expect(seen.unseenRegions).toHaveLength(1);
    const { rings, areaM2, centroid, within } = seen.unseenRegions[0]!;
    expect(rings).toHaveLength(2);
    expect(areaM2).toBeCloseTo(16 - Math.PI, 1);
    expect(centroid.xM).toBeCloseTo(2, 6);
    expect(Math.hypot(within.xM - 2, within.yM - 2)).toBeGreaterThan(0.9);
    const areaOf = (ring: readonly { xM: number; yM: number }[]): number =>
      ring.reduce((sum, p, i) => {
        const q = ring[(i + 1) % ring.length]!;
        return sum + (p.xM * q.yM - q.xM * p.yM) / 2;
      }, 0);
    expect(areaOf(rings[0]!)).toBeCloseTo(16, 9);
    expect(areaOf(rings[0]!) + areaOf(rings[1]!)).toBeCloseTo(areaM2, 9);
    expect(rings[0]).toHaveLength(4);
  });

  test('regions too small to list are added up', () => {
    const scene = { ...room(6, 4), piers: [pier('p', 5.8, 0.4)] };
    const strict = coverage(scene, [allRound('s', 1, 3)], { leastUnseenM2: 0 });
    const usual = coverage(scene, [allRound('s', 1, 3)], { leastUnseenM2: 5 });
    expect(strict.scatteredM2).toBe(0);
    expect(usual.unseenRegions).toHaveLength(0);
    expect(usual.scatteredM2).toBeCloseTo(
      strict.unseenRegions.reduce((sum, r) => sum + r.areaM2, 0),
      9,
    );
  });

  test('nobody looked: all is unseen', () => {
    const seen = coverage(room(5, 3), []);
    expect(seen).toMatchObject({ floorSeenM2: 0, floorShare: 0, floorErrorM2: 0 });
    expect(seen.unseenRegions).toHaveLength(1);
    expect(seen.unseenRegions[0]!.areaM2).toBeCloseTo(15, 9);
    expect(seen.walls.map((w) => w.seenShare)).toEqual([0, 0, 0, 0]);
    expect(seen.walls[1]!.unseen).toEqual([{ fromM: 0, toM: 3 }]);
  });
});

describe('walls, piers, vents', () => {
  test('a wall seen flatter than 75° from its normal does not count', () => {
    // From (1, 0.5) above the south wall y = 0 of a room 6 m long: seen to x = 1 + 0.5 tan 75° = 2.866.
    const { walls } = coverage(room(6, 4), [allRound('s', 1, 0.5)]);
    const limit = 1 + 0.5 * Math.tan((75 * Math.PI) / 180);
    expect(walls[0]!.seenM).toBeCloseTo(limit, 9);
    expect(walls[0]!.unseen[0]!.fromM).toBeCloseTo(limit, 9);
    expect(walls[0]!.unseen[0]!.toM).toBeCloseTo(6, 9);
    const wider = coverage(room(6, 4), [allRound('s', 1, 0.5)], { maxIncidenceDeg: 60 });
    expect(wider.walls[0]!.seenM).toBeCloseTo(2 * 0.5 * Math.tan(Math.PI / 3), 9);
  });

  test('stretches of walls by hand, whichever way the outline runs', () => {
    // From (1, 2) a pier from x 2.8 to 3.2, y 1.8 to 2.2 hides, on the east wall x = 6, y = 2 ± 0.2 · 5 / 1.8.
    const scene = { ...room(6, 4), piers: [pier('p', 3, 2)] };
    const half = (0.2 * 5) / 1.8;
    const east = coverage(scene, [allRound('s', 1, 2)]).walls[1]!;
    expect(east.openM).toBeCloseTo(4, 9);
    expect(east.unseen).toHaveLength(1);
    expect(east.unseen[0]!.fromM).toBeCloseTo(2 - half, 9);
    expect(east.unseen[0]!.toM).toBeCloseTo(2 + half, 9);
    expect(east.stations).toEqual(['s']);
    // Clockwise outline: its edge from (6, 4) to (6, 0).
    const turned = coverage({ ...scene, outline: [...scene.outline].reverse() }, [
      allRound('s', 1, 2.1),
    ]).walls;
    const edge = turned.find(
      (w) => scene.outline[3 - w.edge]!.xM === 6 && scene.outline[2 - w.edge]?.xM === 6,
    )!;
    expect(edge.unseen[0]!.fromM).toBeCloseTo(4 - (2.1 + ((2.2 - 2.1) * 5) / 1.8), 9);
  });

  test('the faces of a pier, and a face flush with a wall', () => {
    const scene = { ...room(6, 4), piers: [pier('free', 3, 2), pier('flush', 5.8, 1)] };
    const faces = coverage(scene, [allRound('west', 1, 2), allRound('south', 3.5, 0.6)]).pierFaces;
    const share = (id: string, face: number) => faces.find((f) => f.pierId === id && f.face === face)!;
    expect(share('free', 3)).toMatchObject({ seenShare: 1, stations: ['west'] });
    expect(share('free', 0)).toMatchObject({ seenShare: 1, stations: ['south'] });
    expect(share('free', 2)).toMatchObject({ seenShare: 0, stations: [], face: 2 });
    expect(share('free', 2).openM).toBeCloseTo(0.4, 9);
    expect(share('flush', 1)).toMatchObject({ seenShare: null, openM: 0, unseen: [] });
  });

  test('a pier face is hidden by a pile in front of it, a vent above the pile is not', () => {
    const scene: CoverageScene = {
      ...room(6, 4),
      obstacles: [{ id: 'pile', outline: box(4, 0, 4.5, 4), heightM: 0.2 }],
      vents: [{ id: 'v', edge: 1, offsetM: 1.5, widthM: 0.4, middleM: 0.6 }],
    };
    // Floor is hidden from the pile to 4.5 · 0.3 / 0.1 = 13.5 m: the foot of the wall at 6 is, the vent is not.
    const seen = coverage(scene, [allRound('s', 0, 2)]);
    expect(seen.walls[1]!.seenShare).toBe(0);
    expect(seen.vents[0]).toMatchObject({ id: 'v', seenShare: 1 });
    // A pile higher than the lamp hides the vent too, until the line rises over it.
    const high = { ...scene, obstacles: [{ id: 'pile', outline: box(4, 0, 4.5, 4), heightM: 0.55 }] };
    expect(coverage(high, [allRound('s', 0, 2)]).vents[0]!.seenShare).toBe(0);
  });

  test('both sides of an interior wall', () => {
    const scene = {
      ...room(6, 4),
      interiorWalls: [{ id: 'iw', from: { xM: 3, yM: 1 }, to: { xM: 3, yM: 3 }, thicknessM: 0.2 }],
    };
    const { interiorWalls } = coverage(scene, [allRound('east', 5, 2)]);
    // Walking from south to north, east is on the right.
    expect(interiorWalls).toMatchObject([
      { id: 'iw', side: 'right', seenShare: 1 },
      { id: 'iw', side: 'left', seenShare: 0 },
    ]);
  });

  test('options and scenes that make no sense are refused', () => {
    const refuse = (code: string, words: string, run: () => unknown): void => {
      let thrown: unknown;
      try {
        run();
      } catch (error) {
        thrown = error;
      }
      expect(thrown).toBeInstanceOf(EngineError);
      expect((thrown as EngineError).code).toBe(code);
      expect((thrown as EngineError).message).toContain(words);
    };
    refuse('out-of-range', 'side of a cell', () => coverage(room(6, 4), [], { cellM: 0.01 }));
    refuse('out-of-range', 'too many', () => coverage(room(6000, 4000), []));
    refuse('out-of-range', 'normal', () => coverage(room(6, 4), [], { maxIncidenceDeg: 91 }));
    const vents = [{ id: 'v', edge: 4, offsetM: 0, widthM: 1 }];
    refuse('out-of-range', 'vent v', () => coverage({ ...room(6, 4), vents }, []));
  });
});
