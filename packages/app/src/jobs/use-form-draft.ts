import { useRef } from 'react';
import { useDraft } from './use-draft.ts';

function formOf<T extends object>(text: string, first: T): T {
  if (text === '') return first;
  try {
    return { ...first, ...(JSON.parse(text) as Partial<T>) };
  } catch {
    return first;
  }
}

/** A form that is half filled in, kept while it is typed and there again after an interruption. */
export interface FormDraft<T extends object> {
  readonly form: T;
  readonly change: (part: Partial<T>) => void;
  /** Drops all that was typed. */
  readonly drop: () => void;
}

/**
 * A form as a draft: see `useDraft`.
 * @param key id of the job, a slash, and the name of the form
 * @param first the form as it is before anything was typed; the same object each time
 */
export function useFormDraft<T extends object>(key: string, first: T): FormDraft<T> {
  const { text, type, settle } = useDraft(key, '');
  const form = formOf(text, first);
  // Two changes between two renderings both count.
  const latest = useRef(form);
  latest.current = form;
  return {
    form,
    change(part) {
      latest.current = { ...latest.current, ...part };
      type(JSON.stringify(latest.current));
    },
    drop: settle,
  };
}
