import type { CoverageScene, ScenePier, Station } from '../../src/coverage/scene.ts';
import type { Point } from '../../src/geometry/point.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';
import { pierFootprint } from '../../src/plan/floor-areas.ts';

/** A rectangle with steps cut out of its corners, turned, with piers anywhere: on each other and across walls too. */
export function randomPlan(seed: number): { scene: CoverageScene; station: Station; random: () => number } {
  const random = seededRandom(seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const [w, h] = [between(5, 16), between(4, 12)];
  const corners: Point[] = [];
  const cut = (): readonly [number, number] | null =>
    random() < 0.5 ? [between(0.3, 0.45) * w, between(0.3, 0.45) * h] : null;
  const at = (xM: number, yM: number): void => {
    corners.push({ xM, yM });
  };
  let c = cut();
  if (c) {
    at(0, c[1]);
    at(c[0], c[1]);
    at(c[0], 0);
  } else at(0, 0);
  c = cut();
  if (c) {
    at(w - c[0], 0);
    at(w - c[0], c[1]);
    at(w, c[1]);
  } else at(w, 0);
  c = cut();
  if (c) {
    at(w, h - c[1]);
    at(w - c[0], h - c[1]);
    at(w - c[0], h);
  } else at(w, h);
  at(0, h);
  const turn = random() < 0.3 ? 0 : between(0, 2 * Math.PI);
  const [s, k] = [Math.sin(turn), Math.cos(turn)];
  const outline = corners.map(({ xM, yM }) => ({ xM: k * xM - s * yM + 3, yM: s * xM + k * yM - 2 }));
  const inside = (): Point => {
    const [x, y] = [between(-0.02, 1.02) * w, between(-0.02, 1.02) * h];
    return { xM: k * x - s * y + 3, yM: s * x + k * y - 2 };
  };
  const piers: ScenePier[] = Array.from({ length: Math.floor(between(0, 14)) }, (_, i) => ({
    id: `p${i}`,
    at: inside(),
    widthM: between(0.2, 0.9),
    depthM: between(0.2, 0.6),
    turnDeg: random() < 0.5 ? (-turn * 180) / Math.PI : between(-90, 90),
  }));
  const interiorWalls =
    random() < 0.4
      ? [
          {
            id: 'iw',
            from: inside(),
            to: inside(),
            thicknessM: random() < 0.3 ? 0 : between(0.1, 0.3),
            openings: [{ offsetM: between(0.2, 1.5), widthM: between(0.5, 1) }],
          },
        ]
      : [];
  return {
    scene: { outline: random() < 0.5 ? outline : [...outline].reverse(), piers, interiorWalls },
    station: {
      id: 's',
      at: inside(),
      bearingDeg: between(0, 360),
      fieldOfViewDeg: random() < 0.4 ? 360 : between(20, 350),
      rangeM: random() < 0.4 ? Number.POSITIVE_INFINITY : between(1, 12),
    },
    random,
  };
}

/** Every side of everything solid in a plan, straight from its corners. */
export function sidesOf(scene: CoverageScene): (readonly [Point, Point])[] {
  const sides: (readonly [Point, Point])[] = [];
  const ring = (corners: readonly Point[]): void => {
    corners.forEach((p, i) => {
      sides.push([p, corners[(i + 1) % corners.length]!]);
    });
  };
  ring(scene.outline);
  for (const pier of scene.piers ?? []) ring(pierFootprint(pier));
  for (const wall of scene.interiorWalls ?? []) for (const piece of wallRings(wall)) ring(piece);
  return sides;
}

/** Rings of the solid parts of a wall with one opening. */
export function wallRings(wall: NonNullable<CoverageScene['interiorWalls']>[number]): Point[][] {
  const length = Math.hypot(wall.to.xM - wall.from.xM, wall.to.yM - wall.from.yM);
  const [ux, uy] = [(wall.to.xM - wall.from.xM) / length, (wall.to.yM - wall.from.yM) / length];
  const half = (wall.thicknessM ?? 0) / 2;
  const { offsetM, widthM } = wall.openings![0]!;
  const parts = [
    [0, Math.min(offsetM, length)],
    [Math.min(offsetM + widthM, length), length],
  ];
  return parts
    .filter(([a, b]) => b! > a!)
    .map(([a, b]) =>
      [
        [a!, -half],
        [b!, -half],
        [b!, half],
        [a!, half],
      ].map(([along, off]) => ({
        xM: wall.from.xM + along! * ux - off! * uy,
        yM: wall.from.yM + along! * uy + off! * ux,
      })),
    );
}

/** How far one sees in a direction, by trying every side. */
export function rayLengthM(
  sides: readonly (readonly [Point, Point])[],
  from: Point,
  dx: number,
  dy: number,
): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [a, b] of sides) {
    const ex = b.xM - a.xM;
    const ey = b.yM - a.yM;
    const den = dx * ey - dy * ex;
    if (den === 0) continue;
    const t = ((a.xM - from.xM) * ey - (a.yM - from.yM) * ex) / den;
    const w = ((a.xM - from.xM) * dy - (a.yM - from.yM) * dx) / den;
    if (t > 0 && w >= 0 && w <= 1 && t < least) least = t;
  }
  return least;
}
