/** How an iterative solver ended. Callers must look at `converged` before they use the result. */
export interface Ending {
  readonly converged: boolean;
  /** Why it stopped: `tolerance-met`, `iteration-limit`, `no-bracket`, `stagnated`. */
  readonly reason: 'tolerance-met' | 'iteration-limit' | 'no-bracket' | 'stagnated';
  /** Size of the remaining error, in the unit of the equation that was solved. */
  readonly residual: number;
  readonly iterations: number;
}
