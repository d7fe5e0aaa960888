import { psychrometrics } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import type { ReadingMeaning } from '../assessment.ts';
import { Assumptions } from '../assumptions.ts';
import { chooseClimate } from '../climate.ts';
import { airMeaning, meanAir } from './air.ts';
import { surfaceMeaning } from './surface.ts';
import { woodMeaning } from './wood.ts';

/** A reading that is not in the record yet, as somebody types it. */
export type DraftReading =
  | { readonly kind: 'air'; readonly reading: Job['readings']['air'][number] }
  | { readonly kind: 'surface'; readonly reading: Job['readings']['surface'][number] }
  | { readonly kind: 'wood'; readonly reading: Job['readings']['wood'][number] };

const hasDehumidifier = (job: Job) =>
  job.plan.equipment.some((e) => e.kind === 'dehumidifier' && e.running !== false);

/** What each reading of a job says, at the air pressure of the place [Pa]. */
export function readingMeanings(job: Job, pressurePa: number): ReadingMeaning[] {
  const { air, surface, wood } = job.readings;
  const crawlC = meanAir(air, 'crawl', pressurePa)?.temperatureC;
  const runs = hasDehumidifier(job);
  return [
    ...air.map((r) => airMeaning(r, pressurePa, crawlC)),
    ...surface.map((r) => surfaceMeaning(r, air)),
    ...wood.map((r) => woodMeaning(r, runs)),
  ];
}

/**
 * What a reading says beside those of the record, before it is taken in. The job may stand without walls; the air
 * pressure is that of its height above the sea, else of its station.
 * @throws EngineError for figures that no air and no wood can have
 */
export function meaningOf(job: Job, draft: DraftReading): ReadingMeaning {
  const pressurePa = psychrometrics.pressureAtAltitudePa(
    job.header.elevationM ?? chooseClimate(job, undefined, new Assumptions()).place.elevationM,
  );
  const { air } = job.readings;
  switch (draft.kind) {
    case 'air':
      return airMeaning(draft.reading, pressurePa, meanAir(air, 'crawl', pressurePa)?.temperatureC);
    case 'surface':
      return surfaceMeaning(draft.reading, air);
    case 'wood':
      return woodMeaning(draft.reading, hasDehumidifier(job));
  }
}
