import type { Job } from '@undercroft/record';
import { useTexts } from '../../text/texts.ts';
import { mediaOf } from './media-of-job.ts';
import { PictureTile } from './picture-tile.tsx';
import { picturesTexts } from './pictures-texts.ts';

interface GalleryProps {
  readonly job: Job;
  readonly onOpen: (id: string) => void;
}

/** All pictures and sounds of a job, newest first. */
export function Gallery({ job, onOpen }: GalleryProps) {
  const say = useTexts(picturesTexts);
  const all = mediaOf(job);
  if (all.length === 0) {
    return (
      <div className="empty">
        <svg viewBox="0 0 120 80" width="160" aria-hidden="true" className="example">
          <path d="M8 8h104v64H8z" fill="none" stroke="currentColor" strokeWidth="3" />
          <path d="M8 52h104M30 8v44M60 8v44M90 8v44" stroke="currentColor" strokeWidth="1.5" />
          <path d="M24 72L60 30l36 42z" fill="none" stroke="var(--lamp)" strokeWidth="2" />
        </svg>
        <p>{say('noPictures')}</p>
        <p className="soft">{say('example')}</p>
      </div>
    );
  }
  return (
    <>
      <p className="soft">{say('galleryCount', { count: all.length })}</p>
      <ul className="gallery">
        {all.map((item) => (
          <li key={item.value.id}>
            <PictureTile item={item} onOpen={() => onOpen(item.value.id)} />
          </li>
        ))}
      </ul>
    </>
  );
}
