import type { Notice } from '../numerics/notice.ts';
import { psychrometricsSources } from '../psychrometrics/sources.ts';
import { MOLD_SURFACE_HUMIDITY, surfaceCondition } from '../surfaces/condensation.ts';
import { surfacesSources } from '../surfaces/sources.ts';
import { airRelativeHumidity, airTemperature } from './air-inputs.ts';
import { dewPointOrNone } from './air-state.ts';
import type { Calculator } from './calculator.ts';

/** Whether water forms on a joist, duct or wall of a known temperature. */
export const surfaceCondensationCalculator: Calculator = {
  name: 'surface-condensation',
  title: 'Condensation on a surface',
  answers: 'Does this air condense on a surface of this temperature, and how humid is it there?',
  inputs: [
    airTemperature,
    airRelativeHumidity,
    {
      key: 'surfaceTemperature',
      title: 'surface temperature',
      dimension: 'temperature',
      min: -50,
      max: 90,
    },
  ],
  results: [
    { key: 'dewPoint', title: 'dew point of the air', dimension: 'temperature' },
    {
      key: 'surfaceRelativeHumidity',
      title: 'relative humidity at the surface',
      dimension: 'relativeHumidity',
    },
    { key: 'condensing', title: 'water forms on the surface', dimension: 'flag' },
  ],
  sources: [psychrometricsSources.ashraeFundamentals, surfacesSources.iso13788],
  run(inputs) {
    const condition = surfaceCondition({
      temperatureC: inputs.number('temperature'),
      relativeHumidity: inputs.number('relativeHumidity'),
      surfaceTemperatureC: inputs.number('surfaceTemperature'),
    });
    const dewPoint = dewPointOrNone(condition.dewPointC);
    const notices: Notice[] = [...dewPoint.notices];
    if (!condition.condensing && condition.surfaceRelativeHumidity > MOLD_SURFACE_HUMIDITY) {
      notices.push({
        code: 'mold-prone',
        message:
          'No water forms, but above 80 % surface humidity mold must be expected if it stays so for weeks.',
      });
    }
    return {
      results: {
        dewPoint: dewPoint.value,
        surfaceRelativeHumidity: condition.surfaceRelativeHumidity,
        condensing: condition.condensing,
      },
      notices,
    };
  },
};
