import { useTexts } from '../../../text/texts.ts';
import { ClosingPanel } from '../outline/closing-panel.tsx';
import { CornersPanel } from '../outline/corners-panel.tsx';
import { outlineTexts } from '../outline/outline-texts.ts';
import { RectanglePanel } from '../outline/rectangle-panel.tsx';
import { WallsPanel } from '../outline/walls-panel.tsx';
import { selectedThing } from './actions.ts';
import { drawTexts } from './draw-texts.ts';
import type { DrawState, Editor } from './editor.ts';
import { ExactPanel } from './exact-panel.tsx';
import { KeysPanel } from './keys-panel.tsx';
import { kindTexts } from './kind-texts.ts';
import { specById } from './kinds.ts';
import { ThingList } from './list-panel.tsx';
import { Menu } from './menu.tsx';
import { useNames } from './names.ts';
import { PlacePanel, RowPanel } from './place-panel.tsx';
import { FloorForm, MovePanel, SelectedPanel, ThingForm } from './thing-panels.tsx';

interface PanelProps {
  readonly editor: Editor;
  readonly state: DrawState;
}

/** What the sheet holds at the present step. */
export function Panel({ editor, state }: PanelProps) {
  const { mode, outline } = state;
  const thing = selectedThing(editor);
  switch (mode?.is) {
    case 'list':
      return <ThingList editor={editor} />;
    case 'keys':
      return <KeysPanel />;
    case 'walls':
      return <WallsPanel editor={editor} mode={mode} draft={outline} />;
    case 'corners':
      return <CornersPanel editor={editor} mode={mode} draft={outline} />;
    case 'rectangle':
      return <RectanglePanel editor={editor} mode={mode} draft={outline} />;
    case 'closing':
      return <ClosingPanel editor={editor} draft={outline} />;
    case 'floor':
      return <FloorForm editor={editor} mode={mode} />;
    case 'row':
      return <RowPanel editor={editor} mode={mode} />;
    case 'exact':
      return <ExactPanel editor={editor} mode={mode} />;
    case 'place': {
      const spec = specById(mode.spec);
      return spec === undefined ? null : <PlacePanel editor={editor} spec={spec} mode={mode} />;
    }
    // What is selected may have been undone or taken away by somebody else: then there is the menu again.
    case 'selected':
      return thing === null ? <Menu editor={editor} /> : <SelectedPanel editor={editor} thing={thing} />;
    case 'move':
      return thing === null ? <Menu editor={editor} /> : <MovePanel editor={editor} thing={thing} />;
    case 'form':
      return thing === null ? (
        <Menu editor={editor} />
      ) : (
        <ThingForm editor={editor} thing={thing} mode={mode} />
      );
    default:
      return <Menu editor={editor} />;
  }
}

/** The name of the present step. */
export function useTitle(editor: Editor, { mode }: DrawState): string {
  const say = useTexts(drawTexts);
  const outline = useTexts(outlineTexts);
  const kinds = useTexts(kindTexts);
  const { nameOf } = useNames(editor.openJob.view.job);
  const thing = selectedThing(editor);
  switch (mode?.is) {
    case 'list':
      return say('listTitle');
    case 'keys':
      return say('keysTitle');
    case 'walls':
    case 'corners':
    case 'rectangle':
      return say('walls');
    case 'closing':
      return outline('close');
    case 'floor':
      return say('floorAndNorth');
    case 'row':
      return say('pierRow');
    case 'place': {
      const spec = specById(mode.spec);
      return spec === undefined ? say('draw') : kinds(spec.name);
    }
    case 'selected':
    case 'move':
    case 'form':
    case 'exact':
      return thing === null ? say('draw') : nameOf(thing);
    default:
      return say('draw');
  }
}
