export type { Band, Spread } from './band.ts';
export { known } from './band.ts';
export { moistureBudget } from './budget.ts';
export type {
  AirStream,
  BudgetInput,
  BudgetState,
  DampMasonry,
  Dehumidifier,
  EnteredSource,
  LinedGround,
  LinerGap,
  LinerSeam,
  OpenGround,
  WaterSurface,
  WickingMasonry,
} from './budget-input.ts';
export type { BudgetPath, MoistureBudget } from './budget-result.ts';
export { condensationKgPerM2S } from './condensation.ts';
export { standardAirKgPerM3 } from './crawl-air.ts';
export type { GroundSurface } from './ground-evaporation.ts';
export {
  dryLayerResistanceSPerM,
  GROUND_SURFACES,
  groundEvaporationKgPerM2S,
  groundSurface,
  openGroundPermeance,
  SURFACE_TRANSFER_M_PER_S,
  surfaceTransferMPerS,
  VAPOR_DIFFUSIVITY_M2_PER_S,
} from './ground-evaporation.ts';
export type { Workmanship } from './liner.ts';
export {
  edgeGapAreaM2,
  linerPermeance,
  SEAM_PUMPING,
  seamDiffusionKgPerMS,
  WORKMANSHIP,
  workmanship,
} from './liner.ts';
export type { TypicalSource } from './other-sources.ts';
export { COOLING_SUPPLY_HUMIDITY_RATIO, TYPICAL_SOURCES } from './other-sources.ts';
export type { PathInput } from './path-model.ts';
export type { RetarderClass } from './permeance.ts';
export {
  equivalentAirThicknessM,
  permeanceFromPerms,
  permsFromPermeance,
  retarderClass,
  seriesPermeance,
} from './permeance.ts';
export type { Layer } from './sheets.ts';
export { LAYERS, layerPermeance } from './sheets.ts';
export { moistureSources } from './sources.ts';
export {
  saturationVaporDensityKgPerM3,
  VAPOR_GAS_CONSTANT,
  vaporDensityKgPerM3,
} from './vapor-density.ts';
export type { CapillaryWall } from './wall.ts';
export { asWaterMPerS, risingDampHeightM, risingDampKgPerMS, wallVaporKgPerS } from './wall.ts';
export { waterEvaporationKgPerM2S } from './water-surface.ts';
