import { describe, expect, test } from 'vitest';
import { compileScene } from '../../src/coverage/compiled-scene.ts';
import { standingPlace } from '../../src/coverage/standing-place.ts';
import { visibleRegion } from '../../src/coverage/visible-region.ts';
import { distanceToPolygonM } from '../../src/geometry/distance.ts';
import type { Point } from '../../src/geometry/point.ts';
import { distanceToSegmentM } from '../../src/geometry/segment-distance.ts';
import { randomPlan, rayLengthM, sidesOf } from './random-plan.ts';

/** Rays of the brute-force count in one field of view. */
const RAYS = 4000;

/** A mark outside a corner is put on a wall line, where a plain ray cannot tell in from out. */
function standsOnSurface(eye: Point, sides: readonly (readonly [Point, Point])[]): boolean {
  return sides.some(([a, b]) => distanceToSegmentM(eye, a, b) < 1e-6);
}

describe('500 random plans against a plain count of rays', () => {
  const plans = Array.from({ length: 500 }, (_, seed) => randomPlan(seed + 1));

  test('the area seen', () => {
    let sees = 0;
    let largest = 0;
    plans.forEach(({ scene, station }, seed) => {
      const region = visibleRegion(scene, station);
      const eye = standingPlace(compileScene(scene), station.at);
      if (eye === null) {
        expect(region.areaM2, `plan ${seed}`).toBe(0);
        expect(region.notices.map((n) => n.code)).toContain('station-not-in-space');
        return;
      }
      const sides = sidesOf(scene);
      if (standsOnSurface(eye, sides)) return;
      sees += 1;
      const width = (station.fieldOfViewDeg * Math.PI) / 180;
      const start = ((90 - station.bearingDeg) * Math.PI) / 180 - width / 2;
      let counted = 0;
      for (let i = 0; i < RAYS; i += 1) {
        const rad = start + (width * (i + 0.5)) / RAYS;
        const length = Math.min(station.rangeM, rayLengthM(sides, eye, Math.cos(rad), Math.sin(rad)));
        counted += (length * length * width) / (2 * RAYS);
      }
      // A ray on the wrong side of a corner misjudges one slice of the sector; slices are up to 20 m long.
      const tolerance = 0.002 * region.areaM2 + 0.02;
      largest = Math.max(largest, Math.abs(region.areaM2 - counted));
      expect(
        Math.abs(region.areaM2 - counted),
        `plan ${seed}: ${region.areaM2}, rays ${counted}`,
      ).toBeLessThan(tolerance);
    });
    expect(sees).toBeGreaterThan(400);
    expect(largest).toBeGreaterThan(0);
  });

  test('place by place: in the region exactly when nothing stands between', () => {
    let seen = 0;
    let hidden = 0;
    plans.forEach(({ scene, station, random }, seed) => {
      const eye = standingPlace(compileScene(scene), station.at);
      const sides = sidesOf(scene);
      if (eye === null || standsOnSurface(eye, sides)) return;
      const { polygon } = visibleRegion(scene, station);
      for (let i = 0; i < 40; i += 1) {
        const rad = random() * 2 * Math.PI;
        const away = random() * 14;
        const place = { xM: eye.xM + away * Math.cos(rad), yM: eye.yM + away * Math.sin(rad) };
        const distance = distanceToPolygonM(place, polygon);
        // Arcs are drawn up to 1 mm inside; nearer than that to the border either answer is right.
        if (Math.abs(distance) < 0.001) continue;
        const bearing = 90 - (rad * 180) / Math.PI;
        const turn = Math.abs(((((bearing - station.bearingDeg) % 360) + 540) % 360) - 180);
        const inView =
          turn < station.fieldOfViewDeg / 2 &&
          away < station.rangeM &&
          away < rayLengthM(sides, eye, Math.cos(rad), Math.sin(rad));
        expect(distance < 0, `plan ${seed}, place ${i}`).toBe(inView);
        if (inView) seen += 1;
        else hidden += 1;
      }
    });
    expect(seen).toBeGreaterThan(2000);
    expect(hidden).toBeGreaterThan(2000);
  });
});
