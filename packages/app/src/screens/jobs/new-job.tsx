import { useState } from 'react';
import { useJobs } from '../../jobs/hooks.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { go } from '../../shell/route.ts';
import { askForPersistence } from '../../storage/room.ts';
import { useTexts } from '../../text/texts.ts';
import type { Attempt } from './attempt.ts';
import { jobsTexts } from './jobs-texts.ts';

/** A new job from its title alone. */
export function NewJob({ attempt }: { readonly attempt: Attempt }) {
  const say = useTexts(jobsTexts);
  const { list } = useJobs();
  const [title, setTitle] = useState('');
  const start = () =>
    attempt(async () => {
      if (title.trim() === '') return;
      const id = await list.create(title);
      // The browser is asked when there is something to keep, from a tap; its answer shows in the storage line.
      askForPersistence().catch(() => undefined);
      go({ screen: 'job', id, question: 'space' });
    });
  return (
    <section className="new-job">
      <Field
        label={say('newJob')}
        value={title}
        onChange={setTitle}
        onDone={() => void start()}
        hint={say('newJobHint')}
      />
      <Button look="main" isDisabled={title.trim() === ''} onPress={() => void start()}>
        {say('start')}
      </Button>
    </section>
  );
}
