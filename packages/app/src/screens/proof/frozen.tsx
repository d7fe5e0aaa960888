import { asFrozen, type FrozenState, sealLog, sha256Hex, writeSeal } from '@undercroft/record';
import { useEffect, useState } from 'react';
import { deviceTime, randomName } from '../../jobs/author.ts';
import { useJobs } from '../../jobs/hooks.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { surveyorName } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { shownTime, useTexts } from '../../text/texts.ts';
import { frozenTexts } from './frozen-texts.ts';

type Props = Pick<QuestionProps, 'openJob' | 'view'>;

/** More faults than these say nothing new. */
const SHOWN_FAULTS = 5;

/** States of a job that somebody froze, each held against the entries as they are now. */
export function FrozenStates({ openJob, view }: Props) {
  const say = useTexts(frozenTexts);
  const { storage } = useJobs();
  const [state, setState] = useState<'ready' | 'keeping' | 'refused'>('ready');
  const frozen = view.job?.frozen ?? [];
  const freeze = async () => {
    setState('keeping');
    const seal = sealLog(view.log);
    const file = writeSeal(seal) as Uint8Array<ArrayBuffer>;
    const value: Omit<FrozenState, 'id'> = {
      when: deviceTime(Date.now()),
      who: surveyorName(),
      entryCount: seal.entryCount,
      entriesSha256: seal.entriesSha256,
      sealSha256: sha256Hex(file),
    };
    try {
      await storage.putBlob(view.id, new Blob([file], { type: 'application/json' }));
      // What the disk refuses then waits in the open job, whose notice says so.
      await openJob.commit({ do: 'create', kind: 'frozen', item: randomName(16), value });
      setState('ready');
    } catch {
      setState('refused');
    }
  };
  return (
    <section className="frozen">
      <h3>{say('title')}</h3>
      <p className="soft">{say('help')}</p>
      <Button isDisabled={state === 'keeping'} onPress={() => void freeze()}>
        {say('freeze')}
      </Button>
      {state === 'refused' && <Notice kind="wrong">{say('refused')}</Notice>}
      <ul className="proof-rows">
        {[...frozen].reverse().map((one) => (
          <FrozenRow key={one.id} state={one} log={view.log} version={view.version} />
        ))}
      </ul>
    </section>
  );
}

interface RowProps {
  readonly state: FrozenState;
  readonly log: Props['view']['log'];
  /** A log grows in place, so that its version tells whether it has. */
  readonly version: number;
}

function FrozenRow({ state, log, version }: RowProps) {
  const say = useTexts(frozenTexts);
  const { storage } = useJobs();
  const [check, setCheck] = useState<ReturnType<typeof asFrozen> | 'unread' | null>(null);
  const { when, who, entryCount, entriesSha256, sealSha256 } = state;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the version stands for the log, the hash for the state
  useEffect(() => {
    let wanted = true;
    storage
      .blob(sealSha256)
      .then(async (file) =>
        asFrozen(log, state, file === undefined ? undefined : new Uint8Array(await file.arrayBuffer())),
      )
      .then(
        (now) => wanted && setCheck(now),
        () => wanted && setCheck('unread'),
      );
    return () => {
      wanted = false;
    };
  }, [storage, sealSha256, log, version]);
  return (
    <li>
      <strong>
        {shownTime(when)} · {who} · {say('entries', { count: entryCount })}
      </strong>
      <code className="hash">{entriesSha256}</code>
      {check === null ? null : check === 'unread' ? (
        <Notice kind="wrong">{say('unread')}</Notice>
      ) : check.ok ? (
        <span className="proof-verdict">
          <VerdictMark verdict="met" wordless />
          {say('holds')} {check.later > 0 && say('later', { count: check.later })}
        </span>
      ) : (
        <Notice kind="wrong" title={say('broken')}>
          <ul>
            {check.issues.slice(0, SHOWN_FAULTS).map(({ path, found, expected }) => (
              <li key={path}>{say('fault', { path, found, expected })}</li>
            ))}
          </ul>
        </Notice>
      )}
    </li>
  );
}
