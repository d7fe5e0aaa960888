import type { Wanted } from '@undercroft/assessment';
import { useEffect, useState } from 'react';
import type { JobView } from '../../jobs/open-job.ts';
import { computer } from '../../worker/computer.ts';
import type { AssessmentState } from '../../worker/use-assessment.ts';

/** What the assessment of a job lacks, what matters most first; null until it is known. */
export function useMissing({ job }: JobView, { assessment }: AssessmentState): readonly Wanted[] | null {
  const [wanted, setWanted] = useState<readonly Wanted[] | null>(null);
  useEffect(() => {
    if (job === null) return setWanted(null);
    let isWanted = true;
    // Only what tells of gaps goes to the worker: a whole assessment is large.
    const shown =
      assessment === null
        ? null
        : {
            criteria: assessment.criteria,
            openQuestions: assessment.openQuestions,
            causes: assessment.causes,
            ...(assessment.season === undefined ? {} : { season: assessment.season }),
          };
    computer()
      .missing(job, shown)
      .then(
        (list) => isWanted && setWanted(list),
        () => undefined,
      );
    return () => {
      isWanted = false;
    };
  }, [job, assessment]);
  return wanted;
}
