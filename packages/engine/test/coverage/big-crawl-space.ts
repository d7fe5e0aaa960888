import { joistBays } from '../../src/coverage/joist-bays.ts';
import type { CoverageScene, Station } from '../../src/coverage/scene.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';

/** An L-shaped crawl space of 280 m² with 60 piers, two ducts, an interior wall, vents and stored things. */
export function bigCrawlSpace(): CoverageScene {
  const outline = [
    { xM: 0, yM: 0 },
    { xM: 20, yM: 0 },
    { xM: 20, yM: 10 },
    { xM: 16, yM: 10 },
    { xM: 16, yM: 15 },
    { xM: 0, yM: 15 },
  ];
  const piers = [];
  for (let row = 0; row < 6; row += 1) {
    for (let column = 0; column < 12 && piers.length < 60; column += 1) {
      const at = { xM: 1.2 + column * 1.6, yM: 1.4 + row * 2.4 };
      if (at.yM > 9.5 && at.xM > 15.5) continue;
      piers.push({
        id: `p${piers.length + 1}`,
        at,
        widthM: 0.4,
        depthM: 0.4,
        turnDeg: (piers.length % 5) * 3,
      });
    }
  }
  return {
    outline,
    piers,
    interiorWalls: [
      {
        id: 'iw1',
        from: { xM: 0, yM: 10.1 },
        to: { xM: 9, yM: 10.1 },
        thicknessM: 0.2,
        openings: [{ offsetM: 4, widthM: 0.8, heightM: 0.6 }],
      },
    ],
    ducts: [
      {
        id: 'd1',
        path: [
          { xM: 4, yM: 5 },
          { xM: 18, yM: 5 },
        ],
        widthM: 0.5,
        heightM: 0.3,
        clearanceM: 0.45,
      },
      {
        id: 'd2',
        path: [
          { xM: 12, yM: 5 },
          { xM: 12, yM: 13 },
        ],
        widthM: 0.3,
        heightM: 0.25,
        clearanceM: 0.2,
      },
    ],
    obstacles: [
      {
        id: 'o1',
        outline: [
          { xM: 17, yM: 7 },
          { xM: 18.5, yM: 7 },
          { xM: 18.5, yM: 8.2 },
          { xM: 17, yM: 8.2 },
        ],
        heightM: 0.5,
      },
    ],
    vents: [0, 0, 1, 4, 4, 5].map((edge, i) => ({
      id: `v${i + 1}`,
      edge,
      offsetM: 1 + 2.5 * i - (edge === 4 ? 4 : edge === 5 ? 8 : 0),
      widthM: 0.4,
      middleM: 0.7,
    })),
    clearHeights: [
      { at: { xM: 2, yM: 2 }, clearHeightM: 0.9 },
      { at: { xM: 18, yM: 8 }, clearHeightM: 0.7 },
      { at: { xM: 3, yM: 13 }, clearHeightM: 1.1 },
    ],
  };
}

/** The same with the bays of joists that run north. */
export function bigCrawlSpaceWithBays(): CoverageScene {
  const scene = bigCrawlSpace();
  const run = { id: 'j', bearingDeg: 0, spacingM: 0.406, depthM: 0.235, undersideM: 0.85 };
  return { ...scene, bays: joistBays(scene.outline, run) };
}

/** Stations spread over the space, each looking one way, as a clip along a crawl would give. */
export function manyStations(count: number): Station[] {
  const random = seededRandom(20);
  const stations: Station[] = [];
  while (stations.length < count) {
    const at = { xM: 0.3 + 19.4 * random(), yM: 0.3 + 14.4 * random() };
    if (at.xM > 15.7 && at.yM > 9.7) continue;
    stations.push({
      id: `s${stations.length + 1}`,
      at,
      bearingDeg: Math.floor(360 * random()),
      fieldOfViewDeg: 65,
      rangeM: 5,
    });
  }
  return stations;
}
