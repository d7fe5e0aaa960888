import { Button } from '../../parts/button.tsx';
import { shownTime, useTexts } from '../../text/texts.ts';
import { shownSeconds } from './clock.ts';
import type { MediaItem } from './media-of-job.ts';
import { picturesTexts } from './pictures-texts.ts';
import { useThumbnail } from './thumbnails.ts';

/** A small copy of a photo, or what stands for one. */
export function Thumbnail({ sha256 }: { readonly sha256: string }) {
  const say = useTexts(picturesTexts);
  const url = useThumbnail(sha256);
  if (url === undefined) return <span className="tile-blank" />;
  if (url === null) return <span className="tile-blank soft">{say('noPreview')}</span>;
  return <img src={url} alt="" loading="lazy" decoding="async" />;
}

/** Of what has no picture: a film or a wave, with its length. */
function FilmOrSound({ item }: { readonly item: Exclude<MediaItem, { kind: 'photo' }> }) {
  const { durationS } = item.value;
  return (
    <span className="tile-blank">
      <svg viewBox="0 0 48 32" width="64" aria-hidden="true">
        {item.kind === 'clip' ? (
          <path d="M4 4h40v24H4zM19 10v12l11-6z" fill="none" stroke="currentColor" strokeWidth="2.5" />
        ) : (
          <path
            d="M4 14v4M10 9v14M16 12v8M22 4v24M28 10v12M34 7v18M40 13v6"
            stroke="currentColor"
            strokeWidth="3"
          />
        )}
      </svg>
      {durationS !== undefined && <span className="figure">{shownSeconds(durationS)}</span>}
    </span>
  );
}

interface PictureTileProps {
  readonly item: MediaItem;
  /** By which plan and report name it; absent where it has no place. */
  readonly number: number | undefined;
  readonly onOpen: () => void;
}

/** One picture or sound among the others; a tap opens it. */
export function PictureTile({ item, number, onOpen }: PictureTileProps) {
  const say = useTexts(picturesTexts);
  const { caption, takenAt } = item.value;
  const name = caption ?? say(item.kind);
  return (
    <Button look="quiet" onPress={onOpen}>
      <span className="tile">
        {number !== undefined && (
          <span className="tile-number figure">
            <span className="hidden-text">{say('tile')}</span>
            {number}
          </span>
        )}
        {item.kind === 'photo' ? <Thumbnail sha256={item.value.sha256} /> : <FilmOrSound item={item} />}
        <span className="tile-name">{name}</span>
        <span className="soft">{shownTime(takenAt)}</span>
      </span>
    </Button>
  );
}
