import type { Change, Place } from '@undercroft/record';
import { useState } from 'react';
import { useDraft } from '../../jobs/use-draft.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Figures } from '../../parts/figures.tsx';
import { Notice } from '../../parts/notice.tsx';
import { usePlaceWords } from '../../parts/place/place-step.tsx';
import { PlacePicker } from '../../plan/place-picker.tsx';
import { useSettings } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { LOCALES, shownTime, useTexts } from '../../text/texts.ts';
import { ClipMarks } from './clip-marks.tsx';
import { DetailPlan } from './detail-plan.tsx';
import type { MediaItem } from './media-of-job.ts';
import { picturesTexts } from './pictures-texts.ts';
import { useKeptFile } from './thumbnails.ts';

interface PictureDetailProps {
  readonly props: QuestionProps;
  readonly item: MediaItem;
  /** Opens another picture. */
  readonly onShow: (id: string) => void;
  readonly onRemoved: () => void;
}

/** One picture or sound: itself, what is known of it, and what can be set right. */
export function PictureDetail({ props, item, onShow, onRemoved }: PictureDetailProps) {
  const say = useTexts(picturesTexts);
  const placeWords = usePlaceWords();
  const { language } = useSettings();
  const { openJob } = props;
  const { kind, value } = item;
  const url = useKeptFile(value.sha256);
  const [problem, setProblem] = useState<string | null>(null);
  const [isPlacing, setPlacing] = useState(false);
  const commit = async (...changes: readonly Change[]) => {
    const result = await openJob.commit(...changes);
    setProblem('issues' in result ? result.issues[0].expected : null);
    return result.ok;
  };
  const set = (field: string, now: unknown): Change => ({
    do: 'set',
    kind,
    item: value.id,
    field,
    value: now,
  });
  const bearingDeg = kind === 'audio' ? undefined : value.bearingDeg;
  const name = value.caption ?? say(kind);
  const place = (picked: { at?: Place['at']; bearingDeg?: number | undefined }) => {
    const { at: _, ...rest } = value.place;
    void commit(
      set('place', picked.at === undefined ? rest : { ...rest, at: picked.at }),
      ...(kind === 'audio' ? [] : [set('bearingDeg', picked.bearingDeg ?? null)]),
    );
  };
  const remove = async () => {
    if (await commit({ do: 'remove', kind, item: value.id })) onRemoved();
  };
  const megabytes = new Intl.NumberFormat(LOCALES[language], {
    style: 'unit',
    unit: 'megabyte',
    maximumSignificantDigits: 3,
  });
  return (
    <div className="picture-detail">
      {url === null ? (
        <Notice kind="plain">{say('notHere')}</Notice>
      ) : kind === 'photo' ? (
        url !== undefined && <img src={url} alt={name} />
      ) : kind === 'clip' ? (
        <ClipMarks openJob={openJob} view={props.view} result={props.result} clip={value} url={url} />
      ) : (
        url !== undefined && (
          // biome-ignore lint/a11y/useMediaCaption: the words stand in the field below
          <audio controls src={url} aria-label={name} />
        )
      )}
      {kind !== 'audio' && <DetailPlan props={props} id={value.id} onShow={onShow} />}
      <Caption openJob={openJob} item={item} />
      {problem !== null && <Notice kind="wrong">{say('notTaken', { expected: problem })}</Notice>}
      <Button expanded={isPlacing} onPress={() => setPlacing(!isPlacing)}>
        {say('setPlace')}
      </Button>
      {isPlacing && (
        <PlacePicker
          view={props.view}
          result={props.result}
          wantsBearing={kind !== 'audio'}
          value={{
            ...(value.place.at === undefined ? {} : { at: value.place.at }),
            ...(bearingDeg === undefined ? {} : { bearingDeg }),
          }}
          onChange={place}
        />
      )}
      <h3>{say('facts')}</h3>
      <p>
        {say('takenBy', { who: value.who, when: shownTime(value.takenAt) })} ·{' '}
        {placeWords(value.place) ?? say('placeUnknown')}
        {bearingDeg !== undefined && `, ${say('looking', { deg: bearingDeg })}`}
      </p>
      <Figures
        rows={[
          ...(value.deviceTime === undefined
            ? []
            : [[say('cameraClock'), <span key="c">{value.deviceTime}</span>] as const]),
          [say('size'), <span key="s">{megabytes.format(value.bytes / 1e6)}</span>],
          [say('hash'), <code key="h">{value.sha256.slice(0, 16)}…</code>],
        ]}
      />
      <Button onPress={() => void remove()}>{say('remove')}</Button>
    </div>
  );
}

function Caption({
  openJob,
  item,
}: {
  readonly openJob: QuestionProps['openJob'];
  readonly item: MediaItem;
}) {
  const say = useTexts(picturesTexts);
  const committed = item.value.caption ?? '';
  const { text, type, settle } = useDraft(`${openJob.view.id}/caption.${item.value.id}`, committed);
  const commit = async () => {
    const now = text.trim();
    if (now === committed) return settle();
    const result = await openJob.commit({
      do: 'set',
      kind: item.kind,
      item: item.value.id,
      field: 'caption',
      value: now === '' ? null : now,
    });
    if (result.ok) settle();
  };
  return (
    <Field
      label={say('caption')}
      value={text}
      onChange={type}
      onDone={() => void commit()}
      onLeave={() => void commit()}
    />
  );
}
