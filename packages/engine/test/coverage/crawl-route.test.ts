import { describe, expect, test } from 'vitest';
import { compileScene } from '../../src/coverage/compiled-scene.ts';
import { type CrawlRoute, crawlRoute } from '../../src/coverage/crawl-route.ts';
import { cellOf } from '../../src/coverage/floor-grid.ts';
import { type Crawler, passableFloor } from '../../src/coverage/passable-floor.ts';
import type { CoverageScene } from '../../src/coverage/scene.ts';
import { isLineOpen, waysFrom, wayTo } from '../../src/coverage/shortest-ways.ts';
import { distanceToPolygonM } from '../../src/geometry/distance.ts';
import { pathLengthM } from '../../src/geometry/path-length.ts';
import type { Point } from '../../src/geometry/point.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';
import { pierFootprint } from '../../src/plan/floor-areas.ts';
import { bigCrawlSpace } from './big-crawl-space.ts';
import { box, room } from './rooms.ts';

const door = { xM: 0, yM: 2 };
const at = (id: string, xM: number, yM: number) => ({ id, at: { xM, yM } });

/** Places every 2 cm along a route. */
function placesOn({ stops, wayBack }: CrawlRoute): Point[] {
  return [...stops.map((s) => s.path), wayBack].flatMap((path) =>
    path.slice(1).flatMap((to, i) => {
      const from = path[i]!;
      const steps = Math.max(1, Math.ceil(Math.hypot(to.xM - from.xM, to.yM - from.yM) / 0.02));
      return Array.from({ length: steps + 1 }, (_, k) => ({
        xM: from.xM + (k / steps) * (to.xM - from.xM),
        yM: from.yM + (k / steps) * (to.yM - from.yM),
      }));
    }),
  );
}

describe('routes by hand', () => {
  test('straight to a station and back', () => {
    const route = crawlRoute(room(8, 4), door, [at('s', 6, 2)]);
    expect(route.stops).toHaveLength(1);
    expect(route.stops[0]).toMatchObject({ number: 1, stationId: 's' });
    // The body starts half its width inside the door, on cells of 0.1 m.
    expect(route.stops[0]!.legM).toBeCloseTo(5.7, 1);
    expect(route.lengthM).toBeCloseTo(2 * route.stops[0]!.legM, 9);
    expect(route).toMatchObject({ proven: true, unreachable: [], notices: [] });
    const oneWay = crawlRoute(room(8, 4), door, [at('s', 6, 2)], { returnToDoor: false });
    expect(oneWay.lengthM).toBeCloseTo(route.stops[0]!.legM, 9);
    expect(oneWay.wayBack).toEqual([]);
  });

  test('stations are numbered in the order of the shortest round', () => {
    const stations = [at('far', 7, 3), at('a', 2, 3.4), at('b', 4.5, 3.4), at('back', 4, 0.6)];
    const names = crawlRoute(room(8, 4), door, stations).stops.map((s) => s.stationId);
    expect([names, [...names].reverse()]).toContainEqual(['a', 'b', 'far', 'back']);
  });

  test('round the end of a wall at half a body width', () => {
    // Wall from (4, 0) to (4, 3) in a room of 8 by 4, body 0.5 m: past (4, 3.25).
    const wall = { id: 'w', from: { xM: 4, yM: 0 }, to: { xM: 4, yM: 3 } };
    const { stops } = crawlRoute({ ...room(8, 4), interiorWalls: [wall] }, door, [at('s', 7, 1)]);
    const bends = stops[0]!.path.slice(1, -1);
    expect(bends.length).toBeGreaterThan(0);
    for (const bend of bends) {
      expect(Math.hypot(bend.xM - 4, bend.yM - 3)).toBeGreaterThanOrEqual(0.25 - 1e-9);
      expect(Math.hypot(bend.xM - 4, bend.yM - 3)).toBeLessThan(0.42);
    }
    const ends = [stops[0]!.path[0]!, stops[0]!.path.at(-1)!];
    const shortest = [...ends.map((p) => Math.hypot(p.xM - 4, p.yM - 3.25))].reduce((a, b) => a + b);
    expect(stops[0]!.legM).toBeGreaterThan(shortest - 0.1);
    expect(stops[0]!.legM).toBeLessThan(shortest + 0.3);
  });

  test.each<[string, CoverageScene, Crawler, boolean]>([
    ['a gap as wide as the body and a bit', gap(0.65), {}, true],
    ['a gap narrower than the body', gap(0.45), {}, false],
    ['the same for a slimmer body', gap(0.45), { bodyWidthM: 0.25 }, true],
    ['a duct too low', hung(0.39), {}, false],
    ['a duct just high enough', hung(0.4), {}, true],
    ['the same duct for who needs more', hung(0.4), { clearanceM: 0.45 }, false],
    ['a duct whose clearance nobody gave', hung(undefined), {}, false],
    ['a pipe on the ground, crawled over', pipe(0.15), {}, true],
    ['a pipe too high to crawl over', pipe(0.16), {}, false],
    ['a no-go strip', room(8, 4), { noGo: [box(3.9, 0, 4.1, 4)] }, false],
    ['a no-go strip with a way past it', room(8, 4), { noGo: [box(3.9, 0, 4.1, 3.2)] }, true],
    ['joists too low across the middle', low(0.39), {}, false],
    ['joists just high enough', low(0.4), {}, true],
  ])('%s', (_, scene, crawler, reachable) => {
    const route = crawlRoute(scene, door, [at('s', 7, 2), at('near', 1, 1)], crawler);
    expect(route.unreachable).toEqual(reachable ? [] : ['s']);
    expect(route.notices.map((n) => n.code)).toEqual(reachable ? [] : ['station-not-reachable']);
    expect(route.stops).toHaveLength(reachable ? 2 : 1);
  });

  test('a door that opens onto a no-go place leads nowhere', () => {
    const route = crawlRoute(room(8, 4), door, [at('s', 6, 2)], { noGo: [box(0, 0, 2, 4)] });
    expect(route).toMatchObject({ stops: [], unreachable: ['s'], lengthM: 0, proven: false });
    expect(route.notices[0]!.code).toBe('door-not-passable');
  });

  test('a door marked a little outside the wall is a slip', () => {
    const route = crawlRoute(room(8, 4), { xM: -0.1, yM: 2 }, [at('s', 6, 2)]);
    expect(route.lengthM).toBeCloseTo(crawlRoute(room(8, 4), door, [at('s', 6, 2)]).lengthM, 1);
    const far = crawlRoute(room(8, 4), { xM: -0.5, yM: 2 }, [at('s', 6, 2)]);
    expect(far.notices[0]!.code).toBe('door-not-passable');
  });

  test('a station is reached at arm length, never through a wall', () => {
    const wall = { id: 'w', from: { xM: 4, yM: 0 }, to: { xM: 4, yM: 4 }, thicknessM: 0.1 };
    const scene = { ...room(8, 4), interiorWalls: [wall] };
    const route = crawlRoute(scene, door, [at('wall', 3.9, 2), at('behind', 4.1, 2)]);
    expect(route.stops.map((s) => s.stationId)).toEqual(['wall']);
    expect(route.stops[0]!.at.xM).toBeLessThan(3.75);
    expect(route.unreachable).toEqual(['behind']);
  });
});

