import type { QuantityInput } from './calculator.ts';

/** Air temperatures that a crawl space, a house or the outdoors can have. */
export const airTemperature: QuantityInput = {
  key: 'temperature',
  title: 'air temperature',
  dimension: 'temperature',
  min: -50,
  max: 60,
};

/** Relative humidity of air. */
export const airRelativeHumidity: QuantityInput = {
  key: 'relativeHumidity',
  title: 'relative humidity of the air',
  dimension: 'relativeHumidity',
  min: 0,
  max: 1,
};
