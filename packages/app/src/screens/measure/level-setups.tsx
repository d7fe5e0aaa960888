import { units } from '@undercroft/engine';
import { useState } from 'react';
import { randomName } from '../../jobs/author.ts';
import { useTaking } from '../../jobs/use-taking.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/field.tsx';
import { FigurePad } from '../../parts/figure-pad.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import type { KindFormProps } from './kind-form.ts';
import { levelTexts } from './level-texts.ts';
import { measureTexts } from './measure-texts.ts';

/** Starts a set-up of the instrument. Its height need not be known: a shared point brings it. */
export function LevelSetups({ props: { openJob, view }, job, draft }: KindFormProps) {
  const say = useTexts(levelTexts);
  const measure = useTexts(measureTexts);
  const { units: system } = useSettings();
  const [method, setMethod] = useState<'rod' | 'laser-plane'>(
    job.readings.levelSetups.at(-1)?.method ?? 'rod',
  );
  const { taking, take } = useTaking(openJob, view);
  const { typed } = draft.form;
  const height = typed.setupHeight ?? '';
  const bareUnit = system === 'us' ? 'in' : 'mm';
  const read = units.parseLength(height, bareUnit);
  const start = () => {
    const item = randomName(16);
    const heightM = read.ok ? units.metersFromNanometers(read.nanometers) : undefined;
    const value = { method, ...(heightM === undefined ? {} : { instrumentHeightM: heightM }) };
    void take([{ do: 'create', kind: 'level-setup', item, value }], () =>
      draft.change({ setup: item, typed: {}, place: {}, isPlacing: true }),
    );
  };
  return (
    <div className="reading-form">
      <Choice
        label={say('method')}
        value={method}
        options={[
          ['rod', say('rod')],
          ['laser-plane', say('laser-plane')],
        ]}
        onChange={setMethod}
      />
      <FigurePad
        label={say('firstHeight')}
        typed={height}
        onType={(text) => draft.change({ typed: { ...typed, setupHeight: text } })}
        onDone={start}
        bareUnit={bareUnit}
        embedded
      />
      {taking.is === 'refused' && (
        <Notice kind="wrong">{measure('notTaken', { expected: taking.expected })}</Notice>
      )}
      {taking.is === 'waiting' && <Notice kind="wrong">{measure('notSaved')}</Notice>}
      <div className="reading-foot">
        <Button
          look="main"
          wide
          isDisabled={taking.is === 'saving' || (height !== '' && !read.ok)}
          onPress={start}
        >
          {say('startSetup')}
        </Button>
      </div>
    </div>
  );
}
