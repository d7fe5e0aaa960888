import { moisture, geometry as shapes } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { bareZonesUnder } from './bare-strips.ts';

type Plan = SurveyedJob['plan'];
type Ground = Plan['ground'];
type Mend = (plan: Plan) => Plan;

/** Lap of a seam that was made anew (12 in; DOE Standard Work Specifications 2017, 2.0403.1) [m]. */
const LAP_M = 0.3048;
/** Wrap of a pier and turn-up at a wall (6 in; residential code R408.3, from memory) [m]. */
const WRAP_M = 0.1524;

const everyGround = (plan: Plan, change: (ground: Ground) => Ground): Plan => ({
  ...plan,
  ground: change(plan.ground),
  zones: plan.zones.map((zone) => ({ ...zone, ground: change(zone.ground) })),
});

const sealedLiner = (liner: Ground['liner']): NonNullable<Ground['liner']> => {
  const { openAreaM2: _, openFraction: __, ...rest } = liner ?? {};
  return { ...rest, workmanship: 'sealed' };
};

const covered = (ground: Ground): Ground =>
  ground.cover === 'bare-earth' ? { ...ground, cover: 'liner', liner: sealedLiner(ground.liner) } : ground;

/** Ground seen through the liner is covered; how it was laid otherwise stays. */
const closed = (ground: Ground): Ground => {
  const { liner } = ground;
  if (ground.cover !== 'liner' || liner === undefined) return ground;
  if (liner.openAreaM2 === undefined && liner.openFraction === undefined) return ground;
  const { openAreaM2: _, ...rest } = liner;
  const openFraction = Math.min(liner.openFraction ?? 1, moisture.workmanship('sealed').openFraction);
  return { ...ground, liner: { ...rest, openFraction } };
};

const stripZones = (plan: Plan): ReadonlySet<string> =>
  new Set([...plan.ducts.flatMap((duct) => bareZonesUnder(plan, duct)).map((z) => z.id), 'said-strips']);

const zonesCovered = (plan: Plan, meant: (id: string) => boolean): Plan['zones'] =>
  plan.zones.map((zone) => (meant(zone.id) ? { ...zone, ground: covered(zone.ground) } : zone));

/** Neither ground nor liner holds free water any more. */
const dried: Mend = (plan) =>
  everyGround(plan, ({ liner, ...ground }) => ({
    ...ground,
    ...(ground.surface === 'standing-water' || ground.surface === 'wet' ? { surface: 'dark-damp' } : {}),
    ...(liner === undefined ? {} : { liner: { ...liner, waterOnTop: 'none', waterBeneath: 'none' } }),
  }));

const noneOnLiner: Mend = (plan) =>
  everyGround(plan, (ground) =>
    ground.liner === undefined ? ground : { ...ground, liner: { ...ground.liner, waterOnTop: 'none' } },
  );

const DRIER = { wet: 'damp', damp: 'dry', dry: 'dry' } as const;

