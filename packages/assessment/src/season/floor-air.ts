import { airflow, type season } from '@undercroft/engine';
import type { ChosenClimate } from '../climate.ts';
import type { AirExchangeSummary, AirQuarter } from './season-assessment.ts';

/** Months of the year in quarters that are alike, January 0. */
const QUARTERS: readonly (readonly [months: string, numbers: readonly number[]])[] = [
  ['December to February', [11, 0, 1]],
  ['March to May', [2, 3, 4]],
  ['June to August', [5, 6, 7]],
  ['September to November', [8, 9, 10]],
];
const STANDARD_AIR_KG_PER_M3 = 1.2;
/** Less than this is no direction [m³/h]. */
const STILL_M3_PER_H = 0.5;

function mean(numbers: readonly number[], pick: (month: number) => number): number {
  return numbers.reduce((sum, month) => sum + pick(month), 0) / numbers.length;
}

/** Air of one case by quarters: rates from its hours, direction through the floor from the mean weather of its months. */
export function floorAir(
  result: season.SeasonResult,
  space: season.SeasonCase,
  made: airflow.CrawlNetwork,
  chosen: ChosenClimate,
): AirExchangeSummary {
  const network = airflow.createNetwork(made.network);
  const state = airflow.createNetworkState(network);
  const { house } = space;
  const upM3PerH = (month: number): number => {
    const weather = chosen.monthly.months[month];
    const cooled = weather.temperatureMeanC >= house.changeoverC;
    airflow.solveNetwork(
      network,
      {
        outdoorTemperatureC: weather.temperatureMeanC,
        crawlTemperatureC: result.months[month].temperatureC,
        houseTemperatureC: cooled ? house.coolingTemperatureC : house.heatingTemperatureC,
        windMPerS: weather.windSpeedMPerS,
      },
      state,
    );
    if (!state.ending.converged) return 0;
    return (3600 * (state.crawlToHouseKgPerS - state.houseToCrawlKgPerS)) / STANDARD_AIR_KG_PER_M3;
  };
  const flows = result.months.map((_, month) => upM3PerH(month));
  return {
    name: result.name,
    leakageM2: made.leakage.crawlNowM2,
    floorLeakageM2: made.leakage.floorM2,
    quarters: QUARTERS.map(([months, numbers]): AirQuarter => {
      const flow = mean(numbers, (m) => flows[m]);
      return {
        months,
        airChangesPerHour: mean(numbers, (m) => result.months[m].airChangesPerHour),
        floorShare: mean(numbers, (m) => result.months[m].floorShare),
        floorFlowM3PerH: flow,
        floorDirection: Math.abs(flow) < STILL_M3_PER_H ? 'none' : flow > 0 ? 'up' : 'down',
      };
    }),
  };
}