function gap(widthM: number): CoverageScene {
  const openings = [{ offsetM: 2, widthM }];
  return {
    ...room(8, 4),
    interiorWalls: [{ id: 'w', from: { xM: 4, yM: 0 }, to: { xM: 4, yM: 4 }, thicknessM: 0.1, openings }],
  };
}

function hung(clearanceM: number | undefined): CoverageScene {
  const path = [
    { xM: 4, yM: 0 },
    { xM: 4, yM: 4 },
  ];
  const clearance = clearanceM === undefined ? {} : { clearanceM };
  return { ...room(8, 4), ducts: [{ id: 'd', path, widthM: 0.4, heightM: 0.3, ...clearance }] };
}

function pipe(heightM: number): CoverageScene {
  const path = [
    { xM: 4, yM: 0 },
    { xM: 4, yM: 4 },
  ];
  return { ...room(8, 4), ducts: [{ id: 'd', path, widthM: 0.1, heightM, clearanceM: 0 }] };
}

/** Samples one height along the middle, more elsewhere: between them heights are never lower than the lowest. */
function low(clearHeightM: number): CoverageScene {
  const middle = [0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4].map((yM) => ({ at: { xM: 4, yM }, clearHeightM }));
  const sides = [1, 7].map((xM) => ({ at: { xM, yM: 2 }, clearHeightM: 0.9 }));
  return { ...room(8, 4), clearHeights: [...middle, ...sides] };
}

