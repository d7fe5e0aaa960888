import { lazy, Suspense, useEffect } from 'react';
import { useJobs } from '../../jobs/hooks.ts';
import { Button } from '../../parts/button.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { useSheets } from '../../shell/tool-sheet.tsx';
import { useTexts } from '../../text/texts.ts';
import { findingKey, isFindingBegun } from './finding-form.ts';
import { findingTexts } from './finding-texts.ts';

const FindingSheet = lazy(() => import('./finding-sheet.tsx'));

/** The tool for findings: a button, and its sheet while it is open. */
export function FindingTool(props: QuestionProps) {
  const say = useTexts(findingTexts);
  const { storage } = useJobs();
  const { open, show, close } = useSheets();
  const isOpen = open?.name === 'finding';
  const { id } = props.view;
  // After a dead battery the finding that was being filled in stands open again.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each job
  useEffect(() => {
    let wanted = true;
    storage.draft(findingKey(id)).then(
      (kept) => wanted && kept !== undefined && isFindingBegun(kept) && show('finding'),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [storage, id]);
  return (
    <>
      <Button expanded={isOpen} onPress={() => (isOpen ? close() : show('finding'))}>
        {say('finding')}
      </Button>
      {isOpen && (
        <Suspense fallback={null}>
          <FindingSheet {...props} />
        </Suspense>
      )}
    </>
  );
}
