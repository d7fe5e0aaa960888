import { EngineError } from '../numerics/engine-error.ts';
import type { Criterion } from './criterion.ts';

/** What it takes to compare: an id for errors, a comparison and its limit. */
type Limited = Pick<Criterion, 'id' | 'comparison' | 'limit'>;

/** Whether an interval of values passes, fails, or lies on both sides of a limit. */
export type Outcome = 'pass' | 'fail' | 'straddle';

/**
 * Two numbers closer than this share of the limit count as equal: 6 in times 0.0254 is not quite 0.1524, and converted
 * limits are written with eight digits. No reading on site is known to a millionth.
 */
const RELATIVE_ROUNDING = 1e-6;

function roundingOf(limit: number): number {
  return Math.abs(limit) * RELATIVE_ROUNDING;
}

/** The numeric limit of a criterion as [low, high]; throws `bad-input` where it does not fit the comparison. */
function limitsOf(criterion: Limited): readonly [number, number] {
  const { comparison, id, limit } = criterion;
  const value = limit?.value;
  const pair = typeof value === 'number' ? ([value, value] as const) : value;
  const fits = (comparison === 'within') === (typeof value !== 'number');
  if (!pair || !fits || !pair.every(Number.isFinite) || pair[0] > pair[1]) {
    throw new EngineError(
      'bad-input',
      `criterion ${id} compares with "${comparison}" and needs ${comparison === 'within' ? 'a pair of limits, low first' : 'one finite limit'}; got ${JSON.stringify(value)}`,
    );
  }
  return pair;
}

/** Outcome of the interval [low, high] against a criterion with a number for a limit. */
export function compareInterval(criterion: Limited, low: number, high: number): Outcome {
  const [least, most] = limitsOf(criterion);
  const below = roundingOf(least);
  const above = roundingOf(most);
  switch (criterion.comparison) {
    case '>=':
      return low >= least - below ? 'pass' : high < least - below ? 'fail' : 'straddle';
    case '>':
      return low > least + below ? 'pass' : high <= least + below ? 'fail' : 'straddle';
    case '<=':
      return high <= most + above ? 'pass' : low > most + above ? 'fail' : 'straddle';
    case '<':
      return high < most - above ? 'pass' : low >= most - above ? 'fail' : 'straddle';
    default: {
      if (low >= least - below && high <= most + above) return 'pass';
      return high < least - below || low > most + above ? 'fail' : 'straddle';
    }
  }
}

/** Distance of a value from the limit, positive on the passing side, in the unit of the quantity. */
export function marginOf(criterion: Limited, value: number): number {
  const [least, most] = limitsOf(criterion);
  switch (criterion.comparison) {
    case '>=':
    case '>':
      return value - least;
    case '<=':
    case '<':
      return most - value;
    default:
      return Math.min(value - least, most - value);
  }
}
