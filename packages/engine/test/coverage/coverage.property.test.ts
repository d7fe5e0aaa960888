import { describe, expect, test } from 'vitest';
import { coverage } from '../../src/coverage/coverage.ts';
import type { CoverageScene, Station } from '../../src/coverage/scene.ts';
import { visibleRegion } from '../../src/coverage/visible-region.ts';
import { areaOfUnionM2 } from '../../src/geometry/area-of-overlap.ts';
import { distanceToPolygonM } from '../../src/geometry/distance.ts';
import type { Point } from '../../src/geometry/point.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';
import { pierFootprint } from '../../src/plan/floor-areas.ts';
import { randomPlan, rayLengthM, sidesOf, wallRings } from './random-plan.ts';

/** Some random plans, each with a handful of stations. */
function plansWithStations(count: number, from: number): { scene: CoverageScene; stations: Station[] }[] {
  return Array.from({ length: count }, (_, i) => {
    const { scene, station } = randomPlan(from + i);
    const random = seededRandom(from + i);
    const { xM, yM } = station.at;
    const stations = Array.from({ length: 5 }, (_unused, k) => ({
      id: `s${k}`,
      at: { xM: xM + 4 * (random() - 0.5) * k, yM: yM + 4 * (random() - 0.5) * k },
      bearingDeg: 360 * random(),
      fieldOfViewDeg: 40 + 320 * random(),
      rangeM: 1 + 6 * random(),
    }));
    return { scene, stations };
  });
}

/** Faces, vents and the like as one list of named shares. */
function linesOf(result: ReturnType<typeof coverage>) {
  return [...result.walls, ...result.interiorWalls, ...result.pierFaces, ...result.vents, ...result.bays];
}

