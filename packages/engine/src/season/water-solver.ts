import { type AirBalance, createAirBalance } from './air-balance.ts';
import type { CompiledCase } from './compiled-case.ts';
import { saturationTable, woodTable } from './fast-tables.ts';
import { FILM_SURFACES, WOOD_SITES } from './places.ts';
import { surfacePlaces } from './step-values.ts';

const { PLACES } = surfacePlaces;

/** Places in the arrays of wood and films. Taken out as `stepPlaces` are. */
export const waterPlaces = {
  /**
   * Of one wood site: permeance times area, share of the surface layer in the mean content, rise of that by 1 kg/s,
   * conductance to the core, seconds over the masses; then of the step: flow = base − slope·(vapor pressure of the air),
   * mean content = rest − flow·give.
   */
  WOOD_STRIDE: 10,
  WOOD_G: 0,
  WOOD_SURFACE_SHARE: 1,
  WOOD_GIVE: 2,
  WOOD_CORE_G: 3,
  WOOD_PER_SURFACE_KG: 4,
  WOOD_PER_CORE_KG: 5,
  WOOD_BASE: 6,
  WOOD_SLOPE: 7,
  WOOD_REST: 8,
  /**
   * Of one film surface: conductance, pressure it works towards and that of its coldest part, flow when it dries up
   * within the step, and mode: 0 dry and not condensing, 1 exchanging, 2 dries up.
   */
  FILM_STRIDE: 5,
  FILM_G: 0,
  FILM_PA: 1,
  FILM_COLD_PA: 2,
  FILM_RATE: 3,
  FILM_MODE: 4,
} as const;

const {
  FILM_STRIDE,
  WOOD_CORE_G,
  WOOD_G,
  WOOD_GIVE,
  WOOD_PER_CORE_KG,
  WOOD_PER_SURFACE_KG,
  WOOD_STRIDE,
  WOOD_SURFACE_SHARE,
} = waterPlaces;

/** Constants of the wood for one length of step, and working room. */
export interface WaterSolver {
  readonly seconds: number;
  /** By wood site, `WOOD_STRIDE` places. One array, because each array read in a loop costs its own checks. */
  readonly site: Float64Array;
  readonly balance: AirBalance;
  readonly pressures: Float64Array;
  readonly wood: Float64Array;
  /** Saturation pressure at each place, Pa. */
  readonly placesPa: Float64Array;
  /** By film surface, `FILM_STRIDE` places. */
  readonly film: Float64Array;
  /** Vapor pressure of the air, mean of the step, Pa. */
  vaporPa: number;
  /** Water on its way to the liner, kg. */
  fallingKg: number;
}

export function createWaterSolver(c: CompiledCase, seconds: number, theta: number): WaterSolver {
  const site = new Float64Array(WOOD_SITES.length * WOOD_STRIDE);
  for (let i = 0; i < WOOD_SITES.length; i++) {
    const at = i * WOOD_STRIDE;
    const k = c.woodExchangeKgPerS[i]!;
    const surfaceStore = c.woodSurfaceKg[i]! / (theta * seconds);
    const coreStore = c.woodCoreKg[i]! / (theta * seconds);
    const coreShare = (coreStore * k) / (coreStore + k);
    site[at + WOOD_G] = c.woodKgPerSPa[i]!;
    site[at + WOOD_SURFACE_SHARE] = surfaceStore / (surfaceStore + coreShare);
    site[at + WOOD_GIVE] = 1 / (surfaceStore + coreShare);
    site[at + WOOD_CORE_G] = coreShare;
    site[at + WOOD_PER_SURFACE_KG] = seconds / c.woodSurfaceKg[i]!;
    site[at + WOOD_PER_CORE_KG] = seconds / c.woodCoreKg[i]!;
  }
  return {
    seconds,
    site,
    balance: createAirBalance(c, seconds),
    pressures: saturationTable(),
    wood: woodTable(),
    placesPa: new Float64Array(PLACES),
    film: new Float64Array(FILM_SURFACES.length * FILM_STRIDE),
    vaporPa: 0.5,
    fallingKg: 0.5,
  };
}
