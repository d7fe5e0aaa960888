/** Parts of the framing, in the order of every array by site. */
export const WOOD_SITES = ['joists', 'girder', 'sill'] as const;
export type WoodSite = (typeof WOOD_SITES)[number];

/** Surfaces that water can lie on, in the order of every array by surface. */
export const FILM_SURFACES = ['liner', 'wallAboveGrade', 'wallBelowGrade', 'ducts'] as const;
export type FilmSurface = (typeof FILM_SURFACES)[number];

/** Surfaces on which the mold index is followed. */
export const MOLD_SURFACES = ['joists', 'girder', 'sill', 'wall'] as const;
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
export type WaterPath = (typeof WATER_PATHS)[number];

/** Where heat comes from and goes to. Positive into the space (air and soil together). */
export const HEAT_PATHS = [
  'outdoorAir',
  'houseAir',
  'supplyAir',
  'floor',
  'wallsAboveGrade',
  'wallsBelowGrade',
  'ducts',
  'groundAround',
  'deepGround',
  'fans',
  'machines',
  'condensing',
  'evaporating',
] as const;
export type HeatPath = (typeof HEAT_PATHS)[number];
