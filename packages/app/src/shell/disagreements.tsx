import type { Disagreement, Side } from '@undercroft/record';
import type { JobView, OpenJob } from '../jobs/open-job.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { shownTime, useTexts } from '../text/texts.ts';
import { shellTexts } from './shell-texts.ts';

function shownValue(side: Side): string {
  return typeof side.value === 'string' ? side.value : JSON.stringify(side.value);
}

/** What people decided without having seen each other, one after the other, to be settled by a person. */
export function Disagreements({ view, openJob }: { readonly view: JobView; readonly openJob: OpenJob }) {
  const say = useTexts(shellTexts);
  const [first, ...others] = view.disagreements;
  if (first === undefined) return null;
  const { item, field, about, sides } = first;
  return (
    <Notice
      kind="plain"
      title={`${say('disagreement')}${others.length > 0 ? ` (+${others.length})` : ''}`}
      actions={sides.map((side) => (
        <Button key={side.entryId} onPress={() => void openJob.settle(first, side)}>
          {labelOf(say, first, side)}
        </Button>
      ))}
    >
      <p>{about === 'removal' ? say('removedOrEdited') : say('disagreementAbout', { item, field })}</p>
      <ul>
        {sides.map((side) => (
          <li key={side.entryId}>
            {about === 'field' && <strong>{shownValue(side)} </strong>}
            <span className="soft">{say('saidBy', { who: side.who, when: shownTime(side.deviceTime) })}</span>
          </li>
        ))}
      </ul>
    </Notice>
  );
}

function labelOf(
  say: ReturnType<typeof useTexts<(typeof shellTexts)['en']>>,
  { about }: Disagreement,
  side: Side,
): string {
  if (about === 'field') return say('keepSide', { value: shownValue(side).slice(0, 40) });
  return say(side.field === 'removed' && side.value === true ? 'removeItem' : 'keepItem');
}
