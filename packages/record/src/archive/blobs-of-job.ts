import type { Job } from '../schema/job.ts';

/** Hashes of all files that a job names, sorted: pictures, clips, voice notes and the lists of frozen states. */
export function blobsOfJob({ media, frozen }: Pick<Job, 'media' | 'frozen'>): string[] {
  const { photos, clips, audio } = media;
  return [
    ...new Set([...[...photos, ...clips, ...audio].map((m) => m.sha256), ...frozen.map((f) => f.sealSha256)]),
  ].sort();
}
