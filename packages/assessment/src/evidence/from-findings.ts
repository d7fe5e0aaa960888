import { criteria } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Sample } from './sample.ts';

/** What findings measured, by the engine's name of the quantity; other extents are read by the bills. */
export function samplesOfFindings(job: SurveyedJob): Sample[] {
  return job.findings.flatMap((f) => {
    if (f.measured === undefined || criteria.findQuantity(f.measured.quantity) === undefined) return [];
    return [
      {
        id: f.id,
        quantity: f.measured.quantity,
        value: f.measured.value,
        ...(f.place.on === undefined ? {} : { item: f.place.on.id }),
        assumed: false,
        origin: { kind: 'finding' as const, id: f.id, who: f.who, when: f.when, note: f.title },
      },
    ];
  });
}
