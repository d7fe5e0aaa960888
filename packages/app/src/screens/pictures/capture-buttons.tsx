import { useRef, useState } from 'react';
import { randomName } from '../../jobs/author.ts';
import { useJobs } from '../../jobs/hooks.ts';
import type { OpenJob } from '../../jobs/open-job.ts';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useTexts } from '../../text/texts.ts';
import { type Before, type Captured, keep } from './capture.ts';
import { keepPending, type Pending } from './pending.ts';
import { picturesTexts } from './pictures-texts.ts';
import { VoiceNote } from './voice-note.tsx';
import './pictures.css';

type Source = 'photo' | 'clip' | 'files';

/** What each button takes: formats that every browser shows are asked for, whatever comes is judged by its bytes. */
const ACCEPT: Readonly<Record<Source, string>> = {
  photo: 'image/jpeg,image/png,image/webp',
  clip: 'video/*',
  files: 'image/*,video/*,audio/*',
};

interface CaptureButtonsProps {
  readonly openJob: OpenJob;
  /** What is known before the camera opens. */
  readonly before: Before;
  readonly onCaptured: (captured: Extract<Captured, { is: 'saved' }>) => void;
  /** `few`: a photo, a voice note and a file, for forms that have pictures among other things. */
  readonly few?: boolean;
}

/** Takes photos, clips, voice notes and files into a job, each with the place and words that were set before. */
export function CaptureButtons({ openJob, before, onCaptured, few = false }: CaptureButtonsProps) {
  const say = useTexts(picturesTexts);
  const { storage } = useJobs();
  const inputs = useRef<Partial<Record<Source, HTMLInputElement>>>({});
  const slot = useRef<Pending | null>(null);
  const [state, setState] = useState<'ready' | 'keeping' | Captured>('ready');
  const { id } = openJob.view;

  const open = async (source: Source) => {
    setState('ready');
    slot.current = {
      is: source === 'clip' ? 'clip' : 'photo',
      item: randomName(16),
      since: Date.now(),
      before,
    };
    if (source !== 'files') await keepPending(storage, id, slot.current);
    inputs.current[source]?.click();
  };
  const empty = () => {
    slot.current = null;
    void keepPending(storage, id, null);
  };
  const take = async (files: readonly File[]) => {
    setState('keeping');
    const { since = Date.now(), before: set = before, item } = slot.current ?? {};
    let last: Captured = { is: 'unreadable' };
    for (const [index, file] of files.entries()) {
      last = await keep({
        openJob,
        storage,
        file,
        name: file.name,
        since,
        lastModified: file.lastModified,
        before: set,
        item: index === 0 ? item : undefined,
      });
      if (last.is === 'saved') onCaptured(last);
    }
    empty();
    setState(last);
  };
  const input = (source: Source) => (
    <input
      ref={(element) => {
        if (element === null) delete inputs.current[source];
        else inputs.current[source] = element;
        // Told by the browser when the camera was left without a picture.
        element?.addEventListener('cancel', empty);
      }}
      type="file"
      hidden
      aria-label={say(source === 'photo' ? 'takePhoto' : source === 'clip' ? 'takeClip' : 'fromFiles')}
      accept={ACCEPT[source]}
      multiple={source === 'files'}
      {...(source === 'files' ? {} : { capture: 'environment' as const })}
      onChange={({ target }) => {
        const files = [...(target.files ?? [])];
        target.value = '';
        if (files.length > 0) void take(files);
      }}
    />
  );
  return (
    <div className="capture">
      {input('photo')}
      {input('clip')}
      {input('files')}
      <Button look={few ? 'plain' : 'main'} wide onPress={() => void open('photo')}>
        {say(
          typeof state === 'object' && state.is === 'saved' && state.kind === 'photo'
            ? 'morePhoto'
            : 'takePhoto',
        )}
      </Button>
      <div className="capture-row">
        {!few && <Button onPress={() => void open('clip')}>{say('takeClip')}</Button>}
        <VoiceNote openJob={openJob} before={before} onEnded={setState} onCaptured={onCaptured} />
        <Button onPress={() => void open('files')}>{say('fromFiles')}</Button>
      </div>
      <p role="status" className="saved-line soft">
        {state === 'keeping'
          ? say('saving')
          : typeof state === 'object' && state.is === 'saved'
            ? say('saved', { what: say(state.kind) })
            : ''}
      </p>
      {typeof state === 'object' && (state.is === 'heic' || state.is === 'unreadable') && (
        <Notice kind="wrong">{say(state.is)}</Notice>
      )}
    </div>
  );
}
