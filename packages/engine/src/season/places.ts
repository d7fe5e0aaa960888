/** Parts of the framing, in the order of every array by site. */
export const WOOD_SITES = ['joists', 'girder', 'sill'] as const;
/** A place of the framing whose wood moisture is followed. */
export type WoodSite = (typeof WOOD_SITES)[number];

/** Surfaces that water can lie on, in the order of every array by surface. */
export const FILM_SURFACES = ['liner', 'wallAboveGrade', 'wallBelowGrade', 'ducts'] as const;
/** A surface that can carry a film of water. */
export type FilmSurface = (typeof FILM_SURFACES)[number];

/** Surfaces on which the mold index is followed. */
export const MOLD_SURFACES = ['joists', 'girder', 'sill', 'wall'] as const;
/** A surface whose mold index is followed. */
export type MoldSurface = (typeof MOLD_SURFACES)[number];

/** Where water comes from and goes to, in the order of every array by path. Positive into the space. */
export const WATER_PATHS = [
  'outdoorAir',
  'houseAir',
  'supplyAir',
  'openGround',
  'sheet',
  'standingWater',
  'walls',
  'capillary',
  'floor',
  'other',
  'wood',
  'condensate',
  'fog',
  'dehumidifiers',
  'drained',
] as const;
/** A path by which water enters or leaves the air of the space. */
export type WaterPath = (typeof WATER_PATHS)[number];
