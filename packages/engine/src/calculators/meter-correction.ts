import { correctMeterReading } from '../wood/meter.ts';
import { meterSpecies } from '../wood/meter-species.ts';
import { woodSources } from '../wood/sources.ts';
import { airTemperature } from './air-inputs.ts';
import type { Calculator } from './calculator.ts';

const UNKNOWN = 'unknown';

/** Pin meter reading corrected for temperature and species. */
export const meterCorrectionCalculator: Calculator = {
  name: 'meter-correction',
  title: 'Pin meter correction',
  answers: 'What is the moisture content behind this reading of a pin meter?',
  inputs: [
    { key: 'reading', title: 'reading on the display', dimension: 'moistureContent', min: 0, max: 3 },
    {
      key: 'species',
      title: 'species of the wood',
      dimension: 'choice',
      choices: [...meterSpecies, UNKNOWN],
    },
    { ...airTemperature, title: 'temperature of the wood', min: -40, max: 80 },
    {
      key: 'meterCorrects',
      title: 'what the meter has corrected itself',
      dimension: 'choice',
      choices: ['nothing', 'temperature', 'temperature-and-species'],
      default: 'nothing',
    },
    {
      key: 'scale',
      title: 'species that the scale of the meter stands for',
      dimension: 'choice',
      choices: meterSpecies,
      default: 'douglas-fir',
    },
  ],
  results: [
    { key: 'moistureContent', title: 'corrected wood moisture content', dimension: 'moistureContent' },
  ],
  sources: [woodSources.woodHandbookCh13, woodSources.electricMetersTable],
  run(inputs) {
    const species = inputs.text('species');
    const corrected = correctMeterReading({
      reading: inputs.number('reading'),
      species: species === UNKNOWN ? null : species,
      woodTemperatureC: inputs.number('temperature'),
      meterCorrects: inputs.text('meterCorrects') as 'nothing' | 'temperature' | 'temperature-and-species',
      scaleSpecies: inputs.text('scale'),
    });
    return { results: { moistureContent: corrected.moistureContent }, notices: corrected.notices };
  },
};
