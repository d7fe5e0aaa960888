import * as z from 'zod';
import {
  Bearing,
  Distance,
  distinctIds,
  Fraction,
  Id,
  Label,
  Point,
  Size,
  TapedLength,
  ThermalResistance,
  Words,
} from './scalars.ts';

/** Walls as taped around the space: each leg's length, and the turn from the leg before it. */
export const TraverseOutline = z.strictObject({
  kind: z.literal('traverse'),
  start: Point.default({ xM: 0, yM: 0 }),
  /** Survey azimuth of the first wall [degrees clockwise from the plan's y axis]. */
  firstAzimuthDeg: Bearing.default(90),
  legs: z
    .array(
      z.strictObject({
        id: Id,
        length: TapedLength,
        /** Turn from the leg before [degrees, right positive]; the first leg's turn is not used. */
        turnDeg: z.number().min(-180).max(180).default(0),
      }),
    )
    .min(3)
    .max(500)
    .check(distinctIds),
  /** How the closing error is spread: `compass` over all courses by length, `transit` keeps square corners square. */
  adjustment: z.enum(['compass', 'transit']).default('transit'),
});

/** Corners in plan coordinates. The wall with a corner's id runs from that corner to the next. */
export const CornerOutline = z.strictObject({
  kind: z.literal('corners'),
  corners: z
    .array(z.strictObject({ id: Id, at: Point }))
    .min(3)
    .max(500)
    .check(distinctIds),
});

export const Outline = z.discriminatedUnion('kind', [TraverseOutline, CornerOutline]);
export type Outline = z.infer<typeof Outline>;

/** Condition of a liner where it lies. An absent fact is unknown. */
export const LinerCondition = z.strictObject({
  thicknessM: z.number().positive().max(0.01).optional(),
  /** Vapor permeance as tested [kg/(m²·s·Pa)]. */
  permeanceKgPerM2SPa: z.number().min(0).max(1e-6).optional(),
  reinforced: z.boolean().optional(),
  /** How it was laid, as seen. */
  workmanship: z.enum(['sealed', 'taped-loose-piers', 'laid-and-lapped', 'torn-or-short']).optional(),
  /** Share of open ground as measured or estimated on site. */
  openFraction: Fraction.optional(),
  /** Open ground seen through the liner, counted by area [m²]. */
  openAreaM2: z.number().min(0).max(10_000).optional(),
  waterOnTop: z.enum(['none', 'droplets', 'pond']).optional(),
  waterBeneath: z.enum(['none', 'droplets', 'free-water']).optional(),
  oldLinerBelow: z.boolean().optional(),
});

/** What the floor of the space is made of. */
export const Ground = z.strictObject({
  cover: z.enum(['bare-earth', 'liner', 'slab', 'gravel']),
  /** How wet the ground itself looks. */
  surface: z.enum(['standing-water', 'wet', 'dark-damp', 'average', 'dry-crust', 'dry-gravel']).optional(),
  liner: LinerCondition.optional(),
});
export type Ground = z.infer<typeof Ground>;

/** A part of the floor that differs from the rest. */
export const GroundZone = z.strictObject({
  id: Id,
  name: Label,
  outline: z.array(Point).min(3).max(500),
  ground: Ground,
  note: Words.optional(),
});

/** Facts of one outside wall; `wallId` is the id of the leg or corner it starts at. */
export const WallFacts = z.strictObject({
  id: Id,
  wallId: Id,
  material: z.enum(['hollow-block', 'concrete', 'brick', 'stone', 'wood']).optional(),
  thicknessM: Size.optional(),
  /** Inside height from the floor of the space to the sill [m]. */
  heightM: Size.optional(),
  /** Outside grade above (positive) or below the floor of the space at this wall [m]. */
  gradeAboveFloorM: z.number().min(-10).max(10).optional(),
  insulationRsi: ThermalResistance.optional(),
  /** False where another heated room or a slab lies behind it. */
  outdoors: z.boolean().default(true),
  dampness: z.enum(['dry', 'damp', 'wet']).optional(),
  /** Height to which dampness stands [m]. */
  dampHeightM: Distance.optional(),
  linerHeightM: Distance.optional(),
  linerFixing: z.enum(['none', 'adhesive', 'mechanical']).optional(),
  linerSealed: z.boolean().optional(),
  linerLooseM: Distance.optional(),
  note: Words.optional(),
});

export const HeightSample = z.strictObject({ id: Id, at: Point, clearHeightM: Size });

export const InteriorWall = z.strictObject({
  id: Id,
  from: Point,
  to: Point,
  thicknessM: Size.default(0.2),
  openings: z
    .array(z.strictObject({ id: Id, offsetM: Distance, widthM: Size, heightM: Size }))
    .max(50)
    .check(distinctIds)
    .default([]),
  note: Words.optional(),
});

export const Pier = z.strictObject({
  id: Id,
  at: Point,
  widthM: Size.default(0.4),
  depthM: Size.default(0.4),
  turnDeg: z.number().min(-180).max(180).default(0),
  heightM: Size.optional(),
  material: z.enum(['hollow-block', 'concrete', 'brick', 'stone', 'wood', 'steel']).optional(),
  wrapHeightM: Distance.optional(),
  wrapSealed: z.boolean().optional(),
  note: Words.optional(),
});

export const Girder = z.strictObject({
  id: Id,
  from: Point,
  to: Point,
  widthM: Size.default(0.114),
  /** Underside of the girder over the ground [m]. */
  clearanceM: Distance.optional(),
  note: Words.optional(),
});

