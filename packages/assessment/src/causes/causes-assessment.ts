import type { causes, Source } from '@undercroft/engine';
import type { Origin } from '../origin.ts';

/** Something that speaks for or against an explanation, with where it came from. */
export interface CauseEvidenceShown {
  /** Unique within the assessment. */
  readonly id: string;
  readonly explains: causes.CauseKey;
  /** What was looked at, a few words. */
  readonly title: string;
  /** What it showed; absent for what is told in the title alone. */
  readonly value?: number | boolean;
  readonly unit?: string;
  readonly says: 'for' | 'against';
  /** How many times likelier it is where this is the main explanation, at most 20; where it speaks against, the inverse. */
  readonly times: number;
  /** `measured` on site, `balance` of the water, `year` by the hour, `defect` found, `seen` elsewhere in the chain. */
  readonly basis: 'measured' | 'balance' | 'year' | 'defect' | 'seen';
  /** Why it speaks so, one plain sentence. */
  readonly reason: string;
  /** Readings, observations and drawn items that it rests on. */
  readonly origins: readonly Origin[];
  /** Ids of criteria that were judged on the same quantity. */
  readonly criteria: readonly string[];
}

/** That one node explains another, with its weight. */
export interface CauseArrow {
  readonly from: causes.CauseKey;
  readonly to: causes.CauseKey;
  /** Number in drawing and list; absent for what is too light to draw. */
  readonly number?: number;
  /** Share among the explanations of `to`; with what is not listed they sum to 1. */
  readonly weight: number;
  readonly prior: number;
  readonly standing: causes.Standing;
  readonly reason: string;
  readonly source: Source;
  /** Ids of evidence for it, strongest first, and against it. */
  readonly supports: readonly string[];
  readonly contradicts: readonly string[];
}

/** A first cause with its share of something. */
export interface CauseShare {
  /** `unlisted` for what this program does not know. */
  readonly key: causes.CauseKey | 'unlisted';
  readonly title: string;
  readonly weight: number;
}

/** Something that was found and wants an explanation. */
export interface CauseObservation {
  readonly key: causes.CauseKey;
  readonly kind: causes.CauseKind;
  readonly title: string;
  readonly meaning: string;
  /** What showed it, one plain sentence. */
  readonly because: string;
  readonly origins: readonly Origin[];
  /** Weight of explanations that this program does not know. */
  readonly unlisted: number;
  /** How open the question is; 0 where one explanation has all the weight. */
  readonly entropyBits: number;
  /** First causes, heaviest first; they sum to 1. */
  readonly roots: readonly CauseShare[];
}

/** A cause that explains something found. */
export interface CauseMechanism {
  readonly key: causes.CauseKey;
  readonly title: string;
  readonly meaning: string;
  /** Share of all that was found and wants an explanation, each finding counting alike. */
  readonly weight: number;
  readonly standing: causes.Standing;
  readonly supports: readonly string[];
  readonly contradicts: readonly string[];
}

/** A cause that cannot be, and why. */
export interface CauseRuledOut {
  readonly key: causes.CauseKey;
  readonly title: string;
  readonly because: string;
}

/** Something that follows if nothing is done and was not seen yet. */
export interface CauseConsequence {
  readonly key: causes.CauseKey;
  readonly title: string;
  readonly meaning: string;
  /** What it comes from. */
  readonly from: readonly causes.CauseKey[];
}

/** A condition that nobody looked for. */
export interface CauseNotShown {
  readonly key: causes.CauseKey;
  readonly title: string;
  /** What would show it. */
  readonly how: string;
}

/** What one outcome of a measurement would make of it. */
export interface NextOutcome {
  readonly answer?: boolean;
  /** In the unit of the measurement: at or above, and below. */
  readonly from?: number;
  readonly below?: number;
  readonly chance: number;
  readonly leads: CauseShare;
}

/** A measurement that would tell explanations apart. */
export interface NextMeasurementShown {
  readonly key: string;
  readonly title: string;
  /** Name of the quantity under which the record keeps it, where it has one. */
  readonly quantity?: string;
  readonly unit: string;
  readonly how: string;
  readonly tool: causes.SignTool;
  readonly minutes: number;
  readonly waitDays?: number;
  readonly reason: string;
  /** Expected fall of what is open, over everything found [bits]. */
  readonly gainBits: number;
  /** What it tells most about. */
  readonly about: causes.CauseKey;
  readonly outcomes: readonly NextOutcome[];
}

/** Why the space is as it was found, and what follows from it. */
export interface CausesAssessment {
  /** One or two plain sentences. */
  readonly headline: string;
  readonly observations: readonly CauseObservation[];
  /** Heaviest first. */
  readonly mechanisms: readonly CauseMechanism[];
  readonly ruledOut: readonly CauseRuledOut[];
  /** By what they explain, heaviest first. */
  readonly arrows: readonly CauseArrow[];
  readonly consequences: readonly CauseConsequence[];
  readonly evidence: readonly CauseEvidenceShown[];
  readonly notShown: readonly CauseNotShown[];
  /** The most telling first. */
  readonly next: readonly NextMeasurementShown[];
}
