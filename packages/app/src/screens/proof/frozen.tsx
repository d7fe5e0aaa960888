import { checkSeal, type LogVersion, sealLog } from '@undercroft/record';
import { useEffect, useMemo, useState } from 'react';
import { useJobs } from '../../jobs/hooks.ts';
import type { JobView } from '../../jobs/open-job.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { shownTime, useTexts } from '../../text/texts.ts';
import { frozenTexts } from './frozen-texts.ts';

interface Frozen {
  readonly at: string;
  readonly seal: LogVersion;
}

/** More faults than these say nothing new. */
const SHOWN_FAULTS = 5;

/** The kept states; throws where the text is none of ours. */
function readFrozen(text: string | undefined): readonly Frozen[] {
  const list: unknown = JSON.parse(text ?? '[]');
  const isFrozen = (one: Partial<Frozen> | null) =>
    typeof one?.at === 'string' && Array.isArray(one.seal?.entries);
  if (!Array.isArray(list) || !list.every(isFrozen)) throw new TypeError('no list of frozen states');
  return list;
}

// A draft: it is gone with the job, and a power cut in the seconds after may lose it.
const keyOf = (jobId: string) => `${jobId}/frozen`;

/** States of a job that were frozen on this device, each held against the entries as they are now. */
export function FrozenStates({ view }: { readonly view: JobView }) {
  const say = useTexts(frozenTexts);
  const { storage } = useJobs();
  const { id, log } = view;
  const [kept, setKept] = useState<readonly Frozen[] | 'unread' | null>(null);
  const [refused, setRefused] = useState(false);
  useEffect(() => {
    let wanted = true;
    storage
      .draft(keyOf(id))
      .then(readFrozen)
      .then(
        (states) => wanted && setKept(states),
        () => wanted && setKept('unread'),
      );
    return () => {
      wanted = false;
    };
  }, [storage, id]);
  const freeze = async () => {
    if (kept === null || kept === 'unread') return;
    const next = [{ at: new Date().toISOString(), seal: sealLog(log) }, ...kept];
    try {
      await storage.putDraft(keyOf(id), JSON.stringify(next));
      setKept(next);
      setRefused(false);
    } catch {
      setRefused(true);
    }
  };
  return (
    <section className="frozen">
      <h3>{say('title')}</h3>
      <p className="soft">{say('help')}</p>
      {kept === 'unread' ? (
        <Notice kind="wrong">{say('unread')}</Notice>
      ) : (
        <>
          <Button isDisabled={kept === null} onPress={() => void freeze()}>
            {say('freeze')}
          </Button>
          {refused && <Notice kind="wrong">{say('refused')}</Notice>}
          <ul className="proof-rows">
            {(kept ?? []).map((one) => (
              <FrozenRow key={one.at} frozen={one} log={log} />
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function FrozenRow({ frozen: { at, seal }, log }: { readonly frozen: Frozen; readonly log: JobView['log'] }) {
  const say = useTexts(frozenTexts);
  const count = log.entries().length;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a log grows in place, so that its length tells
  const { issues, later } = useMemo(() => checkSeal(seal, log), [seal, log, count]);
  return (
    <li>
      <strong>
        {shownTime(at)} · {say('entries', { count: seal.entryCount })}
      </strong>
      <code className="hash">{seal.entriesSha256}</code>
      {issues.length === 0 ? (
        <span className="proof-verdict">
          <VerdictMark verdict="met" wordless />
          {say('holds')} {later > 0 && say('later', { count: later })}
        </span>
      ) : (
        <Notice kind="wrong" title={say('broken')}>
          <ul>
            {issues.slice(0, SHOWN_FAULTS).map(({ path, found, expected }) => (
              <li key={path}>{say('fault', { path, found, expected })}</li>
            ))}
          </ul>
        </Notice>
      )}
    </li>
  );
}
