import { EngineError } from '../numerics/engine-error.ts';

/**
 * Throws unless two series of surface conditions can be run: same length, at least one step, and in every step a
 * temperature from -90 to 90 °C and a relative humidity from 0 to 1. Gaps are for the caller to fill or cut.
 * @throws EngineError `bad-input` for the lengths; `not-finite`, `out-of-range` naming the step
 */
export function requireSurfaceSeries(
  temperatureC: ArrayLike<number>,
  relativeHumidity: ArrayLike<number>,
): void {
  if (temperatureC.length !== relativeHumidity.length || temperatureC.length === 0) {
    throw new EngineError(
      'bad-input',
      `surface series need as many temperatures as humidities, at least one; got ${temperatureC.length} and ${relativeHumidity.length}`,
    );
  }
  for (let i = 0; i < temperatureC.length; i++) {
    const t = temperatureC[i]!;
    const h = relativeHumidity[i]!;
    if (!(t >= -90 && t <= 90 && h >= 0 && h <= 1)) {
      throw new EngineError(
        Number.isFinite(t) && Number.isFinite(h) ? 'out-of-range' : 'not-finite',
        `surface series, step ${i}: need a temperature from -90 to 90 °C and a relative humidity from 0 to 1; got ${t} and ${h}. Fill or cut gaps first.`,
      );
    }
  }
}