describe('coverage of random plans', () => {
  test('the floor seen is the exact union within the stated error, and less than the sum', () => {
    let largest = 0;
    for (const { scene, stations } of plansWithStations(60, 700)) {
      const result = coverage(scene, stations);
      const polygons = stations.map((s) => visibleRegion(scene, s).polygon);
      const exact = areaOfUnionM2(polygons.map((outer) => ({ outer })));
      const off = Math.abs(result.floorSeenM2 - exact);
      expect(off).toBeLessThanOrEqual(result.floorErrorM2 + 1e-9);
      if (exact > 1) largest = Math.max(largest, off / exact);
      const sum = result.perStation.reduce((total, s) => total + s.floorM2, 0);
      expect(result.floorSeenM2).toBeLessThanOrEqual(sum + 1e-9);
      const added = result.perStation.reduce((total, s) => total + s.newM2, 0);
      expect(added).toBeCloseTo(result.floorSeenM2, 9);
      const unseen = result.unseenRegions.reduce((total, r) => total + r.areaM2, result.scatteredM2);
      expect(unseen + result.floorSeenM2).toBeCloseTo(result.floorM2, 9);
    }
    // Cells of 0.1 m on areas from 1 m²: in practice within a few percent.
    expect(largest).toBeLessThan(0.05);
    expect(largest).toBeGreaterThan(0);
  });

  test('one more station never lowers anything', () => {
    for (const { scene, stations } of plansWithStations(40, 300)) {
      let before = coverage(scene, []);
      for (let n = 1; n <= stations.length; n += 1) {
        const now = coverage(scene, stations.slice(0, n));
        expect(now.floorSeenM2).toBeGreaterThanOrEqual(before.floorSeenM2);
        const earlier = linesOf(before);
        linesOf(now).forEach((line, i) => {
          expect(line.seenM).toBeGreaterThanOrEqual(earlier[i]!.seenM - 1e-12);
          expect(line.seenM).toBeLessThanOrEqual(line.openM + 1e-12);
        });
        before = now;
      }
    }
  });

  test('the same input gives the same result', () => {
    const [{ scene, stations }] = plansWithStations(1, 41) as [{ scene: CoverageScene; stations: Station[] }];
    expect(JSON.stringify(coverage(scene, stations))).toBe(JSON.stringify(coverage(scene, stations)));
  });

  test('walls and pier faces, place by place, against plain rays', () => {
    let seen = 0;
    let hidden = 0;
    for (const { scene, stations } of plansWithStations(120, 1000)) {
      const station = stations[0]!;
      const { walls, pierFaces } = coverage(scene, [station]);
      const sides = sidesOf(scene);
      const lines = [
        ...walls.map((w) => ({ ring: scene.outline, side: w.edge, line: w })),
        ...pierFaces.map((f) => ({
          ring: pierFootprint(scene.piers!.find((p) => p.id === f.pierId)!),
          side: f.face,
          line: f,
        })),
      ];
      // A station that slipped into something solid was moved; rays from the mark would not tell.
      if (!isOpen(scene, station.at)) continue;
      for (const { ring, side, line } of lines) {
        const [a, b] = [ring[side]!, ring[(side + 1) % ring.length]!];
        const length = Math.hypot(b.xM - a.xM, b.yM - a.yM);
        for (const share of [0.13, 0.41, 0.77]) {
          const at = { xM: a.xM + share * (b.xM - a.xM), yM: a.yM + share * (b.yM - a.yM) };
          const u = share * length;
          const inUnseen = line.unseen.some((s) => u > s.fromM && u < s.toM);
          const nearEnd = line.unseen.some(
            (s) => Math.min(Math.abs(u - s.fromM), Math.abs(u - s.toM)) < 1e-6,
          );
          if (nearEnd || !isReached(scene, a, b, at)) continue;
          const away = Math.hypot(at.xM - station.at.xM, at.yM - station.at.yM);
          const dx = (at.xM - station.at.xM) / away;
          const dy = (at.yM - station.at.yM) / away;
          const bearing = (Math.atan2(dx, dy) * 180) / Math.PI;
          const turn = Math.abs(((((bearing - station.bearingDeg) % 360) + 540) % 360) - 180);
          const slant = Math.abs((dx * (b.yM - a.yM) - dy * (b.xM - a.xM)) / length);
          if (Math.abs(slant - Math.cos((75 * Math.PI) / 180)) < 1e-6) continue;
          const shows =
            turn < station.fieldOfViewDeg / 2 &&
            away < station.rangeM &&
            slant > Math.cos((75 * Math.PI) / 180) &&
            away < rayLengthM(sides, station.at, dx, dy) + 1e-7;
          expect(!inUnseen).toBe(shows);
          if (shows) seen += 1;
          else hidden += 1;
        }
      }
    }
    expect(seen).toBeGreaterThan(100);
    expect(hidden).toBeGreaterThan(500);
  });
});

/** Open floor, well clear of every surface. */
function isOpen(scene: CoverageScene, at: Point): boolean {
  return (
    distanceToPolygonM(at, scene.outline) < -1e-3 &&
    (scene.piers ?? []).every((pier) => distanceToPolygonM(at, pierFootprint(pier)) > 1e-3) &&
    sidesOf(scene).every(([a, b]) => {
      const wide = Math.hypot(b.xM - a.xM, b.yM - a.yM);
      return wide === 0 || Math.abs((at.xM - a.xM) * (b.yM - a.yM) - (at.yM - a.yM) * (b.xM - a.xM)) > 1e-6;
    })
  );
}

/** Whether open floor lies on one side of a place on a surface. */
function isReached(scene: CoverageScene, a: Point, b: Point, at: Point): boolean {
  const length = Math.hypot(b.xM - a.xM, b.yM - a.yM);
  const step = 2e-3 / length;
  return [step, -step].some((s) => {
    const beside = { xM: at.xM - s * (b.yM - a.yM), yM: at.yM + s * (b.xM - a.xM) };
    return (
      distanceToPolygonM(beside, scene.outline) < -1e-3 &&
      (scene.piers ?? []).every((pier) => distanceToPolygonM(beside, pierFootprint(pier)) > 1e-3) &&
      (scene.interiorWalls ?? []).flatMap(wallRings).every((ring) => distanceToPolygonM(beside, ring) > 1e-3)
    );
  });
}
