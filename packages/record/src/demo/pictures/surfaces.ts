import type { Plan } from '../../schema/plan.ts';
import type { Point } from '../../schema/scalars.ts';

/** What a surface is made of; each has its color and its pattern. */
export type Material = 'block' | 'wrap' | 'wood' | 'metal' | 'rubbish' | 'liner' | 'earth' | 'joist' | 'void';

/** An upright surface between two places, from one height to another [m]. */
export interface Upright {
  readonly from: Point;
  readonly to: Point;
  readonly lowM: number;
  readonly highM: number;
  readonly material: Material;
}

type Corner = readonly [number, number];

/** The four sides of a box about its middle. Demo piers stand square to the walls. */
function boxSides(at: Point, widthM: number, depthM: number): Point[] {
  const corners: Corner[] = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ];
  return corners.map(([x, y]) => ({ xM: at.xM + (x * widthM) / 2, yM: at.yM + (y * depthM) / 2 }));
}

/** A strip along a line that runs level or upright on the plan, as those of demo ducts and girders do. */
function stripSides(from: Point, to: Point, widthM: number): Point[] {
  const level = from.yM === to.yM;
  const middle = { xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 };
  const long = Math.abs(level ? to.xM - from.xM : to.yM - from.yM);
  return boxSides(middle, level ? long : widthM, level ? widthM : long);
}

const around = (
  ring: readonly Point[],
  lowM: number,
  highM: number,
  material: Material,
): readonly Upright[] =>
  ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length], lowM, highM, material }));

/** Everything upright that a lamp meets under a house whose outline is given by its corners. */
export function uprightsOf(plan: Plan, jointsM: number): Upright[] {
  const { outline } = plan;
  const corners = outline?.kind === 'corners' ? outline.corners.map((c) => c.at) : [];
  return [
    ...around(corners, 0, jointsM, 'block'),
    ...plan.piers.flatMap((p) => {
      const ring = boxSides(p.at, p.widthM, p.depthM);
      const top = p.heightM ?? jointsM;
      const wrap = p.wrapHeightM ?? 0;
      return [...around(ring, wrap, top, 'block'), ...(wrap > 0 ? around(ring, 0, wrap, 'wrap') : [])];
    }),
    ...plan.girders.flatMap((g) =>
      around(stripSides(g.from, g.to, g.widthM), g.clearanceM ?? jointsM, jointsM, 'wood'),
    ),
    ...plan.ducts.flatMap((d) => {
      const under = d.clearanceM ?? 0;
      const over = Math.min(jointsM, under + (d.heightM ?? d.widthM));
      return d.path
        .slice(1)
        .flatMap((to, i) => around(stripSides(d.path[i], to, d.widthM), under, over, 'metal'));
    }),
    ...plan.obstacles.flatMap((o) => around(o.outline, 0, o.heightM ?? jointsM, 'rubbish')),
    ...plan.equipment
      .filter((e) => e.kind === 'dehumidifier')
      .flatMap((e) => around(boxSides(e.at, 0.6, 0.4), 0, 0.4, 'metal')),
  ];
}

function isInside({ xM, yM }: Point, ring: readonly Point[]): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i, i += 1) {
    const [a, b] = [ring[i], ring[j]];
    if (a.yM > yM !== b.yM > yM && xM < a.xM + ((yM - a.yM) * (b.xM - a.xM)) / (b.yM - a.yM))
      inside = !inside;
  }
  return inside;
}

/** What lies on the floor at a place. */
export function floorAt(plan: Plan, at: Point): Material {
  const zone = plan.zones.findLast((z) => isInside(at, z.outline));
  const cover = zone?.ground.cover ?? plan.ground?.cover;
  return cover === 'liner' ? 'liner' : 'earth';
}

/** What is overhead: joists that run up the plan, and the dark between them. */
export function overheadAt({ joists }: Plan, { xM }: Point): Material {
  const spacing = joists[0]?.spacingM ?? 0.406;
  const along = xM / spacing - Math.floor(xM / spacing);
  return along < 0.1 ? 'joist' : 'void';
}
