import { woodSources } from '../wood/sources.ts';
import { woodEquilibrium } from '../wood/wood-in-air.ts';
import { airRelativeHumidity, airTemperature } from './air-inputs.ts';
import type { Calculator } from './calculator.ts';

/** Moisture content that wood settles at in steady air. */
export const woodEquilibriumCalculator: Calculator = {
  name: 'wood-equilibrium',
  title: 'Wood moisture content in steady air',
  answers: 'Which moisture content does wood settle at in air of this temperature and humidity?',
  inputs: [
    { ...airTemperature, title: 'temperature of the wood', min: -35, max: 130 },
    { ...airRelativeHumidity, title: 'relative humidity at the wood' },
  ],
  results: [{ key: 'moistureContent', title: 'wood moisture content', dimension: 'moistureContent' }],
  sources: [woodSources.woodHandbookCh4],
  run(inputs) {
    const { value, notices } = woodEquilibrium({
      temperatureC: inputs.number('temperature'),
      relativeHumidity: inputs.number('relativeHumidity'),
    });
    return { results: { moistureContent: value ?? 'near fiber saturation' }, notices };
  },
};
