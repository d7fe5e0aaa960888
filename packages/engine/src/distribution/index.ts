export type { Arrangement, FieldFan, FieldMachine } from './arrangement.ts';
export type { ExcludedPlace } from './arrangement-candidates.ts';
export type { ArrangementOptions, ArrangementPrices } from './arrangement-options.ts';
export { USUAL_PRICES } from './arrangement-options.ts';
export type { ArrangementFigures, RankedArrangement } from './arrangement-rank.ts';
export { arrangementOrder, DRY_ENOUGH } from './arrangement-rank.ts';
export type { ArrangementSearch } from './arrangement-search.ts';
export { searchArrangements } from './arrangement-search.ts';
export type { DryingAge } from './drying-age.ts';
export { dryingAge } from './drying-age.ts';
export type { FieldBand } from './field-band.ts';
export { fieldBand } from './field-band.ts';
export type { FieldDay, FieldDayOptions, FieldDayStep } from './field-day.ts';
export { fieldDay } from './field-day.ts';
export type { FieldGrid } from './field-grid.ts';
export type { FieldMaps } from './field-maps.ts';
export { fieldMaps } from './field-maps.ts';
export type { FieldModel } from './field-model.ts';
export { fieldModel } from './field-model.ts';
export type { FieldPlan } from './field-plan.ts';
export type { DistributionSignature, FieldNumbers, FieldResult, FloorPart } from './field-result.ts';
export { fieldResult } from './field-result.ts';
export type {
  AirLeak,
  AirTransfer,
  FieldSite,
  FixedSource,
  HeatExchange,
  SourceKind,
  VaporExchange,
} from './field-site.ts';
export type { FieldFit, FieldReading, FitOptions, FittedFigure } from './fit-readings.ts';
export { fitReadings } from './fit-readings.ts';
export type { Outlet, Throw } from './jet.ts';
export { freeThrowM, jetMomentumN, THROW_CONSTANTS, throwInSpace } from './jet.ts';
export type { MachineAtWork } from './machine-closure.ts';
export type { FieldMesh } from './mesh.ts';
export { CELL_M, FINE_CELL_M } from './mesh.ts';
export type { MixingBand } from './mixing.ts';
export { backgroundMixing, jetMixingM2PerS, openingExchangeM2PerS } from './mixing.ts';
export type { JetInSpace, MovedAir } from './moved-air.ts';
export { movedAir } from './moved-air.ts';
export type { FieldPlace } from './places.ts';
export type { PlacingRule, PlacingSite } from './placing-rules.ts';
export { USUAL_PLACING } from './placing-rules.ts';
export { meanShare, reachLengthM, shareAtFarWall } from './reach.ts';
export { distributionSources } from './sources.ts';
export type { SteadyOptions } from './steady-field.ts';
export { steadyField } from './steady-field.ts';
export type { MachineOutcome, SteadyField } from './steady-state.ts';
export { validityNotices } from './validity.ts';
