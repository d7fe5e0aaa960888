import { useState } from 'react';
import { StorageError, type StorageFault } from '../../storage/storage.ts';

/** Runs something that the disk may refuse. */
export type Attempt = (work: () => Promise<unknown>) => Promise<void>;

/** Runs what the disk may refuse and holds why it did, until something succeeds. */
export function useAttempt(): { readonly attempt: Attempt; readonly fault: StorageFault | undefined } {
  const [fault, setFault] = useState<StorageFault | undefined>();
  const attempt: Attempt = async (work) => {
    try {
      await work();
      setFault(undefined);
    } catch (error) {
      setFault(error instanceof StorageError ? error.fault : 'failed');
    }
  };
  return { attempt, fault };
}
