import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Point } from '../../src/geometry/point.ts';

/** A house outline with what was worked out for it elsewhere. */
export interface ReferenceOutline {
  readonly id: string;
  readonly outline: readonly Point[];
  readonly area_m2: number;
  readonly visible_area_m2_from_each_vertex: readonly number[];
  readonly min_vertex_guards: number;
  readonly one_minimum_guard_set_vertex_indices: readonly number[];
}

/** The 150 outlines of the shared data with area seen from every corner and smallest sets of corner posts. */
export function referenceOutlines(shared: string): ReferenceOutline[] {
  const read = (...path: string[]): unknown =>
    JSON.parse(readFileSync(join(shared, 'data', ...path), 'utf8'));
  const outlines = new Map<string, Point[]>();
  for (const file of ['house_outlines_us_city.geojson', 'house_outlines_nordic_town.geojson']) {
    const { features } = read('outlines', file) as {
      features: { properties: { id: string }; geometry: { coordinates: [number, number][][] } }[];
    };
    for (const { properties, geometry } of features) {
      const ring = geometry.coordinates[0]!.slice(0, -1);
      outlines.set(
        properties.id,
        ring.map(([xM, yM]) => ({ xM, yM })),
      );
    }
  }
  const rows = read('polygons', 'visibility_reference.json') as Omit<ReferenceOutline, 'outline'>[];
  return rows.map((row) => ({ ...row, outline: outlines.get(row.id)! }));
}
