import { useSyncExternalStore } from 'react';

/** A captured file that the disk refused, with what the record will say of it. */
export interface HeldFile {
  readonly item: string;
  readonly kind: 'photo' | 'clip' | 'audio';
  readonly file: Blob;
  readonly name: string;
  readonly value: Readonly<Record<string, unknown>>;
}

const NONE: readonly HeldFile[] = [];
const held = new Map<string, readonly HeldFile[]>();
const listeners = new Set<() => void>();

function set(jobId: string, files: readonly HeldFile[]): void {
  if (files.length === 0) held.delete(jobId);
  else held.set(jobId, files);
  for (const changed of listeners) changed();
  if (held.size > 0) addEventListener('beforeunload', warn);
  else removeEventListener('beforeunload', warn);
}

/** Closing the page would lose them. */
function warn(event: BeforeUnloadEvent): void {
  event.preventDefault();
}

/** Keeps a file in memory while the page is open. */
export function hold(jobId: string, file: HeldFile): void {
  set(jobId, [...(held.get(jobId) ?? NONE).filter((one) => one.item !== file.item), file]);
}

export function letGo(jobId: string, item: string): void {
  set(
    jobId,
    (held.get(jobId) ?? NONE).filter((one) => one.item !== item),
  );
}

/** Files of a job that are not on the disk. */
export function useHeld(jobId: string): readonly HeldFile[] {
  return useSyncExternalStore(
    (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    () => held.get(jobId) ?? NONE,
  );
}
