export type { SurfaceCondition } from './condensation.ts';
export {
  MOLD_SURFACE_HUMIDITY,
  minimumSurfaceTemperatureC,
  surfaceCondition,
  surfaceRelativeHumidity,
} from './condensation.ts';
export { surfacesSources } from './sources.ts';
export { LEAST_DIFFERENCE_K, minimumTemperatureFactor, temperatureFactor } from './temperature-factor.ts';
