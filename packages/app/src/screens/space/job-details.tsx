import { useRef, useState } from 'react';
import type { OpenJob } from '../../jobs/open-job.ts';
import { useDraft } from '../../jobs/use-draft.ts';
import { Field } from '../../parts/field.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { useTexts } from '../../text/texts.ts';
import { spaceTexts } from './space-texts.ts';

const FIELDS = ['title', 'client', 'address', 'complaint', 'notes'] as const;

/** Whose job it is and why: each field is kept when it is left. */
export function JobDetails({ view, openJob }: QuestionProps) {
  return (
    <>
      {FIELDS.map((field) => (
        <HeaderField
          key={field}
          openJob={openJob}
          field={field}
          committed={String(view.log.history('header', 'header')?.shown(field) ?? '')}
        />
      ))}
    </>
  );
}

interface HeaderFieldProps {
  readonly openJob: OpenJob;
  readonly field: (typeof FIELDS)[number];
  readonly committed: string;
}

function HeaderField({ openJob, field, committed }: HeaderFieldProps) {
  const say = useTexts(spaceTexts);
  const { text, type, settle } = useDraft(`${openJob.view.id}/header.${field}`, committed);
  const [problem, setProblem] = useState<string | undefined>();
  // Enter and leaving the field both keep it: what was handed over and not typed anew is not handed over again.
  const handedOver = useRef<string | null>(null);
  const commit = async () => {
    const value = text.trim();
    if (value === committed) return settle();
    if (value === handedOver.current) return;
    handedOver.current = value;
    const result = await openJob.commit({
      do: 'set',
      kind: 'header',
      item: 'header',
      field,
      value: value === '' && field !== 'title' ? null : value,
    });
    // What the disk refused stays a draft as well; the job itself tells why and tries again.
    if (result.ok) settle();
    setProblem('issues' in result ? say('notTaken', { expected: result.issues[0].expected }) : undefined);
  };
  return (
    <Field
      label={say(field)}
      value={text}
      onChange={(typed) => {
        handedOver.current = null;
        type(typed);
      }}
      onDone={() => void commit()}
      onLeave={() => void commit()}
      problem={problem}
    />
  );
}
