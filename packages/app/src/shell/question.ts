import type { ComponentType } from 'react';
import type { JobView, OpenJob } from '../jobs/open-job.ts';
import type { AssessmentState } from '../worker/use-assessment.ts';

/** What the screen of a question is given. */
export interface QuestionProps {
  readonly openJob: OpenJob;
  readonly view: JobView;
  readonly result: AssessmentState;
  /** The item in view, from the address. */
  readonly place?: string | undefined;
}

/** What the module of a question exports. */
export interface QuestionParts {
  /** The answer with its figures: the right part of a desk, the sheet from below of a phone. */
  readonly Answer: ComponentType<QuestionProps>;
  /** The middle; the plan of the space where there is none. */
  readonly Center?: ComponentType<QuestionProps>;
  /** Up to three tools for the row under the thumb, each one `Button`. */
  readonly Tools?: ComponentType<QuestionProps>;
}
