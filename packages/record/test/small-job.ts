import {
  type Author,
  type Entry,
  entriesOfJob,
  type Job,
  type JobInput,
  JobSchema,
  RECORD_VERSION,
} from '../src/index.ts';

/** The moment at which the small job stands ready. */
export const START_MS = Date.UTC(2031, 4, 14, 13);

const INPUT: JobInput = {
  format: 'undercroft-job',
  version: 2,
  id: 'small',
  header: { title: 'Three piers' },
  plan: {
    outline: {
      kind: 'corners',
      corners: [
        { id: 'a', at: { xM: 0, yM: 0 } },
        { id: 'b', at: { xM: 9, yM: 0 } },
        { id: 'c', at: { xM: 9, yM: 6 } },
      ],
    },
    ground: { cover: 'bare-earth' },
    piers: [
      { id: 'pier1', at: { xM: 2, yM: 1 }, widthM: 0.3, note: 'cracked' },
      { id: 'pier2', at: { xM: 4, yM: 1 }, widthM: 0.41 },
      { id: 'pier3', at: { xM: 6, yM: 1 }, widthM: 0.42 },
    ],
  },
};

/** A job with the least that a job needs, and three piers. */
export function smallJob(): Job {
  return JobSchema.parse({ ...INPUT, version: RECORD_VERSION });
}

/** Someone at a device, at a moment. */
export function authorOn(device: string, nowMs: number, who = device): Author {
  return { who, device, nowMs, deviceTime: new Date(nowMs).toISOString() };
}

/** The log that all devices of a test begin with. */
export function smallLog(): Entry[] {
  return entriesOfJob(smallJob(), authorOn('office', START_MS - 1000));
}
