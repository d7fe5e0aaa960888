import type { Change } from '@undercroft/record';
import { useEffect, useRef, useState } from 'react';
import { surveyorName } from '../settings/settings.ts';
import { deviceTime } from './author.ts';
import type { CommitResult, JobView, OpenJob } from './open-job.ts';

/** Who takes something now, and when, as the record keeps it. */
export function takenNow(instrument = ''): {
  readonly when: string;
  readonly who: string;
  readonly instrument?: string;
} {
  return {
    when: deviceTime(Date.now()),
    who: surveyorName(),
    ...(instrument === '' ? {} : { instrument }),
  };
}

/** Where a reading stands between the form and the disk. */
export type Taking =
  | { readonly is: 'ready' }
  | { readonly is: 'saving' }
  /** The disk refused; it waits in memory, and counts as soon as the disk takes it. */
  | { readonly is: 'waiting' }
  | { readonly is: 'refused'; readonly expected: string };

/**
 * Takes changes into the record. What was typed counts as saved, and `then` runs, only once it is on the disk; where the
 * disk refuses, that may be later, after the person has made room.
 */
export function useTaking(openJob: OpenJob, view: JobView) {
  const [taking, setTaking] = useState<Taking>({ is: 'ready' });
  const after = useRef<(() => void) | null>(null);
  const settled = () => {
    after.current?.();
    after.current = null;
    setTaking({ is: 'ready' });
  };
  const { is } = view.save;
  // biome-ignore lint/correctness/useExhaustiveDependencies: told by the state of the disk
  useEffect(() => {
    if (taking.is === 'waiting' && is === 'saved') settled();
  }, [is, taking.is]);
  const take = async (changes: readonly Change[], then: () => void): Promise<CommitResult> => {
    setTaking({ is: 'saving' });
    const result = await openJob.commit(...changes);
    if (result.ok) {
      after.current = then;
      settled();
    } else if ('issues' in result) {
      setTaking({ is: 'refused', expected: result.issues[0].expected });
    } else {
      after.current = then;
      setTaking({ is: 'waiting' });
    }
    return result;
  };
  return { taking, take };
}
