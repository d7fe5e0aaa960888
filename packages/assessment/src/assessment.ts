import type { Notice, Source } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import type { Assumption } from './assumption.ts';
import type { BudgetPath } from './budget/budget-path.ts';
import type { ConditionOrigins } from './budget/origins.ts';
import type { CausesAssessment } from './causes/causes-assessment.ts';
import type { CoverageAssessment } from './coverage/coverage-assessment.ts';
import type { DefectNotShown, DefectResult, DefectsCount } from './defects/defect-result.ts';
import type { DistributionAssessment } from './distribution/distribution-assessment.ts';
import type { EvidenceUsed } from './evidence-used.ts';
import type { SeasonAssessment } from './season/season-assessment.ts';

export type { Origin } from './origin.ts';

/** A wall of the outline, in the order of the survey. */
export interface WallEdge {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
  readonly lengthM: number;
  readonly bearingDeg: number;
}

/** How well the taped walls closed. */
export interface ClosureResult {
  readonly misclosureM: number;
  /** 1 : precision. Infinite when the tape closes exactly. */
  readonly precision: number;
  readonly verdict: 'good' | 'doubtful' | 'poor';
  readonly adjustment: 'compass' | 'transit';
  readonly hint?: string;
}

export interface ZoneArea {
  /** Id of the zone; `elsewhere` for the floor outside every zone. */
  readonly id: string;
  readonly name: string;
  readonly cover: string;
  readonly areaM2: number;
}

export interface GeometryResult {
  readonly corners: readonly Point[];
  readonly edges: readonly WallEdge[];
  readonly closure?: ClosureResult;
  readonly floorAreaM2: number;
  readonly perimeterM: number;
  readonly volumeM3: number;
  readonly clearHeightM: {
    readonly minimum: number;
    readonly mean: number;
    readonly maximum: number;
    readonly assumed: boolean;
  };
  readonly zones: readonly ZoneArea[];
  readonly bareEarthM2: number;
  readonly pierCount: number;
  /** Net free area of all vents that are open [m²]. */
  readonly openVentAreaM2: number;
  readonly notices: readonly Notice[];
}

/** What one reading says, in words and figures. */
export interface ReadingMeaning {
  readonly id: string;
  readonly kind: 'air' | 'surface' | 'wood';
  readonly at?: Point;
  readonly place: string;
  readonly when: string;
  readonly who: string;
  /** As read, with its unit, e.g. "24.3 °C, 71 % RH". */
  readonly shown: string;
  /** What follows from it, one sentence. */
  readonly means: string;
  /** `alarm` where damage is likely or under way, `watch` where it is near, `fine` otherwise. */
  readonly state: 'fine' | 'watch' | 'alarm';
  /** Figures behind the sentence, SI, by name. */
  readonly figures: Readonly<Record<string, number>>;
  readonly notices: readonly Notice[];
}

export type Verdict = 'met' | 'not-met' | 'not-shown';

export interface CriterionResult {
  readonly id: string;
  readonly subject: string;
  readonly title: string;
  readonly kind: 'code' | 'standard' | 'guide' | 'practice';
  /** The limit in words and US units, e.g. "at least 6 in". */
  readonly limit: string;
  /** The limit in SI units. */
  readonly limitSi: string;
  /** Publication, edition and section. */
  readonly source: string;
  readonly sourceKnown: Source['provenance'];
  readonly verdict: Verdict;
  readonly reason: string;
  readonly evidence: readonly EvidenceUsed[];
  /** True for the strictest of the criteria that apply to one quantity. */
  readonly governs: boolean;
  readonly consequence?: string;
  readonly licensedTrade?: string;
}

/** A question whose answer decides whether some criteria apply. */
export interface OpenQuestion {
  /** Name under which the record keeps the answer. */
  readonly question: string;
  readonly text: string;
  /** Answers allowed; `yes` and `no` for true and false. */
  readonly answers: readonly string[];
  /** Ids of the criteria that wait for it. */
  readonly criteria: readonly string[];
}

/** The steady moisture balance of one state of the space. */
export interface BudgetResult {
  /** e.g. "Survey day, 14 May 2031" or "Design month, July". */
  readonly title: string;
  readonly crawl: {
    readonly temperatureC: number;
    readonly relativeHumidity: number;
    readonly dewPointC: number;
  };
  readonly outdoor: {
    readonly temperatureC: number;
    readonly relativeHumidity: number;
    readonly dewPointC: number;
  };
  readonly groundTemperatureC: number;
  readonly airChangesPerHour: number;
  /** Where the state of the air, of outdoors, house and ground came from. */
  readonly origins: ConditionOrigins;
  readonly paths: readonly BudgetPath[];
  /** Sum of all paths that bring water [kg/day]. */
  readonly totalInKgPerDay: number;
  /** What the paths do not explain [kg/day]; zero where the humidity was solved for. */
  readonly unexplainedKgPerDay: number;
  /** Range of steady relative humidity when guesses are at their ends, where the humidity was solved for. */
  readonly relativeHumidityRange?: { readonly low: number; readonly high: number };
  readonly notices: readonly Notice[];
}

export interface CautionShown {
  readonly id: string;
  readonly text: string;
  /** Why it shows here. */
  readonly because: string;
}

export interface ClimateUsed {
  readonly name: string;
  readonly source: string;
  readonly kind: string;
  readonly distanceKm?: number;
  readonly notices: readonly Notice[];
}

/** Everything that follows from a record and a climate. Computed anew each time, never stored as truth. */
export interface Assessment {
  readonly format: 'undercroft-assessment';
  readonly version: 1;
  readonly job: { readonly id: string; readonly title: string; readonly surveyedOn?: string };
  readonly climate: ClimateUsed;
  /** The finding of the whole assessment in one or two plain sentences. */
  readonly headline: string;
  readonly geometry: GeometryResult;
  readonly readings: readonly ReadingMeaning[];
  readonly criteria: readonly CriterionResult[];
  /** What nobody has answered yet, the question that most criteria wait for first. */
  readonly openQuestions: readonly OpenQuestion[];
  readonly criteriaCount: { readonly met: number; readonly notMet: number; readonly notShown: number };
  /** Defects that were shown, claimed, contradicted or are suspected; the surest and gravest first. */
  readonly defects: readonly DefectResult[];
  /** Defects of the catalogue that nobody has shown and nobody can rule out yet. */
  readonly defectsNotShown: readonly DefectNotShown[];
  readonly defectsCount: DefectsCount;
  readonly budgets: { readonly surveyDay?: BudgetResult; readonly designMonth: BudgetResult };
  /** What the pictures show of the space and what they do not; absent where it was not asked for. */
  readonly coverage?: CoverageAssessment;
  /** Where the dry air goes on the plan; absent where it was not asked for. */
  readonly distribution?: DistributionAssessment;
  /** The year by the hour; absent where it was not asked for. */
  readonly season?: SeasonAssessment;
  /** Why the space is as it was found, and what follows. */
  readonly causes: CausesAssessment;
  readonly assumptions: readonly Assumption[];
  readonly cautions: readonly CautionShown[];
  readonly sources: readonly Source[];
  readonly notices: readonly Notice[];
}
