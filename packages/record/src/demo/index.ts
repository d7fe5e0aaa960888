import { type JobInput, Job as JobSchema } from '../schema/job.ts';
import { doubtedLiner } from './doubted-liner.ts';
import { neglectedVented } from './neglected-vented.ts';
import { drawPictures } from './pictures/demo-pictures.ts';
import { soundClosed } from './sound-closed.ts';

/** A demo job: invented people, places and figures, realistic in every one. */
export interface DemoJob {
  /** Name by which the command calls it. */
  readonly name: string;
  /** What it shows, one sentence. */
  readonly about: string;
  readonly job: JobInput;
}

/** The pictures of a demo job one after the other, each with its hash: for somebody who may not be kept waiting. */
export function eachDemoPicture({ job }: DemoJob): Generator<readonly [sha256: string, bytes: Uint8Array]> {
  return drawPictures(JobSchema.parse(job));
}

/**
 * The pictures of a demo job by their hash, drawn when they are asked for: about 30 ms of processor time each. None for a
 * job without photos.
 */
export function demoPictures(demo: DemoJob): ReadonlyMap<string, Uint8Array> {
  return new Map(eachDemoPicture(demo));
}

export const DEMO_JOBS: readonly DemoJob[] = [
  {
    name: 'neglected-vented',
    about: 'A vented space over damp bare earth that nobody has entered for years.',
    job: neglectedVented,
  },
  {
    name: 'doubted-liner',
    about: 'A liner job two years old that its owner doubts, with reason.',
    job: doubtedLiner,
  },
  {
    name: 'sound-closed',
    about: 'A closed space done well, seen on its yearly visit: it passes.',
    job: soundClosed,
  },
];
