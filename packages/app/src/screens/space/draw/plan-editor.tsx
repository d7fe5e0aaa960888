import { isSurveyed, type Point } from '@undercroft/record';
import { useEffect } from 'react';
import { Button } from '../../../parts/button.tsx';
import type { Grabbed } from '../../../plan/grabbed.ts';
import { movesBy } from '../../../plan/move.ts';
import { PlanView } from '../../../plan/plan-view.tsx';
import { anchorOf, shapeOf } from '../../../plan/shape.ts';
import { isOn, snap, snapTargets } from '../../../plan/snap.ts';
import { spanOf } from '../../../plan/viewport.ts';
import { wallsOf } from '../../../plan/walls.ts';
import { useSettings } from '../../../settings/settings.ts';
import { PlanCenter } from '../../../shell/plan-center.tsx';
import type { QuestionProps } from '../../../shell/question.ts';
import { useTexts } from '../../../text/texts.ts';
import { cornersOf } from '../outline/outline-draft.ts';
import { keepNudge, moveBy, selectedThing } from './actions.ts';
import { drawTexts } from './draw-texts.ts';
import { type Editor, refOf } from './editor.ts';
import { lastPoint, planKey } from './keys.ts';
import { Overlay } from './overlay.tsx';
import { gridFor, tapped } from './tap.ts';
import { useEditor } from './use-editor.ts';

/** Lines of the grid on which walls are drawn [m]: one foot, or a quarter of a meter. */
const GRID_M = { us: 0.3048, si: 0.25 } as const;

/** The plan on which a space is drawn. */
export function PlanEditor(props: QuestionProps) {
  const { openJob, view, result, place } = props;
  const say = useTexts(drawTexts);
  const { units } = useSettings();
  const [editor, state] = useEditor(openJob);
  const { mode, outline, selection } = state;
  useEffect(() => {
    const ref = refOf(place);
    if (ref !== null) editor.select(ref);
  }, [editor, place]);

  const isDrawing = mode !== null;
  if (view.job === null || (!isSurveyed(view.job) && !isDrawing && view.job.plan.outline === undefined)) {
    return (
      <div className="draw-empty">
        <PlanCenter {...props} />
        <Button look="main" onPress={() => editor.go({ is: 'menu' })}>
          {say('draw')}
        </Button>
      </div>
    );
  }
  const drawn = outline === null ? [] : cornersOf(outline);
  const onGrid = mode?.is === 'corners' || (mode?.is === 'closing' && outline?.by === 'grid');
  const isWalls = onGrid || mode?.is === 'walls' || mode?.is === 'rectangle' || mode?.is === 'closing';
  return (
    <PlanView
      view={view}
      result={result}
      label={say('planOf')}
      help={say('drawKeys')}
      layers={isDrawing ? 'built' : 'all'}
      isFaint={isWalls && outline !== null}
      gridM={onGrid ? GRID_M[units] : undefined}
      span={isWalls && drawn.length > 1 ? (spanOf(drawn) ?? undefined) : undefined}
      focus={focusOf(editor)}
      grab={(at, reachM) => grabbed(editor, at, reachM)}
      onTap={(at, reachM) => void tapped(editor, { at, reachM })}
      onKey={(event) => planKey(editor, event)}
    >
      {(isDrawing || selection !== null) && <Overlay editor={editor} state={state} />}
    </PlanView>
  );
}

/** What is being edited, which has to stay in view. */
function focusOf(editor: Editor): Point | undefined {
  const { mode, cursor, outline } = editor.state;
  if (cursor !== null) return cursor;
  if (outline !== null && (mode?.is === 'walls' || mode?.is === 'corners')) {
    const corners = cornersOf(outline);
    return corners[corners.length - 1];
  }
  const last = lastPoint(editor.state);
  if (last !== undefined) return last;
  const thing = selectedThing(editor);
  const shape = thing === null ? null : shapeOf(thing, wallsOf(editor.openJob.view.job));
  return shape === null ? undefined : anchorOf(shape);
}

/** Takes hold of what is selected, where a finger comes down on it. */
function grabbed(editor: Editor, at: Point, reachM: number): Grabbed | null {
  const { job } = editor.openJob.view;
  const walls = wallsOf(job);
  const { selection, mode } = editor.state;
  const thing = selectedThing(editor);
  const shape = thing === null ? null : shapeOf(thing, walls);
  const mayMove =
    mode?.is === 'selected' || mode?.is === 'move' || mode?.is === 'form' || mode?.is === 'place';
  if (thing === null || shape === null || !mayMove || thing.kind === 'wall') return null;
  if (!isOn(job, walls, selection, at, reachM)) return null;
  const anchor = anchorOf(shape);
  const targets = snapTargets(job, walls, gridFor(reachM), selection);
  const by = (to: Point): Point => {
    const wanted = { xM: anchor.xM + to.xM - at.xM, yM: anchor.yM + to.yM - at.yM };
    const { at: spot } = snap(targets, wanted, reachM / 2);
    return movesBy(thing, { xM: spot.xM - anchor.xM, yM: spot.yM - anchor.yM }, walls);
  };
  return {
    kind: thing.kind,
    id: thing.value.id,
    move: by,
    async drop(to) {
      await keepNudge(editor);
      return moveBy(editor, thing, by(to));
    },
  };
}
