import type { CoverageAssessment, PictureShown } from '@undercroft/assessment';
import { area, type Item, type Spot } from '../display-list.ts';
import { onSheet } from '../plan/structure.ts';
import { lettering, letterNear, type PlanView, pen } from '../plan/view.ts';
import { arcPoints, around, boxOf, distance } from '../polygon.ts';

/** Numbers as people list them: 1–4, 7. */
export function ranges(numbers: readonly number[]): string {
  const sorted = [...numbers].sort((a, b) => a - b);
  const parts: string[] = [];
  for (let i = 0; i < sorted.length; ) {
    let j = i;
    while (j + 1 < sorted.length && sorted[j + 1] === sorted[j] + 1) j += 1;
    parts.push(j === i ? `${sorted[i]}` : `${sorted[i]}${j === i + 1 ? ', ' : '–'}${sorted[j]}`);
    i = j + 1;
  }
  return parts.join(', ');
}

/** The outline of a view: a cone from the eye, or a circle for one all round. */
export function cone(at: Spot, bearingDeg: number, fieldOfViewDeg: number, radius: number): Spot[] {
  const direction = onSheet(bearingDeg);
  const middle = (Math.atan2(direction.y, direction.x) * 180) / Math.PI;
  const half = fieldOfViewDeg / 2;
  const arc = arcPoints(at, radius, middle - half, middle + half);
  return fieldOfViewDeg >= 360 ? arc : [at, ...arc];
}

interface StationSpot {
  readonly at: Spot;
  readonly pictures: PictureShown[];
}

/** Pictures taken at one spot stand together. */
function spotsOf(view: PlanView, pictures: readonly PictureShown[]): StationSpot[] {
  const spots: StationSpot[] = [];
  for (const picture of pictures) {
    const at = view.toSheet(picture.at);
    const near = spots.find((s) => distance(s.at, at) < 5 * view.unit);
    if (near === undefined) spots.push({ at, pictures: [picture] });
    else near.pictures.push(picture);
  }
  return spots;
}

const CONE = 17;

/** Where pictures were taken, with their views and numbers. */
export function stationsLayer(
  view: PlanView,
  { pictures }: CoverageAssessment,
): { readonly marks: Item[]; readonly numbers: () => Item[] } {
  const { unit, legend, places } = view;
  const spots = spotsOf(view, pictures);
  const dot = (at: Spot): Item => ({
    kind: 'circle',
    at,
    radius: 2.6 * unit,
    fill: 'accent',
    stroke: pen(view, 'sheet', 0.6),
  });
  const cones = (at: Spot, list: readonly Pick<PictureShown, 'bearingDeg' | 'fieldOfViewDeg'>[]): Item[] =>
    list.map((p) =>
      area(cone(at, p.bearingDeg, p.fieldOfViewDeg, CONE * unit), { stroke: pen(view, 'accent', 0.55) }),
    );
  if (spots.length > 0) {
    legend.add(
      'pictures',
      'Pictures by number, with their views',
      (at) => [
        ...cones({ x: at.x - 6 * unit, y: at.y }, [{ bearingDeg: 90, fieldOfViewDeg: 65 }]),
        dot({ x: at.x - 6 * unit, y: at.y }),
        lettering(view, { x: at.x - 1 * unit, y: at.y + 2.5 * unit }, '1'),
      ],
      20,
    );
  }
  const marks = spots.flatMap((s) => {
    places.take(around(s.at, 3.4 * unit));
    for (const p of s.pictures)
      places.take(boxOf(cone(s.at, p.bearingDeg, p.fieldOfViewDeg, CONE * unit)), 0.3);
    return [...cones(s.at, s.pictures), dot(s.at)];
  });
  const numbers = () =>
    spots.flatMap((s) =>
      letterNear(view, { at: s.at, lines: [ranges(s.pictures.map((p) => p.number))], gap: 4, reach: 60 }),
    );
  return {
    marks: marks.length === 0 ? [] : [{ kind: 'layer', name: 'stations', items: marks }],
    numbers,
  };
}
