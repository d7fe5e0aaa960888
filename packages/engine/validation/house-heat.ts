import { createNetwork } from '../src/airflow/network.ts';
import { createNetworkState } from '../src/airflow/network-state.ts';
import { solveNetwork } from '../src/airflow/solve-network.ts';
import { MONTH_START_HOUR } from '../src/climate/calendar.ts';
import type { SeasonDucts } from '../src/season/season-case.ts';
import { change, fixed, meanOfHours } from './figures.ts';
import { DUCT_AREA_M2 } from './parameter-set.ts';
import type { Outcome } from './study.ts';

const AIR_HEAT = 1006;
/** Gas constant of dry air, J/(kg·K), at the temperature at which the season weighs its air, K. */
const AIR_AT_ONE_PA = 1 / (287.042 * 288.15);

/** What the house pays for in some months, kWh of heat or of cold; what helps it is negative. Moisture is not in it. */
export interface HouseHeat {
  /** Through the floor. */
  readonly floor: number;
  /** From ducts to the air around them. */
  readonly ducts: number;
  /** Blown into the space by a supply register, counted down to the temperature of the space. */
  readonly supplyAir: number;
  /** For air that leaks in from outdoors and up through the floor. */
  readonly leakage: number;
  readonly total: number;
}

/** Which months: those that the case heats, those that it cools, or given ones that it heats. */
type Season = 'heated' | 'cooled' | readonly number[];

/**
 * Sensible heat that the house loses (heated months) or takes in (cooled months) by what a crawl space changes: floor,
 * ducts, supply register, leakage of air by the pressure network. It is not the load of the house, whose walls, windows,
 * attic, people and moisture are not in the model; differences between two spaces are what it is good for.
 * @param ductsOutdoors ducts of the usual size in air as warm as outdoors, which stands for an attic without sun
 */
export function houseHeat(outcome: Outcome, season: Season, ductsOutdoors = false): HouseHeat {
  const { space, weather, result } = outcome;
  const { house, ducts, airExchange } = space;
  if (airExchange.kind !== 'network')
    throw new Error(`${space.name}: the heat of the house needs the network`);
  const network = createNetwork(airExchange.network);
  const state = createNetworkState(network);
  const crawl = result.hourly!.temperatureC;
  const floorWPerK = house.floorUWPerM2K * space.planAreaM2;
  const area = ductsOutdoors ? DUCT_AREA_M2 : ducts.areaM2;
  const ductWPerK = area / (ducts.resistanceM2KPerW + 1 / ducts.outsideCoefficientWPerM2K);
  const supplyWPerK =
    ducts.supplyFlowM3PerS * meanOfHours(weather.pressurePa, [0, 12]) * AIR_AT_ONE_PA * AIR_HEAT;
  let floor = 0;
  let fromDucts = 0;
  let supplyAir = 0;
  let leakage = 0;
  for (let month = 0; month < 12; month++) {
    const cooled = meanOfHours(weather.temperatureC, [month, month + 1]) >= house.changeoverC;
    if (!isIn(season, month, cooled)) continue;
    const houseC = cooled ? house.coolingTemperatureC : house.heatingTemperatureC;
    const supplyC = cooled ? ducts.coolingSupplyC : ducts.heatingSupplyC;
    const kWh = (cooled ? -1 : 1) / 1000;
    for (let hour = MONTH_START_HOUR[month]!; hour < MONTH_START_HOUR[month + 1]!; hour++) {
      const outdoorC = weather.temperatureC[hour]!;
      const crawlC = crawl[hour]!;
      const run = runShare(ducts, outdoorC, cooled);
      solveNetwork(
        network,
        {
          outdoorTemperatureC: outdoorC,
          crawlTemperatureC: crawlC,
          houseTemperatureC: houseC,
          windMPerS: weather.windSpeedMPerS[hour]!,
        },
        state,
      );
      floor += kWh * floorWPerK * (houseC - crawlC);
      fromDucts += kWh * run * ductWPerK * (supplyC - (ductsOutdoors ? outdoorC : crawlC));
      supplyAir += kWh * run * supplyWPerK * (supplyC - crawlC);
      leakage +=
        kWh *
        AIR_HEAT *
        (state.houseOutdoorInflowKgPerS * (houseC - outdoorC) + state.crawlToHouseKgPerS * (houseC - crawlC));
    }
  }
  return { floor, ducts: fromDucts, supplyAir, leakage, total: floor + fromDucts + supplyAir + leakage };
}

function isIn(season: Season, month: number, cooled: boolean): boolean {
  if (season === 'heated') return !cooled;
  if (season === 'cooled') return cooled;
  return !cooled && season.includes(month);
}

/** Share of the time that the air handler runs, as the case says: rising with cold or heat outdoors. */
function runShare(ducts: SeasonDucts, outdoorC: number, cooled: boolean): number {
  const [start, full] = cooled
    ? [ducts.coolingStartC, ducts.coolingFullC]
    : [ducts.heatingStartC, ducts.heatingFullC];
  const share = full === start ? 1 : (outdoorC - start) / (full - start);
  return ducts.maximumRunShare * Math.min(1, Math.max(0, share));
}

/** Heated and cooled months together, kWh a year. */
export function yearlyHeat(outcome: Outcome, ductsOutdoors = false): HouseHeat {
  const heated = houseHeat(outcome, 'heated', ductsOutdoors);
  const cooled = houseHeat(outcome, 'cooled', ductsOutdoors);
  return {
    floor: heated.floor + cooled.floor,
    ducts: heated.ducts + cooled.ducts,
    supplyAir: heated.supplyAir + cooled.supplyAir,
    leakage: heated.leakage + cooled.leakage,
    total: heated.total + cooled.total,
  };
}

/** The change from one account to another, part by part, in kWh. */
export function changeInParts(now: HouseHeat, before: HouseHeat): string {
  const part = (name: string, key: keyof HouseHeat) => `${name} ${change(now[key] - before[key], 0)}`;
  return [
    part('floor', 'floor'),
    part('ducts', 'ducts'),
    part('register', 'supplyAir'),
    part('leakage', 'leakage'),
  ].join(', ');
}

/** Why an account that should have fallen did not, where the supply register outweighs the rest. */
export function registerCountsInFull(now: HouseHeat, before: HouseHeat): string {
  return (
    `The register blows ${fixed(now.supplyAir, 0)} kWh of conditioned air into the space, and here all of it counts as lost; ` +
    `without it the sum is ${fixed(now.total - now.supplyAir, 0)} against ${fixed(before.total, 0)} kWh. How long the air ` +
    'handlers of the study ran, and how much of that air came back up through the floor, is not known; ours run by the ' +
    'default rule, and the network is not told of the air that the register adds.'
  );
}
