import type { Change } from '@undercroft/record';
import { useState } from 'react';
import type { OpenJob } from '../../jobs/open-job.ts';
import { useDraft } from '../../jobs/use-draft.ts';
import { Field } from '../../parts/field.tsx';
import { useTexts } from '../../text/texts.ts';
import { dryingTexts } from './drying-texts.ts';

/** What a typed text means to the record; null takes the value away. */
export type Typed = { readonly ok: true; readonly value: unknown } | { readonly ok: false };

interface DraftFieldProps {
  readonly openJob: OpenJob;
  readonly label: string;
  /** The field of the record. */
  readonly kind: string;
  readonly item: string;
  readonly field: string;
  /** The value as it stands in the record, as one types it. */
  readonly committed: string;
  readonly read: (typed: string) => Typed;
  readonly hint?: string;
  /** What is expected, where the text cannot be read. */
  readonly problem: string;
  readonly keyboard?: 'text' | 'decimal';
}

/** One field of the record as text, kept when it is left; what is being typed outlives the page. */
export function DraftField(props: DraftFieldProps) {
  const { openJob, label, kind, item, field, committed, read, hint, problem, keyboard } = props;
  const say = useTexts(dryingTexts);
  const { text, type, settle } = useDraft(`${openJob.view.id}/${kind}.${item}.${field}`, committed);
  const [fault, setFault] = useState<string | undefined>();
  const commit = async () => {
    const typed = text.trim();
    if (typed === committed.trim()) {
      setFault(undefined);
      return settle();
    }
    const meant = read(typed);
    if (!meant.ok) return setFault(problem);
    const change: Change = { do: 'set', kind, item, field, value: meant.value };
    const result = await openJob.commit(change);
    if (result.ok) settle();
    setFault('issues' in result ? say('notTaken', { expected: result.issues[0].expected }) : undefined);
  };
  return (
    <Field
      label={label}
      value={text}
      onChange={type}
      onDone={() => void commit()}
      onLeave={() => void commit()}
      problem={fault}
      {...(hint === undefined ? {} : { hint })}
      {...(keyboard === undefined ? {} : { keyboard })}
    />
  );
}
