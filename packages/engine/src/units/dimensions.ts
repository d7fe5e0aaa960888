import { airAndHeatDimensions } from './air-and-heat-dimensions.ts';
import { spaceDimensions } from './space-dimensions.ts';
import type { DimensionDefinition } from './unit.ts';
import { waterAndOtherDimensions } from './water-and-other-dimensions.ts';

const all = { ...airAndHeatDimensions, ...spaceDimensions, ...waterAndOtherDimensions };

/** Name of a kind of quantity, e.g. `temperature` or `massFlow`. */
export type Dimension = keyof typeof all;

/** Every kind of quantity with its units, by name. Where a unit name fits several kinds, the earlier one is meant. */
export const dimensions: Readonly<Record<Dimension, DimensionDefinition>> = all;

/** Names of all kinds of quantity, in the order in which units are looked up. */
export const dimensionNames = Object.keys(all) as readonly Dimension[];

/** Names of the units of one kind of quantity, the canonical one first. */
export function unitNames(dimension: Dimension): readonly string[] {
  const { canonical, units } = dimensions[dimension];
  return [canonical, ...units.map((unit) => unit.name).filter((name) => name !== canonical)];
}

/** Name of the unit that calculations and stored values of this kind use. */
export function canonicalUnit(dimension: Dimension): string {
  return dimensions[dimension].canonical;
}
