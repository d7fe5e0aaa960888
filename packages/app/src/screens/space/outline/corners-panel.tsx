import { geometry } from '@undercroft/engine';
import { Button } from '../../../parts/button.tsx';
import { useLength } from '../../../plan/length.ts';
import { useTexts } from '../../../text/texts.ts';
import type { Editor } from '../draw/editor.ts';
import type { Mode } from '../draw/mode.ts';
import { EMPTY_DRAFTS, type OutlineDraft } from './outline-draft.ts';
import { outlineTexts } from './outline-texts.ts';

interface CornersPanelProps {
  readonly editor: Editor;
  readonly mode: Mode & { readonly is: 'corners' };
  readonly draft: OutlineDraft | null;
}

/** Walls on a grid: corner after corner; one that is tapped again can be moved or taken out. */
export function CornersPanel({ editor, mode, draft: held }: CornersPanelProps) {
  const say = useTexts(outlineTexts);
  const length = useLength();
  const draft = held?.by === 'grid' ? held : EMPTY_DRAFTS.grid;
  const { corners } = draft;
  const { picked } = mode;
  if (picked !== undefined) {
    return (
      <div className="draw-panel">
        <p role="status">{say('pickedHelp')}</p>
        <div className="draw-row">
          <Button onPress={() => editor.go({ is: 'corners' })}>{say('cancel')}</Button>
          <Button
            onPress={() => {
              editor.keepOutline({ ...draft, corners: corners.filter((_, i) => i !== picked) });
              editor.go({ is: 'corners' });
            }}
          >
            {say('takeOut')}
          </Button>
        </div>
      </div>
    );
  }
  const [before, last] = corners.slice(-2);
  const lastM = last === undefined ? 0 : geometry.distanceM(before.at, last.at);
  return (
    <div className="draw-panel">
      <p role="status">
        {corners.length > 1 && (
          <strong>{say('cornersGo', { count: corners.length, length: length(lastM) })} </strong>
        )}
        {say('cornersHelp')}
      </p>
      {corners.length > 0 && (
        <div className="draw-row">
          {corners.length >= 3 && (
            <Button look="main" onPress={() => editor.go({ is: 'closing' })}>
              {say('close')}
            </Button>
          )}
          <Button onPress={() => editor.keepOutline({ ...draft, corners: corners.slice(0, -1) })}>
            {say('takeBack')}
          </Button>
        </div>
      )}
    </div>
  );
}
