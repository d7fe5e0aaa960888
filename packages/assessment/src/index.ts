export { assess, checkJob } from './assess.ts';
export type {
  Assessment,
  Assumption,
  BudgetPath,
  BudgetResult,
  CautionShown,
  ClimateUsed,
  ClosureResult,
  CriterionResult,
  EvidenceUsed,
  GeometryResult,
  OpenQuestion,
  Origin,
  ReadingMeaning,
  Verdict,
  WallEdge,
  ZoneArea,
} from './assessment.ts';
export { JobError } from './job-error.ts';
