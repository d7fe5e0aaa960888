import { useSyncExternalStore } from 'react';
import { useJobs } from '../../../jobs/hooks.ts';
import type { OpenJob } from '../../../jobs/open-job.ts';
import { type DrawState, type Editor, editorOf } from './editor.ts';

/** The editor of an open job, and what it is doing. */
export function useEditor(openJob: OpenJob): readonly [Editor, DrawState] {
  const { storage } = useJobs();
  const editor = editorOf(openJob, storage);
  const state = useSyncExternalStore(
    (changed) => editor.subscribe(changed),
    () => editor.state,
  );
  return [editor, state];
}
