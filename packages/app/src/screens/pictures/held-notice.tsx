import { useState } from 'react';
import { download, downloadFile } from '../../jobs/download.ts';
import { useJobs } from '../../jobs/hooks.ts';
import type { OpenJob } from '../../jobs/open-job.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { keepHeld } from './capture.ts';
import { useHeld } from './held.ts';
import { picturesTexts } from './pictures-texts.ts';

/** Files that the disk refused: they can be tried again or taken out, one by one or with the whole job. */
export function HeldNotice({ openJob }: { readonly openJob: OpenJob }) {
  const say = useTexts(picturesTexts);
  const common = useTexts(commonTexts);
  const { storage, list } = useJobs();
  const { id, title } = openJob.view;
  const held = useHeld(id);
  const [isFull, setFull] = useState(true);
  const [failed, setFailed] = useState(false);
  if (held.length === 0) return null;
  const again = async () => {
    for (const one of held) {
      const captured = await keepHeld({ openJob, storage }, one);
      if (captured.is === 'held') return setFull(captured.full);
    }
  };
  const exportJob = async () => {
    setFailed(false);
    try {
      download(await list.exportArchive(id, openJob.entriesWithWaiting()), title);
    } catch {
      setFailed(true);
    }
  };
  return (
    <Notice
      kind="wrong"
      title={say('heldTitle')}
      actions={
        <>
          <Button look="main" onPress={() => void again()}>
            {common('retry')}
          </Button>
          {held.map((one) => {
            const ending = one.file.type.split('/')[1] ?? 'bin';
            const name = one.name || `${one.kind}.${ending}`;
            return (
              <Button
                key={one.item}
                onPress={() => downloadFile(one.file, one.name.replace(/\.[^.]*$/, '') || one.kind, ending)}
              >
                {say('saveFile', { name })}
              </Button>
            );
          })}
          <Button onPress={() => void exportJob()}>{say('exportJob')}</Button>
        </>
      }
    >
      <p>{say(isFull ? 'heldFull' : 'heldFailed')}</p>
      {failed && <p>{say('exportFailed')}</p>}
    </Notice>
  );
}
