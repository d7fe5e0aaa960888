import type { Job } from '@undercroft/record';
import { useEffect, useState } from 'react';
import { useJobs } from '../../jobs/hooks.ts';
import { Pick } from '../../parts/field.tsx';
import { shownTime, useTexts } from '../../text/texts.ts';
import { proofTexts } from './proof-texts.ts';

type Photo = Job['media']['photos'][number];

/** Address of the bytes of a picture on this device; `missing` where they are not here. */
function usePictureUrl(sha256: string | undefined): string | 'missing' | undefined {
  const { storage } = useJobs();
  const [url, setUrl] = useState<string | 'missing' | undefined>();
  useEffect(() => {
    let made: string | undefined;
    let wanted = sha256 !== undefined;
    setUrl(undefined);
    if (sha256 !== undefined) {
      storage.blob(sha256).then(
        (blob) => {
          if (!wanted) return;
          made = blob === undefined ? undefined : URL.createObjectURL(blob);
          setUrl(made ?? 'missing');
        },
        () => wanted && setUrl('missing'),
      );
    }
    return () => {
      wanted = false;
      if (made !== undefined) URL.revokeObjectURL(made);
    };
  }, [storage, sha256]);
  return url;
}

/** Two pictures of one place, one over the other, with a slider that uncovers the second. */
export function TwoPictures({ photos }: { readonly photos: readonly Photo[] }) {
  const say = useTexts(proofTexts);
  const [ids, setIds] = useState<readonly [string, string]>([
    photos[0]?.id ?? '',
    photos[photos.length - 1]?.id ?? '',
  ]);
  const [share, setShare] = useState(50);
  const one = photos.find((p) => p.id === ids[0]) ?? photos[0];
  const two = photos.find((p) => p.id === ids[1]) ?? photos[photos.length - 1];
  const first = usePictureUrl(one?.sha256);
  const second = usePictureUrl(two?.sha256);
  if (photos.length < 2) return null;
  const options = photos.map(
    (p, index) =>
      [p.id, say('pictureName', { number: index + 1, caption: p.caption ?? shownTime(p.takenAt) })] as const,
  );
  const missing = first === 'missing' || second === 'missing';
  return (
    <section className="two-pictures">
      <h3>{say('compare')}</h3>
      <p className="soft">{say('compareHelp')}</p>
      <Pick label={say('first')} value={one.id} options={options} onChange={(id) => setIds([id, ids[1]])} />
      <Pick label={say('second')} value={two.id} options={options} onChange={(id) => setIds([ids[0], id])} />
      {missing ? (
        <p className="soft">{say('missingBytes')}</p>
      ) : (
        first !== undefined &&
        second !== undefined && (
          <>
            <div className="picture-pair">
              <img src={first} alt={one.caption ?? say('first')} />
              <img
                src={second}
                alt={two.caption ?? say('second')}
                style={{ clipPath: `inset(0 ${100 - share}% 0 0)` }}
              />
            </div>
            <label className="picture-slider">
              <span>{say('slider')}</span>
              <input
                type="range"
                min="0"
                max="100"
                value={share}
                onChange={(event) => setShare(Number(event.target.value))}
              />
            </label>
          </>
        )
      )}
    </section>
  );
}
