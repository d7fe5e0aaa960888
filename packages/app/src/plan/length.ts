import { units } from '@undercroft/engine';
import { useSettings } from '../settings/settings.ts';

/** Gives a length [m] as a tape shows it, in the units that are set. */
export function useLength(): (meters: number) => string {
  const { units: system } = useSettings();
  return (meters) => units.formatQuantity(meters, 'length', system);
}
