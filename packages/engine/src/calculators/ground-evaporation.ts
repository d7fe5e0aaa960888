import { moistureSources } from '../moisture/sources.ts';
import type { Notice } from '../numerics/notice.ts';
import { airRelativeHumidity, airTemperature } from './air-inputs.ts';
import type { Calculator } from './calculator.ts';
import {
  crustResistance,
  groundArea,
  groundTemperature,
  openFraction,
  sheetPermeance,
} from './ground-inputs.ts';
import { assumedTransfer, groundWaterKgPerDay } from './ground-water.ts';

/** Water that open or partly covered ground gives to the air in a day. */
export const groundEvaporationCalculator: Calculator = {
  name: 'ground-evaporation',
  title: 'Water from the ground',
  answers: 'How much water does this ground give to the air of the crawl space in a day?',
  inputs: [
    { ...airTemperature, min: -40, max: 50 },
    airRelativeHumidity,
    groundTemperature,
    crustResistance,
    { ...openFraction, default: 1 },
    groundArea,
    sheetPermeance,
  ],
  results: [{ key: 'waterPerDay', title: 'water from the ground', dimension: 'massFlow' }],
  sources: [moistureSources.lewisAnalogy, moistureSources.crustClasses, moistureSources.ashraeSheets],
  run(inputs) {
    const waterPerDay = groundWaterKgPerDay(
      inputs,
      inputs.number('temperature'),
      inputs.number('relativeHumidity'),
    );
    const notices: Notice[] = [assumedTransfer()];
    if (waterPerDay < 0) {
      notices.push({
        code: 'ground-takes-water',
        message: 'The air is wetter than the ground: water goes from the air into the ground.',
      });
    }
    return { results: { waterPerDay }, notices };
  },
};
