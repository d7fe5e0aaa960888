import { FILM_SURFACES, WOOD_SITES } from './places.ts';

/** Most layers of soil that the working room holds. */
export const MOST_LAYERS = 100;

/** Places of one soil layer. Taken out as `stepPlaces` are. */
export const soilPlaces = {
  SOIL_STRIDE: 9,
  /** Heat capacity over theta·dt, W/(m²·K). */
  SOIL_STORE: 0,
  /** Steady, cosine and sine parts of lateral and deep heat, W/m². */
  SOIL_STEADY: 1,
  SOIL_COSINE: 2,
  SOIL_SINE: 3,
  /** Mean temperature of the layer = give·right side + pass·mean of the layer above. */
  SOIL_GIVE: 4,
  SOIL_PASS: 5,
  /** Lateral coupling, W/(m²·K). */
  SOIL_LATERAL: 6,
  SOIL_C: 7,
  SOIL_RIGHT: 8,
} as const;

/** Places of one wood site and of one film surface. Taken out as `stepPlaces` are. */
export const waterPlaces = {
  WOOD_STRIDE: 14,
  /** Permeance times area, share of the surface layer in the mean content, rise of that by 1 kg/s. */
  WOOD_G: 0,
  WOOD_SURFACE_SHARE: 1,
  WOOD_GIVE: 2,
  /** Conductance to the core, and seconds over the masses. */
  WOOD_CORE_G: 3,
  WOOD_PER_SURFACE_KG: 4,
  WOOD_PER_CORE_KG: 5,
  /** Of the step: flow = base − slope·(vapor pressure of the air), mean content = rest − flow·give. */
  WOOD_BASE: 6,
  WOOD_SLOPE: 7,
  WOOD_REST: 8,
  /** Moisture content of surface layer and core. */
  WOOD_SURFACE: 9,
  WOOD_CORE: 10,
  WOOD_HOUSE_WEIGHT: 11,
  WOOD_OUTDOOR_WEIGHT: 12,
  WOOD_SURFACE_KG: 13,
  FILM_STRIDE: 8,
  /** Conductance of the step, pressure it works towards and that of its coldest part. */
  FILM_G: 0,
  FILM_PA: 1,
  FILM_COLD_PA: 2,
  /** Flow when it dries up within the step. */
  FILM_RATE: 3,
  /** 0 dry and not condensing, 1 exchanging, 2 dries up. */
  FILM_MODE: 4,
  /** Area times film coefficient, m³/s; most that it holds and what it holds, kg. */
  FILM_M3_PER_S: 5,
  FILM_MOST_KG: 6,
  FILM_KG: 7,
} as const;

export const SOIL_LENGTH = MOST_LAYERS * soilPlaces.SOIL_STRIDE;
export const WOOD_LENGTH = WOOD_SITES.length * waterPlaces.WOOD_STRIDE;
export const FILMS_LENGTH = FILM_SURFACES.length * waterPlaces.FILM_STRIDE;
