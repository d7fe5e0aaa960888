import type { ColdBehavior } from '../dehumidifier/frost.ts';
import type { Point } from '../geometry/point.ts';
import type { Outlet } from './jet.ts';

/** A dehumidifier at a place on the plan. */
export interface FieldMachine extends Outlet {
  readonly intake: Point;
  /** Where its air comes out; far from the intake when a duct carries it there. */
  readonly outlet: Point;
  /** Direction of its jet, degrees clockwise from the plan's +y axis; null for air blown up or spread out. */
  readonly bearingDeg: number | null;
  /** Throw in place of the computed one, m; it is still cut by obstacles. */
  readonly throwM?: number;
  /** Mixing that its jet adds everywhere, m²/s, in place of the computed one for the bay that it blows into. */
  readonly mixingM2PerS?: number;
  /** Water removal at 26.7 °C (80 °F) and 60 %, kg/day. */
  readonly ratedKgPerDay: number;
  /** At the same point, liters per kWh. */
  readonly ratedLPerKWh: number;
  /** Relative humidity that the humidistat holds, 0..1. */
  readonly setPoint: number;
  /** Where the humidistat reads the air; at the intake when absent. */
  readonly sensor?: Point;
  /** Whether its fan runs on when the compressor rests; it then stirs the air all the time. */
  readonly fanAlwaysOn?: boolean;
  /** Power of that fan, W, counted only while the compressor rests; 0 by default. */
  readonly fanPowerW?: number;
  /** `part-load` (default) loses water at each start, as the season does; `ideal` removes in proportion to time. */
  readonly cycling?: 'ideal' | 'part-load';
  /** How it takes cold air; `low-temperature` by default. */
  readonly cold?: ColdBehavior;
  /** Coldest intake air that its maker allows, °C. */
  readonly lowestIntakeC?: number;
}

/** A fan that stirs the air of the space. */
export interface FieldFan extends Outlet {
  readonly at: Point;
  /** Degrees clockwise from the plan's +y axis. */
  readonly bearingDeg: number;
  readonly throwM?: number;
  /** As of `FieldMachine`. */
  readonly mixingM2PerS?: number;
  readonly powerW: number;
  /** Share of the time that it runs, 0..1; 1 by default. */
  readonly runShare?: number;
}

/** What stands in the space to dry and stir its air. */
export interface Arrangement {
  readonly machine?: FieldMachine;
  readonly fans?: readonly FieldFan[];
}
