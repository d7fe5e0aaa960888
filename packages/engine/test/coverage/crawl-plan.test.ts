import { describe, expect, test } from 'vitest';
import { candidateStations } from '../../src/coverage/candidate-stations.ts';
import { planCrawl, planCrawlWith } from '../../src/coverage/crawl-plan.ts';
import { proofOf } from '../../src/coverage/proof.ts';
import type { CoverageScene } from '../../src/coverage/scene.ts';
import { distanceToPolygonM } from '../../src/geometry/distance.ts';
import { bigCrawlSpace } from './big-crawl-space.ts';
import { box, room } from './rooms.ts';

const door = { xM: 0, yM: 2 };
/** 8 by 4 m, a wall across the middle with an opening, four piers, a vent. */
const twoRooms: CoverageScene = {
  ...room(8, 4),
  interiorWalls: [
    {
      id: 'iw',
      from: { xM: 4, yM: 0 },
      to: { xM: 4, yM: 4 },
      thicknessM: 0.2,
      openings: [{ offsetM: 1.6, widthM: 0.8, heightM: 0.6 }],
    },
  ],
  piers: [1.5, 2.9, 5.3, 6.6].map((xM, i) => ({
    id: `p${i}`,
    at: { xM, yM: 1.3 + 0.2 * i },
    widthM: 0.4,
    depthM: 0.4,
  })),
  vents: [{ id: 'v', edge: 2, offsetM: 1, widthM: 0.4, middleM: 0.5 }],
};

describe('places to choose from', () => {
  test('one for each square that can be reached, off the walls by half a body', () => {
    const all = candidateStations(room(8, 4), door);
    expect(all).toHaveLength(32);
    expect(all.map((c) => c.id).slice(0, 2)).toEqual(['c1', 'c2']);
    for (const { at } of all)
      expect(distanceToPolygonM(at, room(8, 4).outline)).toBeLessThanOrEqual(-0.25 + 1e-9);
    const wall = { id: 'w', from: { xM: 4, yM: 0 }, to: { xM: 4, yM: 4 } };
    const half = candidateStations({ ...room(8, 4), interiorWalls: [wall] }, door);
    expect(half).toHaveLength(16);
    expect(Math.max(...half.map((c) => c.at.xM))).toBeLessThan(4);
    expect(candidateStations(room(8, 4), door, { noGo: [box(0, 0, 3, 4)] })).toEqual([]);
  });
});

