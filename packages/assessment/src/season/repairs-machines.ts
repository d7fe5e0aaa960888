import type { RepairRule } from './repair-rule.ts';
import { type SpaceFan, type SpaceState, withPlan } from './space-state.ts';

function withFan(state: SpaceState, kind: SpaceFan['kind']): SpaceState {
  return { ...state, fans: [...state.fans, { kind }] };
}

/** Machines and fans. */
export const MACHINE_REPAIRS = {
  dehumidifier: {
    title: 'Dehumidifier',
    does: 'The chosen machine holds the target humidity as far as it can; a machine that was found is taken out.',
    apply: (state, { machine }) =>
      machine === undefined
        ? state
        : {
            ...withPlan(state, {
              equipment: [
                ...state.job.plan.equipment.map((e) =>
                  e.kind === 'dehumidifier' ? { ...e, running: false } : e,
                ),
                machine,
              ],
            }),
            machineIsNew: true,
          },
  },
  'circulating-fan': {
    title: 'Circulating fan',
    does: 'Air of the far corners reaches the dehumidifier better: half of what it lacked of well-mixed air is made up, an assumption; the air on the plan tells it for a fan at its place.',
    apply: (state) => withFan(state, 'circulating-fan'),
  },
  'exhaust-fan': {
    title: 'Exhaust fan',
    does: 'Blows 1 cfm for each 50 ft² of floor outdoors, all the time; what comes in after it, the leaks decide.',
    apply: (state) => withFan(state, 'exhaust-fan'),
  },
  'soil-gas-exhaust': {
    title: 'Soil-gas exhaust',
    does: 'Draws some air of the space through leaks of the liner and blows it outdoors; its pull on the soil is not in the year.',
    apply: (state) => withFan(state, 'soil-gas-fan'),
  },
} as const satisfies Record<string, RepairRule>;
