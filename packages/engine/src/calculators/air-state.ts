import type { Notice } from '../numerics/notice.ts';
import { airState } from '../psychrometrics/air-state.ts';
import { psychrometricsSources } from '../psychrometrics/sources.ts';
import { pressureAtAltitudePa } from '../psychrometrics/standard-pressure.ts';
import { airRelativeHumidity, airTemperature } from './air-inputs.ts';
import type { Calculator, ResultValue } from './calculator.ts';

/** Dew point and the other properties of air from a hygrometer reading. */
export const airStateCalculator: Calculator = {
  name: 'air-state',
  title: 'Air from temperature and humidity',
  answers: 'How much water does this air hold, and at which temperature does it begin to condense?',
  inputs: [
    airTemperature,
    airRelativeHumidity,
    {
      key: 'altitude',
      title: 'altitude above sea level',
      dimension: 'length',
      min: 0,
      max: 5000,
      default: 0,
    },
  ],
  results: [
    { key: 'humidityRatio', title: 'humidity ratio', dimension: 'humidityRatio' },
    { key: 'dewPoint', title: 'dew point', dimension: 'temperature' },
    { key: 'wetBulb', title: 'wet bulb', dimension: 'temperature' },
    { key: 'enthalpy', title: 'enthalpy', dimension: 'enthalpy' },
    { key: 'specificVolume', title: 'specific volume', dimension: 'specificVolume' },
    { key: 'vaporPressure', title: 'vapor pressure', dimension: 'pressure' },
  ],
  sources: [psychrometricsSources.ashraeFundamentals],
  run(inputs) {
    const state = airState({
      temperatureC: inputs.number('temperature'),
      relativeHumidity: inputs.number('relativeHumidity'),
      pressurePa: pressureAtAltitudePa(inputs.number('altitude')),
    });
    const dewPoint = dewPointOrNone(state.dewPointC);
    return {
      results: {
        humidityRatio: state.humidityRatio,
        dewPoint: dewPoint.value,
        wetBulb: state.wetBulbC,
        enthalpy: state.enthalpyKJPerKg,
        specificVolume: state.specificVolumeM3PerKg,
        vaporPressure: state.vaporPressurePa,
      },
      notices: dewPoint.notices,
    };
  },
};

/** A dew point for an answer: `none` with a notice where the air has none. */
export function dewPointOrNone(dewPointC: number): {
  readonly value: ResultValue;
  readonly notices: readonly Notice[];
} {
  if (!Number.isNaN(dewPointC)) return { value: dewPointC, notices: [] };
  const message = 'The air is so dry that it has no dew point above -100 °C.';
  return { value: 'none', notices: [{ code: 'no-dew-point', message }] };
}
