import { expect, test } from 'vitest';
import type { CoverageScene, Station } from '../../src/coverage/scene.ts';
import { visibleRegion } from '../../src/coverage/visible-region.ts';
import { distanceToPolygonM } from '../../src/geometry/distance.ts';
import type { Point } from '../../src/geometry/point.ts';
import { pointInPolygon } from '../../src/geometry/point-in-polygon.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';
import { room } from './rooms.ts';

interface Body {
  readonly ring: readonly Point[];
  readonly low: number;
  readonly high: number;
}

/** A room with piles, some of them L-shaped, and straight ducts, and the bodies that they are. */
function furnished(seed: number): {
  scene: CoverageScene;
  bodies: Body[];
  station: Station;
  random: () => number;
} {
  const random = seededRandom(seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const bodies: Body[] = [];
  const obstacles = Array.from({ length: 3 }, (_, i) => {
    const [x, y, w, h] = [between(1, 7), between(1, 4), between(0.4, 2), between(0.4, 1.5)];
    const corners = [
      [0, 0],
      [w, 0],
      [w, h / 2],
      [w / 3, h / 2],
      [w / 3, h],
      [0, h],
    ];
    const ring = (i === 0 ? corners : [corners[0]!, [w, 0], [w, h], corners[5]!]).map(([dx, dy]) => ({
      xM: x + dx!,
      yM: y + dy!,
    }));
    const heightM = between(0.03, 0.5);
    bodies.push({ ring, low: 0, high: heightM });
    return { id: `o${i}`, outline: ring, heightM };
  });
  const ducts = Array.from({ length: 2 }, (_, i) => {
    const [x, y, along] = [between(2, 7), between(1, 5), between(1, 4)];
    const [widthM, heightM, clearanceM] = [between(0.2, 0.6), between(0.1, 0.4), between(0.05, 0.4)];
    const ring = [
      { xM: x, yM: y - widthM / 2 },
      { xM: x + along, yM: y - widthM / 2 },
      { xM: x + along, yM: y + widthM / 2 },
      { xM: x, yM: y + widthM / 2 },
    ];
    bodies.push({ ring, low: clearanceM, high: clearanceM + heightM });
    const path = [
      { xM: x, yM: y },
      { xM: x + along, yM: y },
    ];
    return { id: `d${i}`, path, widthM, heightM, clearanceM };
  });
  const at = { xM: between(0.2, 0.8), yM: between(0.2, 5.8) };
  const station = {
    id: 's',
    at,
    bearingDeg: 0,
    fieldOfViewDeg: 360,
    rangeM: 30,
    heightM: between(0.25, 0.4),
  };
  return { scene: { ...room(9, 6), obstacles, ducts }, bodies, station, random };
}

test('piles and ducts hide exactly the floor to which the straight line from the lamp passes through them', () => {
  let seen = 0;
  let hidden = 0;
  for (let seed = 1; seed <= 60; seed += 1) {
    const { scene, bodies, station, random } = furnished(seed);
    const { polygon, shadows } = visibleRegion(scene, station);
    for (let i = 0; i < 25; i += 1) {
      const place = { xM: 0.01 + 8.98 * random(), yM: 0.01 + 5.98 * random() };
      if (shadows.some((ring) => Math.abs(distanceToPolygonM(place, ring)) < 0.02)) continue;
      // Walk down the line of sight in 2,000 steps.
      let blocked = false;
      for (let k = 1; k <= 2000 && !blocked; k += 1) {
        const share = k / 2000;
        const heightM = station.heightM! * (1 - share);
        const at = {
          xM: station.at.xM + share * (place.xM - station.at.xM),
          yM: station.at.yM + share * (place.yM - station.at.yM),
        };
        blocked = bodies.some(
          (b) => heightM >= b.low && heightM <= b.high && pointInPolygon(at, b.ring, 0) === 'inside',
        );
      }
      const shown =
        distanceToPolygonM(place, polygon) < 0 &&
        !shadows.some((ring) => pointInPolygon(place, ring, 0) === 'inside');
      expect(shown, `seed ${seed}, place ${i}`).toBe(!blocked);
      if (shown) seen += 1;
      else hidden += 1;
    }
  }
  expect(seen).toBeGreaterThan(300);
  expect(hidden).toBeGreaterThan(300);
});
