import { area, drawnFor, type Item, line, type Spot } from '../display-list.ts';
import { along, boxOf, distance, heading, leftOf, shift } from '../polygon.ts';
import { lengthIn, wordIn } from './style.ts';
import { type Label, LETTERING, letterNear, type PlanView, pen } from './view.ts';

/** Clearances, inverts and laps are read to an eighth of an inch. */
const inches = (view: PlanView, meters: number) => lengthIn(view.style, meters, 8);

/** A path moved sideways, corners cut at the half angle. */
function beside(path: readonly Spot[], by: number): Spot[] {
  return path.map((p, i) => {
    const before = i === 0 ? undefined : leftOf(heading(path[i - 1], p));
    const after = i === path.length - 1 ? undefined : leftOf(heading(p, path[i + 1]));
    const a = before ?? (after as Spot);
    const b = after ?? a;
    const sum = { x: a.x + b.x, y: a.y + b.y };
    const size = Math.hypot(sum.x, sum.y);
    // At a turn back on itself the two sides cancel; there the first side serves.
    if (size < 0.3) return shift(p, a, by);
    const cosHalf = size / 2;
    return shift(p, { x: sum.x / size, y: sum.y / size }, by / cosHalf);
  });
}

function longestSide(path: readonly Spot[]): [Spot, Spot] {
  let best: [Spot, Spot] = [path[0], path[1]];
  for (let i = 1; i + 1 < path.length; i++) {
    if (distance(path[i], path[i + 1]) > distance(...best)) best = [path[i], path[i + 1]];
  }
  return best;
}

function cross(at: Spot, reach: number, view: PlanView): Item[] {
  const arm = (sign: number) =>
    line(
      [
        { x: at.x - reach, y: at.y - sign * reach },
        { x: at.x + reach, y: at.y + sign * reach },
      ],
      pen(view, 'ink', 1),
    );
  return [arm(1), arm(-1)];
}

/**
 * Ducts and pipes in their width, with a cross where the clearance to the ground was taken. The figures follow once what
 * they must not cover is known.
 */
export function ductsLayer(view: PlanView): { readonly ducts: Item[]; readonly clearances: () => Item[] } {
  const { ducts } = view.job.plan;
  if (ducts.length === 0) return { ducts: [], clearances: () => [] };
  const { unit } = view;
  const labels: { readonly id: string; readonly label: Label }[] = [];
  view.legend.add('duct', 'Duct', (at) =>
    [-3, 3].map((y) =>
      line(
        [
          { x: at.x - 11 * unit, y: at.y + y * unit },
          { x: at.x + 11 * unit, y: at.y + y * unit },
        ],
        pen(view, 'ink', 0.7),
      ),
    ),
  );
  const items = ducts.flatMap((duct): Item[] => {
    const path = duct.path.map(view.toSheet);
    const half = Math.max((duct.widthM * view.scale) / 2, 1.2 * unit);
    const [left, right] = [beside(path, half), beside(path, -half)];
    const edge = pen(view, 'ink', 0.7);
    path.slice(1).forEach((p, i) => {
      view.places.takeLine(path[i], p, 2 * half, 0.5);
    });
    const [a, b] = longestSide(path);
    const at = along(a, b, 0.5);
    const drawn = [line(left, edge), line(right, edge)];
    if (duct.clearanceM === undefined) return drawnFor('duct', duct.id, drawn);
    view.legend.add('clearance', 'Lowest clearance of a duct', (p) => cross(p, 3.5 * unit, view));
    view.places.take(boxOf([shift(at, { x: 1, y: 1 }, 4 * unit), shift(at, { x: -1, y: -1 }, 4 * unit)]));
    const name = wordIn(view.style, duct.carries ?? 'duct');
    const label = {
      at,
      lines: [`${name}, ${inches(view, duct.clearanceM)} ${wordIn(view.style, 'clear')}`],
      gap: half / unit + 2,
      reach: 70,
      size: LETTERING.small,
    };
    labels.push({ id: duct.id, label });
    return drawnFor('duct', duct.id, [...drawn, ...cross(at, 3.5 * unit, view)]);
  });
  return {
    ducts: [{ kind: 'layer', name: 'ducts', items }],
    clearances: () => [
      {
        kind: 'layer',
        name: 'clearances',
        items: labels.flatMap(({ id, label }) => drawnFor('duct', id, letterNear(view, label))),
      },
    ],
  };
}

