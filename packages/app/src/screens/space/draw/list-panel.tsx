import { useState } from 'react';
import { Button } from '../../../parts/button.tsx';
import { KINDS, LISTS, type Thing, type ThingKind } from '../../../plan/things.ts';
import { useTexts } from '../../../text/texts.ts';
import { drawTexts } from './draw-texts.ts';
import type { Editor } from './editor.ts';
import { kindTexts } from './kind-texts.ts';
import { type KindSpec, specById } from './kinds.ts';
import { useNames } from './names.ts';

/** So few stand there at once, without being asked for. */
const FEW = 12;

/** So many of one kind stand there at once; a phone under the house should not build hundreds. */
const FIRST = 40;

/** Everything on the plan with its numbers, so that nobody needs the drawing to find or change a thing. */
export function ThingList({ editor }: { readonly editor: Editor }) {
  const say = useTexts(drawTexts);
  const plan = editor.openJob.view.job?.plan;
  const kinds = KINDS.filter((kind) => (plan?.[LISTS[kind]].length ?? 0) > 0);
  if (plan === undefined || kinds.length === 0) return <p>{say('listEmpty')}</p>;
  const all = kinds.reduce((sum, kind) => sum + plan[LISTS[kind]].length, 0);
  return kinds.map((kind) => <KindList key={kind} editor={editor} kind={kind} opens={all <= FEW} />);
}

interface KindListProps {
  readonly editor: Editor;
  readonly kind: ThingKind;
  readonly opens: boolean;
}

function KindList({ editor, kind, opens }: KindListProps) {
  const say = useTexts(drawTexts);
  const kinds = useTexts(kindTexts);
  const [all, setAll] = useState(false);
  const [open, setOpen] = useState(opens);
  const { job } = editor.openJob.view;
  const { nameOf, numbersOf } = useNames(job);
  const things = (job?.plan[LISTS[kind]] ?? []).map((value) => ({ kind, value }) as Thing);
  return (
    <>
      <h3 className="kind-head">
        <Button wide expanded={open} onPress={() => setOpen(!open)}>
          <span>{kinds((specById(kind) as KindSpec).name)}</span>
          <span className="figure">{things.length}</span>
        </Button>
      </h3>
      {open && (
        <ul className="facts">
          {(all ? things : things.slice(0, FIRST)).map((thing) => (
            <li key={thing.value.id}>
              <Button wide onPress={() => editor.select({ kind, id: thing.value.id }, { is: 'form' })}>
                <span>{nameOf(thing)}</span>
                <span className="figure">{numbersOf(thing)}</span>
              </Button>
            </li>
          ))}
        </ul>
      )}
      {open && !all && things.length > FIRST && (
        <Button wide onPress={() => setAll(true)}>
          {say('listMore', { count: things.length - FIRST })}
        </Button>
      )}
    </>
  );
}
