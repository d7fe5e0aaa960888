import type { Point } from '@undercroft/record';

/** What is being done on the plan. */
export type Mode =
  /** What can be drawn. */
  | { readonly is: 'menu' }
  /** Everything that is drawn, with its numbers. */
  | { readonly is: 'list' }
  /** The keys of the plan. */
  | { readonly is: 'keys' }
  /** The walls: one after the other, and then closed. `leg` is one that is taped again. */
  | {
      readonly is: 'walls';
      readonly step: 'turn' | 'length' | 'angle';
      readonly leg?: number;
      /** The turn into the wall whose length comes next. */
      readonly turnDeg?: number;
    }
  | { readonly is: 'corners'; readonly picked?: number }
  | { readonly is: 'rectangle'; readonly wall?: number; readonly tooWide?: true }
  | { readonly is: 'closing' }
  /** A thing is put on the plan by taps; `asking` waits for a fact without which there is none. */
  | {
      readonly is: 'place';
      readonly spec: string;
      readonly points: readonly Point[];
      readonly asking?: Readonly<Record<string, unknown>>;
    }
  /** A row of piers: its two ends, then the spacing. */
  | { readonly is: 'row'; readonly points: readonly Point[] }
  /** Facts of the plan as a whole. */
  | { readonly is: 'floor'; readonly field?: string }
  /** Something is selected. */
  | { readonly is: 'selected' }
  /** The next tap says where it goes. */
  | { readonly is: 'move' }
  /** Its facts; one of them being changed. */
  | { readonly is: 'form'; readonly field?: string }
  /** An exact distance in the direction of the last arrow key, from a point or for what is selected. */
  | {
      readonly is: 'exact';
      readonly typed: string;
      readonly from?: Point;
      readonly back: Mode | null;
    };
