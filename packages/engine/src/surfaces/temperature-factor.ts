import type { Figure, Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { saturationPressurePa } from '../psychrometrics/saturation-pressure.ts';
import { minimumSurfaceTemperatureC } from './condensation.ts';

/** Least difference between inside and outside for a meaningful factor, K. Common practice, no source. */
export const LEAST_DIFFERENCE_K = 2;

/**
 * Temperature factor fRsi of a surface: 0 when it is as cold as the outside, 1 when as warm as the inside. In a crawl
 * space the inside is the air of the zone; the outside is whatever cools the surface: soil, outdoor air, or the
 * medium in a duct or pipe.
 *
 * Null, with a notice, when inside and outside are less than 2 K apart. A factor outside 0..1 is returned with a
 * notice: something else heats or cools the surface, or a reading is wrong.
 * Source: ISO 13788:2012, fRsi = (ts - te) / (ti - te).
 * @throws EngineError `not-finite` or `out-of-range`; temperatures from −100 to 200 °C
 */
export function temperatureFactor(readings: {
  readonly surfaceTemperatureC: number;
  readonly insideTemperatureC: number;
  readonly outsideTemperatureC: number;
}): Figure<number | null> {
  const ts = requireRange('surface temperature in °C', readings.surfaceTemperatureC, -100, 200);
  const ti = requireRange('inside temperature in °C', readings.insideTemperatureC, -100, 200);
  const te = requireRange('outside temperature in °C', readings.outsideTemperatureC, -100, 200);
  const close = tooClose(ti, te);
  if (close) return { value: null, notices: [close] };
  const value = (ts - te) / (ti - te);
  const notices: Notice[] = [];
  if (value < 0 || value > 1) {
    notices.push({
      code: 'outside-range',
      message:
        `The surface at ${ts} °C is not between ${te} °C outside and ${ti} °C inside: ` +
        'something else heats or cools it, or a reading is wrong.',
    });
  }
  return { value, notices };
}

/**
 * Least temperature factor that keeps the surface humidity at or below a limit for given air inside and outside.
 *
 * Null, with a notice, when inside and outside are less than 2 K apart, and when the air is so dry that no surface
 * reaches the limit. Above 1 no insulation helps, the air itself is too humid; below 0 even a surface at the outside
 * temperature is safe. Both come with a notice.
 * Source: ISO 13788:2012. For comparison: 0.70 in DIN 4108-2 (quoted), 0.75 in BRE IP 1/06 (from memory).
 * @throws EngineError `not-finite` or `out-of-range`; temperatures −100 to 200 °C, relative humidity 0..1, limit 0.01..1
 */
export function minimumTemperatureFactor(
  readings: {
    readonly insideTemperatureC: number;
    /** Of the inside air, fraction 0..1. */
    readonly relativeHumidity: number;
    readonly outsideTemperatureC: number;
  },
  surfaceHumidityLimit: number,
): Figure<number | null> {
  const ti = requireRange('inside temperature in °C', readings.insideTemperatureC, -100, 200);
  const te = requireRange('outside temperature in °C', readings.outsideTemperatureC, -100, 200);
  const relativeHumidity = requireRange('relative humidity as a fraction', readings.relativeHumidity, 0, 1);
  requireRange('surface humidity limit as a fraction', surfaceHumidityLimit, 0.01, 1);
  const close = tooClose(ti, te);
  if (close) return { value: null, notices: [close] };

  const coldest = minimumSurfaceTemperatureC(
    relativeHumidity * saturationPressurePa(ti),
    surfaceHumidityLimit,
  );
  if (Number.isNaN(coldest)) {
    const message = 'The inside air is so dry that no surface reaches the humidity limit.';
    return { value: null, notices: [{ code: 'no-limit', message }] };
  }
  const value = (coldest - te) / (ti - te);
  const notices: Notice[] = [];
  if (te > ti) {
    notices.push({
      code: 'outside-warmer',
      message: `The outside at ${te} °C is warmer than the inside at ${ti} °C: it cannot cool the surface.`,
    });
  } else if (value > 1) {
    notices.push({
      code: 'air-too-humid',
      message: `The air itself exceeds the limit of ${percent(surfaceHumidityLimit)}: insulation alone cannot help.`,
    });
  } else if (value < 0) {
    notices.push({
      code: 'always-below-limit',
      message: `Even a surface at ${te} °C stays below the limit of ${percent(surfaceHumidityLimit)}.`,
    });
  }
  return { value, notices };
}

function percent(fraction: number): string {
  return `${Math.round(fraction * 100)} % relative humidity`;
}

function tooClose(insideC: number, outsideC: number): Notice | undefined {
  if (Math.abs(insideC - outsideC) >= LEAST_DIFFERENCE_K) return undefined;
  return {
    code: 'temperatures-too-close',
    message:
      `Inside (${insideC} °C) and outside (${outsideC} °C) are less than ${LEAST_DIFFERENCE_K} K apart: ` +
      'a temperature factor would mean nothing.',
  };
}
