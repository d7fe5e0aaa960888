import { useEffect, useState } from 'react';
import { findJobs, type JobOrder } from '../../jobs/find-jobs.ts';
import { useJobList, useJobs } from '../../jobs/hooks.ts';
import { Button } from '../../parts/button.tsx';
import { Field, Pick } from '../../parts/field.tsx';
import { Notice } from '../../parts/notice.tsx';
import { TourOffer } from '../../shell/tour.tsx';
import type { JobCard } from '../../storage/storage.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { useAttempt } from './attempt.ts';
import { ImportFile } from './import-file.tsx';
import { JobRow } from './job-row.tsx';
import { jobsTexts } from './jobs-texts.ts';
import { NewJob } from './new-job.tsx';
import { RemovedJobs } from './removed-jobs.tsx';
import { StorageLine } from './storage-line.tsx';
import './jobs-screen.css';

/** Every job of this device: find one, start one, take one in or out. */
export function JobsScreen() {
  const say = useTexts(jobsTexts);
  const common = useTexts(commonTexts);
  const { list } = useJobs();
  const { ready, cards, removed, fault: listFault } = useJobList();
  const [search, setSearch] = useState('');
  const [order, setOrder] = useState<JobOrder>('next');
  const { attempt, fault } = useAttempt();
  const [undo, setUndo] = useState<JobCard | undefined>();

  // What was done in a job changes its card.
  useEffect(() => {
    void list.refresh();
  }, [list]);

  const remove = (card: JobCard) =>
    attempt(async () => {
      await list.remove(card.id);
      setUndo(card);
    });
  const restore = (card: JobCard) =>
    attempt(async () => {
      await list.restore(card.id);
      setUndo(undefined);
    });
  const found = findJobs(cards, search, order);
  const shownFault = fault ?? listFault;
  return (
    <>
      <h1 className="hidden-text">{say('count', { count: cards.length })}</h1>
      {shownFault !== undefined && <Notice kind="wrong">{common(`${shownFault}Fault`)}</Notice>}
      <TourOffer />
      <NewJob attempt={attempt} />
      <div role="status">
        {undo !== undefined && removed.some((card) => card.id === undo.id) && (
          <Notice kind="plain" actions={<Button onPress={() => void restore(undo)}>{common('undo')}</Button>}>
            {say('removed', { title: undo.title })}
          </Notice>
        )}
      </div>
      <section className="jobs">
        <div className="jobs-find">
          <Field label={say('search')} type="search" value={search} onChange={setSearch} />
          <Pick
            label={say('sort')}
            value={order}
            onChange={setOrder}
            options={[
              ['next', say('byNext')],
              ['changed', say('byChange')],
              ['title', say('byTitle')],
            ]}
          />
        </div>
        {!ready ? (
          <p className="soft">{common('loading')}</p>
        ) : found.length === 0 ? (
          <p>{say(cards.length === 0 ? 'none' : 'noneFound')}</p>
        ) : (
          <ul className="job-rows">
            {found.map((card) => (
              <JobRow key={card.id} card={card} attempt={attempt} onRemove={() => void remove(card)} />
            ))}
          </ul>
        )}
      </section>
      <div className="actions">
        <ImportFile attempt={attempt} />
        <Button onPress={() => void attempt(() => list.addDemos()).then(() => list.drawDemoPictures())}>
          {say('demos')}
        </Button>
      </div>
      <RemovedJobs removed={removed} attempt={attempt} onRestore={(card) => void restore(card)} />
      <StorageLine />
    </>
  );
}
