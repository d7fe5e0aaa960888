import type { QuantityKey } from '../criteria/quantities.ts';
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

/** Something that can be measured or answered and tells explanations apart. */
export interface Sign {
  /** Stable, kebab-case. */
  readonly key: string;
  /** A few words. */
  readonly title: string;
  /** Name of the quantity whose samples are this sign; absent for what is worked out from others or not kept yet. */
  readonly quantity?: QuantityKey;
  /**
   * Signs of one group look at the same thing, so that their evidence is not counted twice: of a group the strongest item
   * for and the strongest against an explanation count.
   */
  readonly group: string;
  /** Effects for which it tells explanations apart; absent for all. */
  readonly of?: readonly CauseKey[];
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
