import type { Job } from '@undercroft/record';
import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { useTexts } from '../../text/texts.ts';
import { CaptureButtons } from '../pictures/capture-buttons.tsx';
import { HeldNotice } from '../pictures/held-notice.tsx';
import { type MediaItem, mediaOf } from '../pictures/media-of-job.ts';
import { Thumbnail } from '../pictures/picture-tile.tsx';
import { picturesTexts } from '../pictures/pictures-texts.ts';
import type { FindingForm } from './finding-form.ts';
import { findingTexts } from './finding-texts.ts';

type Ids = 'photoIds' | 'clipIds' | 'audioIds';

const LISTS: Readonly<Record<MediaItem['kind'], Ids>> = {
  photo: 'photoIds',
  clip: 'clipIds',
  audio: 'audioIds',
};

interface FindingMediaProps {
  readonly props: QuestionProps;
  readonly job: Job;
  readonly form: FindingForm;
  /** Stands under pictures that are taken here. */
  readonly name: string;
  /** May be told late: a picture takes its time. */
  readonly onAttach: (list: Ids, id: string, isOn: boolean) => void;
}

/** Photos, clips and voice notes of a finding: taken here, or chosen from those that were taken. */
export function FindingMedia({ props, job, form, name, onAttach }: FindingMediaProps) {
  const say = useTexts(findingTexts);
  const pictures = useTexts(picturesTexts);
  const [choosing, setChoosing] = useState(false);
  const isOn = (item: MediaItem) => form[LISTS[item.kind]].includes(item.value.id);
  const all = mediaOf(job);
  const shown = choosing ? all : all.filter(isOn);
  const count = form.photoIds.length + form.clipIds.length + form.audioIds.length;
  return (
    <fieldset className="finding-media">
      <legend>{say('pictures')}</legend>
      <HeldNotice openJob={props.openJob} />
      {count > 0 && <p className="soft">{say('chosen', { count })}</p>}
      {shown.length > 0 && (
        <ul className="attached">
          {shown.map((item) => {
            const what = item.value.caption ?? pictures(item.kind);
            return (
              <li key={item.value.id}>
                <label>
                  {item.kind === 'photo' ? (
                    <Thumbnail sha256={item.value.sha256} />
                  ) : (
                    <span className="tile-blank">{pictures(item.kind)}</span>
                  )}
                  <span className="attach">
                    <input
                      type="checkbox"
                      checked={isOn(item)}
                      aria-label={say('attach', { what })}
                      onChange={(event) => onAttach(LISTS[item.kind], item.value.id, event.target.checked)}
                    />
                    <span>{what}</span>
                  </span>
                </label>
              </li>
            );
          })}
        </ul>
      )}
      <CaptureButtons
        few
        openJob={props.openJob}
        before={{ place: form.place, caption: name }}
        onCaptured={({ kind, item }) => onAttach(LISTS[kind], item, true)}
      />
      {all.length > 0 && (
        <Button expanded={choosing} onPress={() => setChoosing(!choosing)}>
          {say('choose')}
        </Button>
      )}
    </fieldset>
  );
}
