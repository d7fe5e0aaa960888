export type { AirExchange, FixedAirExchange, NetworkAirExchange } from './air-exchange-case.ts';
export type { Closure } from './closure.ts';
export type {
  RepairCombinations,
  RepairEffect,
  RepairSet,
  SeasonOutcome,
  SeasonRepair,
} from './combinations.ts';
export { runCombinations } from './combinations.ts';
export { defaultSeasonCase, woodPart } from './default-case.ts';
export type { SeasonHourly } from './hourly-series.ts';
export type { FilmSurface, MoldSurface, WaterPath, WoodSite } from './places.ts';
export type { SeasonOptions } from './run.ts';
export { runSeason } from './run.ts';
export type { Chance } from './sampling.ts';
export type {
  GroundZone,
  SeasonCase,
  SeasonDucts,
  SeasonFailure,
  SeasonFan,
  SeasonGroundCover,
  SeasonHouse,
  SeasonMachine,
  SeasonSoil,
  SeasonWalls,
  SeasonWeather,
  SeasonWood,
} from './season-case.ts';
export type { SeasonMold, SeasonMonth, SeasonResult } from './season-result.ts';
export { seasonSources } from './sources.ts';
export type { SpaceState } from './state.ts';
export type { FlowTables } from './step-drive.ts';
export type { Influence, Spread, UncertainSeason, UncertaintyOptions, Unknown } from './uncertainty.ts';
export { runUncertainty, usualUnknowns } from './uncertainty.ts';
