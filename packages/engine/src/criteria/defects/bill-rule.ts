/** Sizes of the surveyed space that a bill is worked out from, never typed by hand [m, m², counts]. */
export interface BillExtents {
  readonly floorM2: number;
  readonly perimeterM: number;
  readonly bareEarthM2: number;
  /** Length of all seams that were drawn or follow from the roll width [m]. */
  readonly seamM: number;
  readonly drainM: number;
  readonly ductM: number;
  /** Lengths of the frames of all access doors [m]. */
  readonly doorFrameM: number;
  readonly girderM: number;
  readonly doors: number;
  readonly vents: number;
  readonly piers: number;
  readonly sumps: number;
  readonly dehumidifiers: number;
}

/** How the quantity of a remedy follows from the space. */
export type BillRule =
  /** A length or an area of the plan, times the share that was measured; all of it where no share was. */
  | { readonly by: 'extent'; readonly of: 'floorM2' | 'bareEarthM2'; readonly unit: 'm2' }
  | {
      readonly by: 'extent';
      readonly of: 'perimeterM' | 'seamM' | 'drainM' | 'ductM' | 'doorFrameM' | 'girderM';
      readonly unit: 'm';
    }
  /** Items of the plan that were shown to fail; those not looked at make the upper end. */
  | {
      readonly by: 'items';
      readonly of: 'doors' | 'vents' | 'piers' | 'sumps' | 'dehumidifiers';
      readonly unit: 'each';
    }
  /** What was measured, in its own unit. */
  | { readonly by: 'measured'; readonly unit: 'm' | 'm2' | 'm3' }
  /** One of it, whatever the size of the space. */
  | { readonly by: 'once'; readonly unit: 'each' | 'lot' | 'hour' }
  /** Nothing to bill. */
  | { readonly by: 'nothing'; readonly unit: 'each' };

export const once = (unit: 'each' | 'lot' | 'hour' = 'each'): BillRule => ({ by: 'once', unit });
export const measured = (unit: 'm' | 'm2' | 'm3'): BillRule => ({ by: 'measured', unit });
export const lengthOf = (
  of: 'perimeterM' | 'seamM' | 'drainM' | 'ductM' | 'doorFrameM' | 'girderM',
): BillRule => ({ by: 'extent', of, unit: 'm' });
export const areaOf = (of: 'floorM2' | 'bareEarthM2'): BillRule => ({ by: 'extent', of, unit: 'm2' });
export const itemsOf = (of: 'doors' | 'vents' | 'piers' | 'sumps' | 'dehumidifiers'): BillRule => ({
  by: 'items',
  of,
  unit: 'each',
});
export const nothing: BillRule = { by: 'nothing', unit: 'each' };
