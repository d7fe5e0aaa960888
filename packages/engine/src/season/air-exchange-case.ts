import type { NetworkInput } from '../airflow/network.ts';

/** Outdoor air by a rule of thumb or from a measurement, without a pressure network. */
export interface FixedAirExchange {
  readonly kind: 'fixed';
  /** Outdoor air at no temperature difference, air changes per hour. */
  readonly airChangesPerHour: number;
  /** More for each kelvin between outdoors and `referenceC`, 1/(h·K). */
  readonly perKelvin: number;
  readonly referenceC: number;
  /** House air that comes down through the floor, air changes per hour. */
  readonly houseAirChangesPerHour: number;
}

/** Air by the pressure network of outdoors, crawl space and house, in each hour's weather. */
export interface NetworkAirExchange {
  readonly kind: 'network';
  readonly network: NetworkInput;
}

/** Where the air of the space comes from. */
export type AirExchange = FixedAirExchange | NetworkAirExchange;
