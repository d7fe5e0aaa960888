import type { Job } from '@undercroft/record';
import { useRef, useState } from 'react';
import { randomName } from '../../jobs/author.ts';
import { Button } from '../../parts/button.tsx';
import { usePlaceWords } from '../../parts/place/place-step.tsx';
import { type PickedPlace, PlacePicker } from '../../plan/place-picker.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { useTexts } from '../../text/texts.ts';
import { shownSeconds } from './clock.ts';
import { picturesTexts } from './pictures-texts.ts';

type Clip = Job['media']['clips'][number];

interface ClipMarksProps extends QuestionProps {
  readonly clip: Clip;
  readonly url: string | undefined;
}

/** A film with the places where its camera was: it plays, and a tap says "here". */
export function ClipMarks({ openJob, view, result, clip, url }: ClipMarksProps) {
  const say = useTexts(picturesTexts);
  const placeWords = usePlaceWords();
  const player = useRef<HTMLVideoElement>(null);
  const [atS, setAtS] = useState<number | null>(null);
  const [picked, setPicked] = useState<PickedPlace>({});
  const setMarks = (marks: Clip['marks']) =>
    openJob.commit({
      do: 'set',
      kind: 'clip',
      item: clip.id,
      field: 'marks',
      value: [...marks].sort((a, b) => a.atS - b.atS),
    });
  const here = () => {
    player.current?.pause();
    setPicked({});
    setAtS(Math.round((player.current?.currentTime ?? 0) * 10) / 10);
  };
  const keepMark = async () => {
    if (atS === null || picked.at === undefined) return;
    const { at, bearingDeg } = picked;
    const mark = { id: randomName(8), atS, at, ...(bearingDeg === undefined ? {} : { bearingDeg }) };
    const kept = await setMarks([...clip.marks, mark]);
    if (!kept.ok) return;
    setAtS(null);
    void player.current?.play().catch(() => undefined);
  };
  const goTo = (seconds: number) => {
    if (player.current !== null) player.current.currentTime = seconds;
  };
  return (
    <div className="clip-marks">
      {url !== undefined && (
        // biome-ignore lint/a11y/useMediaCaption: the words stand in the field below
        <video ref={player} controls playsInline src={url} aria-label={clip.caption ?? say('clip')} />
      )}
      {atS === null ? (
        <Button look="main" wide onPress={here}>
          {say('here')}
        </Button>
      ) : (
        <>
          <p>{say('hereAt', { time: shownSeconds(atS) })}</p>
          <PlacePicker view={view} result={result} value={picked} wantsBearing onChange={setPicked} />
          <Button look="main" wide isDisabled={picked.at === undefined} onPress={() => void keepMark()}>
            {say('keepMark')}
          </Button>
        </>
      )}
      <h3>{say('marks')}</h3>
      {clip.marks.length === 0 ? (
        <p className="soft">{say('noMarks')}</p>
      ) : (
        <ul className="plain-list">
          {clip.marks.map((mark) => {
            const time = shownSeconds(mark.atS);
            return (
              <li key={mark.id}>
                <Button look="quiet" onPress={() => goTo(mark.atS)}>
                  {say('markAt', { time, place: placeWords({ at: mark.at }) ?? '' })}
                </Button>
                <Button
                  look="quiet"
                  label={say('removeMark', { time })}
                  onPress={() => void setMarks(clip.marks.filter((other) => other.id !== mark.id))}
                >
                  ✕
                </Button>
              </li>
            );
          })}
        </ul>
      )}
    </div>
  );
}
