import type { criteria } from '@undercroft/engine';
import type { Point, SurveyedJob } from '@undercroft/record';
import type { Sample } from '../evidence/sample.ts';
import { placeWords } from '../readings/words.ts';
import type { DefectPlace } from './defect-result.ts';
import type { PlanItem } from './place-of-item.ts';

interface Placed {
  readonly words: string;
  readonly at?: Point;
}

/** Where the readings and observations of a job were taken, by their ids. */
function placesOfReadings({ readings }: SurveyedJob): ReadonlyMap<string, Placed> {
  const { air, surface, wood, observations } = readings;
  const places = new Map<string, Placed>();
  for (const { id, place } of [...air, ...surface, ...wood, ...observations]) {
    if (
      place === undefined ||
      (place.at === undefined && place.words === undefined && place.on === undefined)
    )
      continue;
    places.set(id, { words: placeWords(place), ...(place.at === undefined ? {} : { at: place.at }) });
  }
  return places;
}

/** Gives the places of defects: of their findings, of the samples that show them, and of the items that have them. */
export function placesOf(
  job: SurveyedJob,
  samples: readonly Sample[],
  items: ReadonlyMap<string, PlanItem>,
): (found: Pick<criteria.DetectedDefect, 'claims' | 'samples' | 'items'>) => DefectPlace[] {
  const readings = placesOfReadings(job);
  const originOf = new Map(samples.map((s) => [s.id, s.origin.id ?? s.id]));
  const findings = new Map(job.findings.map((f) => [f.id, f]));
  return ({ claims, samples: ids, items: failing }) => {
    const places: DefectPlace[] = [];
    for (const id of claims) {
      const place = findings.get(id)?.place;
      if (place === undefined) continue;
      const words = placeWords(place);
      places.push({ id, from: 'finding', words, ...(place.at === undefined ? {} : { at: place.at }) });
    }
    for (const id of ids) {
      const place = readings.get(originOf.get(id) ?? id);
      if (place !== undefined) places.push({ id, from: 'sample', ...place });
    }
    for (const id of failing) {
      const item = items.get(id);
      if (item === undefined) continue;
      places.push({ id, from: 'item', words: item.what, ...(item.at === undefined ? {} : { at: item.at }) });
    }
    return places;
  };
}
