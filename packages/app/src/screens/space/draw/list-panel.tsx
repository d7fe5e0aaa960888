import { Button } from '../../../parts/button.tsx';
import { type Thing, thingsOf } from '../../../plan/things.ts';
import { useTexts } from '../../../text/texts.ts';
import { drawTexts } from './draw-texts.ts';
import type { Editor } from './editor.ts';
import { useNames } from './names.ts';

/** Everything on the plan with its numbers, so that nobody needs the drawing to find or change a thing. */
export function ThingList({ editor, onChosen }: { readonly editor: Editor; readonly onChosen?: () => void }) {
  const say = useTexts(drawTexts);
  const { job } = editor.openJob.view;
  const { nameOf, numbersOf } = useNames(job);
  const things = thingsOf(job);
  if (things.length === 0) return <p>{say('listEmpty')}</p>;
  const choose = (thing: Thing) => {
    editor.select({ kind: thing.kind, id: thing.value.id }, { is: 'form' });
    onChosen?.();
  };
  return (
    <ul className="facts">
      {things.map((thing) => (
        <li key={`${thing.kind} ${thing.value.id}`}>
          <Button wide onPress={() => choose(thing)}>
            <span>{nameOf(thing)}</span>
            <span className="figure">{numbersOf(thing)}</span>
          </Button>
        </li>
      ))}
    </ul>
  );
}
