import type { Assessment } from '@undercroft/assessment';
import { isSurveyed } from '@undercroft/record';
import { useEffect, useState } from 'react';
import type { JobView } from '../jobs/open-job.ts';
import type { AssessmentOutcome } from './api.ts';
import { assessJob, computer } from './computer.ts';
import { Overtaken } from './latest-wins.ts';

/** What is known of a job's assessment while it is computed anew. */
export interface AssessmentState {
  /** The newest that is there; of an older state of the job while `busy`. */
  readonly assessment: Assessment | null;
  readonly busy: boolean;
  /** Why there is none, in words. */
  readonly reason?: string;
}

interface Answer {
  readonly id: string;
  readonly version: number;
  readonly outcome: AssessmentOutcome;
}

/** The assessment of an open job with walls, computed in the worker, always of the newest state. */
export function useAssessment({ id, version, job: held }: JobView): AssessmentState {
  const job = held !== null && isSurveyed(held) ? held : null;
  const [answer, setAnswer] = useState<Answer | null>(null);
  useEffect(() => {
    if (job === null) return;
    let wanted = true;
    const take = (outcome: AssessmentOutcome) => wanted && setAnswer({ id, version, outcome });
    assessJob(job, version).then(take, (error: Error) => {
      if (!(error instanceof Overtaken)) take({ ok: false, reason: error.message });
    });
    return () => {
      wanted = false;
    };
  }, [id, version, job]);
  const mine = answer?.id === id && job !== null ? answer : null;
  const busy = job !== null && mine?.version !== version;
  if (mine === null) return { assessment: null, busy };
  return mine.outcome.ok
    ? { assessment: mine.outcome.assessment, busy }
    : { assessment: null, busy, reason: mine.outcome.reason };
}

/** The plan of a job as SVG text, drawn in the worker; null until it is there. */
export function usePlanSvg(
  job: JobView['job'],
  assessment: Assessment | null,
  widthPx: number,
  ground: 'under' | 'daylight' | 'paper',
): { readonly svg: string | null; readonly failed: boolean } {
  const [drawn, setDrawn] = useState<{ readonly svg: string | null; readonly failed: boolean }>({
    svg: null,
    failed: false,
  });
  useEffect(() => {
    if (job === null || assessment === null || widthPx < 240) return;
    let wanted = true;
    computer()
      .planSvg(job, assessment, { widthPx: Math.min(8000, Math.round(widthPx)), ground })
      .then(
        (svg) => wanted && setDrawn({ svg, failed: false }),
        () => wanted && setDrawn({ svg: null, failed: true }),
      );
    return () => {
      wanted = false;
    };
  }, [job, assessment, widthPx, ground]);
  return drawn;
}