export const Joists = z.strictObject({
  id: Id,
  /** Direction in which the joists run [degrees clockwise from the plan's y axis]. */
  bearingDeg: Bearing,
  spacingM: Size.default(0.406),
  depthM: Size.default(0.235),
  clearanceM: Distance.optional(),
  species: z.string().max(60).optional(),
});

export const Duct = z.strictObject({
  id: Id,
  path: z.array(Point).min(2).max(100),
  widthM: Size,
  heightM: Size.optional(),
  /** Gap between the duct's underside and the ground [m]. */
  clearanceM: Distance.optional(),
  carries: z.enum(['supply', 'return', 'exhaust', 'dryer', 'pipe']).optional(),
  insulationRsi: ThermalResistance.optional(),
  leaks: z.boolean().optional(),
  linerBeneath: z.boolean().optional(),
  note: Words.optional(),
});

export const Vent = z.strictObject({
  id: Id,
  wallId: Id,
  offsetM: Distance,
  widthM: Size,
  heightM: Size,
  /** Underside of the vent over the floor of the space [m]. */
  sillHeightM: z.number().min(-5).max(10).optional(),
  netFreeAreaM2: z.number().min(0).max(10).optional(),
  state: z.enum(['open', 'screened', 'louver-shut', 'loose-board', 'sealed']).optional(),
  floodOpening: z.boolean().optional(),
  note: Words.optional(),
});

export const Door = z.strictObject({
  id: Id,
  kind: z.enum(['wall', 'floor-hatch']).default('wall'),
  wallId: Id.optional(),
  offsetM: Distance.optional(),
  at: Point.optional(),
  widthM: Size,
  heightM: Size,
  weatherstripped: z.boolean().optional(),
  gapM: Distance.optional(),
  linerSealedToFrame: z.boolean().optional(),
  note: Words.optional(),
});

export const Equipment = z.strictObject({
  id: Id,
  kind: z.enum([
    'dehumidifier',
    'sump',
    'condensate-pump',
    'circulating-fan',
    'soil-gas-fan',
    'exhaust-fan',
    'air-handler',
    'furnace',
    'boiler',
    'water-heater',
    'other',
  ]),
  at: Point,
  /** Direction of its outlet or front [degrees clockwise from the plan's y axis]. */
  facingDeg: Bearing.optional(),
  raisedM: Distance.optional(),
  /** True for fuel-burning appliances that take air from the space. */
  burnsFuelWithRoomAir: z.boolean().optional(),
  inputW: z.number().min(0).max(1e6).optional(),
  /** Dehumidifier: water removed at its rating point [kg/day] and what that point is. */
  ratedKgPerDay: z.number().min(0).max(1000).optional(),
  ratingPoint: z.enum(['80F-60', '73F-60', '65F-60']).optional(),
  litersPerKWh: z.number().positive().max(20).optional(),
  airflowM3PerS: z.number().min(0).max(10).optional(),
  setRelativeHumidity: Fraction.optional(),
  running: z.boolean().optional(),
  /** Share of the time it ran, from its run-hour meter or a logger. */
  runShare: Fraction.optional(),
  diameterM: Size.optional(),
  depthM: Size.optional(),
  lid: z.enum(['none', 'loose', 'sealed']).optional(),
  rimAboveFloorM: z.number().min(-3).max(3).optional(),
  note: Words.optional(),
});

export const Obstacle = z.strictObject({
  id: Id,
  what: Label,
  outline: z.array(Point).min(3).max(200),
  heightM: Size.optional(),
  noGo: z.boolean().default(false),
  note: Words.optional(),
});

export const Drain = z.strictObject({
  id: Id,
  /** Points in the direction of flow, each with its invert over the floor datum where it was leveled [m]. */
  path: z
    .array(z.strictObject({ at: Point, invertM: z.number().min(-10).max(10).optional() }))
    .min(2)
    .max(200),
  diameterM: Size.optional(),
  sock: z.boolean().optional(),
  aggregate: z.boolean().optional(),
  joined: z.boolean().optional(),
  endsIn: z.enum(['sump', 'daylight', 'soil', 'unknown']).optional(),
  note: Words.optional(),
});

/** A liner seam that was looked at. */
export const Seam = z.strictObject({
  id: Id,
  path: z.array(Point).min(2).max(100),
  lapM: Distance.optional(),
  tapedM: Distance.optional(),
  gapM: Distance.optional(),
  note: Words.optional(),
});

/** Fields of the plan itself; its parts are lists of their own. */
const planFields = {
  /** Bearing of the plan's y axis [degrees clockwise from true north]. */
  northDeg: Bearing.default(0),
  /** Absent until the walls are drawn. */
  outline: Outline.optional(),
  /** Condition of the floor wherever no zone says otherwise; absent until someone has said. */
  ground: Ground.optional(),
};

export const PlanFields = z.strictObject(planFields);

export const Plan = z.strictObject({
  ...planFields,
  heights: z.array(HeightSample).default([]),
  walls: z.array(WallFacts).default([]),
  interiorWalls: z.array(InteriorWall).default([]),
  piers: z.array(Pier).default([]),
  girders: z.array(Girder).default([]),
  joists: z.array(Joists).default([]),
  ducts: z.array(Duct).default([]),
  vents: z.array(Vent).default([]),
  doors: z.array(Door).default([]),
  equipment: z.array(Equipment).default([]),
  obstacles: z.array(Obstacle).default([]),
  zones: z.array(GroundZone).default([]),
  drains: z.array(Drain).default([]),
  seams: z.array(Seam).default([]),
});
export type Plan = z.infer<typeof Plan>;
/** A plan as written in a file: what has a default may be left out. */
export type PlanInput = z.input<typeof Plan>;
