import { geometry as shapes } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { RepairRule } from './repair-rule.ts';
import { type SpaceState, withPlan } from './space-state.ts';

type Ground = SurveyedJob['plan']['ground'];
type Wall = SurveyedJob['plan']['walls'][number];

/** A liner that is turned up the wall goes at least this far (6 in; residential code R408.3, from memory) [m]. */
const TURN_UP_M = 0.1524;
/** Where a liner edge or wrap ends below the sill, for the termite strip (3 in; common practice) [m]. */
const STRIP_M = 0.0762;

function lined(ground: Ground): Ground {
  if (ground.cover === 'slab') return ground;
  const old = ground.liner;
  const flooded = ground.surface === 'standing-water' || old?.waterBeneath === 'free-water';
  return {
    ...ground,
    cover: 'liner',
    liner: {
      workmanship: 'sealed',
      waterOnTop: old?.waterOnTop ?? 'none',
      waterBeneath: flooded ? 'free-water' : 'none',
      ...(old?.permeanceKgPerM2SPa === undefined ? {} : { permeanceKgPerM2SPa: old.permeanceKgPerM2SPa }),
    },
  };
}

function everyGround(state: SpaceState, change: (ground: Ground) => Ground): SpaceState {
  const { ground, zones } = state.job.plan;
  return withPlan(state, {
    ground: change(ground),
    zones: zones.map((zone) => ({ ...zone, ground: change(zone.ground) })),
  });
}

function turnedUp(wall: Wall): Wall {
  const reach = Math.max(wall.linerHeightM ?? 0, TURN_UP_M);
  const most = wall.heightM === undefined ? reach : Math.max(TURN_UP_M, wall.heightM - STRIP_M);
  return { ...wall, linerHeightM: Math.min(reach, most), linerSealed: true };
}

/** Neither ground nor liner holds free water any more. */
function drained(ground: Ground): Ground {
  const wet = ground.surface === 'standing-water' || ground.surface === 'wet';
  return {
    ...ground,
    ...(wet ? { surface: 'dark-damp' as const } : {}),
    ...(ground.liner === undefined
      ? {}
      : { liner: { ...ground.liner, waterOnTop: 'none' as const, waterBeneath: 'none' as const } }),
  };
}

/** Less water comes from outside: what stood in the open or under a liner is only wet. */
function lessWater(ground: Ground): Ground {
  const { surface, liner } = ground;
  return {
    ...ground,
    ...(surface === 'standing-water' ? { surface: 'wet' as const } : {}),
    ...(liner?.waterBeneath === 'free-water' ? { liner: { ...liner, waterBeneath: 'none' as const } } : {}),
  };
}

const DRIER = { wet: 'damp', damp: 'dry', dry: 'dry' } as const;

const WATER_GONE =
  'Water no longer stands on the ground, on the liner or under it; the ground stays dark and damp.';

/** Repairs of the ground and of what lies on it. */
export const GROUND_REPAIRS = {
  'ground-liner': {
    title: 'Ground liner',
    does: 'Every bare part is covered and the liner has the open share of a sealed one, 0.1 to 0.5 %; seams are taped. It is turned up the walls by 6 in, but where an edge was found loose it stays loose until the edges are sealed.',
    apply: (state) => {
      const { walls, seams } = state.job.plan;
      return withPlan(everyGround(state, lined), {
        walls: walls.map((wall) => ((wall.linerLooseM ?? 0) > 0 ? wall : turnedUp(wall))),
        seams: seams.map((seam) => ({ ...seam, tapedM: shapes.pathLengthM(seam.path), gapM: 0 })),
      });
    },
  },
  'seal-edges': {
    title: 'Liner edges sealed to the walls',
    does: 'No edge is loose; the liner is fixed and sealed to the walls as high as it reaches, 6 in at least.',
    apply: (state) => {
      const { ground, walls } = state.job.plan;
      const onWall = (wall: Wall) => (ground.cover === 'liner' ? turnedUp(wall) : wall);
      return withPlan(state, { walls: walls.map((wall) => ({ ...onWall(wall), linerLooseM: 0 })) });
    },
  },
  'wrap-piers': {
    title: 'Piers wrapped',
    does: 'Every pier has a sealed wrap, so no ground is open round it.',
    apply: (state) =>
      withPlan(state, {
        piers: state.job.plan.piers.map((pier) => ({
          ...pier,
          wrapHeightM: Math.max(pier.wrapHeightM ?? 0, TURN_UP_M),
          wrapSealed: true,
        })),
      }),
  },
  drain: {
    title: 'Drain',
    does: WATER_GONE,
    apply: (state) => everyGround(state, drained),
  },
  sump: {
    title: 'Sump',
    does: WATER_GONE,
    apply: (state) => everyGround(state, drained),
  },
  regrade: {
    title: 'Grading and roof water',
    does: 'Wet walls become damp and damp walls dry; where water stood the ground is only wet.',
    apply: (state) =>
      withPlan(everyGround(state, lessWater), {
        walls: state.job.plan.walls.map((wall) =>
          wall.dampness === undefined ? wall : { ...wall, dampness: DRIER[wall.dampness] },
        ),
      }),
  },
  'clear-debris': {
    title: 'Debris cleared',
    does: 'Changes nothing in the balance of water; it takes away what rots and feeds mold.',
  },
} as const satisfies Record<string, RepairRule>;
