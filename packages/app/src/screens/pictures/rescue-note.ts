import type { OpenJob } from '../../jobs/open-job.ts';
import type { Storage } from '../../storage/storage.ts';
import { keep } from './capture.ts';
import { keepPending, type Pending } from './pending.ts';
import { dropPieces, rescued } from './recorder.ts';

/** Takes a voice note that was cut off into the job, as far as it was on the disk. False where nothing was. */
export async function rescueNote(storage: Storage, openJob: OpenJob, pending: Pending): Promise<boolean> {
  const { id, job } = openJob.view;
  const { item, pieces = 0, mediaType = 'audio/webm', since, before } = pending;
  let isKept = false;
  if (job?.media.audio.some((note) => note.id === item) !== true) {
    const file = await rescued(storage, id, item, pieces, mediaType);
    if (file !== null) {
      const captured = await keep({
        openJob,
        storage,
        file,
        name: 'voice-note',
        since,
        lastModified: since,
        before,
        item,
      });
      isKept = captured.is === 'saved';
    }
  }
  await keepPending(storage, id, null);
  await dropPieces(storage, id, item, pieces);
  return isKept;
}
