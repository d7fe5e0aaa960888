export { annualWaveFromMonthlyMeans } from './annual-wave.ts';
export type { SuspendedFloor, SuspendedFloorResult, UnheatedBasement } from './iso13370.ts';
export {
  characteristicDimensionM,
  suspendedFloor,
  underfloorTemperatureC,
  unheatedBasementWPerM2K,
} from './iso13370.ts';
export type { PeriodicCoefficients } from './iso13370-periodic.ts';
export { suspendedFloorPeriodic } from './iso13370-periodic.ts';
export type { GroundWave } from './periodic-wave.ts';
export { periodicGroundWave } from './periodic-wave.ts';
export type { Soil } from './soil-types.ts';
export { periodicDepthM, SOILS, soilDiffusivityM2PerS } from './soil-types.ts';
export { groundSources } from './sources.ts';
export type { HeatCoupling } from './steady-temperature.ts';
export { steadyTemperatureC } from './steady-temperature.ts';
export type { AnnualWave } from './undisturbed.ts';
export { annualDamping, annualDampingDepthM, annualLagDays, undisturbedGroundC } from './undisturbed.ts';
