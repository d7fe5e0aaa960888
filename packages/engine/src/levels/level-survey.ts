import type { Notice } from '../numerics/notice.ts';
import type { Rod } from './instrument.ts';

/** One reading on one point. */
export interface RodReading {
  readonly pointId: string;
  readonly readingM: number;
  /** `upright` by default. */
  readonly rod?: Rod;
}

/** All readings taken without moving the instrument. */
export interface SetUp {
  readonly readings: readonly RodReading[];
}

/** A level survey in one or more set-ups. */
export interface LevelSurveyInput {
  readonly setUps: readonly SetUp[];
  /** A point of known height; without one the first point read is at 0. */
  readonly datum?: { readonly pointId: string; readonly heightM: number };
  /** Error of one reading, m, where the survey can't show its own; 1/16 in by default (common practice, no source). */
  readonly readingErrorM?: number;
}

/** A leveled point. */
export interface LeveledPoint {
  readonly pointId: string;
  readonly heightM: number;
  /** Readings it rests on. */
  readonly readingCount: number;
}

/** How one set-up was brought to the level of those before it. */
export interface Join {
  readonly setUpIndex: number;
  readonly sharedPointIds: readonly string[];
  /** What was added to its heights, as `−reading`, to bring them to the plane of the first set-up, m. */
  readonly shiftM: number;
  /** Standard deviation of the differences at the shared points, m; null for a single shared point. */
  readonly spreadM: number | null;
}

/** Something in the survey that a person has to look at. */
export interface LevelIssue {
  readonly code: 'no-shared-point' | 'datum-not-read';
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

/** Heights of all points that could be brought to one level. */
export interface LevelSurvey {
  /** In the order in which they were first joined. */
  readonly points: readonly LeveledPoint[];
  /** Error of one height, m: what the survey shows of itself, but no less than the error of one reading. */
  readonly sigmaM: number;
  readonly sigmaFrom: 'spread' | 'reading-error';
  /** Standard deviation of differences at shared points and of repeated readings, pooled, m; null without any. */
  readonly spreadM: number | null;
  readonly joins: readonly Join[];
  readonly issues: readonly LevelIssue[];
  readonly notices: readonly Notice[];
}
