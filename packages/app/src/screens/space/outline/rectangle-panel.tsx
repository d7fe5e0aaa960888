import { useState } from 'react';
import { randomName } from '../../../jobs/author.ts';
import { Button } from '../../../parts/button.tsx';
import { FigurePad } from '../../../parts/figure-pad.tsx';
import { useLength } from '../../../plan/length.ts';
import { useTexts } from '../../../text/texts.ts';
import type { Editor } from '../draw/editor.ts';
import { lastLength, rememberLength } from '../draw/last-length.ts';
import type { Mode } from '../draw/mode.ts';
import { EMPTY_DRAFTS, type OutlineDraft } from './outline-draft.ts';
import { outlineTexts } from './outline-texts.ts';
import { type Part, rectangleOf, type Taped, withPart } from './rectangle.ts';

const newId = () => randomName(16);

interface RectanglePanelProps {
  readonly editor: Editor;
  readonly mode: Mode & { readonly is: 'rectangle' };
  readonly draft: OutlineDraft | null;
}

/** Walls from a rectangle, to which parts are added and from which parts are cut. */
export function RectanglePanel({ editor, mode, draft: held }: RectanglePanelProps) {
  const draft = held?.by === 'rectangle' ? held : EMPTY_DRAFTS.rectangle;
  const [first, setFirst] = useState<Taped | null>(null);
  const [part, setPart] = useState<Part['kind'] | null>(null);
  if (draft.legs.length === 0) {
    return (
      <Pad
        key={first === null ? 'rectLength' : 'rectWidth'}
        name={first === null ? 'rectLength' : 'rectWidth'}
        onDone={(taped) => {
          if (taped.nm === 0) return;
          if (first === null) return setFirst(taped);
          setFirst(null);
          editor.keepOutline({ ...draft, legs: rectangleOf(first, taped, newId) });
        }}
      />
    );
  }
  if (part !== null && mode.wall !== undefined) {
    return (
      <PartPads
        onDone={(offsetNm, width, depth) => {
          const legs = withPart(
            draft.legs,
            { kind: part, leg: mode.wall ?? 0, offsetNm, width, depth },
            newId,
          );
          setPart(null);
          if (legs === null) return editor.go({ is: 'rectangle', tooWide: true });
          editor.keepOutline({ ...draft, legs });
          editor.go({ is: 'rectangle' });
        }}
      />
    );
  }
  return <Parts editor={editor} mode={mode} draft={draft} onPart={setPart} />;
}

interface PartsProps {
  readonly editor: Editor;
  readonly mode: Mode & { readonly is: 'rectangle' };
  readonly draft: Extract<OutlineDraft, { readonly by: 'tape' | 'rectangle' }>;
  readonly onPart: (kind: Part['kind']) => void;
}

function Parts({ editor, mode, draft, onPart }: PartsProps) {
  const say = useTexts(outlineTexts);
  const length = useLength();
  const { wall } = mode;
  return (
    <div className="draw-panel">
      {mode.tooWide && (
        <p className="problem" role="alert">
          {say('partTooWide')}
        </p>
      )}
      {wall === undefined ? (
        <>
          <Button look="main" wide onPress={() => editor.go({ is: 'closing' })}>
            {say('close')}
          </Button>
          <p>
            {say('partHelp')} {say('pickWall')}
          </p>
          <ul className="facts">
            {draft.legs.map(({ id, nm }, i) => (
              <li key={id}>
                <Button wide onPress={() => editor.go({ is: 'rectangle', wall: i })}>
                  {say('wallLine', { number: i + 1, length: length(nm * 1e-9) })}
                </Button>
              </li>
            ))}
          </ul>
          <Button look="quiet" onPress={() => editor.keepOutline(EMPTY_DRAFTS.rectangle)}>
            {say('asRectangle')}
          </Button>
        </>
      ) : (
        <>
          <p role="status">
            <strong>{say('onWall', { number: wall + 1 })}</strong>
          </p>
          <div className="draw-row">
            <Button look="main" onPress={() => onPart('add')}>
              {say('addPart')}
            </Button>
            <Button onPress={() => onPart('cut')}>{say('cutPart')}</Button>
            <Button onPress={() => editor.go({ is: 'rectangle' })}>{say('cancel')}</Button>
          </div>
        </>
      )}
    </div>
  );
}

type PadName = 'rectLength' | 'rectWidth' | 'partOffset' | 'partWidth' | 'partDepth';

function Pad({ name, onDone }: { readonly name: PadName; readonly onDone: (taped: Taped) => void }) {
  const say = useTexts(outlineTexts);
  const [typed, setTyped] = useState('');
  return (
    <FigurePad
      label={say(name)}
      typed={typed}
      onType={setTyped}
      last={lastLength(name)}
      onDone={(taped) => {
        rememberLength(name, taped.typed);
        onDone(taped);
      }}
    />
  );
}

function PartPads({ onDone }: { readonly onDone: (offsetNm: number, width: Taped, depth: Taped) => void }) {
  const [sizes, setSizes] = useState<readonly Taped[]>([]);
  const name = (['partOffset', 'partWidth', 'partDepth'] as const)[sizes.length];
  return (
    <Pad
      key={name}
      name={name}
      onDone={(taped) => {
        if (taped.nm === 0 && name !== 'partOffset') return;
        const [offset, width] = sizes;
        if (offset !== undefined && width !== undefined) return onDone(offset.nm, width, taped);
        setSizes([...sizes, taped]);
      }}
    />
  );
}
