import type { Point } from '../geometry/point.ts';
import type { FieldPlan } from './field-plan.ts';
import type { FieldPlace } from './places.ts';

/** What kind of thing gives or takes water; a fit to readings scales those of the ground. */
export type SourceKind = 'ground' | 'wall' | 'outdoor' | 'house' | 'wood' | 'other';

/**
 * Something that draws the humidity of the air toward its own: open ground toward saturation, leaking outdoor air toward
 * outdoors, wood toward its equilibrium. Water into the air = conductance × (its humidity ratio − that of the air).
 */
export interface VaporExchange {
  readonly what: string;
  readonly kind: SourceKind;
  readonly place: FieldPlace;
  /**
   * kg/s per unit of humidity ratio, 0 or more: for each m² of floor, each m of wall or line (`each`), or for the place
   * as a whole, spread over it evenly (`whole`).
   */
  readonly conductanceKgPerS: number;
  readonly per: 'each' | 'whole';
  /** Humidity ratio that it draws the air to, kg/kg. */
  readonly humidityRatio: number;
}

/** The same for heat: ground, floor above, walls. */
export interface HeatExchange {
  readonly what: string;
  readonly place: FieldPlace;
  /** W/K, as `conductanceKgPerS`. */
  readonly conductanceWPerK: number;
  readonly per: 'each' | 'whole';
  readonly temperatureC: number;
}

/** Air that enters (positive) or leaves the space at a place by pressure, from the pressure network or a fan. */
export interface AirLeak {
  readonly what: string;
  readonly place: FieldPlace;
  /** For the place as a whole, spread over it evenly, m³/s; negative leaves with the air that is there. */
  readonly flowM3PerS: number;
  /** Of air that enters. */
  readonly humidityRatio: number;
  readonly temperatureC: number;
}

/** Air that a fan or duct carries from one place of the space to another, past what lies between. */
export interface AirTransfer {
  readonly from: Point;
  readonly to: Point;
  /** m³/s, more than 0. */
  readonly flowM3PerS: number;
  /** Heat of its fan, given off where the air comes out, W. */
  readonly powerW?: number;
}

/** Water or heat given off at a rate that the air does not change: a dryer hose, a condensate leak, a lamp. */
export interface FixedSource {
  readonly what: string;
  readonly place: FieldPlace;
  /** For the place as a whole. */
  readonly waterKgPerS?: number;
  readonly heatW?: number;
}

/** A crawl space as the plan field needs it, all but the machine and fans that stand in it. */
export interface FieldSite {
  readonly plan: FieldPlan;
  /** Pressure of the air, Pa; 101 325 by default. */
  readonly pressurePa?: number;
  readonly vapor: readonly VaporExchange[];
  readonly heat: readonly HeatExchange[];
  /** Together they must come to nothing in every space that walls close off. */
  readonly leaks?: readonly AirLeak[];
  readonly transfers?: readonly AirTransfer[];
  readonly fixed?: readonly FixedSource[];
  /** Temperature difference by which air trades places through openings, K; 0.5 by default. */
  readonly spreadK?: number;
}
