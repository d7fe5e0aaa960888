import { convert } from '../units/convert.ts';

/** Vapor retarder class of the US residential code. */
export type RetarderClass = 'I' | 'II' | 'III' | 'none';

/** Permeance in kg/(m²·s·Pa) from US perms (1 perm = 57.2135 ng/(m²·s·Pa)). */
export function permeanceFromPerms(perms: number): number {
  return 1e-12 * convert(perms, 'perm', 'ng/(s m2 Pa)');
}

/** US perms from permeance in kg/(m²·s·Pa). */
export function permsFromPermeance(permeance: number): number {
  return convert(1e12 * permeance, 'ng/(s m2 Pa)', 'perm');
}

/** Vapor permeability of still air that sd values refer to, kg/(m·s·Pa): ISO 13788, from memory. */
const STILL_AIR_KG_PER_M_S_PA = 2e-10;

/**
 * Thickness of still air, m, that holds vapor back as much as a layer of this permeance (sd value).
 * Endless for a tight layer. Unchecked.
 */
export function equivalentAirThicknessM(permeance: number): number {
  return STILL_AIR_KG_PER_M_S_PA / permeance;
}

/**
 * Permeance of layers on top of each other: the reciprocals add. In whatever unit they come; 0 when one layer is tight,
 * endless for no layers. Kernel: unchecked.
 */
export function seriesPermeance(layers: readonly number[]): number {
  let resistance = 0;
  for (const permeance of layers) resistance += 1 / permeance;
  return 1 / resistance;
}

/**
 * Vapor retarder class of a layer by its permeance: I up to 0.1 perm, II up to 1, III up to 10, none beyond. A permeance
 * that equals a limit belongs to the better class.
 *
 * Source: IRC R702.7, ASTM E96 desiccant method; class limits seen in secondary pages. Values by the water method run
 * higher and do not count.
 * @param permeance kg/(m²·s·Pa)
 */
export function retarderClass(permeance: number): RetarderClass {
  const perms = permsFromPermeance(permeance);
  // A rounding of the conversion must not move a sheet of exactly 0.1 perm out of its class.
  const within = (limit: number) => perms <= limit * (1 + 1e-9);
  if (within(0.1)) return 'I';
  if (within(1)) return 'II';
  return within(10) ? 'III' : 'none';
}
