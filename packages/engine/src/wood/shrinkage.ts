import { EngineError } from '../numerics/engine-error.ts';
import type { Figure, Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';

/** Shrinkage of a wood from green to oven-dry, as fractions of the green dimension. */
export interface Shrinkage {
  /** Across the growth rings. */
  readonly radial: number;
  /** Along the growth rings: the depth of a flat-sawn joist. */
  readonly tangential: number;
}

/**
 * Shrinkage from green to oven-dry by species.
 * @source Wood Handbook FPL-GTR-282 (2021) Table 4-3, from memory (`woodSources.woodHandbookShrinkageTable`)
 */
export const woodShrinkage: Readonly<Record<string, Shrinkage>> = {
  'douglas-fir': { radial: 0.048, tangential: 0.076 },
  'loblolly-pine': { radial: 0.048, tangential: 0.074 },
  'longleaf-pine': { radial: 0.051, tangential: 0.075 },
  'red-spruce': { radial: 0.038, tangential: 0.078 },
  'red-oak': { radial: 0.04, tangential: 0.086 },
  'white-oak': { radial: 0.056, tangential: 0.105 },
};

/** Moisture content above which wood neither shrinks nor swells, as the rule uses it [fraction]. */
const FIBER_SATURATION = 0.3;

/** A piece that dries or gets wet. */
export interface DimensionChange {
  /** Dimension now [m], above 0. */
  readonly dimensionM: number;
  /** Moisture content now [fraction], 0..3. */
  readonly fromMoistureContent: number;
  /** Moisture content to come [fraction], 0..3. */
  readonly toMoistureContent: number;
  /** Key of `woodShrinkage`, or the figures themselves. */
  readonly wood: string | Shrinkage;
  readonly direction: keyof Shrinkage;
}

/**
 * Dimension of a piece of wood at another moisture content [m].
 *
 * Shrinkage grows in proportion to the dryness below 30 % MC; wetter wood keeps its green size, which the notice
 * `no-change-above-fiber-saturation` says when either content lies there.
 *
 * @throws EngineError `bad-input` for an unknown species key; `not-finite`, `out-of-range` naming the input
 * @source Wood Handbook FPL-GTR-282 (2021) eq. 4-9, seen in quotation (`woodSources.woodHandbookShrinkageRule`)
 */
export function dimensionAtMoistureContent(input: DimensionChange): Figure {
  const dimension = requireRange('dimension (m)', input.dimensionM, Number.MIN_VALUE, 100);
  const from = requireRange('moisture content now (fraction)', input.fromMoistureContent, 0, 3);
  const to = requireRange('moisture content to come (fraction)', input.toMoistureContent, 0, 3);
  const total = requireRange('shrinkage (fraction)', shrinkageOf(input.wood)[input.direction], 0, 0.5);
  const notices: Notice[] = [];
  if (from > FIBER_SATURATION || to > FIBER_SATURATION) {
    notices.push({
      code: 'no-change-above-fiber-saturation',
      message: 'Wood does not change size above about 30 % MC; the part of the change above it was left out.',
    });
  }
  return { value: (dimension * sizeOfGreen(total, to)) / sizeOfGreen(total, from), notices };
}

/** Size as a share of the green size. */
function sizeOfGreen(total: number, moistureContent: number): number {
  return 1 - total * (1 - Math.min(moistureContent, FIBER_SATURATION) / FIBER_SATURATION);
}

function shrinkageOf(wood: string | Shrinkage): Shrinkage {
  if (typeof wood !== 'string') return wood;
  if (!Object.hasOwn(woodShrinkage, wood)) {
    throw new EngineError(
      'bad-input',
      `no shrinkage figures for "${wood}"; known are ${Object.keys(woodShrinkage).join(', ')}`,
    );
  }
  return woodShrinkage[wood]!;
}
