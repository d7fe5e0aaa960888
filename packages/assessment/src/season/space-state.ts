import type { SurveyedJob } from '@undercroft/record';

/** A piece of equipment as the record has it. */
export type Equipment = SurveyedJob['plan']['equipment'][number];

/** A fan that moves the air of the space without drying it. */
export interface SpaceFan {
  readonly kind: 'circulating-fan' | 'exhaust-fan' | 'soil-gas-fan';
  /** Air that it moves, where it is known [m³/s]. */
  readonly airflowM3PerS?: number;
  readonly inputW?: number;
}

/** A space as it stands or would stand after repairs: the record, and what the record has no field for. */
export interface SpaceState {
  readonly job: SurveyedJob;
  /** Rim, sill, wall and penetrations air-sealed on purpose. */
  readonly wallsSealed: boolean;
  /** Holes through the floor sealed on purpose. */
  readonly floorSealed: boolean;
  readonly fans: readonly SpaceFan[];
  /** True where the dehumidifier is not the one that stood there when the readings were taken. */
  readonly machineIsNew: boolean;
}

const FANS: ReadonlySet<Equipment['kind']> = new Set(['circulating-fan', 'exhaust-fan', 'soil-gas-fan']);

/** The space as the survey found it. Machines and fans that stand still are left out of what runs. */
export function asFound(job: SurveyedJob): SpaceState {
  const fans = job.plan.equipment
    .filter((e) => FANS.has(e.kind) && e.running !== false)
    .map(
      (e): SpaceFan => ({
        kind: e.kind as SpaceFan['kind'],
        ...(e.airflowM3PerS === undefined ? {} : { airflowM3PerS: e.airflowM3PerS }),
        ...(e.inputW === undefined ? {} : { inputW: e.inputW }),
      }),
    );
  return { job, wallsSealed: false, floorSealed: false, fans, machineIsNew: false };
}

/** The state with another drawing of the space. */
export function withPlan(state: SpaceState, change: Partial<SurveyedJob['plan']>): SpaceState {
  return { ...state, job: { ...state.job, plan: { ...state.job.plan, ...change } } };
}

/** The state with other facts of the house. */
export function withHouse(state: SpaceState, change: Partial<SurveyedJob['house']>): SpaceState {
  return { ...state, job: { ...state.job, house: { ...state.job.house, ...change } } };
}

/** Dehumidifiers that run. */
export function runningDehumidifiers(job: SurveyedJob): Equipment[] {
  return job.plan.equipment.filter((e) => e.kind === 'dehumidifier' && e.running !== false);
}
