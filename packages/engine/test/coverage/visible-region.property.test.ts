import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileScene } from '../../src/coverage/compiled-scene.ts';
import { standingPlace } from '../../src/coverage/standing-place.ts';
import { visibleRegion } from '../../src/coverage/visible-region.ts';
import { areaOfDifferenceM2 } from '../../src/geometry/area-of-overlap.ts';
import { distanceToPolygonM } from '../../src/geometry/distance.ts';
import { polygonAreaM2 } from '../../src/geometry/polygon-area.ts';
import { randomPlan } from './random-plan.ts';

const seed = fc.integer({ min: 1, max: 100_000 });
/** m²: rounding in coordinates up to 25 m, with a margin. */
const SLACK_M2 = 1e-8;

describe('what one station sees', () => {
  test('lies within the walls', () => {
    fc.assert(
      fc.property(seed, (s) => {
        const { scene, station } = randomPlan(s);
        const { polygon, areaM2 } = visibleRegion(scene, station);
        expect(areaM2).toBeLessThanOrEqual(polygonAreaM2(scene.outline) + SLACK_M2);
        expect(areaOfDifferenceM2({ outer: polygon }, { outer: scene.outline })).toBeLessThan(1e-6);
        // Chords lie at most 1 mm inside their arcs.
        const arcs = 2 * Math.PI * Math.min(station.rangeM, 25) * 0.001;
        expect(Math.abs(polygonAreaM2(polygon) - areaM2)).toBeLessThan(arcs + SLACK_M2);
      }),
      { numRuns: 150 },
    );
  });

  test('grows with the range and with the field of view', () => {
    const less = fc.double({ min: 0.1, max: 1, noNaN: true });
    fc.assert(
      fc.property(seed, less, less, (s, rangeShare, viewShare) => {
        const { scene, station } = randomPlan(s);
        const rangeM = Math.min(station.rangeM, 30);
        const all = visibleRegion(scene, { ...station, rangeM }).areaM2;
        const nearer = visibleRegion(scene, { ...station, rangeM: rangeM * rangeShare }).areaM2;
        const fieldOfViewDeg = station.fieldOfViewDeg * viewShare;
        const narrower = visibleRegion(scene, { ...station, rangeM, fieldOfViewDeg }).areaM2;
        expect(nearer).toBeLessThanOrEqual(all + SLACK_M2);
        expect(narrower).toBeLessThanOrEqual(all + SLACK_M2);
      }),
      { numRuns: 200 },
    );
  });

  test('two stations see each other or neither does', () => {
    let both = 0;
    fc.assert(
      fc.property(seed, seed, (s, other) => {
        const { scene, station } = randomPlan(s);
        const a = { ...station, fieldOfViewDeg: 360, rangeM: Number.POSITIVE_INFINITY };
        const b = { ...a, at: { xM: 3 + ((other * 7) % 9), yM: -2 + ((other * 3) % 7) } };
        const [seenFromA, seenFromB] = [visibleRegion(scene, a), visibleRegion(scene, b)];
        // A mark inside something solid is put elsewhere.
        const compiled = compileScene(scene);
        fc.pre([a, b].every((one) => standingPlace(compiled, one.at) === one.at));
        const bInA = distanceToPolygonM(b.at, seenFromA.polygon);
        const aInB = distanceToPolygonM(a.at, seenFromB.polygon);
        fc.pre(Math.abs(bInA) > 1e-6 && Math.abs(aInB) > 1e-6);
        expect(bInA < 0).toBe(aInB < 0);
        if (aInB < 0) both += 1;
      }),
      { numRuns: 300 },
    );
    expect(both).toBeGreaterThan(10);
  });

  test('does not depend on which way the walls were walked, and repeats exactly', () => {
    fc.assert(
      fc.property(seed, (s) => {
        const { scene, station } = randomPlan(s);
        const first = visibleRegion(scene, station);
        expect(visibleRegion(scene, station)).toEqual(first);
        const turned = visibleRegion({ ...scene, outline: [...scene.outline].reverse() }, station);
        expect(Math.abs(turned.areaM2 - first.areaM2)).toBeLessThan(SLACK_M2);
      }),
      { numRuns: 150 },
    );
  });
});
