import type { season } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Assumptions } from '../assumptions.ts';
import { houseAt } from '../budget/conditions.ts';
import { BARE_FLOOR_W_PER_M2K, withInsulation } from '../budget/heat-paths.ts';

/** Water that living adds to outdoor air in a house (common practice, no source) [kg/kg]. */
const MOISTURE_GAIN = { value: 0.0025, low: 0.001, high: 0.004, unit: 'kg/kg' } as const;
/** Highest humidity that cooling leaves in a house (common practice, no source). */
const COOLED_HUMIDITY = { value: 0.55, low: 0.45, high: 0.65, unit: 'fraction' } as const;
/** A house without cooling lets in what is outdoors. */
const UNCOOLED_HUMIDITY = 0.9;
/** Weather in which a house is surely heated, and surely cooled [°C]. */
const COLD_C = 0;
const WARM_C = 30;

function summerHumidity(job: SurveyedJob, assumptions: Assumptions): number {
  if (job.house.cooled === false) return UNCOOLED_HUMIDITY;
  const known = job.house.indoorRelativeHumidity;
  if (known !== undefined) return known;
  const read = job.readings.air.filter((r) => r.where === 'house');
  const usual =
    read.length === 0
      ? COOLED_HUMIDITY
      : {
          ...COOLED_HUMIDITY,
          value: Math.min(
            COOLED_HUMIDITY.high,
            Math.max(COOLED_HUMIDITY.low, read.reduce((sum, r) => sum + r.relativeHumidity, 0) / read.length),
          ),
        };
  const why =
    read.length === 0
      ? 'Not measured indoors.'
      : 'As read on the day of the survey, within what is usual; a logger tells the summer.';
  return assumptions.band('houseSummerHumidity', 'Highest humidity of the cooled house', usual, why).value;
}

/** The house above as the year takes it. */
export function seasonHouse(
  job: SurveyedJob,
  base: season.SeasonHouse,
  warmMonthsMeanC: number,
  assumptions: Assumptions,
): season.SeasonHouse {
  const uncooled = job.house.cooled === false;
  if (uncooled) {
    assumptions.note(
      'houseUncooled',
      'House without cooling in summer',
      warmMonthsMeanC.toFixed(1),
      'Taken at the mean outdoor temperature of the warm months.',
      '°C',
    );
  }
  return {
    ...base,
    heatingTemperatureC: houseAt(job, COLD_C, assumptions),
    coolingTemperatureC: uncooled ? warmMonthsMeanC : houseAt(job, WARM_C, assumptions),
    moistureGain: assumptions.band(
      'houseMoistureGain',
      'Water that living adds to the air of the house',
      MOISTURE_GAIN,
      'Not measured; people, cooking and washing (common practice).',
    ).value,
    coolingRelativeHumidity: summerHumidity(job, assumptions),
    floorUWPerM2K: withInsulation(BARE_FLOOR_W_PER_M2K, job.house.floorInsulationRsi),
  };
}
