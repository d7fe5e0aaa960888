import { JobError } from '@undercroft/assessment';
import { EngineError } from '@undercroft/engine';
import { inputError, wrongThings } from './usage-error.ts';

/**
 * Does something with a job, and tells what the job itself is to blame for as bad input: no area to assess, or a figure
 * that is well formed but that no calculation holds for, such as a wall of a kilometer.
 * @param name of the job, as the person gave it
 * @throws UsageError for a fault of the job; anything else as it comes
 */
export function blamingJob<T>(name: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof JobError) throw inputError(name, error.issues);
    if (error instanceof EngineError) throw wrongThings(name, [`${error.message}. Correct this figure.`]);
    throw error;
  }
}
