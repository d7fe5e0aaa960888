import { readFileSync } from 'node:fs';
import { type Assessment, assess } from '@undercroft/assessment';
import { DEMO_JOBS, type Job, type JobInput, readJob } from '@undercroft/record';
import { FONT_FILES, type ReportFonts } from '@undercroft/report';

/** A job with what was made of it. */
export interface Assessed {
  readonly job: Job;
  readonly assessment: Assessment;
}

export function assessed(input: JobInput): Assessed {
  const read = readJob(input);
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
  return { job: read.job, assessment: assess(read.job) };
}

export const DEMO_NAMES = DEMO_JOBS.map((d) => d.name);

const demos = new Map<string, Assessed>();

/** A demo job, assessed once for all tests of a file. */
export function demo(name: string): Assessed {
  const known = demos.get(name);
  if (known !== undefined) return known;
  const found = DEMO_JOBS.find((d) => d.name === name);
  if (found === undefined) throw new Error(`no demo job is called ${name}`);
  const made = assessed(found.job);
  demos.set(name, made);
  return made;
}

/** A job of which nothing is known but three corners and what the floor is. */
export const bareJob: JobInput = {
  format: 'undercroft-job',
  version: 2,
  id: 'bare',
  header: { title: 'Bare' },
  plan: {
    outline: {
      kind: 'corners',
      corners: [
        { id: 'a', at: { xM: 0, yM: 0 } },
        { id: 'b', at: { xM: 8, yM: 0 } },
        { id: 'c', at: { xM: 3, yM: 5 } },
      ],
    },
    ground: { cover: 'bare-earth' },
  },
};

/** A plan with as many corners on a ring, and as many piers on a grid inside it. */
export function largeJob(corners: number, piers: number): JobInput {
  const ring = Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    const radius = 14 + (i % 2 === 0 ? 0.4 : 0);
    return { id: `k${i}`, at: { xM: radius * Math.cos(angle), yM: radius * Math.sin(angle) } };
  });
  const side = Math.ceil(Math.sqrt(piers));
  return {
    ...bareJob,
    id: 'large',
    header: { title: 'Large' },
    plan: {
      outline: { kind: 'corners', corners: ring },
      ground: { cover: 'bare-earth', surface: 'dark-damp' },
      piers: Array.from({ length: piers }, (_, i) => ({
        id: `p${i}`,
        at: { xM: -9 + (18 * (i % side)) / side, yM: -9 + (18 * Math.floor(i / side)) / side },
        widthM: 0.4,
        depthM: 0.3,
        turnDeg: 11,
      })),
    },
  };
}

/** The fonts as they lie in the package. */
export function packageFonts(): ReportFonts {
  const file = (name: string) => new Uint8Array(readFileSync(new URL(`../fonts/${name}`, import.meta.url)));
  return {
    text: file(FONT_FILES.text),
    textBold: file(FONT_FILES.textBold),
    figures: file(FONT_FILES.figures),
  };
}
