/**
 * Throw constants K_c of outlets by their kind. Source: ASHRAE Handbook - Fundamentals, chapter on space air diffusion,
 * table 1 (read in a text copy); generic values, good to some tenths.
 */
export const THROW_CONSTANTS = {
  'grille-straight': 5.7,
  'grille-wide': 4.2,
  'sidewall-low': 4.5,
  'sidewall-low-wide': 3,
  baseboard: 4,
  'baseboard-wide': 2,
  'floor-grille': 4.7,
  'floor-grille-wide': 1.6,
  'free-slot': 3.9,
} as const;

/** A jet against the open air of a room ends where its middle has slowed to this, m/s. */
const TERMINAL_M_PER_S = 0.25;
/** Share of the computed throw that is left at so low a speed (zone 4). */
const ZONE_4_SHARE = 0.7;
/** A jet in a low space is stopped by its own return flow after this many heights; 3 to 4 are reported. */
const HEIGHTS = 4;
/** Nearer than this to an obstacle an outlet makes no jet, m. Common practice, no source. */
const LEAST_RUN_M = 0.5;

/** What makes a jet. */
export interface Outlet {
  readonly flowM3PerS: number;
  /** Free area, m². */
  readonly outletM2: number;
  /** K_c; see `THROW_CONSTANTS`. */
  readonly throwConstant: number;
}

/** Speed in the middle of a jet, m/s, at a distance from the outlet. Kernel; source as `THROW_CONSTANTS`, eq. 2. */
export function jetSpeedMPerS({ flowM3PerS, outletM2, throwConstant }: Outlet, distanceM: number): number {
  return Math.min(flowM3PerS / outletM2, (throwConstant * flowM3PerS) / (distanceM * Math.sqrt(outletM2)));
}

/**
 * Distance, m, at which a free jet in a room has slowed to 0.25 m/s, cut by the 0.7 of that zone.
 * Kernel: unchecked. Source: as `THROW_CONSTANTS`.
 */
export function freeThrowM({ flowM3PerS, outletM2, throwConstant }: Outlet): number {
  return (ZONE_4_SHARE * throwConstant * flowM3PerS) / (TERMINAL_M_PER_S * Math.sqrt(outletM2));
}

/**
 * Air that a jet carries along at a distance, m³/s: what it has drawn in on its way, at least its own.
 * Kernel: unchecked. Source: entrainment ratio 2X/(K_c √A), as `THROW_CONSTANTS`.
 */
export function jetFlowM3PerS({ flowM3PerS, outletM2, throwConstant }: Outlet, distanceM: number): number {
  return flowM3PerS * Math.max(1, (2 * distanceM) / (throwConstant * Math.sqrt(outletM2)));
}

/** How far a jet reaches and what ends it. */
export interface Throw {
  readonly throwM: number;
  readonly endedBy: 'speed' | 'low-space' | 'obstacle' | 'outlet-blocked';
}

/**
 * Reach of a jet in a crawl space: the least of its throw in a room, four heights of the space, and the way to the first
 * obstacle that fills half the height; nothing at all when that obstacle is nearer than 0.5 m.
 *
 * Source: throw as `freeThrowM`; confinement after Nielsen and Awbi, from memory.
 * @param heightM clear height at the outlet
 * @param freeRunM way to the first obstacle, m
 */
export function throwInSpace(outlet: Outlet, heightM: number, freeRunM: number): Throw {
  if (freeRunM < LEAST_RUN_M) return { throwM: 0, endedBy: 'outlet-blocked' };
  const bySpeed = freeThrowM(outlet);
  const byHeight = HEIGHTS * heightM;
  if (freeRunM <= Math.min(bySpeed, byHeight)) return { throwM: freeRunM, endedBy: 'obstacle' };
  return bySpeed <= byHeight
    ? { throwM: bySpeed, endedBy: 'speed' }
    : { throwM: byHeight, endedBy: 'low-space' };
}

/** Momentum flow of an outlet, N: with it, not with the air flow, one compares how outlets mix. Kernel. */
export function jetMomentumN({ flowM3PerS, outletM2 }: Outlet, airKgPerM3: number): number {
  return (airKgPerM3 * flowM3PerS * flowM3PerS) / outletM2;
}
