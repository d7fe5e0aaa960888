import type { ColorName } from '../../look/tokens.ts';

/** Relative humidities between the bands of color of every map of the air. */
export const BAND_EDGES = [0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95] as const;
/** Humidities that decide, drawn as lines. */
export const THRESHOLDS = [0.6, 0.7, 0.8] as const;

/** The color of a band, from 0 for the driest. */
export const bandColor = (band: number) => `field${band}` as ColorName;

/** The color of a relative humidity on every map of the air. */
export function fieldColor(relativeHumidity: number): ColorName {
  return bandColor(BAND_EDGES.filter((edge) => relativeHumidity >= edge).length);
}
