import type { Band } from './band.ts';
import { moistureSources } from './sources.ts';

/** Water that enters by use or by fault, to be entered by hand. */
export interface TypicalSource {
  readonly key: string;
  readonly title: string;
  /** Water per event, kg. */
  readonly kgPerEvent: Band;
  readonly sourceId: string;
}

/** Amounts to start from when a dryer duct ends, or a pipe drips, under the floor. */
export const TYPICAL_SOURCES: readonly TypicalSource[] = [
  {
    key: 'clothes-dryer-load',
    title: 'Clothes dryer that ends in the space, per load',
    // Range: half and one and a half loads; common practice.
    kgPerEvent: { value: 2, low: 1, high: 3, assumed: true },
    sourceId: moistureSources.sourceTables.id,
  },
];

/**
 * Humidity ratio of air that leaks from a cooling supply duct, kg/kg. Such a leak dries the space: enter it as
 * `otherAir`. Common practice, no source.
 */
export const COOLING_SUPPLY_HUMIDITY_RATIO: Band = {
  value: 0.009,
  low: 0.0085,
  high: 0.0095,
  assumed: true,
};
