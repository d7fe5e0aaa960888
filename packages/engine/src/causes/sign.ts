import { type QuantityKey, quantities } from '../criteria/quantities.ts';
import type { QuantityUnit } from '../criteria/quantity.ts';
import type { Source } from '../sources/source.ts';
import type { CauseKey } from './node.ts';
import type { OutcomeModel } from './outcome-model.ts';

/** What has to be at hand to take a sign. */
export type SignTool =
  | 'eyes'
  | 'tape'
  | 'level'
  | 'hygrometer'
  | 'pin-meter'
  | 'infrared'
  | 'logger'
  | 'hose'
  | 'water-meter'
  | 'smoke'
  | 'gauge'
  | 'radon-monitor'
  | 'papers';

/** What a space must have before a sign can be taken there. */
export type SignNeed =
  | 'liner'
  | 'machine'
  | 'no-machine'
  | 'drain'
  | 'sump'
  | 'open-vents'
  | 'ducts'
  | 'batts';

/** Something that can be measured or answered and tells explanations apart. */
export interface Sign {
  /** Stable, kebab-case. */
  readonly key: string;
  /** A few words. */
  readonly title: string;
  /** Name of the quantity whose samples are this sign; absent for what is worked out from others or not kept yet. */
  readonly quantity?: QuantityKey;
  /** Unit of a number that no quantity stands for; absent where one does, and for an answer. */
  readonly unit?: QuantityUnit;
  /**
   * Signs of one group look at the same thing, so that their evidence is not counted twice: of a group the strongest item
   * for and the strongest against an explanation count.
   */
  readonly group: string;
  /** Effects for which it tells explanations apart; absent for all. */
  readonly of?: readonly CauseKey[];
  /** Absent where it can be taken in any space. */
  readonly needs?: SignNeed;
  readonly model: OutcomeModel;
  /**
   * Which of several samples is the sign: the highest, the lowest or the mean. Of answers the highest is a yes where one
   * is, the lowest a yes where all are.
   */
  readonly take: 'highest' | 'lowest' | 'mean';
  /** How it is taken, one or two plain sentences. */
  readonly how: string;
  readonly tool: SignTool;
  /** Time of one person on site, roughly. */
  readonly minutes: number;
  /** Days until the outcome is known; absent for at once. */
  readonly waitDays?: number;
  /** Why the outcome speaks for or against an explanation, one plain sentence. */
  readonly reason: string;
  /** Where thresholds and reason come from; the chances themselves are judgment. */
  readonly source: Source;
}

/** Unit of what a sign shows; `yes-no` for an answer. */
export function signUnit(sign: Sign): QuantityUnit {
  if (sign.quantity !== undefined) return quantities[sign.quantity].unit;
  return sign.model.kind === 'answer' ? 'yes-no' : (sign.unit ?? 'index');
}
