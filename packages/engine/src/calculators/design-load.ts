import { convertCapacity } from '../dehumidifier/rating-points.ts';
import { dehumidifierSources } from '../dehumidifier/sources.ts';
import { performanceAt } from '../dehumidifier/surfaces.ts';
import { standardAirKgPerM3 } from '../moisture/crawl-air.ts';
import { moistureSources } from '../moisture/sources.ts';
import type { Notice } from '../numerics/notice.ts';
import {
  humidityRatioFromRelativeHumidity,
  saturationHumidityRatio,
} from '../psychrometrics/humidity-ratio.ts';
import { psychrometricsSources } from '../psychrometrics/sources.ts';
import { pressureAtAltitudePa } from '../psychrometrics/standard-pressure.ts';
import { convert } from '../units/convert.ts';
import { airRelativeHumidity, airTemperature } from './air-inputs.ts';
import type { Calculator, CalculatorOutcome, InputValues } from './calculator.ts';
import {
  crustResistance,
  groundArea,
  groundTemperature,
  openFraction,
  sheetPermeance,
} from './ground-inputs.ts';
import { assumedTransfer, groundWaterKgPerDay } from './ground-water.ts';

/** Water to remove on a design day, and the label that a dehumidifier for it has to carry. */
export const designLoadCalculator: Calculator = {
  name: 'design-load',
  title: 'Dehumidifier for a design day',
  answers: 'How much water must be removed on a design day, and which rated capacity does that take?',
  inputs: [
    { ...airTemperature, title: 'air temperature of the crawl space', min: -10, max: 50 },
    { ...airRelativeHumidity, title: 'relative humidity to be held', min: 0.2 },
    {
      key: 'outdoorDewPoint',
      title: 'outdoor dew point on the design day',
      dimension: 'temperature',
      min: -40,
      max: 35,
    },
    groundArea,
    { key: 'height', title: 'mean clear height', dimension: 'length', min: 0, max: 5 },
    { key: 'airChanges', title: 'air changes with the outdoors', dimension: 'airChanges', min: 0, max: 20 },
    groundTemperature,
    crustResistance,
    { ...openFraction, default: 0.01 },
    sheetPermeance,
    {
      key: 'otherWater',
      title: 'other water: house air, walls, leaks, drying of wood; negative where water leaves',
      dimension: 'massFlow',
      min: -1000,
      max: 1000,
      default: 0,
    },
    {
      key: 'runFraction',
      title: 'largest share of the time that the machine may run',
      dimension: 'share',
      min: 0.1,
      max: 1,
      // Common practice, no source.
      default: 0.75,
    },
    {
      key: 'altitude',
      title: 'altitude above sea level',
      dimension: 'length',
      min: 0,
      max: 4000,
      default: 0,
    },
  ],
  results: [
    { key: 'waterPerDay', title: 'water to remove', dimension: 'massFlow' },
    { key: 'fromOutdoorAir', title: 'of it with outdoor air', dimension: 'massFlow' },
    { key: 'fromGround', title: 'of it from the ground', dimension: 'massFlow' },
    { key: 'capacityAt80F', title: 'rated capacity at 80 °F and 60 %', dimension: 'massFlow' },
    { key: 'capacityAt65F', title: 'rated capacity at 65 °F and 60 %', dimension: 'massFlow' },
  ],
  sources: [
    moistureSources.massBalance,
    psychrometricsSources.ashraeFundamentals,
    moistureSources.lewisAnalogy,
    moistureSources.ashraeSheets,
    dehumidifierSources.genericSurface,
    dehumidifierSources.ahamDh1,
    dehumidifierSources.doeAppendixX1,
  ],
  run: designLoad,
};

function designLoad(inputs: InputValues): CalculatorOutcome {
  const temperatureC = inputs.number('temperature');
  const relativeHumidity = inputs.number('relativeHumidity');
  const fromOutdoorAir = outdoorWaterKgPerDay(inputs);
  const fromGround = groundWaterKgPerDay(inputs, temperatureC, relativeHumidity);
  const waterPerDay = fromOutdoorAir + fromGround + inputs.number('otherWater');
  const parts = { waterPerDay, fromOutdoorAir, fromGround };
  const notices: Notice[] = [assumedTransfer()];
  if (waterPerDay <= 0) {
    notices.push({
      code: 'nothing-to-remove',
      message: 'The space gives off more water than it takes up: no dehumidifier is needed in this state.',
    });
    return { results: { ...parts, capacityAt80F: 0, capacityAt65F: 0 }, notices };
  }

  const performance = performanceAt(temperatureC, relativeHumidity);
  notices.push(...performance.notices, {
    code: 'generic-machine',
    message:
      "Capacities follow a generic machine; check the choice with the maker's table at the air of the space.",
  });
  if (performance.value.capacity === 0) {
    return { results: { ...parts, capacityAt80F: 'none', capacityAt65F: 'none' }, notices };
  }
  const capacityAt80F = waterPerDay / (performance.value.capacity * inputs.number('runFraction'));
  const capacityAt65F = convertCapacity(capacityAt80F, '80F-60', '65F-60');
  return { results: { ...parts, capacityAt80F, capacityAt65F }, notices };
}

/** Water that exchanged outdoor air leaves behind, kg/day; negative when it dries the space. */
function outdoorWaterKgPerDay(inputs: InputValues): number {
  const pressurePa = pressureAtAltitudePa(inputs.number('altitude'));
  const outdoors = saturationHumidityRatio(inputs.number('outdoorDewPoint'), pressurePa);
  const inside = humidityRatioFromRelativeHumidity(
    inputs.number('temperature'),
    inputs.number('relativeHumidity'),
    pressurePa,
  );
  const volumeM3 = inputs.number('area') * inputs.number('height');
  const airKgPerHour = standardAirKgPerM3(pressurePa) * volumeM3 * inputs.number('airChanges');
  return convert(airKgPerHour * (outdoors - inside), 'kg/h', 'kg/day');
}