function arrowHead(view: PlanView, tip: Spot, direction: Spot): Item {
  const back = shift(tip, direction, -5 * view.unit);
  const side = leftOf(direction);
  return area([tip, shift(back, side, 2 * view.unit), shift(back, side, -2 * view.unit)], { fill: 'water' });
}

/** Drains as lines with arrow heads in the direction of flow and their inverts beside them. */
export function drainsLayer(view: PlanView): Item[] {
  const { drains } = view.job.plan;
  if (drains.length === 0) return [];
  const { unit } = view;
  const stroke = pen(view, 'water', 1.1);
  view.legend.add('drain', 'Drain, with its flow', (at) => [
    line(
      [
        { x: at.x - 11 * unit, y: at.y },
        { x: at.x + 11 * unit, y: at.y },
      ],
      stroke,
    ),
    arrowHead(view, { x: at.x + 4 * unit, y: at.y }, { x: 1, y: 0 }),
  ]);
  const lines = drains.flatMap((drain) => {
    const path = drain.path.map((p) => view.toSheet(p.at));
    const heads = path.slice(1).flatMap((p, i) => {
      view.places.takeLine(path[i], p, 2 * unit, 0.5);
      const length = distance(path[i], p);
      return length < 14 * unit ? [] : [arrowHead(view, along(path[i], p, 0.55), heading(path[i], p))];
    });
    return drawnFor('drain', drain.id, [line(path, stroke), ...heads]);
  });
  const inverts = drains.flatMap((drain) =>
    drain.path.flatMap(({ at, invertM }) =>
      invertM === undefined
        ? []
        : drawnFor(
            'drain',
            drain.id,
            letterNear(view, {
              at: view.toSheet(at),
              lines: [`${wordIn(view.style, 'inv')} ${invertM > 0 ? '+' : ''}${inches(view, invertM)}`],
              gap: 3,
              reach: 40,
              color: 'water',
              size: LETTERING.small,
            }),
          ),
    ),
  );
  return [{ kind: 'layer', name: 'drains', items: [...lines, ...inverts] }];
}

/** Seams of the liner as thin double lines with a tick on the upper sheet; their laps follow where there is room. */
export function seamsLayer(view: PlanView): { readonly seams: Item[]; readonly laps: () => Item[] } {
  const { seams } = view.job.plan;
  if (seams.length === 0) return { seams: [], laps: () => [] };
  const { unit } = view;
  const stroke = pen(view, 'soft', 0.45);
  const draw = (path: readonly Spot[]): Item[] => {
    const [a, b] = longestSide(path);
    const at = along(a, b, 0.1);
    const up = leftOf(heading(a, b));
    return [
      line(beside(path, 0.9 * unit), stroke),
      line(beside(path, -0.9 * unit), stroke),
      line([at, shift(at, up, 4.5 * unit)], pen(view, 'soft', 0.9)),
    ];
  };
  view.legend.add('seam', 'Liner seam, tick on upper sheet', (at) =>
    draw([
      { x: at.x - 11 * unit, y: at.y + unit },
      { x: at.x + 11 * unit, y: at.y + unit },
    ]),
  );
  const paths = seams.map((seam) => seam.path.map(view.toSheet));
  for (const path of paths) {
    path.slice(1).forEach((p, i) => {
      view.places.takeLine(path[i], p, 2 * unit, 0.35);
    });
  }
  const laps = () =>
    seams.flatMap((seam, i) => {
      if (seam.lapM === undefined) return [];
      const [a, b] = longestSide(paths[i]);
      const label = letterNear(view, {
        at: along(a, b, 0.1),
        lines: [`${wordIn(view.style, 'lap')} ${inches(view, seam.lapM)}`],
        gap: 5,
        reach: 30,
        color: 'soft',
        size: LETTERING.small,
        optional: true,
      });
      return drawnFor('seam', seam.id, label);
    });
  return {
    seams: [
      {
        kind: 'layer',
        name: 'seams',
        items: paths.flatMap((path, i) => drawnFor('seam', seams[i].id, draw(path))),
      },
    ],
    laps: () => [{ kind: 'layer', name: 'laps', items: laps() }],
  };
}
