import type { Assessment, GeometryResult } from '@undercroft/assessment';

/** What a drawing of the plan needs beside the record. A whole assessment holds it. */
export interface PlanFacts {
  readonly geometry: Pick<GeometryResult, 'corners' | 'edges' | 'zones' | 'floorAreaM2'>;
  readonly readings: Assessment['readings'];
}
