import { lazy, Suspense, useEffect } from 'react';
import { useJobs } from '../../jobs/hooks.ts';
import { Button } from '../../parts/button.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { useSheets } from '../../shell/tool-sheet.tsx';
import { useTexts } from '../../text/texts.ts';
import { isHalfDone, measureKey } from './measure-form.ts';
import { measureTexts } from './measure-texts.ts';

const MeasureSheet = lazy(() => import('./measure-sheet.tsx'));

/** The tool that measures: a button, and its sheet while it is open. */
export function MeasureTool(props: QuestionProps) {
  const say = useTexts(measureTexts);
  const { storage } = useJobs();
  const { open, show, close } = useSheets();
  const isOpen = open?.name === 'measure';
  const { id } = props.view;
  // After a dead battery the sheet stands open again where somebody was typing.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each job
  useEffect(() => {
    let wanted = true;
    storage.draft(measureKey(id)).then(
      (kept) => wanted && kept !== undefined && isHalfDone(kept) && show('measure'),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [storage, id]);
  return (
    <>
      <Button expanded={isOpen} onPress={() => (isOpen ? close() : show('measure'))}>
        {say('measure')}
      </Button>
      {isOpen && (
        <Suspense fallback={null}>
          <MeasureSheet {...props} />
        </Suspense>
      )}
    </>
  );
}
