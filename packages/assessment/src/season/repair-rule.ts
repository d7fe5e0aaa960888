import type { SurveyedJob } from '@undercroft/record';
import type { Equipment, SpaceState } from './space-state.ts';

/** A kind of repair that the record knows. */
export type RepairKey = SurveyedJob['design']['repairs'][number]['repair'];

/** What a repair needs that the record of the space does not hold. */
export interface RepairGiven {
  /** The dehumidifier that is set. */
  readonly machine?: Equipment;
}

/** What a repair does. */
export interface RepairRule {
  readonly title: string;
  /** What it is taken to change, in plain words. */
  readonly does: string;
  /** The space after it; absent for work that changes nothing in the balance of heat, air and water. */
  readonly apply?: (state: SpaceState, given: RepairGiven) => SpaceState;
}
