export type { CrawlNetwork } from './build.ts';
export { crawlNetwork } from './build.ts';
export type { CombustionAppliance, CombustionCaution, CombustionSpace, Draft } from './combustion.ts';
export { combustionCaution } from './combustion.ts';
export type { Assumption, AssumptionKey, ChosenValues } from './crawl-assumptions.ts';
export type {
  CrawlAccessDoor,
  CrawlFace,
  CrawlFacts,
  CrawlGap,
  CrawlVent,
  HouseFacts,
} from './crawl-facts.ts';
export { depressurizationPa, draftLimitPa } from './depressurization.ts';
export type {
  EnhancedInfiltration,
  EnhancedInfiltrationInput,
  Foundation,
  LeakageSplit,
} from './enhanced-single-zone.ts';
export {
  enhancedCrawlWindCoefficient,
  enhancedInfiltration,
  enhancedStackCoefficient,
} from './enhanced-single-zone.ts';
export type { TypicalLeakage } from './leakage-values.ts';
export { typicalLeakage } from './leakage-values.ts';
export type { AirNetwork, AirZone, NetworkFan, NetworkInput, NetworkOpening } from './network.ts';
export { createNetwork } from './network.ts';
export type { NetworkConditions, NetworkState } from './network-state.ts';
export { createNetworkState } from './network-state.ts';
export type { FlowLaw } from './opening.ts';
export {
  flowM3PerS,
  gapLeakageAreaM2,
  holeLeakageAreaM2,
  lawFromBlowerDoor,
  lawFromLeakageArea,
  leakageAreaM2,
  quickAirChangesPerHour,
} from './opening.ts';
export type { ShelterClass, Stories } from './shelter.ts';
export { eavesWindFactor, shelterWindFactor } from './shelter.ts';
export type { BasicInfiltrationInput, StackFlowInput } from './single-zone.ts';
export { basicInfiltrationM3PerS, stackFactor, stackFlowM3PerS } from './single-zone.ts';
export { solveNetwork, solveNetworkByBrackets } from './solve-network.ts';
export { airflowSources } from './sources.ts';
export { wallPressureCoefficient } from './wind-pressure.ts';
