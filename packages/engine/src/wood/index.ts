export { equilibriumMoistureContent, equilibriumRelativeHumidity } from './equilibrium.ts';
export { woodSources } from './sources.ts';
export type { WoodAirInput, WoodHumidityInput } from './wood-in-air.ts';
export { woodEquilibrium, woodHumidity } from './wood-in-air.ts';
