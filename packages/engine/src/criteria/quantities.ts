import { defectSignQuantities } from './quantities/defect-signs.ts';
import { drainageQuantities } from './quantities/drainage.ts';
import { equipmentQuantities } from './quantities/equipment.ts';
import { groundAndSiteQuantities } from './quantities/ground-and-site.ts';
import { linerQuantities } from './quantities/liner.ts';
import { soilGasQuantities } from './quantities/soil-gas.ts';
import { ventAndAccessQuantities } from './quantities/vents-and-access.ts';
import { woodAndEnvelopeQuantities } from './quantities/wood-and-envelope.ts';
import type { Quantity, QuantityEntry } from './quantity.ts';

const entries = {
  ...ventAndAccessQuantities,
  ...groundAndSiteQuantities,
  ...linerQuantities,
  ...drainageQuantities,
  ...equipmentQuantities,
  ...woodAndEnvelopeQuantities,
  ...soilGasQuantities,
  ...defectSignQuantities,
};

/** Name of a quantity that criteria or proofs of defects judge. */
export type QuantityKey = keyof typeof entries;

/** Every quantity that a criterion or the proof of a defect can ask for, by key. */
export const quantities: Readonly<Record<QuantityKey, Quantity>> = Object.fromEntries(
  Object.entries<QuantityEntry>(entries).map(([key, entry]) => [key, { key, ...entry }]),
) as Record<QuantityKey, Quantity>;

/** The quantity of that name, or undefined when nobody registered it. */
export function findQuantity(key: string): Quantity | undefined {
  return Object.hasOwn(quantities, key) ? quantities[key as QuantityKey] : undefined;
}
