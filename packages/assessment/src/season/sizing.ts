import { dehumidifier, psychrometrics, type season } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { type Assumptions, measured } from '../assumptions.ts';
import { budgetInput } from '../budget/budgets.ts';
import type { Conditions } from '../budget/conditions.ts';
import { shownPath } from '../budget/path-why.ts';
import type { SpaceGeometry } from '../geometry.ts';
import { chooseMachine } from './choose-machine.ts';
import type { MachineChoice, SizingResult } from './season-assessment.ts';
import { type Equipment, runningDehumidifiers, type SpaceState } from './space-state.ts';
import { heldHumidity } from './target.ts';

const STANDARD_AIR_KG_PER_M3 = 1.2;

/** What the sizing is made from. */
export interface SizingInput {
  readonly name: string;
  /** The space as it will be, its machine left out of account. */
  readonly state: SpaceState;
  readonly space: SpaceGeometry;
  readonly day: Conditions;
  readonly pullDown: dehumidifier.PullDown & { readonly days: number };
  readonly ducts: season.SeasonDucts;
  /** Whether the job sets a new machine. */
  readonly machineWanted: boolean;
}

/** The sizing with the machine as a piece of equipment, where one is chosen. */
export interface Sized {
  readonly result: SizingResult;
  readonly machine?: Equipment;
}

function listed(job: SurveyedJob): (dehumidifier.ListedMachine & { readonly from: MachineChoice['from'] })[] {
  const own = job.design.machines.map((m) => ({
    id: m.id,
    name: m.name,
    ratedKgPerDay: m.ratedKgPerDay,
    ratingPoint: m.ratingPoint,
    ...(m.litersPerKWh === undefined ? {} : { litersPerKWh: m.litersPerKWh }),
    ...(m.priceCents === undefined ? {} : { priceCents: m.priceCents }),
    cold: 'low-temperature' as const,
    from: 'list' as const,
  }));
  const found = runningDehumidifiers(job)
    .filter((e) => (e.ratedKgPerDay ?? 0) > 0 && !own.some((m) => m.id === e.id))
    .map((e) => ({
      id: e.id,
      name: 'Dehumidifier that stands there',
      ratedKgPerDay: e.ratedKgPerDay as number,
      ratingPoint: e.ratingPoint ?? ('80F-60' as const),
      ...(e.litersPerKWh === undefined ? {} : { litersPerKWh: e.litersPerKWh }),
      cold: 'low-temperature' as const,
      from: 'found' as const,
    }));
  return [...own, ...found];
}

function choiceOf(sized: dehumidifier.SizedMachine, from: MachineChoice['from']): MachineChoice {
  const { machine } = sized;
  return {
    id: machine.id,
    name: machine.name,
    from,
    ...(machine.priceCents === undefined ? {} : { priceCents: machine.priceCents }),
    labelKgPerDay: sized.labels,
    capacityHereKgPerDay: sized.capacityHereKgPerDay,
    steadyRunFraction: sized.steadyRunFraction,
    pullDownRunFraction: sized.pullDownRunFraction,
    holdsSteady: sized.holdsSteady,
    holdsPullDown: sized.holdsPullDown,
    ...(sized.energyKWhPerDay === undefined ? {} : { energyKWhPerDay: sized.energyKWhPerDay }),
    ...(sized.startsPerHour === undefined ? {} : { startsPerHour: sized.startsPerHour }),
    notices: sized.notices,
  };
}

