import type { PictureShown } from '@undercroft/assessment';
import type { Job, Point } from '@undercroft/record';
import { area, type Drawing, type Item, line, type Spot } from '../display-list.ts';
import type { PlanFacts } from '../plan/facts.ts';
import { boxOf } from '../polygon.ts';
import { cone } from './stations.ts';

/** How wide and high a thumbnail may be, in drawing units. */
export interface ThumbnailRoom {
  readonly width: number;
  readonly height: number;
}

interface Sketch {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly toSheet: (at: Point) => Spot;
  /** Outline, inside walls and piers, with something under the lines. */
  readonly withUnder: (under: readonly Item[]) => Item[];
}

/** The outline of the space, as large as fits. */
function sketch(job: Job, { geometry }: PlanFacts, room: ThumbnailRoom): Sketch {
  const margin = 1.5;
  const raw = geometry.corners.map((p) => ({ x: p.xM, y: -p.yM }));
  const box = boxOf(raw);
  const scale = Math.min(
    (room.width - 2 * margin) / Math.max(0.1, box.right - box.left),
    (room.height - 2 * margin) / Math.max(0.1, box.bottom - box.top),
  );
  const toSheet = ({ xM, yM }: Point) => ({
    x: margin + (xM - box.left) * scale,
    y: margin + (-yM - box.top) * scale,
  });
  const outline = geometry.corners.map(toSheet);
  return {
    width: (box.right - box.left) * scale + 2 * margin,
    height: (box.bottom - box.top) * scale + 2 * margin,
    scale,
    toSheet,
    withUnder: (under) => [
      area(outline, { fill: 'sheet' }),
      ...(under.length === 0
        ? []
        : [{ kind: 'layer', name: 'view', within: outline, items: under } as const]),
      ...job.plan.interiorWalls.map((w) =>
        line([toSheet(w.from), toSheet(w.to)], { color: 'ink', width: 0.7 }),
      ),
      ...job.plan.piers.map(
        (p): Item => ({
          kind: 'circle',
          at: toSheet(p.at),
          radius: Math.max(0.7, 0.2 * scale),
          fill: 'soft',
        }),
      ),
      area(outline, { stroke: { color: 'ink', width: 0.8 } }),
    ],
  };
}

/** Where one picture was taken and what it takes in, on an outline of the space. */
export function thumbnail(job: Job, facts: PlanFacts, picture: PictureShown, room: ThumbnailRoom): Drawing {
  const { width, height, scale, toSheet, withUnder } = sketch(job, facts, room);
  const at = toSheet(picture.at);
  const view = cone(at, picture.bearingDeg, picture.fieldOfViewDeg, picture.rangeM * scale);
  return {
    width,
    height,
    title: `Where picture ${picture.number} was taken`,
    description: `Outline of the space with the place of picture ${picture.number} and the direction that it looks in.`,
    items: [
      ...withUnder([area(view, { fill: 'hatch', stroke: { color: 'accent', width: 0.5 } })]),
      { kind: 'circle', at, radius: 1.9, fill: 'ink', stroke: { color: 'sheet', width: 0.5 } },
    ],
  };
}

/** Where something is, on an outline of the space: a ring around each of its places. */
export function placeThumbnail(
  job: Job,
  facts: PlanFacts,
  name: string,
  places: readonly Point[],
  room: ThumbnailRoom,
): Drawing {
  const { width, height, toSheet, withUnder } = sketch(job, facts, room);
  return {
    width,
    height,
    title: `Where it is: ${name}`,
    description: `Outline of the space with ${places.length === 1 ? 'the place' : `${places.length} places`} of: ${name}.`,
    items: [
      ...withUnder([]),
      ...places.map(
        (at): Item => ({
          kind: 'circle',
          at: toSheet(at),
          radius: 2.6,
          fill: 'accent',
          stroke: { color: 'sheet', width: 0.6 },
        }),
      ),
    ],
  };
}
