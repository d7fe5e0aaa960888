import type { RepairRule } from './repair-rule.ts';
import { type SpaceState, withHouse, withPlan } from './space-state.ts';

/** Insulation that a crawl space wall is given, R-10 continuous (energy code, zones 4 and 5, from memory) [m²·K/W]. */
const WALL_RSI = 1.76;

function closed(state: SpaceState): SpaceState {
  const { vents, doors } = state.job.plan;
  const shut = withPlan(state, {
    vents: vents.map((vent) => ({ ...vent, state: 'sealed', netFreeAreaM2: 0 })),
    doors: doors.map((door) => ({ ...door, weatherstripped: true, gapM: 0 })),
  });
  return { ...withHouse(shut, { spaceType: 'closed' }), wallsSealed: true };
}

function opened(state: SpaceState): SpaceState {
  const open = withPlan(state, {
    vents: state.job.plan.vents.map(({ netFreeAreaM2, ...vent }) => ({
      ...vent,
      ...(netFreeAreaM2 === undefined || netFreeAreaM2 === 0 ? {} : { netFreeAreaM2 }),
      state: 'open',
    })),
  });
  return { ...withHouse(open, { spaceType: 'vented' }), wallsSealed: false };
}

/** Repairs of walls, vents and floor. */
export const SHELL_REPAIRS = {
  'close-vents': {
    title: 'Vents closed, walls air-sealed',
    does: 'Vents get fitted, sealed panels; rim, sill and wall are air-sealed and the door weatherstripped.',
    apply: closed,
  },
  'open-vents': {
    title: 'Vents opened',
    does: 'Every vent stands open with its net free area.',
    apply: opened,
  },
  'air-seal-floor': {
    title: 'Floor air-sealed',
    does: 'Holes through the floor are sealed to the tight end of usual floors.',
    apply: (state) => ({ ...state, floorSealed: true }),
  },
  'remove-insulation': {
    title: 'Floor insulation removed',
    does: 'The floor has no insulation: the space is warmer in winter and cooler in summer.',
    apply: (state) => withHouse(state, { floorInsulationRsi: 0 }),
  },
  'insulate-walls': {
    title: 'Walls insulated',
    does: 'Outside walls get R-10 (1.76 m²·K/W) unless they have more.',
    apply: (state) =>
      withPlan(state, {
        walls: state.job.plan.walls.map((wall) =>
          wall.outdoors ? { ...wall, insulationRsi: Math.max(wall.insulationRsi ?? 0, WALL_RSI) } : wall,
        ),
      }),
  },
  'wood-treatment': {
    title: 'Wood treated',
    does: 'Changes nothing in the balance of water; it slows decay and mold on the wood that is treated.',
  },
} as const satisfies Record<string, RepairRule>;
