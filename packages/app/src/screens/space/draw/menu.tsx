import { isSurveyed } from '@undercroft/record';
import { Fragment } from 'react';
import { Button } from '../../../parts/button.tsx';
import { Notice } from '../../../parts/notice.tsx';
import { thingsOf } from '../../../plan/things.ts';
import { wallsOf } from '../../../plan/walls.ts';
import { useTexts } from '../../../text/texts.ts';
import { draftMode } from '../outline/draft-mode.ts';
import { cornersOf, draftOf, EMPTY_DRAFTS, type OutlineDraft } from '../outline/outline-draft.ts';
import { create, startOf } from './actions.ts';
import { drawTexts } from './draw-texts.ts';
import type { Editor } from './editor.ts';
import { kindTexts } from './kind-texts.ts';
import { KIND_SPECS, type KindSpec } from './kinds.ts';
import { useNames } from './names.ts';
import { useEditor } from './use-editor.ts';

/** What can be drawn: the walls first, then what stands between them. */
export function Menu({ editor }: { readonly editor: Editor }) {
  const say = useTexts(drawTexts);
  const { job } = editor.openJob.view;
  const walls = wallsOf(job);
  const { length } = useNames(job);
  const count = thingsOf(job).length;
  if (job === null) return null;
  return (
    <div className="draw-panel">
      <DraftNotice editor={editor} />
      {walls === null ? (
        <WallWays editor={editor} />
      ) : (
        <>
          {!isSurveyed(job) && (
            <Notice kind="wrong">
              <p>{say('floorMissing')}</p>
            </Notice>
          )}
          <Kinds editor={editor} />
          <h3>{say('walls')}</h3>
          <p className="soft">
            {say('wallsKnown', { count: walls.edges.length, length: length(walls.perimeterM) })}
          </p>
          <div className="draw-grid">
            <Button onPress={() => changeWalls(editor)}>{say('changeWalls')}</Button>
            <Button look={isSurveyed(job) ? 'plain' : 'main'} onPress={() => editor.go({ is: 'floor' })}>
              {say('floorAndNorth')}
            </Button>
            <Button onPress={() => editor.go({ is: 'list' })}>{say('list', { count })}</Button>
          </div>
        </>
      )}
    </div>
  );
}

function changeWalls(editor: Editor): void {
  const outline = editor.openJob.view.job?.plan.outline;
  if (outline === undefined) return;
  goOn(editor, editor.state.outline ?? draftOf(outline));
}

function goOn(editor: Editor, draft: OutlineDraft): void {
  editor.keepOutline(draft);
  editor.go(draftMode(draft));
}

/** Walls that somebody began to draw and did not close. */
function DraftNotice({ editor }: { readonly editor: Editor }) {
  const say = useTexts(drawTexts);
  const [, { outline }] = useEditor(editor.openJob);
  if (outline === null) return null;
  const count = Math.max(0, outline.by === 'grid' ? cornersOf(outline).length - 1 : outline.legs.length);
  if (count === 0) return null;
  return (
    <Notice
      kind="plain"
      actions={
        <>
          <Button look="main" onPress={() => editor.go(draftMode(outline))}>
            {say('goOnWalls', { count })}
          </Button>
          <Button look="quiet" onPress={() => editor.keepOutline(null)}>
            {say('dropWalls')}
          </Button>
        </>
      }
    >
      {null}
    </Notice>
  );
}

/** The three ways to draw walls. */
function WallWays({ editor }: { readonly editor: Editor }) {
  const say = useTexts(drawTexts);
  const ways = [
    ['tape', 'byTape', 'byTapeHelp'],
    ['grid', 'onGrid', 'onGridHelp'],
    ['rectangle', 'fromRectangle', 'fromRectangleHelp'],
  ] as const;
  return (
    <>
      <p>{say('firstWalls')}</p>
      {ways.map(([by, name, help], i) => (
        <div key={by} className="draw-way">
          <Button wide look={i === 0 ? 'main' : 'plain'} onPress={() => goOn(editor, EMPTY_DRAFTS[by])}>
            {say(name)}
          </Button>
          <p className="soft">{say(help)}</p>
        </div>
      ))}
    </>
  );
}

/** A button for each kind of thing. */
function Kinds({ editor }: { readonly editor: Editor }) {
  const say = useTexts(drawTexts);
  const kinds = useTexts(kindTexts);
  const begin = async (spec: KindSpec) => {
    if (spec.placing !== 'none')
      return editor.set({ selection: null, mode: { is: 'place', spec: spec.id, points: [] } });
    const ref = await create(editor, spec, startOf(editor, spec));
    if (ref !== null) editor.select(ref, { is: 'form' });
  };
  return (
    <>
      <h3>{say('add')}</h3>
      <div className="draw-grid">
        {KIND_SPECS.map((spec) => (
          <Fragment key={spec.id}>
            <Button onPress={() => void begin(spec)}>{kinds(spec.name)}</Button>
            {spec.id === 'pier' && (
              <Button onPress={() => editor.set({ selection: null, mode: { is: 'row', points: [] } })}>
                {say('pierRow')}
              </Button>
            )}
          </Fragment>
        ))}
      </div>
    </>
  );
}
