import { units } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import { useState } from 'react';
import type { CommitResult } from '../../../jobs/open-job.ts';
import { Button } from '../../../parts/button.tsx';
import { FigurePad } from '../../../parts/figure-pad.tsx';
import { anchorOf, shapeOf } from '../../../plan/shape.ts';
import type { Thing } from '../../../plan/things.ts';
import { spanOf } from '../../../plan/viewport.ts';
import { wallsOf } from '../../../plan/walls.ts';
import { useTexts } from '../../../text/texts.ts';
import { duplicate, moveBy, remove, selectedThing, setFact, within } from './actions.ts';
import { drawTexts } from './draw-texts.ts';
import type { Editor } from './editor.ts';
import { FactsForm } from './facts-form.tsx';
import { PLAN_FIELDS, specOf } from './kinds.ts';
import type { Mode } from './mode.ts';
import { useNames } from './names.ts';

interface PanelProps {
  readonly editor: Editor;
  readonly thing: Thing;
}

/** What can be done with the thing that is selected. */
export function SelectedPanel({ editor, thing }: PanelProps) {
  const say = useTexts(drawTexts);
  const { numbersOf } = useNames(editor.openJob.view.job);
  const canMove = shapeOf(thing, wallsOf(editor.openJob.view.job)) !== null && thing.kind !== 'wall';
  return (
    <div className="draw-panel">
      <p className="figure">{numbersOf(thing)}</p>
      <div className="draw-row">
        <Button look="main" onPress={() => editor.go({ is: 'form' })}>
          {say('details')}
        </Button>
        <Button isDisabled={!canMove} onPress={() => editor.go({ is: 'move' })}>
          {say('move')}
        </Button>
        <Button isDisabled={thing.kind === 'wall'} onPress={() => void duplicate(editor, thing)}>
          {say('duplicate')}
        </Button>
      </div>
    </div>
  );
}

/** The next tap says where the thing goes; or its place is typed. */
export function MovePanel({ editor, thing }: PanelProps) {
  const say = useTexts(drawTexts);
  const walls = wallsOf(editor.openJob.view.job);
  const [axis, setAxis] = useState<'xM' | 'yM' | null>(null);
  const [typed, setTyped] = useState('');
  const shape = shapeOf(thing, walls);
  const span = spanOf(walls?.corners ?? []);
  const { length } = useNames(editor.openJob.view.job);
  if (shape === null || span === null) return null;
  const at = anchorOf(shape);
  const from: Point = { xM: span.leftM, yM: span.bottomM };
  const onAWall = thing.kind === 'vent' || (thing.kind === 'door' && thing.value.kind === 'wall');
  if (axis !== null) {
    return (
      <FigurePad
        label={say(axis === 'xM' ? 'across' : 'up')}
        typed={typed}
        onType={setTyped}
        onDone={({ nm }) => {
          const by = from[axis] + units.metersFromNanometers(nm) - at[axis];
          void moveBy(editor, thing, { xM: 0, yM: 0, [axis]: by });
          setTyped('');
          setAxis(null);
        }}
      />
    );
  }
  return (
    <div className="draw-panel">
      <p>{say('moveHelp')}</p>
      {!onAWall && (
        <ul className="facts">
          {(['xM', 'yM'] as const).map((one) => (
            <li key={one}>
              <Button wide onPress={() => setAxis(one)}>
                <span>{say(one === 'xM' ? 'across' : 'up')}</span>
                <span className="figure">{length(at[one] - from[one]).replace('-', '−')}</span>
              </Button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** The facts of the thing that is selected. */
export function ThingForm({ editor, thing, mode }: PanelProps & { readonly mode: Mode & { is: 'form' } }) {
  const say = useTexts(drawTexts);
  const { nameOf } = useNames(editor.openJob.view.job);
  const { field } = mode;
  return (
    <div className="draw-panel">
      <FactsForm
        value={thing.value as unknown as Readonly<Record<string, unknown>>}
        fields={specOf(thing).fields}
        open={field}
        onOpen={(at) => editor.go(at === undefined ? { is: 'form' } : { is: 'form', field: at })}
        onSet={(at, to) => setFact(editor, selectedThing(editor) ?? thing, at, to)}
      />
      {field === undefined && (
        <div className="draw-away">
          <Button
            look="quiet"
            onPress={() => {
              const said = say('deleted', { name: nameOf(thing) });
              void remove(editor, thing).then(() => editor.set({ said }));
            }}
          >
            {say('remove')}
          </Button>
        </div>
      )}
    </div>
  );
}

/** Facts of the plan as a whole: its floor, and where north is. */
export function FloorForm({
  editor,
  mode,
}: {
  readonly editor: Editor;
  readonly mode: Mode & { is: 'floor' };
}) {
  const plan = editor.openJob.view.job?.plan;
  if (plan === undefined) return null;
  const set = (at: string, to: unknown): Promise<CommitResult> => {
    const [field, ...rest] = at.split('.');
    const value = rest.length === 0 ? to : within(plan[field as 'ground'], rest, to);
    return editor.openJob.commit({ do: 'set', kind: 'plan', item: 'plan', field, value: value ?? null });
  };
  return (
    <FactsForm
      value={plan as unknown as Readonly<Record<string, unknown>>}
      fields={PLAN_FIELDS}
      open={mode.field}
      onOpen={(at) => editor.go(at === undefined ? { is: 'floor' } : { is: 'floor', field: at })}
      onSet={set}
    />
  );
}
