import { VAPOR_DIFFUSIVITY_M2_PER_S } from './ground-evaporation.ts';

/** How a liner was laid, as seen on site, with the share of ground that it leaves open. */
export interface Workmanship {
  readonly key: 'sealed' | 'taped-loose-piers' | 'laid-and-lapped' | 'torn-or-short';
  readonly title: string;
  /** Open share of the ground, 0..1: geometric middle of the range. */
  readonly openFraction: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Open share of an installed liner by its workmanship. Common practice, no source: no measurement of an installed liner
 * was found, so the range matters more than the middle.
 */
export const WORKMANSHIP: readonly Workmanship[] = [
  {
    key: 'sealed',
    title: 'Sealed, mastic at the piers, fixed to the wall',
    openFraction: 0.0022,
    low: 0.001,
    high: 0.005,
  },
  {
    key: 'taped-loose-piers',
    title: 'Taped, cut loosely round the piers',
    openFraction: 0.014,
    low: 0.01,
    high: 0.02,
  },
  {
    key: 'laid-and-lapped',
    title: 'Laid and lapped, not fixed',
    openFraction: 0.049,
    low: 0.03,
    high: 0.08,
  },
  {
    key: 'torn-or-short',
    title: 'Torn, or short of the edges',
    openFraction: 0.17,
    low: 0.1,
    high: 0.3,
  },
];

/** The workmanship of a key. */
export function workmanship(key: Workmanship['key']): Workmanship {
  return WORKMANSHIP.find((grade) => grade.key === key)!;
}

/** Factor by which air pumped through seams multiplies their diffusion. Common practice, no source. */
export const SEAM_PUMPING = { value: 3, low: 2, high: 5 } as const;

/**
 * Permeance of a liner with open spots: sheet and open ground side by side, by their shares. A thousandth of open ground
 * passes as much as a whole sheet of 6 mil: judge a liner by its open share, not by its thickness.
 *
 * Kernel: unchecked; any one unit of permeance for all.
 * @param openFraction open share of the area, 0..1
 */
export function linerPermeance(openFraction: number, sheetPermeance: number, openPermeance: number): number {
  return (1 - openFraction) * sheetPermeance + openFraction * openPermeance;
}

/**
 * Vapor that diffuses through the slot of an open lap, kg/(m·s) per meter of seam; not yet multiplied by pumping.
 *
 * Kernel: unchecked; lap above 0. Source: diffusion through still air in a slot; computed.
 * @param gapM mean opening between the sheets, m
 * @param lapM width of the lap, the length the vapor has to go, m
 * @param densityDifference vapor density below the liner less that of the air, kg/m³
 */
export function seamDiffusionKgPerMS(gapM: number, lapM: number, densityDifference: number): number {
  return VAPOR_DIFFUSIVITY_M2_PER_S * (gapM / lapM) * densityDifference;
}

/**
 * Open ground, m², along a liner edge or round a pier or pipe: length times width of the gap. The soil under a narrow gap
 * is fed from the sides, so it counts as full open ground; a narrow gap may pass a little more still, because the air
 * film over it is thin.
 * Kernel: unchecked.
 */
export function edgeGapAreaM2(lengthM: number, gapM: number): number {
  return lengthM * gapM;
}
