import type { Job } from '@undercroft/record';
import { area, drawnFor, type Item, line, type Spot } from '../display-list.ts';
import { around, boxOf, distance, leftOf, shift, turnedRectangle } from '../polygon.ts';
import { breakText } from '../text-width.ts';
import type { Word } from './spanish.ts';
import { onSheet } from './structure.ts';
import { LETTERING, lettering, letterNear, type PlanView, pen } from './view.ts';

type Equipment = Job['plan']['equipment'][number];

/** Letters that stand for equipment on the plan, spelled out in the legend. */
const CODES: Readonly<Record<Exclude<Equipment['kind'], 'sump'>, readonly [code: string, words: Word]>> = {
  dehumidifier: ['DH', 'Dehumidifier, arrow at its outlet'],
  'condensate-pump': ['CP', 'Condensate pump'],
  'circulating-fan': ['CF', 'Circulating fan'],
  'soil-gas-fan': ['SF', 'Soil-gas fan'],
  'exhaust-fan': ['EF', 'Exhaust fan'],
  'air-handler': ['AH', 'Air handler'],
  furnace: ['FU', 'Furnace'],
  boiler: ['BO', 'Boiler'],
  'water-heater': ['WH', 'Water heater'],
  other: ['EQ', 'Other equipment'],
};

/** A sump as two circles: basin and pump; the outer one to scale, at least large enough to be seen. */
function sump(view: PlanView, at: Spot, radius: number): Item[] {
  return [
    { kind: 'circle', at, radius, fill: 'sheet', stroke: pen(view, 'water', 1) },
    { kind: 'circle', at, radius: radius * 0.5, stroke: pen(view, 'water', 0.7) },
  ];
}

function box(view: PlanView, at: Spot, code: string, facing: Spot | undefined): Item[] {
  const { unit } = view;
  const body = turnedRectangle(at, { x: 1, y: 0 }, 15 * unit, 10 * unit);
  const front = facing === undefined ? [] : outletArrow(view, at, facing);
  return [
    ...front,
    area(body, { fill: 'sheet', stroke: pen(view, 'ink', 0.8) }),
    lettering(view, { x: at.x, y: at.y + 2.5 * unit }, code, { align: 'middle' }),
  ];
}

function outletArrow(view: PlanView, at: Spot, facing: Spot): Item[] {
  const { unit } = view;
  const tip = shift(at, facing, 16 * unit);
  const back = shift(tip, facing, -4 * unit);
  const side = leftOf(facing);
  return [
    line([at, back], pen(view, 'ink', 0.8)),
    area([tip, shift(back, side, 2 * unit), shift(back, side, -2 * unit)], { fill: 'ink' }),
  ];
}

/** Free place for a body that should stand at a spot but may not cover another. */
function clearOf(others: readonly Spot[], at: Spot, apart: number): Spot {
  const tooNear = others.find((o) => distance(o, at) < apart);
  if (tooNear === undefined) return at;
  const away = distance(tooNear, at) < 1e-6 ? { x: 1, y: 0 } : undefined;
  const direction = away ?? {
    x: (at.x - tooNear.x) / distance(tooNear, at),
    y: (at.y - tooNear.y) / distance(tooNear, at),
  };
  return shift(tooNear, direction, apart);
}

/** Equipment as lettered boxes, sumps as two circles. */
export function equipmentLayer(view: PlanView): Item[] {
  const { job, unit, places, legend } = view;
  const drawn: Spot[] = [];
  const items = job.plan.equipment.flatMap((e) => {
    const spot = view.toSheet(e.at);
    if (e.kind === 'sump') {
      const radius = Math.max(((e.diameterM ?? 0.4) * view.scale) / 2, 4 * unit);
      places.take(around(spot, radius + unit));
      drawn.push(spot);
      legend.add('sump', 'Sump', (at) => sump(view, at, 4.5 * unit));
      return drawnFor('equipment', e.id, sump(view, spot, radius));
    }
    const [code, words] = CODES[e.kind];
    const at = clearOf(drawn, spot, 17 * unit);
    drawn.push(at);
    const facing = e.facingDeg === undefined ? undefined : onSheet(e.facingDeg);
    places.take({
      left: at.x - 9 * unit,
      right: at.x + 9 * unit,
      top: at.y - 6 * unit,
      bottom: at.y + 6 * unit,
    });
    if (facing !== undefined) places.take(around(shift(at, facing, 13 * unit), 4 * unit));
    legend.add(e.kind, words, (p) => box(view, p, code, undefined));
    return drawnFor('equipment', e.id, box(view, at, code, facing));
  });
  return items.length === 0 ? [] : [{ kind: 'layer', name: 'equipment', items }];
}

/** Obstacles as dashed outlines with a cross, named. */
export function obstaclesLayer(view: PlanView): Item[] {
  const { job, unit } = view;
  if (job.plan.obstacles.length === 0) return [];
  const draw = (outline: readonly Spot[]): Item[] => [
    area(outline, { stroke: pen(view, 'ink', 0.6, [4, 1.8]) }),
    ...(outline.length === 4
      ? [
          line([outline[0], outline[2]], pen(view, 'soft', 0.4)),
          line([outline[1], outline[3]], pen(view, 'soft', 0.4)),
        ]
      : []),
  ];
  view.legend.add('obstacle', 'Obstacle', (at) =>
    draw(turnedRectangle(at, { x: 1, y: 0 }, 20 * unit, 8 * unit)),
  );
  const items = job.plan.obstacles.flatMap((o) => {
    const outline = o.outline.map(view.toSheet);
    outline.forEach((p, i) => {
      view.places.takeLine(p, outline[(i + 1) % outline.length], 0, 0.35);
    });
    return drawnFor('obstacle', o.id, draw(outline));
  });
  return [{ kind: 'layer', name: 'obstacles', items }];
}

/** Names of the obstacles, beside or on them. */
export function obstacleLabels(view: PlanView): Item[] {
  const items = view.job.plan.obstacles.flatMap((o) => {
    const { left, top, right, bottom } = boxOf(o.outline.map(view.toSheet));
    const lines = breakText(o.what, 70 * view.unit, LETTERING.small * view.unit).slice(0, 3);
    const at = { x: (left + right) / 2, y: (top + bottom) / 2 };
    const label = { at, lines, gap: 0, reach: 60, color: 'soft', size: LETTERING.small } as const;
    return drawnFor('obstacle', o.id, letterNear(view, label));
  });
  return items.length === 0 ? [] : [{ kind: 'layer', name: 'obstacle-names', items }];
}
