export type { Amendment, Catalogue } from './adoption.ts';
export { adopt, baseCatalogue } from './adoption.ts';
export { criteria } from './catalogue.ts';
export type { Caution, WorkStep } from './caution.ts';
export { cautions, cautionsFor } from './cautions.ts';
export type { Condition } from './condition.ts';
export { all, always, any, holds, is, not, openFacts } from './condition.ts';
export type { ItemsToCover } from './coverage.ts';
export type {
  Comparison,
  Criterion,
  CriterionKind,
  CriterionSource,
  CriterionSubject,
  LicensedTrade,
  Limit,
  Sampling,
} from './criterion.ts';
export type { CriterionRow } from './criterion-row.ts';
export type { BillQuantity } from './defects/bill-of-defect.ts';
export type { BillExtents, BillRule } from './defects/bill-rule.ts';
export type { Aggravation, Defect, DefectSubject, InBoth, RepairStep, Severity } from './defects/defect.ts';
export { REPAIR_ORDER } from './defects/defect.ts';
export { defectOf, defects } from './defects/defects.ts';
export type { DefectCertainty, DefectState, DetectedDefect } from './defects/detect-defects.ts';
export { detectDefects } from './defects/detect-defects.ts';
export type {
  ClaimedDefect,
  ClaimedExtent,
  DefectEvidence,
  DrawnExtent,
} from './defects/evidence-of-defects.ts';
export type { Evidence } from './evidence.ts';
export type { FactKey, FactValue, JobFacts } from './facts.ts';
export { facts, isFactValue } from './facts.ts';
export type { Band, Direction, GoverningGroup } from './governing.ts';
export { bandOf, governing } from './governing.ts';
export type { CriteriaIssue } from './issue.ts';
export { judge, judgeAll } from './judge.ts';
export type { Finding, Judgement, Verdict } from './judgement.ts';
export { limitText, valueText } from './limit-text.ts';
export type { Overlay, OverlayChange, ReplacedFields } from './overlay.ts';
export { overlays } from './overlays.ts';
export type { QuantityKey } from './quantities.ts';
export { findQuantity, quantities } from './quantities.ts';
export type { Quantity, QuantityPlace, QuantityUnit } from './quantity.ts';
export { cite, commonPractice, criteriaSources } from './sources.ts';
