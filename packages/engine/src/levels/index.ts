export type { Fall, FallVerdict, LinePoint } from './fall.ts';
export { fallBetween, reachFalls, smallestProvableSlope } from './fall.ts';
export type { Rod } from './instrument.ts';
export { instrumentHeightM, invertFromTopM, pointHeightM, relativeHeightsM } from './instrument.ts';
export { joinSetUps } from './join-set-ups.ts';
export type {
  Join,
  LeveledPoint,
  LevelIssue,
  LevelSurvey,
  LevelSurveyInput,
  RodReading,
  SetUp,
} from './level-survey.ts';
export type { LoopClosure, LoopSetUp } from './loop-closure.ts';
export { closeLoop, thirdOrderAllowedM } from './loop-closure.ts';
export {
  EIGHTH_INCH_PER_FOOT,
  LEVEL_SLOPE,
  leastDrainSlope,
  QUARTER_INCH_PER_FOOT,
  requiredFallM,
  SIXTEENTH_INCH_PER_FOOT,
} from './required-slope.ts';
export { levelSources } from './sources.ts';
export type { Pool, TrappedWater } from './trapped-water.ts';
export { trappedWater } from './trapped-water.ts';
