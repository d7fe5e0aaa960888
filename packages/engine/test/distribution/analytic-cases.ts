import type { FieldSite } from '../../src/distribution/field-site.ts';
import type { Point } from '../../src/geometry/point.ts';
import { rectangle } from './worked-plan.ts';

/** Height, density and mixing of the analytic cases. */
export const H = 0.8;
export const RHO = 1.2;
export const K = 0.01;

/** A heat exchange that only keeps temperatures bound. */
const HELD: FieldSite['heat'] = [
  { what: 'ground', place: { kind: 'floor' }, conductanceWPerK: 5, per: 'each', temperatureC: 20 },
];

/** A channel one cell wide, with its end at x = 0 held at a humidity ratio through half a cell. */
export function channel(
  cellM: number,
  lengthM: number,
  held: number,
  more: Partial<FieldSite> = {},
): FieldSite {
  return {
    plan: { outline: rectangle(lengthM, cellM), heightM: H },
    heat: HELD,
    ...more,
    vapor: [endHeld(cellM, 0, held), ...(more.vapor ?? [])],
  };
}

/** What holds the cell at an end of a channel: its own air half a cell away. */
export function endHeld(cellM: number, atXM: number, humidityRatio: number): FieldSite['vapor'][number] {
  return {
    what: `end at ${atXM}`,
    kind: 'other',
    place: { kind: 'at', at: { xM: atXM, yM: cellM / 2 } },
    conductanceKgPerS: (RHO * H * K * cellM) / (cellM / 2),
    per: 'whole',
    humidityRatio,
  };
}

/** A closed box with a uniform exchange that draws to dry air. */
export function screenedBox(
  widthM: number,
  depthM: number,
  beta: number,
  more: Partial<FieldSite> = {},
): FieldSite {
  return {
    plan: { outline: rectangle(widthM, depthM), heightM: H },
    heat: HELD,
    vapor: [
      {
        what: 'uniform',
        kind: 'other',
        place: { kind: 'floor' },
        conductanceKgPerS: beta,
        per: 'each',
        humidityRatio: 0,
      },
    ],
    ...more,
  };
}

/** The middles of the four cells that meet in a corner of the grid. */
export function around({ xM, yM }: Point, cellM: number): Point[] {
  return [-1, 1].flatMap((i) => [-1, 1].map((j) => ({ xM: xM + (i * cellM) / 2, yM: yM + (j * cellM) / 2 })));
}
