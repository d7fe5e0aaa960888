import { groundEvaporationKgPerM2S, SURFACE_TRANSFER_M_PER_S } from '../moisture/ground-evaporation.ts';
import { moistureSources } from '../moisture/sources.ts';
import { vaporDensityKgPerM3 } from '../moisture/vapor-density.ts';
import type { Notice } from '../numerics/notice.ts';
import { saturationPressurePa } from '../psychrometrics/saturation-pressure.ts';
import { convert } from '../units/convert.ts';
import { airRelativeHumidity, airTemperature } from './air-inputs.ts';
import type { Calculator } from './calculator.ts';

/** Polyethylene of 6 mil (0.15 mm), perm; ASHRAE Handbook - Fundamentals ch. 26, from memory. */
const SIX_MIL_PERM = 0.06;
/** Resistance of average uncovered soil, s/m; class set by computation to published evaporation rates. */
const AVERAGE_SOIL_S_PER_M = 1000;

/** Water that open or partly covered ground gives to the air in a day. */
export const groundEvaporationCalculator: Calculator = {
  name: 'ground-evaporation',
  title: 'Water from the ground',
  answers: 'How much water does this ground give to the air of the crawl space in a day?',
  inputs: [
    { ...airTemperature, min: -40, max: 50 },
    airRelativeHumidity,
    {
      key: 'groundTemperature',
      title: 'temperature of the ground surface',
      dimension: 'temperature',
      min: -40,
      max: 50,
    },
    {
      key: 'crustResistance',
      title: 'resistance of the dry layer (0 wet, 500 dark and damp, 1000 average, 2350 pale crust)',
      dimension: 'resistance',
      min: 0,
      max: 20_000,
      default: AVERAGE_SOIL_S_PER_M,
    },
    {
      key: 'openFraction',
      title: 'share of the ground left open',
      dimension: 'share',
      min: 0,
      max: 1,
      default: 1,
    },
    { key: 'area', title: 'ground area', dimension: 'area', min: 0, max: 10_000 },
    {
      key: 'sheetPermeance',
      title: 'permeance of the sheet on the rest (6 mil polyethylene 0.06 perm)',
      dimension: 'permeance',
      min: 0,
      max: convert(100, 'perm', 'ng/(s m2 Pa)'),
      default: convert(SIX_MIL_PERM, 'perm', 'ng/(s m2 Pa)'),
    },
  ],
  results: [{ key: 'waterPerDay', title: 'water from the ground', dimension: 'massFlow' }],
  sources: [moistureSources.lewisAnalogy, moistureSources.crustClasses, moistureSources.ashraeSheets],
  run(inputs) {
    const temperatureC = inputs.number('temperature');
    const groundC = inputs.number('groundTemperature');
    const open = inputs.number('openFraction');
    const vaporPressurePa = inputs.number('relativeHumidity') * saturationPressurePa(temperatureC);
    const openKgPerM2S = groundEvaporationKgPerM2S(
      groundC,
      1,
      vaporDensityKgPerM3(vaporPressurePa, temperatureC),
      SURFACE_TRANSFER_M_PER_S.value,
      inputs.number('crustResistance'),
    );
    const sheetKgPerM2S =
      inputs.number('sheetPermeance') * 1e-12 * (saturationPressurePa(groundC) - vaporPressurePa);
    const kgPerM2S = open * openKgPerM2S + (1 - open) * sheetKgPerM2S;
    const waterPerDay = convert(kgPerM2S * inputs.number('area'), 'kg/s', 'kg/day');

    const { value, low, high } = SURFACE_TRANSFER_M_PER_S;
    const notices: Notice[] = [
      {
        code: 'assumed-transfer',
        message: `The vapor transfer coefficient of the surface is assumed: ${value} m/s, ${low} to ${high} in still air.`,
      },
    ];
    if (waterPerDay < 0) {
      notices.push({
        code: 'ground-takes-water',
        message: 'The air is wetter than the ground: water goes from the air into the ground.',
      });
    }
    return { results: { waterPerDay }, notices };
  },
};
