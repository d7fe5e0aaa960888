import { units } from '@undercroft/engine';
import { useEffect, useState } from 'react';
import type { FormDraft } from '../../jobs/use-form-draft.ts';
import { Button } from '../../parts/button.tsx';
import { Choice, Field, Pick } from '../../parts/field.tsx';
import { Notice } from '../../parts/notice.tsx';
import { usePlaceWords } from '../../parts/place/place-step.tsx';
import { PlacePicker } from '../../plan/place-picker.tsx';
import { useSettings } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { ToolSheet, useSheets } from '../../shell/tool-sheet.tsx';
import { useTexts } from '../../text/texts.ts';
import { CaptureButtons } from './capture-buttons.tsx';
import { Gallery } from './gallery.tsx';
import { HeldNotice } from './held-notice.tsx';
import { findMedia, type MediaItem } from './media-of-job.ts';
import type { Pending } from './pending.ts';
import { PictureDetail } from './picture-detail.tsx';
import { beforeOf, type PictureForm, usePictureForm } from './picture-form.ts';
import { StationsOnPlan, UnseenOnPlan, ViewOnPlan } from './picture-layer.tsx';
import { picturesTexts } from './pictures-texts.ts';
import { ShotWords, shotOf } from './shot-words.tsx';
import { useShotAdds } from './use-picture-views.ts';
import '../../parts/form.css';
import '../../parts/results.css';
import './pictures.css';

interface PictureSheetProps {
  readonly props: QuestionProps;
  /** What was being taken when the app was closed. */
  readonly lost: Pending | null;
  /** True where a voice note that was cut off has been saved. */
  readonly isRescued: boolean;
  readonly onLostSettled: () => void;
}

/** The sheet of pictures: taking them, and all that were taken. */
export default function PictureSheet({ props, lost, isRescued, onLostSettled }: PictureSheetProps) {
  const say = useTexts(picturesTexts);
  const draft = usePictureForm(props.view.id);
  const [removed, setRemoved] = useState<MediaItem | null>(null);
  const { job } = props.view;
  const { form, change } = draft;
  const { open } = useSheets();
  const finding = open?.name === 'picture' ? open.wish.finding : undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each wish counts once
  useEffect(() => {
    if (finding !== undefined) change({ view: 'gallery', shown: '' });
  }, [finding]);
  const shown = job === null || form.shown === '' ? undefined : findMedia(job, form.shown);
  const back =
    shown !== undefined
      ? () => change({ shown: '' })
      : form.view === 'place'
        ? () => change({ view: 'take' })
        : undefined;
  return (
    <ToolSheet name="picture" title={say('picture')} onBack={back}>
      <div className="pictures">
        <HeldNotice openJob={props.openJob} />
        {isRescued && <Notice kind="plain">{say('rescued')}</Notice>}
        {removed !== null && (
          <Notice
            kind="plain"
            actions={
              <Button
                onPress={() => {
                  void props.openJob.commit({ do: 'restore', kind: removed.kind, item: removed.value.id });
                  setRemoved(null);
                }}
              >
                {say('undo')}
              </Button>
            }
          >
            {say('removed', { what: removed.value.caption ?? say(removed.kind) })}
          </Notice>
        )}
        {shown !== undefined ? (
          <PictureDetail
            key={shown.value.id}
            props={props}
            onShow={(id) => change({ shown: id })}
            item={shown}
            onRemoved={() => {
              setRemoved(shown);
              change({ shown: '' });
            }}
          />
        ) : form.view === 'place' ? (
          <PlaceOfPicture props={props} draft={draft} />
        ) : (
          <>
            <Choice
              label={say('picture')}
              value={form.view}
              options={[
                ['take', say('take')],
                ['gallery', say('gallery')],
              ]}
              onChange={(view) => change({ view })}
            />
            {form.view === 'take' ? (
              <Take props={props} draft={draft} lost={lost} onLostSettled={onLostSettled} />
            ) : (
              job !== null && (
                <Gallery
                  key={finding}
                  props={props}
                  job={job}
                  finding={finding}
                  onOpen={(id) => change({ shown: id })}
                />
              )
            )}
          </>
        )}
      </div>
    </ToolSheet>
  );
}

