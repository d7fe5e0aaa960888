import { airStateCalculator } from './air-state.ts';
import type { Calculator } from './calculator.ts';
import { convertCalculator } from './convert.ts';
import { designLoadCalculator } from './design-load.ts';
import { groundEvaporationCalculator } from './ground-evaporation.ts';
import { meterCorrectionCalculator } from './meter-correction.ts';
import { moldWeeksCalculator } from './mold-weeks.ts';
import { pipeFallCalculator } from './pipe-fall.ts';
import { surfaceCondensationCalculator } from './surface-condensation.ts';
import { woodEquilibriumCalculator } from './wood-equilibrium.ts';
import { woodHumidityCalculator } from './wood-humidity.ts';

/** All calculators, in the order in which they are listed. */
export const calculators: readonly Calculator[] = [
  airStateCalculator,
  surfaceCondensationCalculator,
  woodEquilibriumCalculator,
  woodHumidityCalculator,
  meterCorrectionCalculator,
  moldWeeksCalculator,
  groundEvaporationCalculator,
  designLoadCalculator,
  pipeFallCalculator,
  convertCalculator,
];

/** The calculator of a name, or undefined. */
export function findCalculator(name: string): Calculator | undefined {
  return calculators.find((calculator) => calculator.name === name);
}
