import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { type ColdBehavior, coldFactor, coldNotices } from './frost.ts';
import { dehumidifierHeatW, runningPowerW } from './heat.ts';
import { humidistatCycle, runFraction } from './part-load.ts';
import { convertCapacity, convertEfficiency, RATING_POINTS, type RatingPointKey } from './rating-points.ts';
import { performanceAt } from './surfaces.ts';

/** A machine of the user's own list. */
export interface ListedMachine {
  readonly id: string;
  readonly name: string;
  readonly ratedKgPerDay: number;
  /** Test air of that capacity. A capacity without it cannot be compared. */
  readonly ratingPoint: RatingPointKey;
  /** Water per energy at the same test air, L/kWh. */
  readonly litersPerKWh?: number;
  readonly priceCents?: number;
  /** How it takes cold air; absent, no water is taken off for frost, and a notice says so below 18 °C. */
  readonly cold?: ColdBehavior;
  /** Coldest air its maker allows, °C; counts together with `cold`. */
  readonly lowestAirC?: number;
}

/** What a machine has to do. */
export interface SizingNeed {
  /** Steady load, kg/day, and the load while the building dries down. */
  readonly steadyKgPerDay: number;
  readonly withPullDownKgPerDay: number;
  readonly temperatureC: number;
  readonly relativeHumidity: number;
  /** Share of the time that it may run, above 0 to 1. */
  readonly runMax: number;
  /** Water that the air gives up over the humidistat's band, kg, for the length of cycles; left out, none are given. */
  readonly bandKg?: number;
}

/** How one machine would do. */
export interface SizedMachine {
  readonly machine: ListedMachine;
  /** Its capacity on the label of each test air, kg/day. */
  readonly labels: Readonly<Record<RatingPointKey, number>>;
  /** Water it removes per day of running in this air, kg/day, frost counted. */
  readonly capacityHereKgPerDay: number;
  /** Share of the time it runs for each load, 1 where it is too small. */
  readonly steadyRunFraction: number;
  readonly pullDownRunFraction: number;
  /** Whether each load is met within the share of time allowed. */
  readonly holdsSteady: boolean;
  readonly holdsPullDown: boolean;
  /** How many of it would hold the steady load. */
  readonly unitsForSteady?: number;
  /** Steady load; absent without an efficiency. */
  readonly energyKWhPerDay?: number;
  /** Mean heat left in the space, W, and heat while running. */
  readonly meanHeatW?: number;
  readonly runningHeatW?: number;
  /** Starts per hour in the worst case that only the air stores water. */
  readonly startsPerHour?: number;
  readonly notices: readonly Notice[];
}

/** The machines of a list against one need. */
export interface Sizing {
  /** In the order of the list. */
  readonly options: readonly SizedMachine[];
  /** Smallest machine that holds the steady load, and smallest that holds it with the pull-down. */
  readonly forSteady?: SizedMachine;
  readonly forPullDown?: SizedMachine;
  readonly notices: readonly Notice[];
}

/** More starts than this wear the compressor and dry little. Common practice, no source. */
const STARTS_PER_HOUR_MAX = 3;

/**
 * Judges each machine of a list at the air it will work in and names the smallest that holds the load, steadily and with
 * pull-down. Of equal capacity the cheaper one wins, then the first of the list.
 *
 * Capacity at the design air by the generic surface and the frost rule, part load by its curve. A bigger machine does not
 * dry a corner that its air does not reach.
 * @throws EngineError `not-finite` or `out-of-range` naming need or machine
 */
export function sizeDehumidifier(need: SizingNeed, machines: readonly ListedMachine[]): Sizing {
  requireRange('steady load in kg/day', need.steadyKgPerDay, 0, 10_000);
  requireRange('load with pull-down in kg/day', need.withPullDownKgPerDay, need.steadyKgPerDay, 20_000);
  requireRange('share of time running', need.runMax, 0.05, 1);
  const options = machines.map((machine) => sized(machine, need));
  const smallest = (holds: (option: SizedMachine) => boolean) =>
    options.filter(holds).reduce<SizedMachine | undefined>((best, option) => {
      if (!best) return option;
      const more = option.labels['80F-60'] - best.labels['80F-60'];
      if (more !== 0) return more < 0 ? option : best;
      return (option.machine.priceCents ?? Infinity) < (best.machine.priceCents ?? Infinity) ? option : best;
    }, undefined);
  const forSteady = smallest(({ holdsSteady }) => holdsSteady);
  const forPullDown = smallest(({ holdsPullDown }) => holdsPullDown);
  return {
    options,
    ...(forSteady && { forSteady }),
    ...(forPullDown && { forPullDown }),
    notices: sizingNotices(need, options, forSteady, forPullDown),
  };
}

