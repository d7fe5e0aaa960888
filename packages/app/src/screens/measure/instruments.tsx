import { useState } from 'react';
import { randomName } from '../../jobs/author.ts';
import { useDraft } from '../../jobs/use-draft.ts';
import { useTaking } from '../../jobs/use-taking.ts';
import { Button } from '../../parts/button.tsx';
import { Field, Pick } from '../../parts/field.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useTexts } from '../../text/texts.ts';
import { instrumentTexts } from './instrument-texts.ts';
import type { KindFormProps } from './kind-form.ts';
import { measureTexts } from './measure-texts.ts';

const KINDS = [
  'hygrometer',
  'pin-meter',
  'infrared',
  'level',
  'laser',
  'tape',
  'manometer',
  'radon-monitor',
  'other',
] as const;

/** The instruments of a job: readings name the one they were taken with. */
export function Instruments({ props: { openJob, view }, job, draft }: KindFormProps) {
  const say = useTexts(instrumentTexts);
  const measure = useTexts(measureTexts);
  const name = useDraft(`${view.id}/instrument.name`, '');
  const checked = useDraft(`${view.id}/instrument.checked`, '');
  const [kind, setKind] = useState<(typeof KINDS)[number]>('hygrometer');
  const { taking, take } = useTaking(openJob, view);
  const add = () => {
    if (name.text.trim() === '') return;
    const item = randomName(16);
    const day = checked.text.trim();
    const value = { kind, name: name.text.trim(), ...(day === '' ? {} : { calibratedOn: day }) };
    void take([{ do: 'create', kind: 'instrument', item, value }], () => {
      name.settle();
      checked.settle();
      draft.change({ instrument: item });
    });
  };
  return (
    <div className="instruments">
      <ul className="plain-list">
        {job.readings.instruments.map((one) => (
          <li key={one.id}>
            <div>
              <strong>{one.name}</strong>
              <span className="soft">
                {say(one.kind)}
                {one.calibratedOn !== undefined && ` · ${say('checkedOn', { day: one.calibratedOn })}`}
              </span>
            </div>
            <Button
              look="quiet"
              label={say('removeThis', { name: one.name })}
              onPress={() => void openJob.commit({ do: 'remove', kind: 'instrument', item: one.id })}
            >
              {say('remove')}
            </Button>
          </li>
        ))}
      </ul>
      <Pick
        label={say('kind')}
        value={kind}
        options={KINDS.map((one) => [one, say(one)] as const)}
        onChange={setKind}
      />
      <Field label={say('name')} hint={say('nameHint')} value={name.text} onChange={name.type} onDone={add} />
      <Field
        label={say('checked')}
        hint={say('checkedHint')}
        value={checked.text}
        onChange={checked.type}
        onDone={add}
      />
      {taking.is === 'refused' && (
        <Notice kind="wrong">{measure('notTaken', { expected: taking.expected })}</Notice>
      )}
      {taking.is === 'waiting' && <Notice kind="wrong">{measure('notSaved')}</Notice>}
      <Button look="main" wide isDisabled={name.text.trim() === '' || taking.is === 'saving'} onPress={add}>
        {say('add')}
      </Button>
    </div>
  );
}
