import { useState } from 'react';
import { useJobs } from '../../jobs/hooks.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import type { JobCard } from '../../storage/storage.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import type { Attempt } from './attempt.ts';
import { jobsTexts } from './jobs-texts.ts';

interface RemovedJobsProps {
  readonly removed: readonly JobCard[];
  readonly attempt: Attempt;
  readonly onRestore: (card: JobCard) => void;
}

/** Jobs that were taken off the list. They stay whole until somebody deletes them for good, which is asked twice. */
export function RemovedJobs({ removed, attempt, onRestore }: RemovedJobsProps) {
  const say = useTexts(jobsTexts);
  const common = useTexts(commonTexts);
  const { list } = useJobs();
  const [sure, setSure] = useState(false);
  if (removed.length === 0) return null;
  const empty = () =>
    attempt(async () => {
      await list.empty();
      setSure(false);
    });
  return (
    <details className="removed">
      <summary>{say('removedJobs', { count: removed.length })}</summary>
      <ul>
        {removed.map((card) => (
          <li key={card.id}>
            <span>{card.title}</span>
            <Button label={`${say('restore')}: ${card.title}`} onPress={() => onRestore(card)}>
              {say('restore')}
            </Button>
          </li>
        ))}
      </ul>
      {sure ? (
        <Notice
          kind="wrong"
          actions={
            <>
              <Button look="main" onPress={() => setSure(false)}>
                {common('cancel')}
              </Button>
              <Button onPress={() => void empty()}>{common('delete')}</Button>
            </>
          }
        >
          {say('emptySure')}
        </Notice>
      ) : (
        <Button look="quiet" onPress={() => setSure(true)}>
          {say('empty')}
        </Button>
      )}
    </details>
  );
}
