import type { Plan } from '../../schema/plan.ts';
import type { Point } from '../../schema/scalars.ts';
import { indexedPng } from './png.ts';
import { floorAt, type Material, overheadAt, type Upright, uprightsOf } from './surfaces.ts';

/** Where the camera of an invented picture is and how it looks. */
export interface Shot {
  readonly at: Point;
  readonly bearingDeg: number;
  readonly fieldOfViewDeg: number;
  readonly rangeM: number;
  readonly heightM: number;
}

const WIDTH = 240;
const HEIGHT = 160;
/** Row of the horizon: the camera looks a little down. */
const HORIZON = 58;
/** Steps between lit and dark. */
const SHADES = 12;

const COLORS: Readonly<Record<Material, readonly [number, number, number]>> = {
  block: [176, 172, 163],
  wrap: [226, 230, 232],
  wood: [190, 150, 104],
  metal: [168, 178, 186],
  rubbish: [146, 108, 120],
  liner: [214, 219, 222],
  earth: [134, 104, 74],
  joist: [178, 140, 98],
  void: [74, 62, 50],
};
const MATERIALS = Object.keys(COLORS) as Material[];

const PALETTE = MATERIALS.flatMap((material) =>
  Array.from({ length: SHADES }, (_, shade): [number, number, number] => {
    const [r, g, b] = COLORS[material];
    const lit = (value: number) => Math.round(8 + ((value - 8) * shade) / (SHADES - 1));
    return [lit(r), lit(g), lit(b)];
  }),
);

const RADIANS = Math.PI / 180;

/**
 * Sine and cosine by their series, with nothing but sums and products: the platform's own may differ in the last digit
 * between machines, and the bytes of a picture must not.
 */
function turn(deg: number): { sine: number; cosine: number } {
  const whole = ((deg % 360) + 360) % 360;
  const x = (whole > 180 ? whole - 360 : whole) * RADIANS;
  let [sine, cosine, term] = [0, 0, 1];
  for (let n = 0; n < 30; n += 1) {
    if (n % 2 === 0) cosine += n % 4 === 0 ? term : -term;
    else sine += n % 4 === 1 ? term : -term;
    term *= x / (n + 1);
  }
  return { sine, cosine };
}

/** Unevenness of a surface, 0 to 1, from two whole numbers. */
function grain(a: number, b: number): number {
  let n = (a * 374_761_393 + b * 668_265_263) | 0;
  n = Math.imul(n ^ (n >>> 13), 1_274_126_177);
  return ((n ^ (n >>> 16)) >>> 24) / 255;
}

/** How bright a material is at a place along it and over the floor: courses of block, wrinkles, clods. */
function pattern(material: Material, along: number, up: number): number {
  switch (material) {
    case 'block': {
      const course = Math.floor(up / 0.2);
      const joint = up - course * 0.2 < 0.014;
      const head = along / 0.4 + (course % 2) / 2;
      return joint || head - Math.floor(head) < 0.03 ? 0.55 : 0.86 + 0.14 * grain(Math.floor(head), course);
    }
    case 'earth':
      return 0.6 + 0.4 * grain(Math.floor(along / 0.07), Math.floor(up / 0.07));
    case 'rubbish':
      return 0.5 + 0.5 * grain(Math.floor(along / 0.12), Math.floor(up / 0.09));
    case 'liner': {
      const wrinkle = along * 0.8 + up * 0.45;
      return wrinkle - Math.floor(wrinkle) < 0.06 ? 0.8 : 1;
    }
    default:
      return 1;
  }
}

interface Hit {
  readonly depth: number;
  readonly along: number;
  readonly surface: Upright;
}

/** Where a ray of the camera meets upright surfaces, farthest first. */
function hitsOf(surfaces: readonly Upright[], from: Point, dx: number, dy: number): Hit[] {
  const hits: Hit[] = [];
  for (const surface of surfaces) {
    const ex = surface.to.xM - surface.from.xM;
    const ey = surface.to.yM - surface.from.yM;
    const cross = dx * ey - dy * ex;
    if (cross === 0) continue;
    const px = surface.from.xM - from.xM;
    const py = surface.from.yM - from.yM;
    const depth = (px * ey - py * ex) / cross;
    const share = (px * dy - py * dx) / cross;
    if (depth <= 0.02 || share < 0 || share > 1) continue;
    // Sides run level or upright on the plan, so one of the two legs is their whole length.
    hits.push({ depth, along: share * Math.max(Math.abs(ex), Math.abs(ey)), surface });
  }
  return hits.sort((a, b) => b.depth - a.depth);
}

/**
 * An invented photo, drawn from the plan: what a lamp shows of walls, piers, ducts, floor and joists from a place, fading
 * with its range. The same plan and place give the same bytes on every machine.
 */
export function drawPicture(plan: Plan, shot: Shot): Uint8Array {
  const jointsM = plan.joists[0]?.clearanceM ?? 0.9;
  const surfaces = uprightsOf(plan, jointsM);
  const { sine, cosine } = turn(shot.bearingDeg);
  const half = turn(shot.fieldOfViewDeg / 2);
  const spread = half.sine / half.cosine;
  /** Pixels for one meter at a depth of one meter. */
  const focal = WIDTH / 2 / spread;
  const pixels = new Uint8Array(WIDTH * HEIGHT);

  for (let x = 0; x < WIDTH; x += 1) {
    const aside = (((x + 0.5) * 2) / WIDTH - 1) * spread;
    const dx = sine + aside * cosine;
    const dy = cosine - aside * sine;
    const lengthen = 1 + aside * aside;
    const set = (y: number, material: Material, depth: number, bright: number): void => {
      const away2 = depth * depth * lengthen;
      const lamp = 1 / (1 + (3.2 * away2) / (shot.rangeM * shot.rangeM));
      const shade = Math.min(SHADES - 1, Math.max(0, Math.floor(lamp * bright * SHADES * 1.15)));
      pixels[y * WIDTH + x] = MATERIALS.indexOf(material) * SHADES + shade;
    };
    for (let y = 0; y < HEIGHT; y += 1) {
      const below = (y + 0.5 - HORIZON) / focal;
      const depth = below > 0 ? shot.heightM / below : (shot.heightM - jointsM) / below;
      const at = { xM: shot.at.xM + dx * depth, yM: shot.at.yM + dy * depth };
      const material = below > 0 ? floorAt(plan, at) : overheadAt(plan, at);
      set(y, material, depth, pattern(material, at.xM, at.yM));
    }
    for (const { depth, along, surface } of hitsOf(surfaces, shot.at, dx, dy)) {
      const rowOf = (heightM: number) => HORIZON + ((shot.heightM - heightM) * focal) / depth;
      const top = Math.max(0, Math.ceil(rowOf(surface.highM) - 0.5));
      const bottom = Math.min(HEIGHT - 1, Math.floor(rowOf(surface.lowM) - 0.5));
      for (let y = top; y <= bottom; y += 1) {
        const up = shot.heightM - ((y + 0.5 - HORIZON) * depth) / focal;
        set(y, surface.material, depth, pattern(surface.material, along, up));
      }
    }
  }
  return indexedPng(WIDTH, HEIGHT, pixels, PALETTE);
}