describe('routes in general', () => {
  test('pass only where the body fits, over the whole way', () => {
    const scene = bigCrawlSpace();
    const random = seededRandom(4);
    const stations = Array.from({ length: 18 }, (_, i) =>
      at(`s${i}`, 0.5 + 15 * random(), 0.5 + 14 * random()),
    );
    const route = crawlRoute(scene, { xM: 0, yM: 4 }, stations);
    expect(route.stops.length).toBeGreaterThan(14);
    const compiled = compileScene(scene);
    const floor = passableFloor(compiled, {});
    let shut = 0;
    let nearest = Number.POSITIVE_INFINITY;
    const rings = scene.piers!.map(pierFootprint);
    for (const place of placesOn(route)) {
      const { column, row } = cellOf(floor.grid, place);
      if (floor.open[row * floor.grid.columns + column] !== 1) shut += 1;
      nearest = Math.min(nearest, -distanceToPolygonM(place, scene.outline));
      for (const ring of rings) {
        if (Math.abs(ring[0]!.xM - place.xM) > 1.5 || Math.abs(ring[0]!.yM - place.yM) > 1.5) continue;
        nearest = Math.min(nearest, distanceToPolygonM(place, ring));
      }
    }
    expect(shut).toBe(0);
    // Cell middles keep half a body's width; places between them are at most half a cell's diagonal off.
    expect(nearest).toBeGreaterThan(0.25 - 0.0708);
    expect(nearest).toBeLessThan(0.4);
    const legs = route.stops.reduce((sum, s) => sum + s.legM, pathLengthM(route.wayBack));
    expect(legs).toBeCloseTo(route.lengthM, 9);
    route.stops.forEach((stop, i) => {
      expect(stop.number).toBe(i + 1);
      expect(pathLengthM(stop.path)).toBeCloseTo(stop.legM, 9);
      expect(stop.path.at(-1)).toEqual(stop.at);
      if (i > 0) expect(stop.path[0]).toEqual(route.stops[i - 1]!.at);
    });
    expect(route.lowerBoundM).toBeLessThanOrEqual(route.lengthM);
    expect(route.lowerBoundM).toBeGreaterThan(0.9 * route.lengthM);
    expect(crawlRoute(scene, { xM: 0, yM: 4 }, stations)).toEqual(route);
  });

  test('a straight line is open exactly when every cell that it enters is', () => {
    const floor = passableFloor(compileScene(bigCrawlSpace()), {});
    const { columns } = floor.grid;
    const random = seededRandom(8);
    let open = 0;
    for (let i = 0; i < 3000; i += 1) {
      const pick = (): number => Math.floor(random() * floor.open.length);
      const [start, end] = [pick(), pick()];
      const [c0, r0, c1, r1] = [
        start % columns,
        Math.floor(start / columns),
        end % columns,
        Math.floor(end / columns),
      ];
      if (Math.hypot(c1 - c0, r1 - r0) > 40) continue;
      let expected = true;
      for (let k = 0; k <= 4000 && expected; k += 1) {
        const t = k / 4000;
        const column = Math.floor(c0 + 0.5 + t * (c1 - c0));
        const row = Math.floor(r0 + 0.5 + t * (r1 - r0));
        expected = floor.open[row * columns + column] === 1;
      }
      // Fine steps may miss a cell that a line only nicks; the line itself never does.
      if (!expected) expect(isLineOpen(floor, start, end)).toBe(false);
      if (isLineOpen(floor, start, end)) {
        open += 1;
        expect(expected).toBe(true);
      }
      expect(isLineOpen(floor, end, start)).toBe(isLineOpen(floor, start, end));
    }
    expect(open).toBeGreaterThan(50);
  });

  test('ways are the shortest over the same cells, or little longer', () => {
    let worst = 1;
    let reached = 0;
    let sum = 0;
    for (let seed = 1; seed <= 8; seed += 1) {
      const random = seededRandom(seed);
      const piers = Array.from({ length: 4 }, (_, i) => ({
        id: `p${i}`,
        at: { xM: 0.8 + 3.4 * random(), yM: 0.8 + 1.9 * random() },
        widthM: 0.3 + 0.7 * random(),
        depthM: 0.3 + 0.4 * random(),
        turnDeg: seed % 2 === 0 ? 0 : 90 * random(),
      }));
      const floor = passableFloor(compileScene({ ...room(5, 3.5), piers }), {});
      const cells = [...floor.open.keys()].filter((cell) => floor.open[cell] === 1);
      const start = cells[Math.floor(random() * cells.length)]!;
      const ways = waysFrom(floor, start);
      for (const [goal, best] of shortestByTrying(floor, start)) {
        const found = pathLengthM(wayTo(floor, ways, goal));
        const isReached = Number.isFinite(ways.lengthM[goal]!);
        if (isReached !== Number.isFinite(best) || (isReached && found < best - 1e-9)) {
          throw new Error(`seed ${seed}, cell ${goal}: found ${found}, shortest ${best}`);
        }
        if (!isReached || best === 0) continue;
        reached += 1;
        sum += found / best;
        worst = Math.max(worst, found / best);
      }
    }
    expect(reached).toBeGreaterThan(3000);
    // As stated for `crawlRoute`.
    expect(worst).toBeLessThan(1.02);
    expect(sum / reached).toBeLessThan(1.001);
  });
});

/** Exact lengths over the same cells: from every cell a straight line to every other is tried. */
function shortestByTrying(floor: ReturnType<typeof passableFloor>, start: number): Map<number, number> {
  const { columns, cellM } = floor.grid;
  const apart = (a: number, b: number): number =>
    cellM * Math.hypot((a % columns) - (b % columns), Math.floor(a / columns) - Math.floor(b / columns));
  const left = new Set([...floor.open.keys()].filter((cell) => floor.open[cell] === 1));
  const length = new Map([...left].map((cell) => [cell, cell === start ? 0 : Number.POSITIVE_INFINITY]));
  while (left.size > 0) {
    let next = -1;
    for (const cell of left) if (next < 0 || length.get(cell)! < length.get(next)!) next = cell;
    left.delete(next);
    const sum = length.get(next)!;
    if (!Number.isFinite(sum)) break;
    for (const cell of left) {
      const total = sum + apart(next, cell);
      if (total < length.get(cell)! && isLineOpen(floor, next, cell)) length.set(cell, total);
    }
  }
  return length;
}
