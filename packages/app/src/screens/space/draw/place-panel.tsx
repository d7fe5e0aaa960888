import { units } from '@undercroft/engine';
import { useState } from 'react';
import { Button } from '../../../parts/button.tsx';
import { FigurePad } from '../../../parts/figure-pad.tsx';
import { Notice } from '../../../parts/notice.tsx';
import { useTexts } from '../../../text/texts.ts';
import { createAll, selectedThing, startOf, within } from './actions.ts';
import { drawTexts } from './draw-texts.ts';
import type { Editor } from './editor.ts';
import { FieldEditor } from './field-editor.tsx';
import { kindTexts } from './kind-texts.ts';
import { type KindSpec, specById } from './kinds.ts';
import { lastLength, rememberLength } from './last-length.ts';
import type { Mode } from './mode.ts';
import { useNames } from './names.ts';
import { rowOfPiers } from './piers.ts';
import { canFinish, finish, make, missingOf } from './tap.ts';

interface PlacePanelProps {
  readonly editor: Editor;
  readonly spec: KindSpec;
  readonly mode: Mode & { readonly is: 'place' };
}

/** What to tap to put a thing on the plan, what of it is there, and what can be done with the last one. */
export function PlacePanel({ editor, spec, mode }: PlacePanelProps) {
  const say = useTexts(drawTexts);
  const kinds = useTexts(kindTexts);
  const { nameOf } = useNames(editor.openJob.view.job);
  const { points, asking } = mode;
  const placed = selectedThing(editor);
  if (asking !== undefined) {
    const field = missingOf(spec, asking);
    if (field === undefined) return null;
    return (
      <FieldEditor
        key={field.at}
        field={field}
        value={undefined}
        onSet={async (to) => {
          const value = within(asking, field.at.split('.'), to) as Readonly<Record<string, unknown>>;
          await make(editor, spec, mode, value);
          return { ok: true };
        }}
        onDone={() => {}}
      />
    );
  }
  return (
    <div className="draw-panel">
      <p role="status">
        {placed !== null && points.length === 0 && (
          <strong>{say('placed', { name: nameOf(placed) })} </strong>
        )}
        {points.length > 0 && spec.placing !== 'two-points' && (
          <strong>{say('pointsSet', { count: points.length })} </strong>
        )}
        {points.length > 0 && spec.placing === 'two-points'
          ? say('secondEnd')
          : placed !== null && points.length === 0
            ? say('another')
            : kinds(spec.help)}
      </p>
      {spec.caution !== undefined && placed === null && points.length === 0 && (
        <Notice kind="caution">{kinds(spec.caution)}</Notice>
      )}
      {(points.length > 0 || placed !== null) && (
        <div className="draw-row">
          {points.length > 0 && (
            <>
              {canFinish(spec, points) && (
                <Button look="main" onPress={() => void finish(editor)}>
                  {say('finish')}
                </Button>
              )}
              <Button onPress={() => editor.go({ ...mode, points: points.slice(0, -1) })}>
                {say('takeBack')}
              </Button>
            </>
          )}
          {points.length === 0 && placed !== null && (
            <>
              <Button onPress={() => editor.go({ is: 'form' })}>{say('details')}</Button>
              <Button onPress={() => editor.go({ is: 'move' })}>{say('move')}</Button>
            </>
          )}
        </div>
      )}
    </div>
  );
}

/** A row of piers: two taps, then the spacing that the tape shows. */
export function RowPanel({ editor, mode }: { readonly editor: Editor; readonly mode: Mode & { is: 'row' } }) {
  const say = useTexts(drawTexts);
  const [typed, setTyped] = useState('');
  const [from, to] = mode.points;
  const spec = specById('pier') as KindSpec;
  const make = async (spacingM: number) => {
    if (from === undefined || to === undefined) return;
    const start = startOf(editor, spec);
    const piers = rowOfPiers(from, to, spacingM).map((at) => ({
      ...start,
      at: { xM: Math.round(at.xM * 1e6) / 1e6, yM: Math.round(at.yM * 1e6) / 1e6 },
    }));
    if (piers.length === 0) return;
    const result = await createAll(editor, spec, piers);
    if ('issues' in result) return;
    editor.set({ mode: { is: 'row', points: [] }, said: say('rowCount', { count: piers.length }) });
    setTyped('');
  };
  if (from === undefined || to === undefined) {
    return (
      <div className="draw-panel">
        <p role="status">{say(from === undefined ? 'rowHelp' : 'rowSecond')}</p>
      </div>
    );
  }
  const read = units.parseLength(typed);
  const count = read.ok ? rowOfPiers(from, to, units.metersFromNanometers(read.nanometers)).length : null;
  return (
    <div className="draw-panel">
      <FigurePad
        label={`${say('rowSpacing')}${count === null ? '' : count === 0 ? ` · ${say('rowNone')}` : ` · ${say('rowCount', { count })}`}`}
        typed={typed}
        onType={setTyped}
        last={lastLength('row')}
        onDone={({ nm, typed: text }) => {
          rememberLength('row', text);
          void make(units.metersFromNanometers(nm));
        }}
      />
    </div>
  );
}