function codeOptions(input: SizingInput, load: dehumidifier.DesignLoad): dehumidifier.CodeOption[] {
  const { day, ducts, space } = input;
  const humidityRatio = psychrometrics.humidityRatioFromRelativeHumidity(
    load.temperatureC,
    load.relativeHumidity,
    day.pressurePa,
  );
  const run = (day.outdoorC - ducts.coolingStartC) / Math.max(1, ducts.coolingFullC - ducts.coolingStartC);
  return dehumidifier.codeAlternatives({
    floorAreaM2: space.result.floorAreaM2,
    temperatureC: load.temperatureC,
    relativeHumidity: load.relativeHumidity,
    humidityRatio,
    pressurePa: day.pressurePa,
    loadKgPerDay: load.steadyKgPerDay,
    houseAir: { humidityRatio: day.houseHumidityRatio.value },
    supplyAir: {
      humidityRatio: ducts.coolingSupplyHumidityRatio,
      share: Math.min(ducts.maximumRunShare, Math.max(0, run)),
    },
  }) as dehumidifier.CodeOption[];
}

/** Load of the most humid day, machines of the list against it, and the ways of the code beside them. */
export function sizingOf(input: SizingInput, assumptions: Assumptions): Sized {
  const { day, pullDown, space, state } = input;
  const { job } = state;
  const target = heldHumidity(job.design.targetRelativeHumidity);
  const { state: _, dehumidifier: __, ...paths } = budgetInput(job, space, day, assumptions);
  const load = dehumidifier.designLoad({
    ...paths,
    targetRelativeHumidity: target,
    pullDownKgPerDay: {
      ...measured(pullDown.meanKgPerDay),
      low: pullDown.waterKg / dehumidifier.PULL_DOWN_DAYS.high,
      high: pullDown.waterKg / dehumidifier.PULL_DOWN_DAYS.low,
      assumed: true,
    },
  });
  const saturated = psychrometrics.saturationHumidityRatio(load.temperatureC, day.pressurePa);
  const airKg = STANDARD_AIR_KG_PER_M3 * space.result.volumeM3;
  const air = psychrometrics.airState({
    temperatureC: load.temperatureC,
    relativeHumidity: target,
    pressurePa: day.pressurePa,
  });
  const machines = listed(job);
  const need: dehumidifier.SizingNeed = {
    steadyKgPerDay: load.steadyKgPerDay,
    withPullDownKgPerDay: load.withPullDownKgPerDay,
    temperatureC: load.temperatureC,
    relativeHumidity: target,
    runMax: load.runMax,
    bandKg: 2 * dehumidifier.HUMIDISTAT_DIFFERENTIAL * saturated * airKg,
  };
  const sizing = dehumidifier.sizeDehumidifier(need, machines);
  const own = dehumidifier.sizeDehumidifier(
    need,
    machines.filter((m) => m.from === 'list'),
  );
  const choice = input.machineWanted ? chooseMachine(job, space, load, own, assumptions) : undefined;
  const result: SizingResult = {
    state: input.name,
    targetRelativeHumidity: target,
    day: {
      title: day.title,
      outdoorC: day.outdoorC,
      outdoorHumidityRatio: day.outdoorHumidityRatio.value,
      crawlC: day.crawlC.value,
      groundC: day.groundC.value,
      airChangesPerHour: (3600 * day.air.fromOutdoorsM3PerS.value) / space.result.volumeM3,
    },
    paths: load.paths.map((path) => shownPath(path, air, day, job, assumptions)),
    steadyKgPerDay: load.steadyKgPerDay,
    steadyLowKgPerDay: load.steady.likelyLow,
    steadyHighKgPerDay: load.steady.likelyHigh,
    withPullDownKgPerDay: load.withPullDownKgPerDay,
    pullDown: {
      waterKg: pullDown.waterKg,
      days: pullDown.days,
      meanKgPerDay: pullDown.meanKgPerDay,
      firstWeekKgPerDay: pullDown.firstWeekKgPerDay,
    },
    runMax: load.runMax,
    labels: load.labels,
    machines: sizing.options.map((option, i) => choiceOf(option, machines[i].from)),
    ...(choice === undefined ? {} : { chosen: choice.chosen }),
    codeOptions: codeOptions(input, load),
    notices: [...load.notices, ...(machines.length === 0 && !input.machineWanted ? [] : sizing.notices)],
  };
  return choice === undefined ? { result } : { result, machine: choice.machine };
}
