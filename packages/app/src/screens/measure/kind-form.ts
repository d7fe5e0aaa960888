import type { Job } from '@undercroft/record';
import type { FormDraft } from '../../jobs/use-form-draft.ts';
import type { QuestionProps } from '../../shell/question.ts';
import type { MeasureForm } from './measure-form.ts';

/** What the form of each kind of measurement is given. */
export interface KindFormProps {
  readonly props: QuestionProps;
  readonly job: Job;
  readonly draft: FormDraft<MeasureForm>;
}

/** What a reading that is only typed has in place of who took it and when. */
export const NOT_TAKEN = { id: 'typed', when: '2000-01-01T00:00:00Z', who: '-' } as const;
