import type { season } from '@undercroft/engine';
import type { FailureResult, SeasonCaseResult, SeasonMonthResult } from './season-assessment.ts';

function monthResult(month: season.SeasonMonth): SeasonMonthResult {
  return {
    temperatureC: month.temperatureC,
    relativeHumidity: month.relativeHumidity,
    dewPointC: month.dewPointC,
    woodMoistureSurface: month.woodMoistureSurface,
    woodMoistureCore: month.woodMoistureCore,
    moldIndex: month.moldIndex,
    airChangesPerHour: month.airChangesPerHour,
    floorShare: month.floorShare,
    waterRemovedKg: month.waterRemovedKg,
    energyKWh: month.energyKWh,
    runHours: month.runHours,
  };
}

/** A year of the engine in the words of the assessment. */
export function caseResult(
  result: season.SeasonResult,
  kind: SeasonCaseResult['kind'],
  repairIds: readonly string[],
  failure?: FailureResult,
): SeasonCaseResult {
  return {
    name: result.name,
    kind,
    repairIds,
    months: result.months.map(monthResult),
    daysAbove80: result.daysAbove80,
    hoursAbove60: result.hoursAbove60,
    hoursAbove70: result.hoursAbove70,
    hoursAbove80: result.hoursAbove80,
    highestDayRelativeHumidity: result.highestDayRelativeHumidity,
    peakMoldIndex: result.peakMoldIndex,
    peakWoodMoisture: Math.max(...Object.values(result.peakWoodMoisture).map((w) => w.surface)),
    condensationHours: result.condensationHours,
    waterRemovedKg: result.waterRemovedKg,
    energyKWh: result.energyKWh,
    costCents: result.costCents,
    runHours: result.runHours,
    starts: result.starts,
    waterKg: result.waterKg,
    airChangesPerHour: result.airChangesPerHour,
    closure: { water: result.closure.water, energy: result.closure.energy },
    settled: result.ending.converged,
    ...(failure === undefined ? {} : { failure }),
    notices: result.notices,
  };
}
