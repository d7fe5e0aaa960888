import type { PictureShown } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { area, type Drawing, type Item, line } from '../display-list.ts';
import type { PlanFacts } from '../plan/facts.ts';
import { boxOf } from '../polygon.ts';
import { cone } from './stations.ts';

/** How wide and high a thumbnail may be, in drawing units. */
export interface ThumbnailRoom {
  readonly width: number;
  readonly height: number;
}

/** Where one picture was taken and what it takes in, on an outline of the space. */
export function thumbnail(
  job: Job,
  { geometry }: PlanFacts,
  picture: PictureShown,
  room: ThumbnailRoom,
): Drawing {
  const margin = 1.5;
  const raw = geometry.corners.map((p) => ({ x: p.xM, y: -p.yM }));
  const box = boxOf(raw);
  const scale = Math.min(
    (room.width - 2 * margin) / Math.max(0.1, box.right - box.left),
    (room.height - 2 * margin) / Math.max(0.1, box.bottom - box.top),
  );
  const toSheet = ({ xM, yM }: { readonly xM: number; readonly yM: number }) => ({
    x: margin + (xM - box.left) * scale,
    y: margin + (-yM - box.top) * scale,
  });
  const width = (box.right - box.left) * scale + 2 * margin;
  const height = (box.bottom - box.top) * scale + 2 * margin;
  const outline = geometry.corners.map(toSheet);
  const at = toSheet(picture.at);
  const view = cone(at, picture.bearingDeg, picture.fieldOfViewDeg, picture.rangeM * scale);
  const items: Item[] = [
    area(outline, { fill: 'sheet' }),
    {
      kind: 'layer',
      name: 'view',
      within: outline,
      items: [area(view, { fill: 'hatch', stroke: { color: 'accent', width: 0.5 } })],
    },
    ...job.plan.interiorWalls.map((w) =>
      line([toSheet(w.from), toSheet(w.to)], { color: 'ink', width: 0.7 }),
    ),
    ...job.plan.piers.map(
      (p): Item => ({ kind: 'circle', at: toSheet(p.at), radius: Math.max(0.7, 0.2 * scale), fill: 'soft' }),
    ),
    area(outline, { stroke: { color: 'ink', width: 0.8 } }),
    { kind: 'circle', at, radius: 1.9, fill: 'ink', stroke: { color: 'sheet', width: 0.5 } },
  ];
  return {
    width,
    height,
    title: `Where picture ${picture.number} was taken`,
    description: `Outline of the space with the place of picture ${picture.number} and the direction that it looks in.`,
    items,
  };
}
