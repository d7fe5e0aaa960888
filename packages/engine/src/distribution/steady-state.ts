import type { Ending } from '../numerics/solution.ts';
import type { MachineAtWork } from './machine-closure.ts';
import type { MovedAir } from './moved-air.ts';

/** How the machine fares in a steady state. */
export type MachineOutcome =
  /** It holds its set-point and rests in between. */
  | 'holds'
  /** It runs through and the humidistat still reads more than the set-point. */
  | 'undersized'
  /** The humidistat is satisfied without it. */
  | 'idle'
  /** The air at its intake is too cold for it to remove water. */
  | 'too-cold'
  /** Its duty was given. */
  | 'given'
  /** There is none. */
  | 'none';

/** A steady state of air, water and heat over the plan. */
export interface SteadyField {
  readonly outcome: MachineOutcome;
  /** Null where there is no machine. */
  readonly machine: MachineAtWork | null;
  /** By cell of the mesh. */
  readonly humidityRatio: Float64Array;
  readonly temperatureC: Float64Array;
  /** What a machine with perfectly mixed air would do; null where there is none. */
  readonly mixed: { readonly outcome: MachineOutcome; readonly machine: MachineAtWork } | null;
  /** Mean humidity ratio by volume with the machine off, NaN where it was not asked for. */
  readonly offHumidityRatio: number;
  readonly air: MovedAir;
  readonly mixingM2PerS: number;
  /** Water and heat that come in less what goes out, over what comes in. */
  readonly balance: { readonly water: number; readonly heat: number };
  readonly endings: { readonly transport: Ending; readonly duty: Ending };
  /** The four lanes of the solution, to start the next from. */
  readonly lanes: Float64Array;
}
