export type { CodeComparison, CodeOption, OptionAir } from './code-alternatives.ts';
export { codeAlternatives } from './code-alternatives.ts';
export type { DesignDay, DesignLoad, LabelNeed } from './design-load.ts';
export { designLoad, labelCapacityKgPerDay, RUN_MAX } from './design-load.ts';
export type { ColdBehavior } from './frost.ts';
export { coldFactor, coldNotices } from './frost.ts';
export { CONDENSATION_HEAT_J_PER_KG, dehumidifierHeatW, runningPowerW } from './heat.ts';
export { usualAirFlowM3PerS } from './machine-air.ts';
export type { EfficiencyFloor, MachineKind } from './minimum-efficiency.ts';
export { EFFICIENCY_FLOORS, efficiencyFloor } from './minimum-efficiency.ts';
export type { HumidistatCycle } from './part-load.ts';
export {
  HUMIDISTAT_DIFFERENTIAL,
  humidistatCycle,
  MINIMUM_OFF_S,
  partLoadFactor,
  runFraction,
  shortCycleFactor,
} from './part-load.ts';
export type { PullDown } from './pull-down.ts';
export {
  PULL_DOWN_DAYS,
  pullDown,
  slabDryingTimeS,
  slabWaterLeft,
  storedWaterKg,
  WET_BLOCK_KG_PER_M2,
  WOOD_DIFFUSIVITY_M2_PER_S,
} from './pull-down.ts';
export type { RatingPoint, RatingPointKey } from './rating-points.ts';
export { convertCapacity, convertEfficiency, RATING_POINTS, ratingPoint } from './rating-points.ts';
export type { ListedMachine, SizedMachine, Sizing, SizingNeed } from './size.ts';
export { sizeDehumidifier } from './size.ts';
export { dehumidifierSources } from './sources.ts';
export type { Performance, SurfaceKey } from './surfaces.ts';
export { performanceAt, relativeCapacity, relativeEfficiency } from './surfaces.ts';
