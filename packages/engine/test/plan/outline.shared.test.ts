import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { bearingDeg } from '../../src/geometry/bearing.ts';
import type { Point } from '../../src/geometry/point.ts';
import { distanceM } from '../../src/geometry/point.ts';
import { resolveOutline } from '../../src/plan/outline.ts';
import { planGeometry } from '../../src/plan/space.ts';

const shared = process.env.UNDERCROFT_SHARED;
if (!shared) {
  // biome-ignore lint/suspicious/noConsole: a suite that does not run must say so
  console.warn('plan: real house outlines did NOT run: set UNDERCROFT_SHARED');
}

interface House {
  readonly properties: { readonly id: string; readonly area_m2: number; readonly perimeter_m: number };
  readonly geometry: { readonly coordinates: readonly (readonly [number, number])[][] };
}

function houses(file: string): { id: string; areaM2: number; perimeterM: number; ring: Point[] }[] {
  const { features } = JSON.parse(readFileSync(join(shared!, 'data', 'outlines', file), 'utf8')) as {
    features: House[];
  };
  return features.map(({ properties, geometry }) => ({
    id: properties.id,
    areaM2: properties.area_m2,
    perimeterM: properties.perimeter_m,
    ring: geometry.coordinates[0]!.slice(0, -1).map(([xM, yM]) => ({ xM, yM })),
  }));
}

const FILES = ['house_outlines_us_city.geojson', 'house_outlines_nordic_town.geojson'];

describe.skipIf(!shared)('real house outlines (needs UNDERCROFT_SHARED)', () => {
  test.each(FILES)('%s: every outline is usable, walked either way round', (file) => {
    for (const { id, areaM2, perimeterM, ring } of houses(file)) {
      for (const walked of [ring, [...ring].reverse()]) {
        const { geometry, issues } = planGeometry({
          outline: { kind: 'corners', corners: walked.map((at) => ({ at })) },
          heights: [{ at: walked[0]!, clearHeightM: 0.75 }],
        });
        expect(issues, id).toEqual([]);
        // Columns are printed to 0.01; the last digit may fall either way.
        expect(Math.abs(geometry!.floorM2 - areaM2), id).toBeLessThan(0.00501);
        expect(Math.abs(geometry!.exposedPerimeterM - perimeterM), id).toBeLessThan(0.00501);
        expect(Math.abs(geometry!.volumeM3! - geometry!.floorM2 * 0.75), id).toBeLessThan(1e-9);
      }
    }
  });

  test.each(FILES)('%s: taped round, each outline comes back', (file) => {
    for (const { id, ring } of houses(file)) {
      const legs = ring.map((from, i) => {
        const to = ring[(i + 1) % ring.length]!;
        return { lengthM: distanceM(from, to), azimuthDeg: bearingDeg(from, to)! };
      });
      const outline = resolveOutline({ kind: 'traverse', legs, start: ring[0]! });
      expect(outline.issues, id).toEqual([]);
      expect(outline.traverse!.verdict, id).toBe('good');
      ring.forEach((corner, i) => {
        expect(distanceM(corner, outline.corners[i]!), id).toBeLessThan(1e-9);
      });
    }
  });
});
