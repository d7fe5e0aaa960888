export type { AssessOptions } from './assess.ts';
export { assess, checkJob } from './assess.ts';
export type {
  Assessment,
  BudgetResult,
  CautionShown,
  ClimateUsed,
  ClosureResult,
  CriterionResult,
  GeometryResult,
  OpenQuestion,
  Origin,
  ReadingMeaning,
  Verdict,
  WallEdge,
  ZoneArea,
} from './assessment.ts';
export type { Assumption } from './assumption.ts';
export type { BudgetPath, PathInputShown, PathStep } from './budget/budget-path.ts';
export type {
  CauseArrow,
  CauseConsequence,
  CauseEvidenceShown,
  CauseMechanism,
  CauseNotShown,
  CauseObservation,
  CauseRuledOut,
  CauseShare,
  CausesAssessment,
  NextMeasurementShown,
  NextOutcome,
} from './causes/causes-assessment.ts';
export type { Survey } from './compare/compare.ts';
export { compareSurveys } from './compare/compare.ts';
export type {
  ClaimChecked,
  CompareOptions,
  Comparison,
  CriterionTurn,
  FieldChange,
  FigurePair,
  FindingTurn,
  ItemChange,
  ReadingPair,
} from './compare/comparison.ts';
export { compassWord } from './coverage/compass.ts';
export type {
  CoverageAssessment,
  FromWall,
  HiddenItem,
  InteriorWallShown,
  LineShown,
  MissingPart,
  PictureShown,
  PictureUnplaced,
  PierFaceShown,
  PierShown,
  ProofShown,
  SeenThing,
  UnseenPart,
} from './coverage/coverage-assessment.ts';
export type {
  CrawlOptions,
  CrawlPlanShown,
  CrawlShot,
  CrawlStop,
} from './coverage/crawl-plan.ts';
export { crawlPlanOf, crawlPlanWith } from './coverage/crawl-plan.ts';
export type { PictureView } from './coverage/picture-views.ts';
export { picturesShowing, pictureViews } from './coverage/picture-views.ts';
export type { Shot, ShotAdds } from './coverage/shot-adds.ts';
export { shotAdds } from './coverage/shot-adds.ts';
export type {
  DefectClaim,
  DefectNotShown,
  DefectPlace,
  DefectResult,
  DefectsCount,
  MendedEffect,
  MendedYear,
} from './defects/defect-result.ts';
export type { PlaceWords } from './distribution/arrangement-words.ts';
export {
  changeWords,
  fanWords,
  machineWords,
  OUTCOME_WORDS,
  RULE_WORDS,
  stepsBetween,
} from './distribution/arrangement-words.ts';
export type {
  ArrangementChange,
  ArrangementsShown,
  ArrangementTried,
  DistributionAssessment,
  DistributionBand,
  DistributionInput,
  DistributionMissing,
  DistributionState,
  DistributionWorkedOut,
  FanPlaced,
  FieldGridMap,
  FieldRange,
  FloorPartShown,
  MachinePlaced,
  MachinePlacing,
  ReadingsFit,
  RuleExcluded,
} from './distribution/distribution-assessment.ts';
export type { PlaceFinder } from './distribution/place-words.ts';
export { placeFinder } from './distribution/place-words.ts';
export type { AirToTry, ArrangementAsked } from './distribution/try-arrangements.ts';
export type { EvidenceUsed } from './evidence-used.ts';
export { drawnGeometry, outlineInput } from './geometry.ts';
export { JobError } from './job-error.ts';
export type { FallOfSpots, LeveledSetup, LeveledSpot, LevelSheet } from './levels.ts';
export { fallOfSpots, levelSheet } from './levels.ts';
export type { Wanted, WantedFor } from './missing.ts';
export { missingOf } from './missing.ts';
export type { ValueAgainstCriterion } from './readings/against-criteria.ts';
export { valueAgainstCriteria } from './readings/against-criteria.ts';
export type { DraftReading } from './readings/meanings.ts';
export { meaningOf } from './readings/meanings.ts';
export { assessmentJsonSchema } from './results-schema/assessment-schema.ts';
export type { RepairKey } from './season/repair-rule.ts';
export type {
  AirExchangeSummary,
  AirQuarter,
  ChancesResult,
  DesignDayShown,
  FailureResult,
  HourlyYear,
  InfluenceResult,
  MachineChoice,
  MachineChosen,
  PullDownShown,
  RankingResult,
  RepairEffectResult,
  RepairMeaning,
  RepairOutcomeChange,
  RepairSetResult,
  SeasonAssessment,
  SeasonCaseResult,
  SeasonMonthResult,
  SeasonWeatherUsed,
  SizingResult,
} from './season/season-assessment.ts';
export type { Trace } from './trace/trace.ts';
export { traceOf } from './trace/trace.ts';
