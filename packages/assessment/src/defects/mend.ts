import { geometry as shapes } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';

type Plan = SurveyedJob['plan'];
type Ground = Plan['ground'];

/** Lap of a seam that was made anew (12 in; common practice) and wrap of a pier (6 in; residential code R408.3) [m]. */
const LAP_M = 0.3048;
const WRAP_M = 0.1524;

const everyGround = (plan: Plan, change: (ground: Ground) => Ground): Plan => ({
  ...plan,
  ground: change(plan.ground),
  zones: plan.zones.map((zone) => ({ ...zone, ground: change(zone.ground) })),
});

const covered = (plan: Plan): Plan =>
  everyGround(plan, (ground) =>
    ground.cover === 'bare-earth' ? { ...ground, cover: 'liner', liner: { workmanship: 'sealed' } } : ground,
  );

const sealedEdges = (plan: Plan): Plan => ({
  ...plan,
  walls: plan.walls.map((wall) => ({
    ...wall,
    linerLooseM: 0,
    linerFixing: 'mechanical',
    linerSealed: true,
    linerHeightM: Math.max(wall.linerHeightM ?? 0, WRAP_M),
  })),
});

const sealedSeams = (plan: Plan): Plan => ({
  ...plan,
  seams: plan.seams.map((seam) => ({
    ...seam,
    lapM: Math.max(seam.lapM ?? 0, LAP_M),
    tapedM: shapes.pathLengthM(seam.path),
    gapM: 0,
  })),
});

const dried = (plan: Plan): Plan =>
  everyGround(plan, ({ liner, ...ground }) => ({
    ...ground,
    ...(ground.surface === 'standing-water' || ground.surface === 'wet' ? { surface: 'dark-damp' } : {}),
    ...(liner === undefined
      ? {}
      : { liner: { ...liner, waterOnTop: 'none' as const, waterBeneath: 'none' as const } }),
  }));

const sealedVents = (plan: Plan): Plan => ({
  ...plan,
  vents: plan.vents.map((vent) => ({ ...vent, state: 'sealed' })),
});

/** The drawing once only this defect is mended; a defect that is not here changes nothing in the balance of water. */
const MENDS: Readonly<Record<string, (plan: Plan) => Plan>> = {
  'exposed-earth': covered,
  'bare-strip-under-ducts': covered,
  'liner-torn-or-thin': (plan) =>
    everyGround(plan, ({ liner, ...ground }) => ({
      ...ground,
      ...(liner === undefined ? {} : { liner: { workmanship: 'sealed' as const, ...keptOf(liner) } }),
    })),
  'seams-under-lapped': sealedSeams,
  'seams-not-sealed': sealedSeams,
  'glued-edge-letting-go': sealedEdges,
  'wall-edge-at-wrong-height': sealedEdges,
  'door-frame-edge-open': (plan) => ({
    ...plan,
    doors: plan.doors.map((door) => ({ ...door, linerSealedToFrame: true })),
  }),
  'access-door-leaks': (plan) => ({
    ...plan,
    doors: plan.doors.map((door) => ({ ...door, weatherstripped: true, gapM: 0 })),
  }),
  'piers-not-wrapped': (plan) => ({
    ...plan,
    piers: plan.piers.map((pier) => ({
      ...pier,
      wrapHeightM: Math.max(pier.wrapHeightM ?? 0, WRAP_M),
      wrapSealed: true,
    })),
  }),
  'standing-water': dried,
  'water-bed': dried,
  'water-on-liner': dried,
  'outside-water-let-in': (plan) => ({
    ...dried(plan),
    walls: plan.walls.map((wall) => ({
      ...wall,
      ...(wall.dampness === undefined ? {} : { dampness: 'dry' }),
    })),
  }),
  'damp-walls': (plan) => ({
    ...plan,
    walls: plan.walls.map((wall) => ({
      ...wall,
      ...(wall.dampness === undefined ? {} : { dampness: 'dry' }),
    })),
  }),
  'half-vented': sealedVents,
  'vent-loose-board': (plan) => ({
    ...plan,
    vents: plan.vents.map((vent) => (vent.state === 'loose-board' ? { ...vent, state: 'sealed' } : vent)),
  }),
  'sweating-ducts': (plan) => ({
    ...plan,
    ducts: plan.ducts.map((duct) => ({ ...duct, leaks: false })),
  }),
};

/** Facts of a liner that new patches do not change. */
function keptOf({ permeanceKgPerM2SPa, waterOnTop, waterBeneath }: NonNullable<Ground['liner']>) {
  return {
    ...(permeanceKgPerM2SPa === undefined ? {} : { permeanceKgPerM2SPa }),
    ...(waterOnTop === undefined ? {} : { waterOnTop }),
    ...(waterBeneath === undefined ? {} : { waterBeneath }),
  };
}

/** The dryer whose duct ends in the space is the one source that an observation holds. */
function withoutDryer(job: SurveyedJob): SurveyedJob {
  const observations = job.readings.observations.map((o) =>
    o.quantity === 'exhaustEndsInCrawl' ? { ...o, value: false } : o,
  );
  return { ...job, readings: { ...job.readings, observations } };
}

/** The job once only this defect is mended; undefined where mending it changes nothing in the balance of water. */
export function mended(job: SurveyedJob, key: string): SurveyedJob | undefined {
  if (key === 'water-let-in-from-plumbing-or-dryer') return withoutDryer(job);
  const mend = MENDS[key];
  return mend === undefined ? undefined : { ...job, plan: mend(job.plan) };
}
