import { lazy, Suspense, useEffect, useState } from 'react';
import { useJobs } from '../../jobs/hooks.ts';
import { Button } from '../../parts/button.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { useSheets } from '../../shell/tool-sheet.tsx';
import { useTexts } from '../../text/texts.ts';
import { useHeld } from './held.ts';
import { keepPending, type Pending, readPending } from './pending.ts';
import { picturesTexts } from './pictures-texts.ts';

const PictureSheet = lazy(() => import('./picture-sheet.tsx'));

/** Jobs whose cut-off recordings were looked for since the page was loaded. */
const looked = new Set<string>();

/** The tool for pictures: a button, and its sheet while it is open. */
export function PictureTool(props: QuestionProps) {
  const say = useTexts(picturesTexts);
  const { storage } = useJobs();
  const { open, show, close } = useSheets();
  const [lost, setLost] = useState<Pending | null>(null);
  const [isRescued, setRescued] = useState(false);
  const { openJob, view } = props;
  const { id } = view;
  const unsaved = useHeld(id).length;
  const isOpen = open?.name === 'picture';
  // The page may have ended while the camera was open, or while somebody spoke.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each job
  useEffect(() => {
    if (looked.has(id)) return;
    looked.add(id);
    void readPending(storage, id).then(async (pending) => {
      if (pending === null) return;
      if (pending.is !== 'audio') {
        setLost(pending);
        show('picture');
        return;
      }
      const { rescueNote } = await import('./rescue-note.ts');
      if (!(await rescueNote(storage, openJob, pending))) return;
      setRescued(true);
      show('picture');
    });
  }, [storage, id]);
  const settleLost = () => {
    if (lost === null) return;
    setLost(null);
    void keepPending(storage, id, null);
  };
  return (
    <>
      <Button expanded={isOpen} onPress={() => (isOpen ? close() : show('picture'))}>
        {unsaved > 0 ? say('pictureUnsaved', { count: unsaved }) : say('picture')}
      </Button>
      {isOpen && (
        <Suspense fallback={null}>
          <PictureSheet props={props} lost={lost} isRescued={isRescued} onLostSettled={settleLost} />
        </Suspense>
      )}
    </>
  );
}
