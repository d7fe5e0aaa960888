import type { CompiledCase } from './compiled-case.ts';
import { saturationTable, tableSaturationPa } from './fast-tables.ts';
import { createFlowTable, type FlowTable, lookUpFlows } from './flow-table.ts';
import { loopConstants } from './loop-constants.ts';
import type { SpaceState, StepDrive } from './state.ts';
import type { PreparedWeather, WeatherSeries } from './weather-series.ts';

const { MASS_RATIO } = loopConstants;

/** Highest relative humidity that a house without cooling is taken to reach; its air leaves faster than that. */
const HOUSE_LIMIT = 0.9;

/** What sets the drive of each step for one case: house by month, flows, failures. */
export interface DriveRules {
  readonly cooledMonth: Uint8Array;
  readonly heatedLimit: number;
  readonly cooledLimit: number;
  readonly heatedFlows: FlowTable | undefined;
  readonly cooledFlows: FlowTable | undefined;
  /** By hour: bit 1 no power, bit 2 machines stand still; absent when nothing fails. */
  readonly failing: Uint8Array | undefined;
}

/** Flow tables by network and house temperature, shared by the cases of one call. */
export type FlowTables = Map<unknown, FlowTable[]>;

export function createDriveRules(c: CompiledCase, weather: PreparedWeather, tables: FlowTables): DriveRules {
  const { house, airExchange, failures } = c.source;
  const cooledMonth = Uint8Array.from(weather.monthMeanC, (t) => (t >= house.changeoverC ? 1 : 0));
  const limit = (temperatureC: number, relativeHumidity: number) => {
    const p = relativeHumidity * tableSaturationPa(saturationTable(), temperatureC);
    return (MASS_RATIO * p) / (weather.meanPressurePa - p);
  };
  let failing: Uint8Array | undefined;
  for (const failure of failures) {
    failing ??= new Uint8Array(weather.hourly.steps);
    for (let hour = Math.floor(failure.fromHour); hour < failure.toHour && hour < failing.length; hour++) {
      failing[hour] = failing[hour]! | (failure.what === 'power' ? 1 : 2);
    }
  }
  const flows = (temperatureC: number) => {
    if (airExchange.kind !== 'network') return undefined;
    const list = tables.get(airExchange.network) ?? [];
    tables.set(airExchange.network, list);
    let table = list.find((t) => t.houseC === temperatureC);
    if (table === undefined) {
      table = createFlowTable(airExchange.network, temperatureC);
      list.push(table);
    }
    return table;
  };
  return {
    cooledMonth,
    heatedLimit: limit(house.heatingTemperatureC, HOUSE_LIMIT),
    cooledLimit: limit(house.coolingTemperatureC, house.coolingRelativeHumidity),
    heatedFlows: flows(house.heatingTemperatureC),
    cooledFlows: flows(house.coolingTemperatureC),
    failing,
  };
}

/** Sets the drive to step `i` of the weather, all but the air flows. */
export function setDrive(
  c: CompiledCase,
  rules: DriveRules,
  series: WeatherSeries,
  i: number,
  drive: StepDrive,
): void {
  const { house, ducts } = c.source;
  const outdoorC = series.temperatureC[i]!;
  const outdoorHumidity = series.humidityRatio[i]!;
  const cooled = rules.cooledMonth[series.month[i]!] === 1;
  const failing = rules.failing === undefined ? 0 : rules.failing[i * series.hoursPerStep]!;
  drive.outdoorC = outdoorC;
  drive.outdoorHumidity = outdoorHumidity;
  drive.pressurePa = series.pressurePa[i]!;
  drive.solarWPerM2 = series.solarWPerM2[i]!;
  drive.windMPerS = series.windMPerS[i]!;
  drive.yearCos = series.yearCos[i]!;
  drive.yearSin = series.yearSin[i]!;
  drive.cooled = cooled;
  drive.houseC = cooled ? house.coolingTemperatureC : house.heatingTemperatureC;
  drive.houseHumidity = Math.min(
    outdoorHumidity + house.moistureGain,
    cooled ? rules.cooledLimit : rules.heatedLimit,
  );
  drive.powerOn = (failing & 1) === 0;
  drive.machinesOn = failing === 0;
  drive.supplyC = cooled ? ducts.coolingSupplyC : ducts.heatingSupplyC;
  drive.supplyHumidity = cooled
    ? Math.min(ducts.coolingSupplyHumidityRatio, drive.houseHumidity)
    : drive.houseHumidity;
  const start = cooled ? ducts.coolingStartC : -ducts.heatingStartC;
  const full = cooled ? ducts.coolingFullC : -ducts.heatingFullC;
  const at = cooled ? outdoorC : -outdoorC;
  const share = full > start ? (at - start) / (full - start) : at > start ? 1 : 0;
  drive.runShare = drive.powerOn ? ducts.maximumRunShare * Math.min(1, Math.max(0, share)) : 0;
}

/** Sets the air flows of the drive for the crawl temperature that the step begins with. */
export function setFlows(c: CompiledCase, rules: DriveRules, state: SpaceState, drive: StepDrive): void {
  const table = drive.cooled ? rules.cooledFlows : rules.heatedFlows;
  if (table !== undefined) {
    lookUpFlows(table, drive, state.airC);
    return;
  }
  const exchange = c.source.airExchange;
  if (exchange.kind !== 'fixed') return;
  const perHour =
    exchange.airChangesPerHour + exchange.perKelvin * Math.abs(drive.outdoorC - exchange.referenceC);
  const exhaust = drive.powerOn ? c.fanExhaustKgPerS : 0;
  drive.outdoorKgPerS = Math.max((perHour * c.airMassKg) / 3600, exhaust);
  drive.houseKgPerS = (exchange.houseAirChangesPerHour * c.airMassKg) / 3600;
  drive.floorShare = 0;
}