/** The drawing once only this defect is mended, by its key. */
const MENDS: Readonly<Record<string, Mend>> = {
  'exposed-earth': (plan) => {
    const strips = stripZones(plan);
    return {
      ...plan,
      ground: closed(covered(plan.ground)),
      zones: zonesCovered(plan, (id) => !strips.has(id)),
    };
  },
  'bare-strip-under-ducts': (plan) => {
    const strips = stripZones(plan);
    return {
      ...plan,
      zones: zonesCovered(plan, (id) => strips.has(id)),
      ducts: plan.ducts.map((duct) => ({ ...duct, linerBeneath: true })),
    };
  },
  'liner-torn-or-thin': (plan) =>
    everyGround(plan, (ground) =>
      ground.cover === 'liner' ? { ...ground, liner: sealedLiner(ground.liner) } : ground,
    ),
  'seams-under-lapped': (plan) => ({
    ...plan,
    seams: plan.seams.map((seam) => ({ ...seam, lapM: Math.max(seam.lapM ?? 0, LAP_M) })),
  }),
  'seams-not-sealed': (plan) => ({
    ...plan,
    seams: plan.seams.map((seam) => ({ ...seam, tapedM: shapes.pathLengthM(seam.path), gapM: 0 })),
  }),
  'glued-edge-letting-go': (plan) => ({
    ...plan,
    walls: plan.walls.map((wall) =>
      (wall.linerLooseM ?? 0) > 0
        ? { ...wall, linerLooseM: 0, linerFixing: 'mechanical', linerSealed: true }
        : wall,
    ),
  }),
  'wall-edge-at-wrong-height': (plan) => ({
    ...plan,
    walls: plan.walls.map((wall) =>
      wall.linerHeightM !== undefined && wall.linerHeightM < WRAP_M
        ? { ...wall, linerHeightM: WRAP_M, linerSealed: true }
        : wall,
    ),
  }),
  'door-frame-edge-open': (plan) => ({
    ...plan,
    doors: plan.doors.map((door) => ({ ...door, linerSealedToFrame: true })),
  }),
  'piers-not-wrapped': (plan) => ({
    ...plan,
    piers: plan.piers.map((pier) =>
      pier.wrapHeightM === 0 || pier.wrapSealed === false
        ? { ...pier, wrapHeightM: Math.max(pier.wrapHeightM ?? 0, WRAP_M), wrapSealed: true }
        : pier,
    ),
  }),
  'standing-water': dried,
  'water-bed': (plan) =>
    everyGround(plan, (ground) =>
      ground.liner === undefined ? ground : { ...ground, liner: { ...ground.liner, waterBeneath: 'none' } },
    ),
  'water-on-liner': noneOnLiner,
  'basin-rim-proud': noneOnLiner,
  'drain-on-grade': dried,
  'drain-falls-wrong': dried,
  'drain-silted': dried,
  'drain-disconnected': dried,
  'pump-or-discharge-faulty': dried,
  'outside-water-let-in': (plan) => {
    const less = everyGround(plan, ({ liner, ...ground }) => ({
      ...ground,
      ...(ground.surface === 'standing-water' ? { surface: 'wet' } : {}),
      ...(liner === undefined ? {} : { liner: { ...liner, waterBeneath: 'none' } }),
    }));
    const walls = plan.walls.map((wall) =>
      wall.dampness === undefined ? wall : { ...wall, dampness: DRIER[wall.dampness] },
    );
    return { ...less, walls };
  },
  'damp-walls': (plan) => ({
    ...plan,
    walls: plan.walls.map((wall) => (wall.dampness === undefined ? wall : { ...wall, dampness: 'dry' })),
  }),
  'half-vented': (plan) => ({
    ...plan,
    vents: plan.vents.map((vent) => ({ ...vent, state: 'sealed' })),
  }),
  'vent-loose-board': (plan) => ({
    ...plan,
    vents: plan.vents.map((vent) => (vent.state === 'loose-board' ? { ...vent, state: 'sealed' } : vent)),
  }),
  'access-door-leaks': (plan) => ({
    ...plan,
    doors: plan.doors.map((door) => ({ ...door, weatherstripped: true, gapM: 0 })),
  }),
};

/** Defects whose mending ends with the same water gone, so that their shares are one and the same. */
const SAME_WATER: readonly ReadonlySet<string>[] = [
  new Set([
    'standing-water',
    'water-bed',
    'water-on-liner',
    'basin-rim-proud',
    'drain-on-grade',
    'drain-falls-wrong',
    'drain-silted',
    'drain-disconnected',
    'pump-or-discharge-faulty',
    'outside-water-let-in',
  ]),
  new Set(['outside-water-let-in', 'damp-walls']),
  // A sealed edge holds the liner over the damp face of the wall.
  new Set(['damp-walls', 'glued-edge-letting-go', 'wall-edge-at-wrong-height']),
  new Set(['half-vented', 'vent-loose-board']),
];

/** Other defects of a list that bring the same water. */
export function sameWater(key: string, others: readonly string[]): string[] {
  const sets = SAME_WATER.filter((set) => set.has(key));
  return others.filter((other) => other !== key && sets.some((set) => set.has(other)));
}

/** Defects of the liner whose gaps the workmanship stands for where the open ground was not counted. */
export const IN_WORKMANSHIP: ReadonlySet<string> = new Set([
  'seams-under-lapped',
  'seams-not-sealed',
  'glued-edge-letting-go',
  'door-frame-edge-open',
  'piers-not-wrapped',
]);

/** Neither dryer nor leak any more. */
function withoutEntered(job: SurveyedJob): SurveyedJob {
  const observations = job.readings.observations.map((o) =>
    o.quantity === 'exhaustEndsInCrawl' || o.quantity === 'plumbingLeakPresent' ? { ...o, value: false } : o,
  );
  const findings = job.findings.filter((f) => f.defect !== 'water-let-in-from-plumbing-or-dryer');
  return { ...job, findings, readings: { ...job.readings, observations } };
}

/**
 * Jobs of one space in each of which only one defect is mended; undefined where mending it changes nothing in the balance
 * of water. Defects that the same work mends give the same job.
 * @param job as the balances take it, with what findings say
 * @param drawn as it was drawn
 */
export function mender(job: SurveyedJob, drawn: SurveyedJob): (key: string) => SurveyedJob | undefined {
  const made = new Map<Mend, SurveyedJob>();
  return (key) => {
    if (key === 'water-let-in-from-plumbing-or-dryer') return withoutEntered(job);
    if (key === 'wet-floor-batts') return { ...job, house: drawn.house };
    const mend = MENDS[key];
    if (mend === undefined) return undefined;
    const after = made.get(mend) ?? { ...job, plan: mend(job.plan) };
    made.set(mend, after);
    return after;
  };
}
