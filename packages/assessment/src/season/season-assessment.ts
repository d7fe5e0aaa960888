import type { dehumidifier, Notice, season } from '@undercroft/engine';
import type { Assumption } from '../assumption.ts';
import type { BudgetPath } from '../budget/budget-path.ts';
import type { RepairKey } from './repair-rule.ts';

/** Weather that the years are run in. */
export interface SeasonWeatherUsed {
  readonly name: string;
  readonly source: string;
  /** `typical-year-file`, `single-year-file`, or `synthesized` from monthly statistics. */
  readonly kind: string;
  /** Seed of a synthesized year. */
  readonly seed?: number;
  readonly notices: readonly Notice[];
}

/** What one repair of the job does to the space, as far as the year knows. */
export interface RepairMeaning {
  /** Id of the choice in the record. */
  readonly id: string;
  readonly repair: RepairKey;
  readonly title: string;
  /** What it is taken to change, in plain words. */
  readonly does: string;
  /** False for work that changes nothing in the balance of heat, air and water. */
  readonly changesTheYear: boolean;
  readonly priceCents?: number;
}

/** Means and sums of one month of one case. */
export interface SeasonMonthResult {
  readonly temperatureC: number;
  readonly relativeHumidity: number;
  readonly dewPointC: number;
  /** Joists, kg/kg: first 5 mm, and what is behind them. */
  readonly woodMoistureSurface: number;
  readonly woodMoistureCore: number;
  /** Highest mold index of the month on any surface. */
  readonly moldIndex: number;
  readonly airChangesPerHour: number;
  /** Share of all air that enters the house that came up through the floor. */
  readonly floorShare: number;
  /** Kilograms of water, which are liters. */
  readonly waterRemovedKg: number;
  readonly energyKWh: number;
  readonly runHours: number;
}

/** How the space bears a fortnight without power or without its dehumidifier. */
export interface FailureResult {
  readonly what: 'power' | 'dehumidifier';
  /** First day and number of days, e.g. `July 8`. */
  readonly from: string;
  readonly days: number;
  /** Hourly humidity: at its beginning, at its highest, and what it would have been at that hour without the failure. */
  readonly startRelativeHumidity: number;
  readonly highestRelativeHumidity: number;
  readonly usualRelativeHumidity: number;
  /** Hours until the air first passes 60, 70 and 80 %; absent where it does not. */
  readonly hoursUntilAbove60?: number;
  readonly hoursUntilAbove70?: number;
  readonly hoursUntilAbove80?: number;
  /** Days after its end until the air is back within 2 points of what it would have been; absent where the year ends first. */
  readonly daysToRecover?: number;
}

/** A settled year of one state of the space. */
export interface SeasonCaseResult {
  readonly name: string;
  readonly kind: 'as-found' | 'repair' | 'all-repairs' | 'failure';
  /** Ids of the choices in the record that are done in this case. */
  readonly repairIds: readonly string[];
  readonly months: readonly SeasonMonthResult[];
  readonly daysAbove80: number;
  readonly hoursAbove60: number;
  readonly hoursAbove70: number;
  readonly hoursAbove80: number;
  /** Highest mean relative humidity of a day. */
  readonly highestDayRelativeHumidity: number;
  readonly peakMoldIndex: number;
  /** Highest moisture content of any wood surface, kg/kg. */
  readonly peakWoodMoisture: number;
  /** Hours in which water condenses, by surface. */
  readonly condensationHours: Readonly<Record<season.FilmSurface | season.WoodSite, number>>;
  readonly waterRemovedKg: number;
  readonly energyKWh: number;
  /** Electricity at the tariff, whole cents. */
  readonly costCents: number;
  readonly runHours: number;
  readonly starts: number;
  /** Water by path over the year, kg, positive into the air of the space. */
  readonly waterKg: Readonly<Record<season.WaterPath, number>>;
  readonly airChangesPerHour: number;
  /** What is missing in the books, as a share of all that moved. */
  readonly closure: { readonly water: number; readonly energy: number };
  /** Whether the year repeats itself. */
  readonly settled: boolean;
  readonly failure?: FailureResult;
  readonly notices: readonly Notice[];
}

/** Air between outdoors, space and house in one quarter of the year. */
export interface AirQuarter {
  readonly months: string;
  readonly airChangesPerHour: number;
  /** Share of the air entering the house that came up through the floor, mean of the hours. */
  readonly floorShare: number;
  /** Net air through the floor in the mean weather of its months, m³/h of standard air; positive goes up. */
  readonly floorFlowM3PerH: number;
  readonly floorDirection: 'up' | 'down' | 'none';
}

/** Air of one case, by quarters. */
export interface AirExchangeSummary {
  readonly name: string;
  /** Leakage of the space to outdoors as it stands, and of the floor, m² at 4 Pa. */
  readonly leakageM2: number;
  readonly floorLeakageM2: number;
  readonly quarters: readonly AirQuarter[];
}

/** A machine against the design day. */
export interface MachineChoice {
  readonly id: string;
  readonly name: string;
  /** `list`: the user's own; `found`: stands in the space. */
  readonly from: 'list' | 'found';
  readonly priceCents?: number;
  readonly labelKgPerDay: Readonly<Record<dehumidifier.RatingPointKey, number>>;
  readonly capacityHereKgPerDay: number;
  readonly steadyRunFraction: number;
  readonly pullDownRunFraction: number;
  readonly holdsSteady: boolean;
  readonly holdsPullDown: boolean;
  readonly energyKWhPerDay?: number;
  readonly startsPerHour?: number;
  readonly notices: readonly Notice[];
}

