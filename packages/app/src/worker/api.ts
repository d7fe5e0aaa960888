import type {
  ArrangementAsked,
  Assessment,
  Comparison,
  DistributionBand,
  DraftReading,
  FallOfSpots,
  GeometryResult,
  LevelSheet,
  missingOf,
  PictureView,
  ReadingMeaning,
  Shot,
  ShotAdds,
  ValueAgainstCriterion,
  Wanted,
} from '@undercroft/assessment';
import type { calculators } from '@undercroft/engine';
import type { Job, Point } from '@undercroft/record';
import type { AirContours, AirQuantity } from '@undercroft/report';

/** A calculator as a form shows it: everything but the calculation. */
export type CalculatorForm = Omit<calculators.Calculator, 'run'>;

/** What an assessment gives, or why there can be none: texts for a person. */
export type AssessmentOutcome =
  | { readonly ok: true; readonly assessment: Assessment }
  | { readonly ok: false; readonly reason: string };

/**
 * How far the year is worked out. `quick`: the space as found and with all repairs, for somebody who types. `cases`: each
 * repair alone and the failures as well. `full`: which repairs buy dryness and how sure it is, some hundred years.
 */
export type Depth = 'quick' | 'cases' | 'full';

/** A file of hourly weather that a person gave for a job. */
export interface WeatherFile {
  readonly sha256: string;
  readonly name: string;
  readonly blob: Blob;
}

/** A job and the weather that it is assessed in; the built-in station where there is no file. */
export interface AssessRequest {
  readonly job: Job;
  readonly weather: WeatherFile | null;
  /** Whether what the pictures show is worked out as well. */
  readonly coverage?: boolean;
}

/** What of a year is drawn by the day or by the hour. */
export const SERIES_NAMES = [
  'relativeHumidity',
  'temperatureC',
  'dewPointC',
  'woodMoistureSurface',
  'moldIndex',
  'waterRemovedKg',
  'energyKWh',
] as const;
export type SeriesName = (typeof SERIES_NAMES)[number];

/** One state of the space over a year in days (means; water and energy are sums) or over a month in hours. */
export interface YearSeries {
  readonly kind: 'as-found' | 'all-repairs';
  readonly values: Readonly<Record<SeriesName, readonly number[]>>;
}

/** Days of the year, or the hours of one month, January 0. */
export type SeriesSpan = { readonly of: 'year' } | { readonly of: 'month'; readonly month: number };

/** What a weather file is, or what is wrong with it. */
export type WeatherReading =
  | {
      readonly ok: true;
      readonly place: string;
      readonly source: string;
      readonly notices: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly string[] };

/** Two surveys side by side, or why they cannot be. */
export type ComparisonOutcome =
  | { readonly ok: true; readonly comparison: Comparison }
  | { readonly ok: false; readonly reason: string };

/** What a reading says while it is typed, or why it can be none; `band` is the key of a stretch of wood moisture. */
export type DraftMeaning =
  | { readonly ok: true; readonly meaning: ReadingMeaning; readonly band?: string }
  | { readonly ok: false; readonly reason: string };

/** What of an assessment tells what is missing; null while there is none. */
export type ShownSoFar = Parameters<typeof missingOf>[1];

/** The air on the plan for one arrangement of machine and fans. */
export interface AirShown {
  readonly contours: AirContours;
  /** Where the middle line lies with the least and the most mixing; absent while somebody drags. */
  readonly doubtful?: readonly AirContours['lines'][number]['rings'][];
  /** Middle of the band; with the range where the whole band was worked out. */
  readonly figures: Readonly<
    Record<AirFigure, { readonly value: number; readonly low?: number; readonly high?: number }>
  >;
  readonly energyKWhPerDay: number;
  /** Whether the machine reaches its setting, and how not. */
  readonly outcome: string;
  readonly dampestAt: Point;
}

/** Figures of the air that are shown beside its map, fractions. */
export const AIR_FIGURES = [
  'intakeRelativeHumidity',
  'farEndRelativeHumidity',
  'dampestRelativeHumidity',
  'shareAbove70',
  'shareAbove80',
  'duty',
] as const;
export type AirFigure = (typeof AIR_FIGURES)[number];

/** The air, or why it could not be worked out. */
export type AirOutcome =
  | { readonly ok: true; readonly air: AirShown }
  | { readonly ok: false; readonly reason: string };

/** A better arrangement, as something to try; null where none is better. */
export type AirSearchOutcome =
  | {
      readonly ok: true;
      readonly suggested: Pick<DistributionBand, 'machine' | 'fans'> | null;
      readonly costCents: number;
      readonly rank: number;
      readonly screened: number;
    }
  | { readonly ok: false; readonly reason: string };

export interface PlanDrawingOptions {
  readonly widthPx: number;
  readonly ground: 'under' | 'daylight' | 'paper';
}

/** Everything that is computed, away from the thread that draws. */
export interface Compute {
  /** @param progress told how many years of how many are done, ten times a second at most */
  assess(
    request: AssessRequest,
    depth: Depth,
    progress?: (done: number, total: number) => void,
  ): Promise<AssessmentOutcome>;
  /** The year as found and with all repairs; nothing where it cannot be run. */
  yearSeries(request: AssessRequest, span: SeriesSpan): Promise<readonly YearSeries[]>;
  /**
   * The air on the plan with machine and fans arranged as asked.
   * @param key names the state of the job; the same one is made ready once
   * @param whole with the range that mixing leaves open, which takes three times as long
   */
  air(
    request: AssessRequest,
    key: string,
    asked: ArrangementAsked,
    whole: boolean,
    quantity: AirQuantity,
  ): Promise<AirOutcome>;
  /** Looks for a better arrangement; some seconds. */
  betterAir(request: AssessRequest): Promise<AirSearchOutcome>;
  /** Sets an earlier survey of a space beside a later one. */
  compare(before: Job, after: Job): Promise<ComparisonOutcome>;
  readWeather(file: Blob, name: string): Promise<WeatherReading>;
  planSvg(job: Job, assessment: Assessment, options: PlanDrawingOptions): Promise<string>;
  /** What a reading says that is not in the record yet. */
  meaningOf(job: Job, draft: DraftReading): Promise<DraftMeaning>;
  againstCriteria(
    job: Job,
    quantity: string,
    value: number | boolean,
  ): Promise<readonly ValueAgainstCriterion[]>;
  levelSheet(job: Job): Promise<LevelSheet>;
  fall(sheet: LevelSheet, fromId: string, toId: string): Promise<FallOfSpots | null>;
  /** The floor that each picture shows. */
  pictureViews(job: Job, geometry: GeometryResult): Promise<readonly PictureView[]>;
  /** What a picture would add to those that were taken; null where nothing can be said. */
  shotAdds(job: Job, geometry: GeometryResult, shot: Shot): Promise<ShotAdds | null>;
  missing(job: Job, shown: ShownSoFar): Promise<readonly Wanted[]>;
  calculatorForms(): Promise<readonly CalculatorForm[]>;
  calculate(name: string, inputs: calculators.RawInputs): Promise<calculators.CalculatorRun>;
}
