import { units } from '@undercroft/engine';
import { area, drawnFor, type Item, line, type Spot } from '../display-list.ts';
import { hatchLines } from '../hatch.ts';
import { boxOf, distance, heading, leftOf, shift, turnedRectangle } from '../polygon.ts';
import { wordIn } from './style.ts';
import { letterNear, type PlanView, pen } from './view.ts';

/** Direction on the sheet of a bearing of the plan [degrees clockwise from the plan's y axis]. */
export function onSheet(bearingDeg: number): Spot {
  const angle = (bearingDeg * Math.PI) / 180;
  return { x: Math.sin(angle), y: -Math.cos(angle) };
}

const girderPen = (view: PlanView) => pen(view, 'ink', 0.7, [11, 2.5, 2.5, 2.5]);

/** Girders as long-dash center lines. */
export function girdersLayer(view: PlanView): Item[] {
  const { girders } = view.job.plan;
  if (girders.length === 0) return [];
  view.legend.add('girder', 'Girder', (at) => [
    line(
      [
        { x: at.x - 12 * view.unit, y: at.y },
        { x: at.x + 12 * view.unit, y: at.y },
      ],
      girderPen(view),
    ),
  ]);
  const items = girders.flatMap((g) => {
    const [from, to] = [view.toSheet(g.from), view.toSheet(g.to)];
    view.places.takeLine(from, to, 0, 0.25);
    return drawnFor('girder', g.id, [line([from, to], girderPen(view))]);
  });
  return [{ kind: 'layer', name: 'girders', items }];
}

function hatchedBlock(view: PlanView, corners: readonly Spot[]): Item[] {
  return [
    area(corners, { fill: 'sheet' }),
    ...hatchLines(corners, 45, 2.2 * view.unit, pen(view, 'ink', 0.4)),
    area(corners, { stroke: pen(view, 'ink', 0.8) }),
  ];
}

/** Piers as hatched squares in their true size and turn. */
export function piersLayer(view: PlanView): Item[] {
  const { piers } = view.job.plan;
  if (piers.length === 0) return [];
  const square = (at: Spot, side: number) => turnedRectangle(at, { x: 1, y: 0 }, side, side);
  view.legend.add('pier', 'Pier', (at) => hatchedBlock(view, square(at, 8 * view.unit)));
  const items = piers.flatMap((p) => {
    const at = view.toSheet(p.at);
    const corners = turnedRectangle(
      at,
      onSheet(90 + p.turnDeg),
      p.widthM * view.scale,
      p.depthM * view.scale,
    );
    view.places.take(boxOf(corners), 0.9);
    return drawnFor('pier', p.id, hatchedBlock(view, corners));
  });
  return [{ kind: 'layer', name: 'piers', items }];
}

/** Inside walls as double lines, broken at their openings. */
export function interiorWallsLayer(view: PlanView): Item[] {
  const { interiorWalls } = view.job.plan;
  if (interiorWalls.length === 0) return [];
  const draw = (from: Spot, to: Spot, thickness: number): Item[] => {
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const body = turnedRectangle(middle, heading(from, to), distance(from, to), thickness);
    return [area(body, { fill: 'wall' }), line([body[0], body[1]], edge), line([body[2], body[3]], edge)];
  };
  const edge = pen(view, 'ink', 0.8);
  view.legend.add('inside-wall', 'Inside wall', (at) =>
    draw({ x: at.x - 11 * view.unit, y: at.y }, { x: at.x + 11 * view.unit, y: at.y }, 4 * view.unit),
  );
  const items = interiorWalls.flatMap((wall) => {
    const [from, to] = [view.toSheet(wall.from), view.toSheet(wall.to)];
    const direction = heading(from, to);
    const length = distance(from, to);
    const cuts = wall.openings
      .map((o) => ({ from: o.offsetM * view.scale, to: (o.offsetM + o.widthM) * view.scale }))
      .sort((a, b) => a.from - b.from);
    const ends = [0, ...cuts.flatMap((c) => [c.from, c.to]), length];
    view.places.takeLine(from, to, wall.thicknessM * view.scale, 0.8);
    const parts: Item[] = [];
    for (let i = 0; i + 1 < ends.length; i += 2) {
      const [a, b] = [Math.min(ends[i], length), Math.min(ends[i + 1], length)];
      if (b <= a) continue;
      parts.push(...draw(shift(from, direction, a), shift(from, direction, b), wall.thicknessM * view.scale));
    }
    return drawnFor('interior-wall', wall.id, parts);
  });
  return [{ kind: 'layer', name: 'inside-walls', items }];
}

/** One double-headed arrow for the run of the joists, with their spacing, in a free place. */
export function joistsLayer(view: PlanView): Item[] {
  const { unit, outline, places } = view;
  const { left, top, right, bottom } = boxOf(outline);
  const items = view.job.plan.joists.flatMap((joists, i) => {
    const run = onSheet(joists.bearingDeg);
    const at = places.find({
      at: { x: left + (right - left) * 0.25, y: top + (bottom - top) * (0.3 + 0.1 * i) },
      width: (Math.abs(run.x) * 34 + 8) * unit,
      height: (Math.abs(run.y) * 34 + 8) * unit,
      gap: 0,
      reach: 150 * unit,
    });
    places.take(at.box);
    const center = { x: (at.box.left + at.box.right) / 2, y: (at.box.top + at.box.bottom) / 2 };
    const head = (end: Spot, sign: number) => {
      const back = shift(end, run, -sign * 4 * unit);
      return line(
        [shift(back, leftOf(run), 2 * unit), end, shift(back, leftOf(run), -2 * unit)],
        pen(view, 'soft', 0.6),
      );
    };
    const [a, b] = [shift(center, run, -16 * unit), shift(center, run, 16 * unit)];
    const spacing =
      view.style.system === 'us'
        ? `${Number(units.convert(joists.spacingM, 'm', 'in').toFixed(1))} in`
        : units.formatMetric(joists.spacingM);
    return drawnFor('joists', joists.id, [
      line([a, b], pen(view, 'soft', 0.6)),
      head(a, -1),
      head(b, 1),
      ...letterNear(view, {
        at: center,
        lines: [wordIn(view.style, 'joists'), `${spacing} ${wordIn(view.style, 'apart')}`],
        gap: 4,
        reach: 40,
        color: 'soft',
        size: 6.6,
      }),
    ]);
  });
  return items.length === 0 ? [] : [{ kind: 'layer', name: 'joists', items }];
}