function sized(machine: ListedMachine, need: SizingNeed): SizedMachine {
  const { temperatureC, relativeHumidity } = need;
  requireRange(`capacity of "${machine.name}" in kg/day`, machine.ratedKgPerDay, 0.1, 1000);
  const rated = convertCapacity(machine.ratedKgPerDay, machine.ratingPoint, '80F-60');
  const performance = performanceAt(temperatureC, relativeHumidity);
  const frost = machine.cold ? coldFactor(temperatureC, machine.cold, machine.lowestAirC) : 1;
  const here = rated * performance.value.capacity * frost;
  const holds = (load: number) => load === 0 || (here > 0 && load <= need.runMax * here);
  const cycle =
    need.bandKg === undefined ? undefined : humidistatCycle(need.steadyKgPerDay, here, need.bandKg);
  const notices = [
    ...performance.notices,
    ...(machine.cold
      ? coldNotices(temperatureC, relativeHumidity, machine.cold, machine.lowestAirC)
      : coldUnknown(machine, temperatureC)),
  ];
  if (cycle && cycle.startsPerHour > STARTS_PER_HOUR_MAX) {
    notices.push({
      code: 'short-cycles',
      message: `Up to ${cycle.startsPerHour.toFixed(1)} starts per hour once the space is dry; more than ${STARTS_PER_HOUR_MAX} wear the compressor (common practice).`,
    });
  }
  return {
    machine,
    labels: labelsOf(machine),
    capacityHereKgPerDay: here,
    steadyRunFraction: here > 0 ? runFraction(need.steadyKgPerDay, here) : 1,
    pullDownRunFraction: here > 0 ? runFraction(need.withPullDownKgPerDay, here) : 1,
    holdsSteady: holds(need.steadyKgPerDay),
    holdsPullDown: holds(need.withPullDownKgPerDay),
    ...(here > 0 && {
      unitsForSteady: Math.max(1, Math.ceil(need.steadyKgPerDay / (need.runMax * here) - 1e-9)),
    }),
    ...(machine.litersPerKWh !== undefined &&
      here > 0 &&
      energyOf(machine, machine.litersPerKWh, need, rated, here)),
    ...(cycle && { startsPerHour: cycle.startsPerHour }),
    notices,
  };
}

function coldUnknown(machine: ListedMachine, temperatureC: number): readonly Notice[] {
  if (temperatureC >= 18) return [];
  return [
    {
      code: 'cold-limit-unknown',
      message: `How "${machine.name}" takes air of ${temperatureC.toFixed(1)} °C is not entered; household machines stop near 18 °C (common practice).`,
    },
  ];
}

/** Capacity of a machine on the label of each test air, kg/day. */
function labelsOf(machine: ListedMachine): Record<RatingPointKey, number> {
  const labels: Record<RatingPointKey, number> = { '80F-60': 0, '73F-60': 0, '65F-60': 0 };
  for (const { key } of RATING_POINTS) {
    labels[key] = convertCapacity(machine.ratedKgPerDay, machine.ratingPoint, key);
  }
  return labels;
}

/** Electricity and heat at the steady load; a machine that defrosts draws its power all the while. */
function energyOf(
  machine: ListedMachine,
  litersPerKWh: number,
  need: SizingNeed,
  rated: number,
  here: number,
) {
  requireRange(`efficiency of "${machine.name}" in L/kWh`, litersPerKWh, 0.1, 20);
  const efficiency = convertEfficiency(litersPerKWh, machine.ratingPoint, '80F-60');
  const powerW = runningPowerW(rated, efficiency, need.temperatureC, need.relativeHumidity);
  const share = runFraction(need.steadyKgPerDay, here);
  const water = Math.min(need.steadyKgPerDay, here) / 86_400;
  return {
    energyKWhPerDay: (powerW * share * 24) / 1000,
    meanHeatW: dehumidifierHeatW(powerW * share, water),
    runningHeatW: dehumidifierHeatW(powerW, here / 86_400),
  };
}

function sizingNotices(
  need: SizingNeed,
  options: readonly SizedMachine[],
  forSteady: SizedMachine | undefined,
  forPullDown: SizedMachine | undefined,
): Notice[] {
  if (options.length === 0) {
    return [{ code: 'no-machines', message: 'The list of machines is empty: add the ones you install.' }];
  }
  const notices: Notice[] = [];
  if (!forSteady) {
    notices.push({
      code: 'none-holds',
      message: `No machine of the list holds ${need.steadyKgPerDay.toFixed(1)} kg/day at this air within ${(100 * need.runMax).toFixed(0)} % of the time: cut the load, or take several.`,
    });
  }
  if (need.withPullDownKgPerDay > need.steadyKgPerDay && forPullDown?.machine.id !== forSteady?.machine.id) {
    notices.push({
      code: 'rent-for-pull-down',
      message:
        'Drying the building down asks for more than steady operation: a rented machine for the first weeks lets the ' +
        'permanent one be smaller.',
    });
  }
  return notices;
}
