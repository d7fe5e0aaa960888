import type { Notice } from '../numerics/notice.ts';
import type { Ending } from '../numerics/solution.ts';
import type { Spread } from './band.ts';
import type { BudgetInput } from './budget-input.ts';
import type { PathInput } from './path-model.ts';

/** One path of a budget with its flow; positive wets the air of the space. */
export interface BudgetPath {
  readonly key: string;
  readonly title: string;
  readonly kgPerDay: number;
  /** Lowest and highest flow over the ranges of the path's own inputs, the air being as it is. */
  readonly low: number;
  readonly high: number;
  /** True where any of its inputs was not measured. */
  readonly assumed: boolean;
  /** The calculation in words, what goes into it, and the source it rests on. */
  readonly formula: string;
  readonly sourceId: string;
  readonly inputs: readonly PathInput[];
}

/** The balance of water in the air of one crawl space in one state. */
export interface MoistureBudget {
  readonly state: BudgetInput['state']['kind'];
  readonly paths: readonly BudgetPath[];
  /** Sum of the paths that bring water, and of those that take it, both 0 or more. */
  readonly totalInKgPerDay: number;
  readonly removedKgPerDay: number;
  readonly totalIn: Spread;
  /**
   * Read state: water that appears without a path (positive: an unseen source, or wood and masonry drying) or that the
   * paths bring and the air does not keep (negative: an unseen way out, or wood and masonry taking it up). Steady state: 0.
   */
  readonly unexplainedKgPerDay: number;
  /** Its ranges, the reading of the air included; read state only. */
  readonly unexplained?: Spread;
  readonly airTemperatureC: number;
  readonly humidityRatio: number;
  readonly relativeHumidity: number;
  readonly dewPointC: number;
  /** Humidity ratio that was solved for, and the range of the relative humidity; steady state only. */
  readonly steadyHumidityRatio?: number;
  readonly relativeHumiditySpread?: Spread;
  /** Share of the time that a humidistat machine has to run, part load included; steady state only. */
  readonly machineRunFraction?: number;
  /** Vapor that the house gets from the space in excess of its own, where air goes up; 0 otherwise. */
  readonly toHouseKgPerDay: number;
  /** Sum of all paths and of what is unexplained: 0 but for rounding. */
  readonly closureKgPerDay: number;
  /** How the search for the steady humidity ended; steady state only. */
  readonly ending?: Ending;
  readonly notices: readonly Notice[];
}
