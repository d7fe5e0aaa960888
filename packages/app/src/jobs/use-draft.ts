import { useCallback, useEffect, useRef, useState } from 'react';
import { useJobs } from './hooks.ts';

/** A value being typed is on the disk this long after the last key [ms]. */
const DRAFT_MS = 400;

/**
 * A value being typed, which outlives the page: after an interruption it stands there as it was.
 * @param key id of the job, a slash, and what is typed
 * @param committed the value as it is in the record
 * @returns the text, the function that takes what is typed, and the one that drops the draft once it is committed
 */
export function useDraft(
  key: string,
  committed: string,
): { readonly text: string; readonly type: (text: string) => void; readonly settle: () => void } {
  const { storage } = useJobs();
  const [typed, setTyped] = useState<string | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const waiting = useRef<string | null | undefined>(undefined);

  const flush = useCallback(() => {
    clearTimeout(timer.current);
    const text = waiting.current;
    waiting.current = undefined;
    // A draft that cannot be kept is no reason to stop the typing; the committed value tells of its own fault.
    if (text !== undefined) storage.putDraft(key, text).catch(() => undefined);
  }, [storage, key]);

  useEffect(() => {
    let wanted = true;
    storage.draft(key).then(
      (text) => wanted && text !== undefined && setTyped((now) => now ?? text),
      () => undefined,
    );
    const hidden = () => document.visibilityState === 'hidden' && flush();
    document.addEventListener('visibilitychange', hidden);
    return () => {
      wanted = false;
      document.removeEventListener('visibilitychange', hidden);
      flush();
    };
  }, [storage, key, flush]);

  const later = (text: string | null) => {
    waiting.current = text;
    clearTimeout(timer.current);
    timer.current = setTimeout(flush, DRAFT_MS);
  };
  return {
    text: typed ?? committed,
    type(text) {
      setTyped(text);
      later(text);
    },
    settle() {
      setTyped(null);
      later(null);
      flush();
    },
  };
}
