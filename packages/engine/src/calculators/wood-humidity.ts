import { woodSources } from '../wood/sources.ts';
import { woodHumidity } from '../wood/wood-in-air.ts';
import { airTemperature } from './air-inputs.ts';
import type { Calculator } from './calculator.ts';

/** Humidity that a wood moisture content speaks of. */
export const woodHumidityCalculator: Calculator = {
  name: 'wood-humidity',
  title: 'Humidity behind a wood moisture content',
  answers: 'Which steady relative humidity does wood of this moisture content belong to?',
  inputs: [
    { ...airTemperature, title: 'temperature of the wood', min: -35, max: 130 },
    { key: 'moistureContent', title: 'wood moisture content', dimension: 'moistureContent', min: 0, max: 3 },
  ],
  results: [
    { key: 'relativeHumidity', title: 'relative humidity at the wood', dimension: 'relativeHumidity' },
  ],
  sources: [woodSources.woodHandbookCh4],
  run(inputs) {
    const { value, notices } = woodHumidity({
      temperatureC: inputs.number('temperature'),
      moistureContent: inputs.number('moistureContent'),
    });
    return { results: { relativeHumidity: value }, notices };
  },
};
