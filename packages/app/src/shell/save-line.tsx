import { useState } from 'react';
import { download } from '../jobs/download.ts';
import { useJobs } from '../jobs/hooks.ts';
import type { JobView, OpenJob } from '../jobs/open-job.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { commonTexts } from '../text/common.ts';
import { useTexts } from '../text/texts.ts';
import { shellTexts } from './shell-texts.ts';

const inHand = () => matchMedia('(pointer: coarse)').matches;

/** Whether the job is on the disk, in a word. */
export function SaveLine({ view }: { readonly view: JobView }) {
  const say = useTexts(shellTexts);
  const { is } = view.save;
  return (
    <span role="status" className={is === 'unsaved' ? 'problem' : 'soft'}>
      {is === 'saved' ? say(inHand() ? 'saved' : 'savedDesk') : say(is)}
    </span>
  );
}

/** What to do when the disk refused: try again, or take the job out as a file with all that waits. */
export function UnsavedNotice({ view, openJob }: { readonly view: JobView; readonly openJob: OpenJob }) {
  const say = useTexts(shellTexts);
  const common = useTexts(commonTexts);
  const { list } = useJobs();
  const [failed, setFailed] = useState(false);
  if (view.save.is !== 'unsaved') return null;
  const { fault, waiting } = view.save;
  const rescue = async () => {
    try {
      download(await list.exportArchive(view.id, openJob.entriesWithWaiting()), view.title);
    } catch {
      setFailed(true);
    }
  };
  return (
    <Notice
      kind="wrong"
      title={say('unsaved')}
      actions={
        <>
          <Button look="main" onPress={() => void openJob.retry()}>
            {common('retry')}
          </Button>
          <Button onPress={() => void rescue()}>{say('rescue')}</Button>
        </>
      }
    >
      <p>{common(`${fault}Fault`)}</p>
      <p>{say('unsavedCount', { count: waiting })}</p>
      {failed && <p>{common('failedFault')}</p>}
    </Notice>
  );
}
