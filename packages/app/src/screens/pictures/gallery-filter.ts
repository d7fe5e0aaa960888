import { type CoverageAssessment, type PictureView, picturesShowing } from '@undercroft/assessment';
import type { Job, Point } from '@undercroft/record';
import type { MediaItem } from './media-of-job.ts';

/** Which pictures are wanted: all, those of one finding, those that show a thing, those that show a place, or those that were taken there. */
export type Wanted =
  | { readonly by: 'all' }
  | { readonly by: 'finding'; readonly id: string }
  | { readonly by: 'thing'; readonly kind: string; readonly id: string }
  | { readonly by: 'spot'; readonly at: Point }
  | { readonly by: 'stack'; readonly at: Point; readonly ids: readonly string[] };

export const ALL: Wanted = { by: 'all' };

/** A wish as the value of a list. */
export function keyOf(wanted: Wanted): string {
  switch (wanted.by) {
    case 'finding':
      return `finding ${wanted.id}`;
    case 'thing':
      return `thing ${wanted.kind} ${wanted.id}`;
    default:
      return wanted.by;
  }
}

/** The wish of a value of a list. */
export function wantedOf(key: string): Wanted {
  const [by, first = '', second = ''] = key.split(' ');
  if (by === 'finding') return { by, id: first };
  if (by === 'thing') return { by, kind: first, id: second };
  return ALL;
}

interface Known {
  readonly job: Job;
  readonly coverage: CoverageAssessment | undefined;
  readonly views: readonly PictureView[];
}

/** Ids of the pictures and sounds that are wanted; null for all of them. */
function idsOf(wanted: Wanted, { job, coverage, views }: Known): ReadonlySet<string> | null {
  switch (wanted.by) {
    case 'all':
      return null;
    case 'finding': {
      const finding = job.findings.find(({ id }) => id === wanted.id);
      const { photoIds = [], clipIds = [], audioIds = [] } = finding ?? {};
      return new Set([...photoIds, ...clipIds, ...audioIds]);
    }
    case 'thing': {
      const shows = (coverage?.pictures ?? []).filter((picture) =>
        picture.shows.some(({ kind, id }) => kind === wanted.kind && id === wanted.id),
      );
      return new Set(shows.map(({ id }) => id));
    }
    case 'stack':
      return new Set(wanted.ids);
    case 'spot':
      return new Set(picturesShowing(views, wanted.at));
  }
}

/** The pictures and sounds that are wanted, in the order in which they came. */
export function wantedMedia(all: readonly MediaItem[], wanted: Wanted, known: Known): readonly MediaItem[] {
  const ids = idsOf(wanted, known);
  return ids === null ? all : all.filter(({ value }) => ids.has(value.id));
}
