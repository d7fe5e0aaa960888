import { describe, expect, test } from 'vitest';
import { crawlPlanOf, crawlPlanWith, JobError } from '../../src/index.ts';
import { demoJob } from '../season/jobs.ts';
import { allRound, roomJob, shownBy } from './jobs.ts';

const job = demoJob('doubted-liner');
const assessment = shownBy(job);

describe('a crawl for what the pictures of the doubted liner left out', () => {
  const plan = crawlPlanOf(job, assessment);

  test('goes from the door and back, to the far corner too', () => {
    expect(plan.what).toBe('rest');
    expect(plan.door.id).toBe('door');
    // The left wall runs down from its corner at 28 ft; the door begins 22 ft on and is 32 in wide.
    expect(plan.door.at.xM).toBeCloseTo(0, 9);
    expect(plan.door.at.yM).toBeCloseTo((28 - 22) * 0.3048 - (32 * 0.0254) / 2, 9);
    expect(plan.stops.length).toBeGreaterThan(1);
    expect(plan.stops.some((s) => s.at.xM > 13 && s.at.yM > 5.4)).toBe(true);
    expect(plan.floorShare).toBeGreaterThan(0.995);
    expect(plan.stationsProven).toBe(true);
    expect(plan.stationsLowerBound).toBe(plan.stops.length);
  });

  test('says at each stop where to stand and where to point', () => {
    for (const [i, stop] of plan.stops.entries()) {
      expect(stop.number).toBe(i + 1);
      expect(stop.shots.length).toBeGreaterThan(0);
      expect(stop.shots.map((s) => s.id)).toEqual(stop.shots.map((_, k) => `${i + 1}${'abcdefgh'[k]}`));
      for (const { bearingDeg, compassDeg } of stop.shots) {
        expect(Number.isInteger(bearingDeg)).toBe(true);
        expect(compassDeg).toBe((bearingDeg + 352) % 360);
      }
      const [first, second] = stop.fromWalls;
      const distance = {
        front: stop.at.yM,
        back: 28 * 0.3048 - stop.at.yM,
        left: stop.at.xM,
        right: 52 * 0.3048 - stop.at.xM,
      };
      for (const { wallId, distanceM } of stop.fromWalls)
        expect(distanceM).toBeCloseTo(distance[wallId as keyof typeof distance], 9);
      const level = ['front', 'back'];
      expect(level.includes(first.wallId)).not.toBe(level.includes(second.wallId));
    }
    const way = plan.stops.reduce((sum, s) => sum + s.legM, 0);
    expect(way).toBeLessThan(plan.lengthM);
  });

  test('is shorter than one for everything', () => {
    const all = crawlPlanOf(job, assessment, { what: 'all' });
    expect(all.stops.length).toBeGreaterThan(plan.stops.length);
    expect(all.lengthM).toBeGreaterThan(plan.lengthM);
    const wide = crawlPlanOf(job, assessment, { what: 'all', fieldOfViewDeg: 100 });
    const shots = (p: typeof plan) => p.stops.flatMap((s) => s.shots).length;
    expect(shots(wide)).toBeLessThan(shots(all));
    expect(wide.view).toEqual({ fieldOfViewDeg: 100, rangeM: 4 });
  });
});

describe('a crawl through one room', () => {
  const settle = (more: Parameters<typeof roomJob>[0], plan: Parameters<typeof roomJob>[1] = {}) => {
    const room = roomJob(more, plan);
    return { room, sized: shownBy(room) };
  };

  test('is not needed where pictures show everything', () => {
    const corners = [0.3, 5.7].flatMap((x) => [0.3, 3.7].map((y) => allRound(`c${10 * x}-${10 * y}`, x, y)));
    const sides = [
      allRound('a', 1.4, 2),
      allRound('b', 3, 0.7),
      allRound('c', 3, 3.3),
      allRound('d', 4.6, 2),
    ];
    const { room, sized } = settle({ media: { photos: [...corners, ...sides] } });
    expect(crawlPlanOf(room, sized)).toMatchObject({ stops: [], lengthM: 0 });
    expect(crawlPlanOf(room, sized, { what: 'all' }).stops.length).toBeGreaterThan(0);
  });

  test('keeps out of where nobody is to go', () => {
    const outline = [
      { xM: 3.5, yM: 0 },
      { xM: 4.2, yM: 0 },
      { xM: 4.2, yM: 4 },
      { xM: 3.5, yM: 4 },
    ];
    const { room, sized } = settle({}, { obstacles: [{ id: 'spill', what: 'Spill', outline, noGo: true }] });
    const plan = crawlPlanOf(room, sized);
    // The door is in the right wall, and the spill cuts the room in two.
    expect(plan.stops.every((s) => s.at.xM > 4.2)).toBe(true);
    expect(plan.outOfSight.length).toBeGreaterThan(0);
  });

  test('needs a door with a place', () => {
    const { room, sized } = settle({}, { doors: [] });
    expect(() => crawlPlanOf(room, sized)).toThrow(JobError);
    const nowhere = settle({}, { doors: [{ id: 'd', widthM: 0.6, heightM: 0.5 }] });
    expect(() => crawlPlanOf(nowhere.room, nowhere.sized)).toThrow(/no door with a place/);
    const hatch = settle(
      {},
      { doors: [{ id: 'h', kind: 'floor-hatch', at: { xM: 2, yM: 1 }, widthM: 0.6, heightM: 0.5 }] },
    );
    expect(crawlPlanOf(hatch.room, hatch.sized).door).toEqual({ id: 'h', at: { xM: 2, yM: 1 } });
  });

  test('is the same with a solver that is never needed', async () => {
    const { room, sized } = settle({});
    const never = async () => {
      throw new Error('asked');
    };
    expect(await crawlPlanWith(room, sized, never)).toEqual(crawlPlanOf(room, sized));
  });
});
