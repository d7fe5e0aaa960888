import type { Job } from '@undercroft/record';

type Media = Job['media'];

/** A photo, clip or voice note of a job. */
export type MediaItem =
  | { readonly kind: 'photo'; readonly value: Media['photos'][number] }
  | { readonly kind: 'clip'; readonly value: Media['clips'][number] }
  | { readonly kind: 'audio'; readonly value: Media['audio'][number] };

/** Everything that was captured, newest first. */
export function mediaOf(job: Job): MediaItem[] {
  const { photos, clips, audio } = job.media;
  const all: MediaItem[] = [
    ...photos.map((value) => ({ kind: 'photo', value }) as const),
    ...clips.map((value) => ({ kind: 'clip', value }) as const),
    ...audio.map((value) => ({ kind: 'audio', value }) as const),
  ];
  return all.sort((a, b) => Date.parse(b.value.takenAt) - Date.parse(a.value.takenAt));
}

export function findMedia(job: Job, id: string): MediaItem | undefined {
  return mediaOf(job).find((item) => item.value.id === id);
}