/** The day that a machine is sized for. */
export interface DesignDayShown {
  readonly title: string;
  readonly outdoorC: number;
  readonly outdoorHumidityRatio: number;
  readonly crawlC: number;
  readonly groundC: number;
  readonly airChangesPerHour: number;
}

/** Water that comes out of wood and walls once, after a wet space is closed. */
export interface PullDownShown {
  readonly waterKg: number;
  readonly days: number;
  readonly meanKgPerDay: number;
  readonly firstWeekKgPerDay: number;
}

/** The machine that the years are run with; capacity and efficiency at 80 °F and 60 %. */
export interface MachineChosen {
  readonly id: string;
  readonly name: string;
  readonly ratedKgPerDay: number;
  readonly litersPerKWh: number;
  readonly why: string;
}

/** What has to be removed on the most humid day, and what does it. */
export interface SizingResult {
  /** State of the space that the machine is sized for. */
  readonly state: string;
  readonly targetRelativeHumidity: number;
  readonly day: DesignDayShown;
  readonly paths: readonly BudgetPath[];
  readonly steadyKgPerDay: number;
  /** Likely range of the steady load with all guesses. */
  readonly steadyLowKgPerDay: number;
  readonly steadyHighKgPerDay: number;
  readonly withPullDownKgPerDay: number;
  readonly pullDown: PullDownShown;
  /** Share of the time that a machine may run. */
  readonly runMax: number;
  /** Capacity that a label must show at each test air. */
  readonly labels: readonly dehumidifier.LabelNeed[];
  readonly machines: readonly MachineChoice[];
  /** The machine that the years are run with. */
  readonly chosen?: MachineChosen;
  /** The residential code's ways to keep a closed space dry, against the same load. */
  readonly codeOptions: readonly dehumidifier.CodeOption[];
  readonly notices: readonly Notice[];
}

/** How much drier one repair makes the space; negative is less. */
export interface RepairEffectResult {
  readonly id: string;
  readonly title: string;
  readonly alone: RepairOutcomeChange;
  /** What it adds when all other repairs are done. */
  readonly last: RepairOutcomeChange;
}

/** Change of the year by a repair. */
export interface RepairOutcomeChange {
  readonly daysAbove80: number;
  readonly peakMoldIndex: number;
  readonly peakWoodMoisture: number;
  readonly yearlyCostCents: number;
}

/** One set of repairs with its year. */
export interface RepairSetResult {
  readonly repairIds: readonly string[];
  readonly title: string;
  readonly priceCents: number;
  readonly daysAbove80: number;
  readonly peakMoldIndex: number;
  readonly peakWoodMoisture: number;
  readonly yearlyCostCents: number;
}

/** Which repairs buy dryness. */
export interface RankingResult {
  /** Whether every combination was run. */
  readonly complete: boolean;
  readonly yearsRun: number;
  /** Those that take away the most days above 80 %, alone and last together, first. */
  readonly effects: readonly RepairEffectResult[];
  /** The best set for each budget, cheapest first. */
  readonly best: readonly RepairSetResult[];
  readonly sets: readonly RepairSetResult[];
  readonly notices: readonly Notice[];
}

/** How much one unknown has to do with the humidity and the mold of a year. */
export interface InfluenceResult {
  /** Key of the assumption, or `weather`. */
  readonly key: string;
  readonly title: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  /** Rank correlation with the most humid day and with the peak mold index, −1 to 1. */
  readonly onHumidity: number;
  readonly onMold: number;
  /** Squared rank correlation with the humidity: about its share of the spread. */
  readonly share: number;
}

/** How sure the year of one case is. */
export interface ChancesResult {
  readonly name: string;
  readonly count: number;
  readonly seed: number;
  readonly staysBelow60: season.Chance;
  readonly staysBelow70: season.Chance;
  readonly staysBelow80: season.Chance;
  readonly moldAtMost3: season.Chance;
  /** A tenth of the years lie below `low`, half below `middle`, nine tenths below `high`. */
  readonly highestDayRelativeHumidity: season.Spread;
  readonly daysAbove80: season.Spread;
  readonly peakMoldIndex: season.Spread;
  readonly energyKWh: season.Spread;
  readonly waterRemovedKg: season.Spread;
  /** What matters most, first: what to measure next. */
  readonly influences: readonly InfluenceResult[];
  readonly notices: readonly Notice[];
}

/** A year by the hour, 8760 values of each quantity, for drawing it. The series are shared: do not change them. */
export interface HourlyYear {
  readonly name: string;
  readonly kind: 'as-found' | 'all-repairs';
  readonly hourly: season.SeasonHourly;
}

/** The space through a year, as found and repaired. */
export interface SeasonAssessment {
  /** How much was worked out: `quick` has the first and the last state, `full` also the ranking and the chances. */
  readonly depth: 'quick' | 'cases' | 'full';
  readonly weather: SeasonWeatherUsed;
  readonly tariffCentsPerKWh: number;
  readonly repairs: readonly RepairMeaning[];
  /** As found first, then each repair alone, all repairs, and all repairs with a failure in July, as far as the depth goes. */
  readonly cases: readonly SeasonCaseResult[];
  readonly airExchange: readonly AirExchangeSummary[];
  readonly sizing: SizingResult;
  readonly ranking?: RankingResult;
  readonly chances?: ChancesResult;
  /** What was assumed for the years beyond the assumptions of the assessment. */
  readonly assumptions: readonly Assumption[];
  readonly notices: readonly Notice[];
}
