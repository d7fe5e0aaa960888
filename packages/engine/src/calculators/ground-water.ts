import { groundEvaporationKgPerM2S, SURFACE_TRANSFER_M_PER_S } from '../moisture/ground-evaporation.ts';
import { vaporDensityKgPerM3 } from '../moisture/vapor-density.ts';
import type { Notice } from '../numerics/notice.ts';
import { saturationPressurePa } from '../psychrometrics/saturation-pressure.ts';
import { convert } from '../units/convert.ts';
import type { InputValues } from './calculator.ts';

/** Water in kg/day from ground of the shared ground inputs into air of a temperature and relative humidity. */
export function groundWaterKgPerDay(
  inputs: InputValues,
  temperatureC: number,
  relativeHumidity: number,
): number {
  const groundC = inputs.number('groundTemperature');
  const open = inputs.number('openFraction');
  const vaporPressurePa = relativeHumidity * saturationPressurePa(temperatureC);
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
  return convert(kgPerM2S * inputs.number('area'), 'kg/s', 'kg/day');
}

/** Says that the surface coefficient behind `groundWaterKgPerDay` is an assumption. */
export function assumedTransfer(): Notice {
  const { value, low, high } = SURFACE_TRANSFER_M_PER_S;
  return {
    code: 'assumed-transfer',
    message: `The vapor transfer coefficient of the ground is assumed: ${value} m/s, ${low} to ${high} in still air.`,
  };
}
