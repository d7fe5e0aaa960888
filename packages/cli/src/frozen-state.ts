import { asFrozen, type FrozenState } from '@undercroft/record';
import type { LoadedJob } from './load-job.ts';
import { inputError, UsageError } from './usage-error.ts';

/** A job as it was when somebody froze it. */
export interface FrozenJob extends LoadedJob {
  readonly frozen: FrozenState;
}

function picked(states: readonly FrozenState[], which: string): FrozenState {
  const known = 'undercroft check lists the frozen states of a job by number';
  if (states.length === 0) throw new UsageError('No state of this job was frozen. Leave --frozen out.');
  const index = which === 'last' ? states.length : Number(which);
  const state = Number.isInteger(index) ? states[index - 1] : undefined;
  if (state === undefined) {
    throw new UsageError(
      `--frozen ${which} is no frozen state. Take "last" or 1 to ${states.length}; ${known}.`,
    );
  }
  return state;
}

/**
 * The job of one frozen state: its entries and nothing that came later.
 * @param which `last`, or its number from 1
 * @throws UsageError when there is no such state, or anything of it is altered or gone
 */
export function frozenJob(name: string, loaded: LoadedJob, which: string): FrozenJob {
  const { log } = loaded;
  if (log === undefined) {
    throw new UsageError(`${name} holds no entries, so nothing in it is frozen. Take the archive (.zip).`);
  }
  const state = picked(loaded.job.frozen, which);
  const check = asFrozen(log, state, loaded.pictures().get(state.sealSha256));
  if (!check.ok) throw inputError(name, check.issues);
  const { job, issues } = check.log.fold();
  if (job === null) throw inputError(name, issues);
  return { job, log: check.log, pictures: loaded.pictures, frozen: state };
}