interface PartProps {
  readonly props: QuestionProps;
  readonly draft: FormDraft<PictureForm>;
}

/** No picture is meant more than another. */
const NOBODY: ReadonlySet<string> = new Set();

function PlaceOfPicture({ props, draft: { form, change } }: PartProps) {
  const say = useTexts(picturesTexts);
  const { at, ...rest } = form.place;
  const adds = useShotAdds(props, shotOf(form));
  const coverage = props.result.assessment?.coverage;
  return (
    <div className="place-step">
      <PlacePicker
        view={props.view}
        result={props.result}
        wantsBearing
        layers="built"
        value={{
          ...(at === undefined ? {} : { at }),
          ...(form.bearingDeg === null ? {} : { bearingDeg: form.bearingDeg }),
        }}
        onChange={(picked) =>
          change({
            place: picked.at === undefined ? rest : { ...rest, at: picked.at },
            bearingDeg: picked.bearingDeg ?? null,
          })
        }
      >
        {adds !== null && <UnseenOnPlan unseen={adds.unseen} />}
        {adds !== null && <ViewOnPlan view={adds.view} />}
        {adds === null && coverage !== undefined && <UnseenOnPlan unseen={coverage.unseen} />}
        {coverage !== undefined && <StationsOnPlan pictures={coverage.pictures} meant={NOBODY} />}
      </PlacePicker>
      <ShotWords adds={adds} />
      <div className="reading-foot">
        <Button look="main" wide onPress={() => change({ view: 'take' })}>
          {say('takePlace')}
        </Button>
      </div>
    </div>
  );
}

/** Reaches of a lamp that a person may tell [m]: 5 to 40 ft. */
const RANGES_FT = [5, 10, 15, 20, 30, 40];

function Take({
  props,
  draft: { form, change },
  lost,
  onLostSettled,
}: PartProps & { readonly lost: Pending | null; readonly onLostSettled: () => void }) {
  const say = useTexts(picturesTexts);
  const placeWords = usePlaceWords();
  const { units: system } = useSettings();
  const where = placeWords(form.place);
  const looking = form.bearingDeg === null ? [] : [say('looking', { deg: form.bearingDeg })];
  const adds = useShotAdds(props, shotOf(form));
  return (
    <>
      {lost !== null && (
        <Notice kind="plain" actions={<Button onPress={onLostSettled}>{say('leaveIt')}</Button>}>
          {say('lost', { what: say(lost.is) })}
        </Notice>
      )}
      <Button wide onPress={() => change({ view: 'place' })}>
        <span className="place-button">
          {say('place')}
          <small>{where === null ? say('placeNone') : [where, ...looking].join(', ')}</small>
        </span>
      </Button>
      <ShotWords adds={adds} />
      <Field
        label={say('caption')}
        hint={say('captionHint')}
        value={form.caption}
        onChange={(caption) => change({ caption })}
      />
      <CaptureButtons
        openJob={props.openJob}
        before={beforeOf(form)}
        onCaptured={() => {
          onLostSettled();
          change({ caption: '' });
        }}
      />
      <details className="fold">
        <summary>{say('view')}</summary>
        <div className="reading-details">
          <Pick
            label={say('fieldOfView')}
            value={form.fieldOfView}
            options={[
              ['', say('fieldNotTold')],
              ['50', say('fieldNarrow')],
              ['65', say('fieldUsual')],
              ['80', say('fieldWide')],
              ['105', say('fieldUltra')],
              ['360', say('fieldRound')],
            ]}
            onChange={(fieldOfView) => change({ fieldOfView })}
          />
          <Pick
            label={say('range')}
            value={form.range}
            options={[
              ['', say('rangeNotTold')],
              ...RANGES_FT.map((feet) => {
                const meters = units.convert(feet, 'ft', 'm');
                return [String(meters), units.formatQuantity(meters, 'length', system)] as const;
              }),
            ]}
            onChange={(range) => change({ range })}
          />
        </div>
      </details>
    </>
  );
}
