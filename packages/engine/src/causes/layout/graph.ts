/** A box to place. */
export interface LayoutNode {
  readonly id: string;
  readonly width: number;
  readonly height: number;
}

/** An arrow to place between two boxes. */
export interface LayoutLink {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  /** Width of its stroke, in the unit of the boxes. */
  readonly thickness: number;
}

/** One place of a layer: a box, or where a long arrow passes through. */
export interface Slot {
  /** Index of the box, or -1 for a passing arrow. */
  readonly node: number;
  readonly height: number;
  /** Width of a box; 0 for a passing arrow. */
  readonly width: number;
}

/** A piece of an arrow between neighboring layers, from slot to slot. */
export interface Piece {
  readonly link: number;
  readonly from: number;
  readonly to: number;
}

/** A graph in layers, where every piece goes from one layer to the next. */
export interface LayeredGraph {
  readonly slots: readonly Slot[];
  /** Layer of each slot. */
  readonly layerOf: readonly number[];
  readonly layerCount: number;
  readonly pieces: readonly Piece[];
  /** Slots that each link runs through, ends included. */
  readonly runs: readonly (readonly number[])[];
}
