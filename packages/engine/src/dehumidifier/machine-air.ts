import { convert } from '../units/convert.ts';

/**
 * Air flow of a machine of usual make, m³/s, from its capacity: 2.75 cfm per pint/day at 80 °F/60 %, about 10 m³/h per
 * kg/day. For use where the maker's figure is missing.
 *
 * Kernel: unchecked. Source: default in the public model source that carries the generic surface (read).
 * @param ratedKgPerDay capacity at 80 °F/60 %, kg/day
 */
export function usualAirFlowM3PerS(ratedKgPerDay: number): number {
  return ratedKgPerDay * M3_PER_S_PER_KG_PER_DAY;
}

const M3_PER_S_PER_KG_PER_DAY = convert(2.75, 'cfm', 'm3/s') / convert(1, 'pint/day', 'kg/day');
