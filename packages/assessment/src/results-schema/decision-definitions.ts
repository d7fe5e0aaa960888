import type { dehumidifier, season } from '@undercroft/engine';
import type {
  ChancesResult,
  DesignDayShown,
  InfluenceResult,
  MachineChoice,
  MachineChosen,
  PullDownShown,
  RankingResult,
  RepairEffectResult,
  RepairOutcomeChange,
  RepairSetResult,
  SizingResult,
} from '../season/season-assessment.ts';
import {
  amount,
  count,
  fraction,
  listOf,
  number,
  object,
  oneOf,
  ref,
  type Schema,
  text,
  whole,
  yesNo,
} from './build.ts';
import { LABELS } from './season-definitions.ts';

const notices = listOf(ref('Notice'));
const ratingPoint = oneOf('80F-60', '73F-60', '65F-60');
const correlation: Schema = { type: 'number', minimum: -1, maximum: 1 };

/** What to choose: machine, repairs, and how sure that is. */
export const DECISION_DEFINITIONS = {
  MachineChoice: object<MachineChoice>(
    {
      id: text,
      name: text,
      from: oneOf('list', 'found'),
      labelKgPerDay: LABELS,
      capacityHereKgPerDay: amount,
      steadyRunFraction: fraction,
      pullDownRunFraction: fraction,
      holdsSteady: yesNo,
      holdsPullDown: yesNo,
      notices,
    },
    { priceCents: whole, energyKWhPerDay: amount, startsPerHour: amount },
  ),
  CodeOption: object<dehumidifier.CodeOption>(
    { key: oneOf('exhaust', 'supply', 'plenum', 'dehumidifier'), title: text, warnings: notices },
    { flowM3PerS: amount, capacityKgPerDay: amount, removesKgPerDay: number, coversLoad: yesNo },
  ),
  Sizing: object<SizingResult>(
    {
      state: text,
      targetRelativeHumidity: fraction,
      day: object<DesignDayShown>({
        title: text,
        outdoorC: number,
        outdoorHumidityRatio: amount,
        crawlC: number,
        groundC: number,
        airChangesPerHour: amount,
      }),
      paths: listOf(ref('BudgetPath')),
      steadyKgPerDay: amount,
      steadyLowKgPerDay: amount,
      steadyHighKgPerDay: amount,
      withPullDownKgPerDay: amount,
      pullDown: object<PullDownShown>({
        waterKg: amount,
        days: amount,
        meanKgPerDay: amount,
        firstWeekKgPerDay: amount,
      }),
      runMax: fraction,
      labels: listOf(
        object<dehumidifier.LabelNeed>({ ratingPoint, steadyKgPerDay: amount, pullDownKgPerDay: amount }),
      ),
      machines: listOf(ref('MachineChoice')),
      codeOptions: listOf(ref('CodeOption')),
      notices,
    },
    {
      chosen: object<MachineChosen>({
        id: text,
        name: text,
        ratedKgPerDay: amount,
        litersPerKWh: amount,
        why: text,
      }),
    },
  ),
  RepairChange: object<RepairOutcomeChange>({
    daysAbove80: whole,
    peakMoldIndex: number,
    peakWoodMoisture: number,
    yearlyCostCents: whole,
  }),
  RepairEffect: object<RepairEffectResult>({
    id: text,
    title: text,
    alone: ref('RepairChange'),
    last: ref('RepairChange'),
  }),
  RepairSet: object<RepairSetResult>({
    repairIds: listOf(text),
    title: text,
    priceCents: whole,
    daysAbove80: count,
    peakMoldIndex: amount,
    peakWoodMoisture: amount,
    yearlyCostCents: count,
  }),
  Ranking: object<RankingResult>({
    complete: yesNo,
    yearsRun: count,
    effects: listOf(ref('RepairEffect')),
    best: listOf(ref('RepairSet')),
    sets: listOf(ref('RepairSet')),
    notices,
  }),
  Chance: object<season.Chance>({ value: fraction, low: fraction, high: fraction }),
  Spread: object<season.Spread>({ low: number, middle: number, high: number }),
  Influence: object<InfluenceResult>({
    key: text,
    title: text,
    low: number,
    high: number,
    unit: text,
    onHumidity: correlation,
    onMold: correlation,
    share: fraction,
  }),
  Chances: object<ChancesResult>({
    name: text,
    count,
    seed: number,
    staysBelow60: ref('Chance'),
    staysBelow70: ref('Chance'),
    staysBelow80: ref('Chance'),
    moldAtMost3: ref('Chance'),
    highestDayRelativeHumidity: ref('Spread'),
    daysAbove80: ref('Spread'),
    peakMoldIndex: ref('Spread'),
    energyKWh: ref('Spread'),
    waterRemovedKg: ref('Spread'),
    influences: listOf(ref('Influence')),
    notices,
  }),
} as const satisfies Record<string, Schema>;
