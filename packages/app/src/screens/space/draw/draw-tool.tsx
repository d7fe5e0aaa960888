import { useEffect, useRef } from 'react';
import { createPortal } from 'react-dom';
import { Button } from '../../../parts/button.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import type { QuestionProps } from '../../../shell/question.ts';
import { useSheets } from '../../../shell/tool-sheet.tsx';
import { useTexts } from '../../../text/texts.ts';
import { drawTexts } from './draw-texts.ts';
import { stepBack } from './keys.ts';
import { Panel, useTitle } from './panel.tsx';
import { useEditor } from './use-editor.ts';
import './draw.css';

/** Name of the sheet among the sheets of a job. */
export const DRAW_SHEET = 'draw';

/** Opens and closes what can be drawn, and holds the step at which the drawing stands. */
export function DrawTool({ openJob }: QuestionProps) {
  const say = useTexts(drawTexts);
  const { open, show, close, place } = useSheets();
  const [editor, state] = useEditor(openJob);
  const { mode } = state;
  const isOpen = open?.name === DRAW_SHEET;
  const title = useTitle(editor, state);
  const body = useRef<HTMLDivElement>(null);
  const step = mode === null ? '' : `${mode.is} ${'field' in mode ? mode.field : ''}`;

  // The sheet follows what is done on the plan, and the other way round.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only what changes on one side moves the other
  useEffect(() => {
    if (mode !== null && !isOpen) show(DRAW_SHEET);
    if (mode === null && isOpen) close();
  }, [mode === null]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only what changes on one side moves the other
  useEffect(() => {
    if (!isOpen && mode !== null) editor.select(null);
    if (isOpen && mode === null) editor.go({ is: 'menu' });
  }, [isOpen]);
  // Whoever works with keys stands where the step goes on; whoever is on the plan stays there.
  const before = useRef<string>('');
  // biome-ignore lint/correctness/useExhaustiveDependencies: each step
  useEffect(() => {
    const now = document.activeElement;
    const wasExact = before.current === 'exact';
    before.current = mode?.is ?? '';
    if (mode === null) return;
    if (wasExact && mode.is !== 'exact') {
      document.querySelector<HTMLElement>('.plan-frame')?.focus();
      return;
    }
    if (mode.is !== 'exact' && now !== null && now !== document.body) return;
    (body.current?.querySelector<HTMLElement>('input') ?? body.current)?.focus();
  }, [step, isOpen]);

  // Close closes: back leads from one thing to what can be drawn next.
  const back = () =>
    mode?.is === 'selected' ? editor.set({ mode: { is: 'menu' }, selection: null }) : stepBack(editor);

  return (
    <>
      <Button expanded={isOpen} onPress={() => (isOpen ? close() : editor.go({ is: 'menu' }))}>
        {say('draw')}
      </Button>
      {isOpen &&
        mode !== null &&
        place !== null &&
        createPortal(
          <div className="draw-sheet">
            <Sheet title={title} keepsFocus onClose={close} onBack={mode.is === 'menu' ? undefined : back}>
              <div ref={body} tabIndex={-1} className="draw-body">
                <Panel editor={editor} state={state} />
              </div>
              <p role="status" className="hidden-text">
                {state.said}
              </p>
            </Sheet>
          </div>,
          place,
        )}
    </>
  );
}
