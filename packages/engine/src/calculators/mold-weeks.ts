import { type MoldClass, moldClasses, moldParameters } from '../mold/classes.ts';
import { weeksToMoldIndex } from '../mold/constant-air.ts';
import { moldSources } from '../mold/sources.ts';
import { airRelativeHumidity, airTemperature } from './air-inputs.ts';
import type { Calculator } from './calculator.ts';

/** Time until mold reaches an index in constant air. */
export const moldWeeksCalculator: Calculator = {
  name: 'mold-weeks',
  title: 'Weeks until mold',
  answers: 'How many weeks of this air bring mold on a clean surface to an index, if ever?',
  inputs: [
    { ...airTemperature, title: 'temperature of the surface', min: -50, max: 90 },
    { ...airRelativeHumidity, title: 'relative humidity at the surface' },
    {
      key: 'class',
      title: 'sensitivity of the surface',
      dimension: 'choice',
      choices: Object.keys(moldClasses),
      default: 'sensitive',
    },
    { key: 'index', title: 'mold index', dimension: 'dimensionless', min: 0.01, max: 6, default: 3 },
  ],
  results: [
    { key: 'weeks', title: 'weeks from a clean surface', dimension: 'weeks' },
    { key: 'maximumIndex', title: 'index approached in the end', dimension: 'dimensionless' },
  ],
  sources: [moldSources.growthModel, moldSources.sensitivityClasses, moldSources.standard160],
  run(inputs) {
    const index = inputs.number('index');
    const { weeks, maximumIndex } = weeksToMoldIndex({
      temperatureC: inputs.number('temperature'),
      relativeHumidity: inputs.number('relativeHumidity'),
      parameters: moldParameters(inputs.text('class') as MoldClass),
      index,
    });
    if (weeks !== 'never') return { results: { weeks, maximumIndex }, notices: [] };
    const message = `In this air the index never reaches ${index}.`;
    return { results: { weeks, maximumIndex }, notices: [{ code: 'never', message }] };
  },
};
