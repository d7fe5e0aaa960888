import { requireRange } from '../numerics/require-range.ts';
import { moldSources } from './sources.ts';

/**
 * Largest index that a design may reach at any time: 3.0 itself still passes. From memory of ASHRAE 160-2016 section
 * 6.1.
 */
export const moldIndexLimit = { index: 3, source: moldSources.standard160 } as const;

/**
 * Whether the largest index of a run meets the limit: not above it at any time.
 * @param maximumIndex from `moldIndexOfSeries`, 0..6
 * @param limit default 3.0, see `moldIndexLimit`
 * @throws EngineError `not-finite`, `out-of-range` naming the input
 */
export function meetsMoldLimit(maximumIndex: number, limit: number = moldIndexLimit.index): boolean {
  return (
    requireRange('largest mold index', maximumIndex, 0, 6) <= requireRange('mold index limit', limit, 0, 6)
  );
}
