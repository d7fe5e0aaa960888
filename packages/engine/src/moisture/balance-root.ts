import type { Ending } from '../numerics/solution.ts';

/** Where a falling function crosses zero, and how the search ended. */
export interface Crossing {
  readonly x: number;
  readonly ending: Ending;
}

const ITERATIONS_MAX = 200;

/**
 * Zero of a function that does not rise, between two points where it is at least 0 and at most 0. Regula falsi with the
 * Illinois rule. Where three steps have not brought the function ten times nearer to zero, the bracket is halved, so
 * that it closes on any kink.
 * @param f not rising from `low` to `high`
 * @param tolerance size of `f` that counts as zero
 * @returns `no-bracket` when f has the same sign at both ends, with x at the end that is nearer to zero
 */
export function fallingZero(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance: number,
): Crossing {
  let [a, b, fa, fb] = [low, high, f(low), f(high)];
  if (fa < 0 || fb > 0) {
    const x = fa < 0 ? a : b;
    return {
      x,
      ending: { converged: false, reason: 'no-bracket', residual: Math.abs(f(x)), iterations: 0 },
    };
  }
  let best = Math.abs(fa) < Math.abs(fb) ? { x: a, f: fa } : { x: b, f: fb };
  let side = 0;
  let sizeThen = Number.POSITIVE_INFINITY;
  for (let i = 1; i <= ITERATIONS_MAX; i++) {
    if (Math.abs(best.f) <= tolerance) {
      return { x: best.x, ending: ended('tolerance-met', best.f, i - 1) };
    }
    const third = i % 3 === 0;
    const slow = third && Math.abs(best.f) > 0.1 * sizeThen;
    if (third) sizeThen = Math.abs(best.f);
    let x = slow || fa === fb ? 0.5 * (a + b) : (a * fb - b * fa) / (fb - fa);
    if (!(x > a && x < b)) x = 0.5 * (a + b);
    if (x <= a || x >= b) return { x: best.x, ending: ended('stagnated', best.f, i - 1) };
    const fx = f(x);
    if (Math.abs(fx) < Math.abs(best.f)) best = { x, f: fx };
    if (fx > 0) {
      a = x;
      fa = fx;
      if (side === 1) fb /= 2;
      side = 1;
    } else {
      b = x;
      fb = fx;
      if (side === -1) fa /= 2;
      side = -1;
    }
  }
  return { x: best.x, ending: ended('iteration-limit', best.f, ITERATIONS_MAX) };
}

function ended(reason: Ending['reason'], residual: number, iterations: number): Ending {
  // A bracket that has shrunk to two neighboring numbers is as good as the arithmetic allows.
  return { converged: reason !== 'iteration-limit', reason, residual: Math.abs(residual), iterations };
}
