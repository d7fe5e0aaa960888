import type { Notice } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import type { Verdict } from '../assessment.ts';

/** One field of a thing that is not as it was. */
export interface FieldChange {
  /** As in the record, parts of parts with a point: `wrapHeightM`, `ground.cover`. */
  readonly field: string;
  /** Absent where nobody had noted it. */
  readonly before?: string | number | boolean;
  readonly after?: string | number | boolean;
}

/** A thing of the plan that is new, gone or not as it was. */
export interface ItemChange {
  readonly kind: string;
  /** Id in the survey before, and in the one after; each absent where it is not there. */
  readonly beforeId?: string;
  readonly afterId?: string;
  /** For people: `pier 3`, `Far corner`. */
  readonly name: string;
  readonly change: 'new' | 'gone' | 'changed';
  readonly fields: readonly FieldChange[];
  /** One plain sentence. */
  readonly says: string;
}

/** A figure of two readings, side by side. */
export interface FigurePair {
  /** As in the meaning of the reading: `relativeHumidity`, `moistureContent`, `temperatureC`. */
  readonly figure: string;
  readonly before: number;
  readonly after: number;
  readonly difference: number;
}

/** Two readings of one kind at one place. */
export interface ReadingPair {
  readonly kind: 'air' | 'surface' | 'wood';
  readonly beforeId: string;
  readonly afterId: string;
  readonly place: string;
  readonly at?: Point;
  /** How far apart the two were taken; absent where their place is told in words. */
  readonly apartM?: number;
  readonly shown: { readonly before: string; readonly after: string };
  readonly figures: readonly FigurePair[];
  /** `same` where the difference is within the doubt of the instruments. */
  readonly turn: 'better' | 'worse' | 'same';
  /** What the difference means, one or two plain sentences. */
  readonly means: string;
}

/** A criterion whose verdict is not what it was. */
export interface CriterionTurn {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  /** `not-asked` where it did not apply then or does not now. */
  readonly before: Verdict | 'not-asked';
  readonly after: Verdict | 'not-asked';
  /** `mended` and `broken` only where both surveys showed it; `no-longer-shown` is never a change for the worse. */
  readonly turn: 'mended' | 'broken' | 'now-met' | 'now-not-met' | 'no-longer-shown' | 'no-longer-asked';
  readonly reason: string;
}

/** What became of a finding. */
export interface FindingTurn {
  readonly title: string;
  readonly defect: string;
  readonly beforeId?: string;
  readonly afterId?: string;
  /**
   * `still`: found again. `new`: found now. `gone`: not found again, and a later picture shows the place. `unseen`: not
   * found again, and no later picture shows the place, which says nothing.
   */
  readonly turn: 'still' | 'new' | 'gone' | 'unseen';
  readonly says: string;
}

/** A claim of "done" against what was found afterward. */
export interface ClaimChecked {
  readonly id: string;
  readonly title: string;
  readonly who?: string;
  readonly when?: string;
  /** Id of the criterion that it was held against, where it names one. */
  readonly criterion?: string;
  /** `is-not`: what was measured contradicts it. `holds`: what was measured bears it out. `not-shown`: neither. */
  readonly state: 'holds' | 'is-not' | 'not-shown';
  readonly says: string;
}

/** Two surveys of one space, side by side. */
export interface Comparison {
  readonly before: { readonly id: string; readonly title: string; readonly surveyedOn?: string };
  readonly after: { readonly id: string; readonly title: string; readonly surveyedOn?: string };
  /** The most important of it in a few plain sentences. */
  readonly headline: string;
  readonly items: readonly ItemChange[];
  readonly readings: readonly ReadingPair[];
  /** Readings that have no partner at their place. */
  readonly unpaired: { readonly before: readonly string[]; readonly after: readonly string[] };
  readonly criteria: readonly CriterionTurn[];
  /** Ids of criteria that are not met in both. */
  readonly stillNotMet: readonly string[];
  readonly findings: readonly FindingTurn[];
  readonly claims: readonly ClaimChecked[];
  readonly notices: readonly Notice[];
}

/** A survey as it goes into a comparison. */
export interface CompareOptions {
  /** Readings and things no farther apart than this are at one place [m]; 1 by default. Common practice, no source. */
  readonly withinM?: number;
}
