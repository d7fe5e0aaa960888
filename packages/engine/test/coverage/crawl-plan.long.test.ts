import { describe, expect, test } from 'vitest';
import { planCrawl } from '../../src/coverage/crawl-plan.ts';
import type { CoverageScene, ScenePier } from '../../src/coverage/scene.ts';
import { boundingBox } from '../../src/geometry/bounding-box.ts';
import { distanceToPolygonM } from '../../src/geometry/distance.ts';
import { polygonEdges } from '../../src/geometry/polygon-edges.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';
import { type ReferenceOutline, referenceOutlines } from './reference.ts';

const shared = process.env.UNDERCROFT_SHARED;
if (!shared) {
  // biome-ignore lint/suspicious/noConsole: a suite that does not run must say so
  console.warn('coverage: crawl plans of house outlines did NOT run: set UNDERCROFT_SHARED');
}

/** An outline with piers about every 2.4 m, clear of the walls. */
function withPiers({ outline }: ReferenceOutline, seed: number): CoverageScene {
  const random = seededRandom(seed);
  const box = boundingBox(outline)!;
  const piers: ScenePier[] = [];
  for (let x = box.minXM + 1.2; x < box.maxXM; x += 2.4) {
    for (let y = box.minYM + 1.2; y < box.maxYM; y += 2.4) {
      const at = { xM: x + 0.3 * random(), yM: y + 0.3 * random() };
      if (distanceToPolygonM(at, outline) > -0.9) continue;
      piers.push({ id: `p${piers.length}`, at, widthM: 0.4, depthM: 0.3, turnDeg: 10 * random() });
    }
  }
  return { outline, piers };
}

describe.skipIf(!shared)('crawl plans of 150 house outlines with piers (needs UNDERCROFT_SHARED)', () => {
  test('show all that can be seen, with the number of stations near its bound', () => {
    let stations = 0;
    let bound = 0;
    let proven = 0;
    let hidden = 0;
    referenceOutlines(shared!).forEach((reference, i) => {
      const scene = withPiers(reference, i + 1);
      const wall = polygonEdges(scene.outline).reduce((a, b) => (b.lengthM > a.lengthM ? b : a));
      const door = { xM: (wall.from.xM + wall.to.xM) / 2, yM: (wall.from.yM + wall.to.yM) / 2 };
      const plan = planCrawl(scene, door);
      const { floorShare, pierFaces } = plan.expected;
      const out = new Set(plan.outOfSight.map((s) => `${s.kind} ${s.id ?? ''} ${s.face ?? ''}`));
      if (!out.has('floor  ')) expect(floorShare, reference.id).toBeGreaterThan(0.985);
      for (const { pierId, face, seenShare } of pierFaces) {
        if (seenShare === null || out.has(`pier ${pierId} ${face}`)) continue;
        expect(seenShare, `${reference.id}: pier ${pierId} face ${face}`).toBeGreaterThan(0.85);
      }
      expect(plan.stops.length).toBeGreaterThanOrEqual(plan.stationsLowerBound);
      expect(plan.lengthM).toBeGreaterThanOrEqual(plan.lengthLowerBoundM - 1e-9);
      stations += plan.stops.length;
      bound += plan.stationsLowerBound;
      proven += plan.stationsProven ? 1 : 0;
      hidden += out.size;
    });
    // biome-ignore lint/suspicious/noConsole: figures worth reading when this suite is run by hand
    console.log(
      `${stations} stations, bound ${bound}, ${proven} of 150 proven, ${hidden} things out of sight`,
    );
    expect(stations / bound).toBeLessThan(1.1);
    expect(proven).toBeGreaterThan(75);
  });
});
