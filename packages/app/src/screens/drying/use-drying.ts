import type { Assessment, SeasonAssessment } from '@undercroft/assessment';
import type { QuestionProps } from '../../shell/question.ts';
import { useCases } from '../../worker/use-assessment.ts';

/** What is known of the year of a job, as far as it is worked out. */
export interface DryingState {
  readonly assessment: Assessment;
  /** Of the newest state: as found and with all repairs. */
  readonly season: SeasonAssessment;
  /** With each repair alone and the failures; may be of an older state while `isOld`. */
  readonly cases: SeasonAssessment | undefined;
  readonly isOld: boolean;
}

/** The year of the job in view; null while there is none. */
export function useDrying({ view, result }: QuestionProps): DryingState | null {
  const deeper = useCases(view, result);
  const { assessment } = result;
  if (assessment?.season === undefined) return null;
  return {
    assessment,
    season: assessment.season,
    cases: deeper.assessment?.season,
    isOld: deeper.busy,
  };
}
