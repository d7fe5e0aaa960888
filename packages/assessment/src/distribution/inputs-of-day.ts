import type { moisture } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { ofSurvey } from '../budget/origins.ts';
import type { SpaceGeometry } from '../geometry.ts';
import type { DistributionInputs } from './distribution-inputs.ts';
import type { PreparedField } from './prepare-field.ts';

/** Spread of temperature by which air trades places through openings, K (common practice, no source). */
const SPREAD_K = { value: 0.5, low: 0.2, high: 1, assumed: true } as const;
const FROM_YEAR = 'From the hourly year of the space without a machine.';

/** Notes the state of air, ground and openings that a field rests on, beside its machine. */
export function inputsOfDay(
  { conditions }: PreparedField['day'],
  job: SurveyedJob,
  space: SpaceGeometry,
  inputs: DistributionInputs,
): void {
  const { crawlC, groundC, air, houseC, outdoorHumidityRatio, origins } = conditions;
  const guess = (key: string, title: string, unit: string, band: moisture.Band, why: string) =>
    inputs.assumed(key, title, band.value, unit, why, { low: band.low, high: band.high });
  guess('fieldAir', 'Temperature of the space without a machine', '°C', crawlC, FROM_YEAR);
  guess('fieldGround', 'Temperature of the ground', '°C', groundC, FROM_YEAR);
  const house = ['fieldHouse', 'Temperature of the house', houseC, '°C'] as const;
  const set = job.house.coolingSetC ?? job.house.heatingSetC;
  if (set === houseC) inputs.known(...house, ofSurvey(job, 'house', 'set-point as entered'));
  else inputs.assumed(...house, 'No set-point was entered for such weather.');
  const outdoors = 'Water in outdoor air';
  inputs.known('fieldOutdoors', outdoors, outdoorHumidityRatio.value, 'kg/kg', origins.outdoor);
  const network = 'Pressure network of vents, leaks, floor and house; the leakage is a guess.';
  guess('outdoorAir', 'Outdoor air into the space', 'm³/s', air.fromOutdoorsM3PerS, network);
  guess('houseAir', 'Air from the house; negative goes up', 'm³/s', air.houseNetM3PerS, network);
  const { value, low, high, assumed } = space.heightM;
  const height = ['fieldHeight', 'Clear height of the space', value, 'm'] as const;
  if (assumed) inputs.assumed(...height, 'No height was taken; take three or more.', { low, high });
  else inputs.known(...height, { kind: 'plan', note: 'heights as taken' });
  guess(
    'spreadInSpace',
    'Difference of temperature that trades air through openings',
    'K',
    SPREAD_K,
    'Not measured; two loggers on both sides of a wall tell.',
  );
}
