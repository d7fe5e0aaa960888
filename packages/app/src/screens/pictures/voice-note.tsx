import { useEffect, useRef, useState } from 'react';
import { randomName } from '../../jobs/author.ts';
import { useJobs } from '../../jobs/hooks.ts';
import type { OpenJob } from '../../jobs/open-job.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useTexts } from '../../text/texts.ts';
import { type Before, type Captured, keep } from './capture.ts';
import { shownSeconds } from './clock.ts';
import { keepPending, type Pending } from './pending.ts';
import { picturesTexts } from './pictures-texts.ts';
import { canRecord, dropPieces, type Recording, record } from './recorder.ts';

interface VoiceNoteProps {
  readonly openJob: OpenJob;
  readonly before: Before;
  readonly onEnded: (captured: Captured) => void;
  readonly onCaptured: (captured: Extract<Captured, { is: 'saved' }>) => void;
}

/** Records a voice note; what is spoken goes to the disk every few seconds. */
export function VoiceNote({ openJob, before, onEnded, onCaptured }: VoiceNoteProps) {
  const say = useTexts(picturesTexts);
  const { storage } = useJobs();
  const [recording, setRecording] = useState<Recording | null>(null);
  const [seconds, setSeconds] = useState(0);
  const [refused, setRefused] = useState(false);
  const slot = useRef<Pending | null>(null);
  const { id } = openJob.view;

  useEffect(() => {
    if (recording === null) return;
    const timer = setInterval(
      () => setSeconds(Math.floor((performance.now() - recording.startedMs) / 1000)),
      500,
    );
    return () => clearInterval(timer);
  }, [recording]);

  const finish = async (one: Recording) => {
    const pending = slot.current;
    if (pending === null) return;
    slot.current = null;
    setRecording(null);
    const durationS = (performance.now() - one.startedMs) / 1000;
    const file = await one.stop();
    const captured = await keep({
      openJob,
      storage,
      file,
      name: 'voice-note',
      since: pending.since,
      lastModified: Date.now(),
      before: pending.before,
      item: pending.item,
      durationS,
    });
    await keepPending(storage, id, null);
    await dropPieces(storage, id, pending.item, Math.ceil(durationS / 4) + 2).catch(() => undefined);
    if (captured.is === 'saved') onCaptured(captured);
    onEnded(captured);
  };
  const start = async () => {
    setRefused(false);
    setSeconds(0);
    const pending: Pending = { is: 'audio', item: randomName(16), since: Date.now(), before };
    slot.current = pending;
    await keepPending(storage, id, pending);
    let running: Recording | undefined;
    try {
      running = await record(
        storage,
        id,
        pending.item,
        (pieces) => {
          if (slot.current?.item !== pending.item) return;
          slot.current = { ...slot.current, pieces, mediaType: running?.mediaType ?? 'audio/webm' };
          void keepPending(storage, id, slot.current);
        },
        () => running !== undefined && void finish(running),
      );
      setRecording(running);
    } catch {
      slot.current = null;
      setRefused(true);
      void keepPending(storage, id, null);
    }
  };
  // Leaving the sheet ends the note; what was spoken is kept.
  const latest = useRef(() => {});
  latest.current = () => recording !== null && void finish(recording);
  useEffect(() => () => latest.current(), []);

  if (!canRecord()) return null;
  if (recording !== null) {
    return (
      <Button look="main" onPress={() => void finish(recording)}>
        <span className="recording">
          <span className="figure">{say('recording', { time: shownSeconds(seconds) })}</span>
          {say('stop')}
        </span>
      </Button>
    );
  }
  return (
    <>
      <Button onPress={() => void start()}>{say('takeAudio')}</Button>
      {refused && <Notice kind="wrong">{say('micRefused')}</Notice>}
    </>
  );
}