describe('a planned crawl', () => {
  test('an empty room needs one station', () => {
    const plan = planCrawl(room(5, 4), door, { rangeM: 8 });
    expect(plan.stops).toHaveLength(1);
    expect(plan).toMatchObject({
      stationsLowerBound: 1,
      stationsProven: true,
      lengthProven: true,
      outOfSight: [],
    });
    expect(plan.expected.floorShare).toBeGreaterThan(0.995);
    for (const wall of plan.expected.walls) expect(wall.seenShare).toBeGreaterThan(0.95);
  });

  test('shows floor, walls, every face of every pier and the vent of two rooms', () => {
    const plan = planCrawl(twoRooms, door);
    expect(plan.expected.floorShare).toBeGreaterThan(0.99);
    for (const face of plan.expected.pierFaces) expect(face.seenShare).toBeGreaterThanOrEqual(0.9);
    for (const side of plan.expected.interiorWalls) expect(side.seenShare).toBeGreaterThan(0.9);
    expect(plan.expected.vents[0]!.seenShare).toBe(1);
    expect(plan.outOfSight).toEqual([]);
    const [wrapped] = proofOf(twoRooms, plan.shots, [{ id: 'wrapped', about: { kind: 'piers' } }]);
    expect(wrapped!.verdict).toBe('shown');
    // Both rooms are entered, stops are numbered, each shot belongs to its stop.
    expect(plan.stops.some((s) => s.at.xM < 4) && plan.stops.some((s) => s.at.xM > 4)).toBe(true);
    expect(plan.stops.map((s) => s.number)).toEqual(plan.stops.map((_, i) => i + 1));
    const shots = plan.stops.flatMap((s) =>
      s.bearingsDeg.map((bearingDeg, i) => ({ id: `${s.number}${'abcdefgh'[i]}`, at: s.at, bearingDeg })),
    );
    expect(plan.shots).toMatchObject(shots);
    expect(plan.shots.every((s) => s.fieldOfViewDeg === 65 && s.rangeM === 4 && s.heightM === 0.3)).toBe(
      true,
    );
  });

  test('fewer things to look at never need more stations', () => {
    const floor = planCrawl(twoRooms, door, { look: ['floor'] });
    const all = planCrawl(twoRooms, door);
    expect(floor.stationsProven && all.stationsProven).toBe(true);
    expect(floor.stops.length).toBeLessThanOrEqual(all.stops.length);
    const longer = planCrawl(twoRooms, door, { rangeM: 9 });
    expect(longer.stops.length).toBeLessThanOrEqual(all.stops.length);
  });

  test('leaves out what pictures show that are there already', () => {
    const whole = planCrawl(twoRooms, door);
    const near = whole.shots.filter((s) => s.at.xM < 4);
    const rest = planCrawl(twoRooms, door, { takenFrom: near });
    expect(rest.stops.length).toBeLessThan(whole.stops.length);
    expect(rest.shots.length).toBeLessThanOrEqual(whole.shots.length - near.length + 2);
    expect(rest.expected.floorShare).toBeGreaterThan(0.99);
    for (const face of rest.expected.pierFaces) expect(face.seenShare).toBeGreaterThanOrEqual(0.9);
    // What was never seen stays out of sight, what all pictures show needs no crawl.
    expect(rest.outOfSight).toEqual([]);
    const done = planCrawl(twoRooms, door, { takenFrom: whole.shots });
    expect(done).toMatchObject({ stops: [], shots: [], lengthM: 0, stationsProven: true });
    expect(done.expected.floorShare).toBeCloseTo(whole.expected.floorShare, 9);
  });

  test('what lies where nobody can go or look is named', () => {
    // The far room is cut off by a wall without an opening.
    const wall = { id: 'iw', from: { xM: 4, yM: 0 }, to: { xM: 4, yM: 4 }, thicknessM: 0.2 };
    const plan = planCrawl({ ...twoRooms, interiorWalls: [wall] }, door);
    const names = plan.outOfSight.map((s) => `${s.kind} ${s.id ?? ''} ${s.face ?? s.side ?? ''}`.trim());
    expect(names).toContain('floor');
    expect(names).toContain('wall 1');
    expect(names).toContain('interior-wall iw right');
    expect(names).toContain('pier p3 0');
    expect(names).not.toContain('pier p1 0');
    expect(plan.outOfSight.find((s) => s.kind === 'floor')!.at.xM).toBeGreaterThan(4);
    expect(plan.expected.floorShare).toBeLessThan(0.55);
    expect(plan.stops.every((s) => s.at.xM < 4)).toBe(true);
  });

  test('a shut door gives an empty plan that says so', () => {
    const plan = planCrawl(twoRooms, door, { noGo: [box(0, 0, 2, 4)] });
    expect(plan).toMatchObject({ stops: [], shots: [], lengthM: 0 });
    expect(plan.notices.map((n) => n.code)).toContain('door-not-passable');
    expect(plan.expected.floorShare).toBe(0);
  });

  test('the same input gives the same plan', () => {
    expect(JSON.stringify(planCrawl(twoRooms, door))).toBe(JSON.stringify(planCrawl(twoRooms, door)));
  });

  test('a solver from outside is asked when the own search is cut short', async () => {
    let candidates = 0;
    const plan = await planCrawlWith(
      bigCrawlSpace(),
      { xM: 0, yM: 4 },
      async (problem) => {
        candidates = problem.candidateCount;
        return { chosen: Array.from({ length: candidates }, (_, c) => c), lowerBound: 1 };
      },
      { nodeLimit: 0 },
    );
    expect(candidates).toBeGreaterThan(100);
    expect(plan.stationsProven).toBe(false);
    // The own choice is kept where the solver's is no better, and so is the own bound.
    expect(plan.stops.length).toBeLessThan(candidates / 2);
    expect(plan.stationsLowerBound).toBeGreaterThan(1);
    expect(plan.stationsLowerBound).toBeLessThan(plan.stops.length);
    expect(plan.expected.floorShare).toBeGreaterThan(0.99);
  });
});
