import { download } from '../../jobs/download.ts';
import { useJobs } from '../../jobs/hooks.ts';
import { Button } from '../../parts/button.tsx';
import { hrefOf } from '../../shell/route.ts';
import type { JobCard, NextStep } from '../../storage/storage.ts';
import { shownTime, useTexts } from '../../text/texts.ts';
import type { Attempt } from './attempt.ts';
import { jobsTexts } from './jobs-texts.ts';

const NEXT = {
  plan: 'nextPlan',
  readings: 'nextReadings',
  findings: 'nextFindings',
  repairs: 'nextRepairs',
  prices: 'nextPrices',
  build: 'nextBuild',
  proof: 'nextProof',
  watch: 'nextWatch',
} as const satisfies Record<NextStep, string>;

interface JobRowProps {
  readonly card: JobCard;
  readonly attempt: Attempt;
  readonly onRemove: () => void;
}

/** One job of the list: what it is, what comes next, and what can be done with it as a whole. */
export function JobRow({ card, attempt, onRemove }: JobRowProps) {
  const say = useTexts(jobsTexts);
  const { list } = useJobs();
  const { id, title, client, address, demo, next, changedAt } = card;
  const where = [client, address].filter(Boolean).join(', ');
  return (
    <li className="job-row">
      <a href={hrefOf({ screen: 'job', id, question: 'space' })}>
        <strong>
          {title}
          {demo && <span className="demo">{say('demo')}</span>}
        </strong>
        {where !== '' && <span>{where}</span>}
        <span className="next">{say(NEXT[next])}</span>
        <span className="soft">{say('changed', { when: shownTime(changedAt) })}</span>
      </a>
      <details>
        <summary aria-label={say('moreAbout', { title })}>{say('more')}</summary>
        <div className="actions">
          <Button onPress={() => void attempt(() => list.duplicate(id, say('copyOf', { title })))}>
            {say('duplicate')}
          </Button>
          <Button onPress={() => void attempt(async () => download(await list.exportArchive(id), title))}>
            {say('export')}
          </Button>
          <Button onPress={onRemove}>{say('remove')}</Button>
        </div>
      </details>
    </li>
  );
}
