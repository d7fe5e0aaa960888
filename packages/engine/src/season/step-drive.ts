import { tableSaturationPa } from './fast-tables.ts';
import { createFlowTable, type FlowTable, lookUpFlows } from './flow-table.ts';
import { loopConstants } from './loop-constants.ts';
import { loopRoom } from './loop-room.ts';
import type { SeasonCase } from './season-case.ts';
import type { PreparedWeather, WeatherSeries } from './weather-series.ts';

const { MASS_RATIO } = loopConstants;
const { air, c, drive } = loopRoom;

/** Highest relative humidity that a house without cooling is taken to reach; its air leaves faster than that. */
const HOUSE_LIMIT = 0.9;

/** House and air handler in months of one kind. */
interface HouseMode {
  readonly houseC: number;
  readonly mostHumidity: number;
  readonly supplyC: number;
  readonly mostSupplyHumidity: number;
  /** The run share rises with sign·(outdoor °C) from start to full. */
  readonly sign: number;
  readonly start: number;
  readonly full: number;
  readonly flows: FlowTable | undefined;
}

/** What sets the drive of each step for one case: house by month, flows, failures. */
export interface DriveRules {
  readonly cooledMonth: Uint8Array;
  readonly heated: HouseMode;
  readonly cooled: HouseMode;
  readonly moistureGain: number;
  readonly maximumRunShare: number;
  /** By hour: bit 1 no power, bit 2 machines stand still; absent when nothing fails. */
  readonly failing: Uint8Array | undefined;
}

/** Flow tables by network, each for one temperature of the house. They go when their network goes. */
export type FlowTables = WeakMap<object, FlowTable[]>;

export function createDriveRules(
  source: SeasonCase,
  weather: PreparedWeather,
  tables: FlowTables,
): DriveRules {
  const { house, ducts, airExchange, failures } = source;
  const cooledMonth = Uint8Array.from(weather.monthMeanC, (t) => (t >= house.changeoverC ? 1 : 0));
  const limit = (temperatureC: number, relativeHumidity: number) => {
    const p = relativeHumidity * tableSaturationPa(temperatureC);
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
    heated: {
      houseC: house.heatingTemperatureC,
      mostHumidity: limit(house.heatingTemperatureC, HOUSE_LIMIT),
      supplyC: ducts.heatingSupplyC,
      mostSupplyHumidity: Number.POSITIVE_INFINITY,
      sign: -1,
      start: -ducts.heatingStartC,
      full: -ducts.heatingFullC,
      flows: flows(house.heatingTemperatureC),
    },
    cooled: {
      houseC: house.coolingTemperatureC,
      mostHumidity: limit(house.coolingTemperatureC, house.coolingRelativeHumidity),
      supplyC: ducts.coolingSupplyC,
      mostSupplyHumidity: ducts.coolingSupplyHumidityRatio,
      sign: 1,
      start: ducts.coolingStartC,
      full: ducts.coolingFullC,
      flows: flows(house.coolingTemperatureC),
    },
    moistureGain: house.moistureGain,
    maximumRunShare: ducts.maximumRunShare,
    failing,
  };
}

/** Sets the drive to step `i` of the weather, all but the air flows. */
export function setDrive(rules: DriveRules, series: WeatherSeries, i: number): void {
  const outdoorC = series.temperatureC[i]!;
  const outdoorHumidity = series.humidityRatio[i]!;
  const cooled = rules.cooledMonth[series.month[i]!] === 1;
  const mode = cooled ? rules.cooled : rules.heated;
  const { start, full } = mode;
  const failing = rules.failing === undefined ? 0 : rules.failing[i * series.hoursPerStep]!;
  const powerOn = (failing & 1) === 0;
  const houseHumidity = Math.min(outdoorHumidity + rules.moistureGain, mode.mostHumidity);
  const at = mode.sign * outdoorC;
  const share = full > start ? (at - start) / (full - start) : at > start ? 1 : 0;
  drive.outdoorC = outdoorC;
  drive.outdoorHumidity = outdoorHumidity;
  drive.outdoorVaporPa = series.vaporPa[i]!;
  drive.pressurePa = series.pressurePa[i]!;
  drive.solarWPerM2 = series.solarWPerM2[i]!;
  drive.windMPerS = series.windMPerS[i]!;
  drive.yearCos = series.yearCos[i]!;
  drive.yearSin = series.yearSin[i]!;
  drive.cooled = cooled;
  drive.houseC = mode.houseC;
  drive.houseHumidity = houseHumidity;
  drive.powerOn = powerOn;
  drive.fanW = powerOn ? c.fanW : 0;
  drive.machinesOn = failing === 0;
  drive.supplyC = mode.supplyC;
  drive.supplyHumidity = Math.min(mode.mostSupplyHumidity, houseHumidity);
  drive.runShare = powerOn ? rules.maximumRunShare * Math.min(1, Math.max(0, share)) : 0;
}

/** Sets the air flows of the drive for the crawl temperature that the step begins with. */
export function setFlows(rules: DriveRules): void {
  const table = drive.cooled ? rules.cooled.flows : rules.heated.flows;
  if (table !== undefined) {
    lookUpFlows(table, air.airC);
    return;
  }
  const perHour = c.airChangesPerHour + c.perKelvin * Math.abs(drive.outdoorC - c.referenceC);
  const exhaust = drive.powerOn ? c.fanExhaustKgPerS : 0;
  drive.outdoorKgPerS = Math.max((perHour * c.airMassKg) / 3600, exhaust);
  drive.houseKgPerS = c.fixedHouseKgPerS;
  drive.floorShare = 0;
}
