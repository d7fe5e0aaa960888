import type { CompiledCase } from './compiled-case.ts';
import { loadSoil } from './heat-step.ts';
import { loopRoom } from './loop-room.ts';
import { FILM_SURFACES, WOOD_SITES } from './places.ts';
import { waterPlaces } from './store-places.ts';

const { balance, c, film, parts, step, values, wood } = loopRoom;
const {
  FILM_M3_PER_S,
  FILM_MOST_KG,
  FILM_STRIDE,
  WOOD_CORE_G,
  WOOD_G,
  WOOD_GIVE,
  WOOD_HOUSE_WEIGHT,
  WOOD_OUTDOOR_WEIGHT,
  WOOD_PER_CORE_KG,
  WOOD_PER_SURFACE_KG,
  WOOD_STRIDE,
  WOOD_SURFACE_KG,
  WOOD_SURFACE_SHARE,
} = waterPlaces;

/**
 * Puts a case into the working room, for steps of `seconds`.
 * @param theta 0.5 centered in time, 1 fully implicit
 */
export function loadCase(compiled: CompiledCase, seconds: number, theta: number): void {
  Object.assign(c, compiled.numbers);
  values.fill(0);
  step.seconds = seconds;
  balance.capacity = compiled.numbers.airMassKg / seconds;
  parts.machines = compiled.machines;
  parts.removal = new Float64Array(compiled.machines.length);
  parts.capillaryWall = compiled.capillaryWall;
  loadSoil(compiled, seconds, theta);
  for (let i = 0; i < WOOD_SITES.length; i++) {
    const at = i * WOOD_STRIDE;
    const surfaceKg = compiled.woodSurfaceKg[i]!;
    const coreKg = compiled.woodCoreKg[i]!;
    const k = compiled.woodExchangeKgPerS[i]!;
    const surfaceStore = surfaceKg / (theta * seconds);
    const coreStore = coreKg / (theta * seconds);
    const coreShare = (coreStore * k) / (coreStore + k);
    wood[at + WOOD_G] = compiled.woodKgPerSPa[i]!;
    wood[at + WOOD_SURFACE_SHARE] = surfaceStore / (surfaceStore + coreShare);
    wood[at + WOOD_GIVE] = 1 / (surfaceStore + coreShare);
    wood[at + WOOD_CORE_G] = coreShare;
    wood[at + WOOD_PER_SURFACE_KG] = seconds / surfaceKg;
    wood[at + WOOD_PER_CORE_KG] = seconds / coreKg;
    wood[at + WOOD_HOUSE_WEIGHT] = compiled.woodHouseWeight[i]!;
    wood[at + WOOD_OUTDOOR_WEIGHT] = compiled.woodOutdoorWeight[i]!;
    wood[at + WOOD_SURFACE_KG] = surfaceKg;
  }
  for (let j = 0; j < FILM_SURFACES.length; j++) {
    film[j * FILM_STRIDE + FILM_M3_PER_S] = compiled.filmM3PerS[j]!;
    film[j * FILM_STRIDE + FILM_MOST_KG] = compiled.filmCapacityKg[j]!;
  }
}
