import type { Comparison } from '@undercroft/assessment';
import { isSurveyed, type Job } from '@undercroft/record';
import { useEffect, useState } from 'react';
import { useJob, useJobList, useJobView } from '../../jobs/hooks.ts';
import type { JobView, OpenJob } from '../../jobs/open-job.ts';
import { DataTable } from '../../parts/chart/data-table.tsx';
import { Pick } from '../../parts/field.tsx';
import { typeset } from '../../parts/measure.ts';
import '../../parts/results.css';
import { Notice } from '../../parts/notice.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { useTexts } from '../../text/texts.ts';
import type { ComparisonOutcome } from '../../worker/api.ts';
import { computer } from '../../worker/computer.ts';
import { earlierTexts } from './earlier-texts.ts';

/** That nobody shows or asks a criterion any more is no change of the space. */
const TOLD: ReadonlySet<Comparison['criteria'][number]['turn']> = new Set([
  'mended',
  'broken',
  'now-met',
  'now-not-met',
]);

const MARKS = { holds: 'met', 'is-not': 'not-met', 'not-shown': 'not-shown' } as const;

/** Another job of this device as the earlier survey of the same space, set beside this one. */
export function EarlierSurvey({ view }: { readonly view: JobView }) {
  const say = useTexts(earlierTexts);
  const { cards } = useJobList();
  const [chosen, setChosen] = useState('');
  const others = cards.filter((card) => card.id !== view.id);
  return (
    <section>
      <h3>{say('title')}</h3>
      {others.length === 0 ? (
        <p>{say('noOther')}</p>
      ) : (
        <>
          <p className="soft">{say('intro')}</p>
          <Pick
            label={say('choose')}
            value={chosen}
            options={[['', say('none')], ...others.map((card) => [card.id, card.title] as const)]}
            onChange={setChosen}
          />
        </>
      )}
      {chosen !== '' && <Opened key={chosen} id={chosen} view={view} />}
    </section>
  );
}

function Opened({ id, view }: { readonly id: string; readonly view: JobView }) {
  const say = useTexts(earlierTexts);
  const opening = useJob(id);
  if (opening.is === 'opening') return <p className="soft">{say('computing')}</p>;
  if (opening.is !== 'open') return <Notice kind="wrong">{say('missing')}</Notice>;
  return <Compared openJob={opening.openJob} after={view} />;
}

function Compared({ openJob, after }: { readonly openJob: OpenJob; readonly after: JobView }) {
  const say = useTexts(earlierTexts);
  const before = useJobView(openJob);
  const outcome = useComparison(before.job, after.job);
  if (before.job === null || !isSurveyed(before.job)) return <Notice kind="wrong">{say('noWalls')}</Notice>;
  if (outcome === null) return <p className="soft">{say('computing')}</p>;
  if (!outcome.ok) return <Notice kind="wrong">{outcome.reason}</Notice>;
  return <Shown of={outcome.comparison} />;
}

/** Two surveys side by side, worked out anew when either changes; null until then. */
function useComparison(before: Job | null, after: Job | null): ComparisonOutcome | null {
  const [outcome, setOutcome] = useState<ComparisonOutcome | null>(null);
  useEffect(() => {
    if (before === null || after === null || !isSurveyed(before) || !isSurveyed(after)) return;
    let wanted = true;
    computer()
      .compare(before, after)
      .then(
        (found) => wanted && setOutcome(found),
        (error: Error) => wanted && setOutcome({ ok: false, reason: error.message }),
      );
    return () => {
      wanted = false;
    };
  }, [before, after]);
  return outcome;
}

function Shown({ of }: { readonly of: Comparison }) {
  const say = useTexts(earlierTexts);
  const { claims, readings, findings, criteria, items } = of;
  return (
    <div className="compared">
      <p lang="en" role="status">
        {typeset(of.headline)}
      </p>
      {of.notices.map((n) => (
        <p key={n.code + n.message} lang="en">
          {typeset(n.message)}
        </p>
      ))}
      {claims.length > 0 && (
        <>
          <h4>{say('claims')}</h4>
          <ul className="proof-rows">
            {claims.map((claim) => (
              <li key={claim.id}>
                <span className="proof-verdict">
                  <VerdictMark verdict={MARKS[claim.state]} wordless />
                  {say(claim.state)}
                </span>
                <strong>{claim.title}</strong>
                <span className="soft" lang="en">
                  {typeset(claim.says)}
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
      {readings.length > 0 && (
        <>
          <h4>{say('readings')}</h4>
          <DataTable
            caption={say('readings')}
            columns={[
              { title: say('place') },
              { title: say('before') },
              { title: say('after') },
              { title: say('turn') },
            ]}
            rows={readings.map((r) => [
              r.place,
              typeset(r.shown.before),
              typeset(r.shown.after),
              say(r.turn),
            ])}
          />
        </>
      )}
      <Sentences
        title={say('findings')}
        list={findings.map((f) => ({
          key: `${f.beforeId} ${f.afterId}`,
          text: `${say(f.turn)}: ${f.title}. ${f.says}`,
        }))}
      />
      <Sentences
        title={say('criteria')}
        list={criteria
          .filter((c) => TOLD.has(c.turn))
          .map((c) => ({ key: c.id, text: `${c.title} (${c.id}). ${c.reason}` }))}
      />
      <Sentences
        title={say('items')}
        list={items.map((i) => ({ key: `${i.kind} ${i.beforeId} ${i.afterId}`, text: i.says }))}
      />
    </div>
  );
}

interface SentencesProps {
  readonly title: string;
  readonly list: readonly { readonly key: string; readonly text: string }[];
}

/** A long list behind its title and count. */
function Sentences({ title, list }: SentencesProps) {
  if (list.length === 0) return null;
  return (
    <details className="fold">
      <summary>
        {title} ({list.length})
      </summary>
      <ul lang="en">
        {list.map(({ key, text }) => (
          <li key={key}>{typeset(text)}</li>
        ))}
      </ul>
    </details>
  );
}
