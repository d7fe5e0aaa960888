import { units } from '@undercroft/engine';
import type { Job, Point } from '@undercroft/record';
import { area, drawnFor, type Item, line, type Spot } from '../display-list.ts';
import { type MarkName, mark } from '../marks.ts';
import { arcPoints, around, distance, shift } from '../polygon.ts';
import { onSheet } from './structure.ts';
import { lengthIn, type PlanStyle, wordIn } from './style.ts';
import { LETTERING, lettering, letterNear, type PlanView, pen } from './view.ts';

/** Readings taken at one spot. */
interface Stop {
  readonly at: Spot;
  readonly state: 'fine' | 'watch' | 'alarm';
  readonly lines: readonly string[];
}

const WORST = { fine: 0, watch: 1, alarm: 2 } as const;

/** Every reading with a place on the plan, by id, as the instrument showed it. */
function shownById(job: Job, style: PlanStyle): Map<string, string> {
  const { system } = style;
  const { air, surface, wood } = job.readings;
  const temperature = (c: number) => units.formatQuantity(c, 'temperature', system);
  return new Map([
    ...air.map(
      (r) =>
        [
          r.id,
          `${units.formatQuantity(r.relativeHumidity, 'relativeHumidity', system)} ${wordIn(style, 'RH')}`,
        ] as const,
    ),
    ...surface.map((r) => [r.id, temperature(r.temperatureC)] as const),
    ...wood.map(
      (r) =>
        [r.id, `${units.formatQuantity(r.shown, 'moistureContent', system)} ${wordIn(style, 'MC')}`] as const,
    ),
  ]);
}

function stopsOf(view: PlanView): Stop[] {
  const shown = shownById(view.job, view.style);
  const stops: Stop[] = [];
  for (const reading of view.facts.readings) {
    if (reading.at === undefined) continue;
    const at = view.toSheet(reading.at);
    const text = shown.get(reading.id) ?? reading.shown;
    const near = stops.findIndex((s) => distance(s.at, at) < 5 * view.unit);
    if (near < 0) stops.push({ at, state: reading.state, lines: [text] });
    else {
      const { at: first, state, lines } = stops[near];
      const worse = WORST[reading.state] > WORST[state] ? reading.state : state;
      stops[near] = { at: first, state: worse, lines: [...lines, text] };
    }
  }
  return stops;
}

const READING_WORDS = {
  fine: 'Reading, fine',
  watch: 'Reading, watch',
  alarm: 'Reading, alarm',
} as const;

/** Readings as dots with their values; their shape tells the state. */
export function readingsLayer(view: PlanView): { readonly dots: Item[]; readonly values: () => Item[] } {
  const { unit, places, legend } = view;
  const stops = stopsOf(view);
  for (const name of ['alarm', 'watch', 'fine'] as const) {
    if (stops.some((s) => s.state === name))
      legend.add(`reading-${name}`, READING_WORDS[name], (at) => mark(name, at, 7 * unit));
  }
  const dots = stops.flatMap((s) => {
    places.take(around(s.at, 3.6 * unit));
    const backing: Item = { kind: 'circle', at: s.at, radius: 4.4 * unit, fill: 'sheet' };
    return [backing, ...mark(s.state satisfies MarkName, s.at, 7 * unit)];
  });
  const values = () => {
    const items = stops.flatMap((s) => letterNear(view, { at: s.at, lines: s.lines, gap: 4.2, reach: 60 }));
    return items.length === 0 ? [] : [{ kind: 'layer', name: 'reading-values', items } as const];
  };
  return { dots: dots.length === 0 ? [] : [{ kind: 'layer', name: 'readings', items: dots }], values };
}

function flag(view: PlanView, foot: Spot, number: string, lean: Spot): Item[] {
  const { unit } = view;
  const top = { x: foot.x, y: foot.y + lean.y * 17 * unit };
  const width = (number.length > 1 ? 12 : 9) * unit;
  const far = foot.x + lean.x * width;
  const other = top.y - lean.y * 9 * unit;
  const cloth = [top, { x: far, y: top.y }, { x: far, y: other }, { x: foot.x, y: other }];
  return [
    line([foot, top], pen(view, 'ink', 0.9)),
    { kind: 'circle', at: foot, radius: 1.1 * unit, fill: 'ink' },
    area(cloth, { fill: 'accent' }),
    lettering(view, { x: (foot.x + far) / 2, y: (top.y + other) / 2 + 2.6 * unit }, number, {
      align: 'middle',
      color: 'onAccent',
      face: 'strong',
      size: 7.4,
    }),
  ];
}

const LEANS: readonly Spot[] = [
  { x: 1, y: -1 },
  { x: -1, y: -1 },
  { x: 1, y: 1 },
  { x: -1, y: 1 },
];

/** Findings as numbered flags; the number is that of the list of findings. */
export function findingsLayer(view: PlanView): Item[] {
  const { job, unit, places } = view;
  const items = job.findings.flatMap((finding, i) => {
    if (finding.place.at === undefined) return [];
    const foot = view.toSheet(finding.place.at);
    const number = String(i + 1);
    const width = (number.length > 1 ? 12 : 9) * unit;
    const boxes = LEANS.map((lean) => ({
      left: Math.min(foot.x, foot.x + lean.x * width) - unit,
      right: Math.max(foot.x, foot.x + lean.x * width) + unit,
      top: Math.min(foot.y, foot.y + lean.y * 17 * unit) - unit,
      bottom: Math.max(foot.y, foot.y + lean.y * 17 * unit) + unit,
    }));
    const costs = boxes.map((b) => places.covered(b));
    const best = costs.indexOf(Math.min(...costs));
    places.take(boxes[best]);
    return flag(view, foot, number, LEANS[best]);
  });
  if (items.length === 0) return [];
  const sample = (at: Spot) => flag(view, { x: at.x - 4 * unit, y: at.y + 8 * unit }, '1', LEANS[0]);
  view.legend.add('finding', 'Finding, by number', sample, 20);
  return [{ kind: 'layer', name: 'findings', items }];
}

function eye(
  view: PlanView,
  at: Spot,
  view_: { readonly bearingDeg?: number; readonly fieldOfViewDeg?: number },
): Item[] {
  const { unit } = view;
  const lid = (sign: number): Spot[] => [
    { x: at.x - 4 * unit, y: at.y },
    { x: at.x - 1.8 * unit, y: at.y + sign * 1.9 * unit },
    { x: at.x + 1.8 * unit, y: at.y + sign * 1.9 * unit },
    { x: at.x + 4 * unit, y: at.y },
  ];
  const body: Item[] = [
    area([...lid(-1), ...lid(1).reverse()], { fill: 'sheet', stroke: pen(view, 'ink', 0.5) }),
    { kind: 'circle', at, radius: 1.1 * unit, fill: 'ink' },
  ];
  if (view_.bearingDeg === undefined) return body;
  const direction = onSheet(view_.bearingDeg);
  const middle = (Math.atan2(direction.y, direction.x) * 180) / Math.PI;
  const half = Math.min(view_.fieldOfViewDeg ?? 60, 300) / 2;
  const cone = [at, ...arcPoints(at, 16 * unit, middle - half, middle + half)];
  return [area(cone, { stroke: pen(view, 'soft', 0.4) }), ...body];
}

/** Photo stations as small eyes with their view cones. */
export function photosLayer(view: PlanView): Item[] {
  const { job, unit, places } = view;
  const items = job.media.photos.flatMap((photo) => {
    if (photo.place.at === undefined) return [];
    const at = view.toSheet(photo.place.at);
    places.take(around(at, 4 * unit), 0.8);
    return drawnFor('photo', photo.id, eye(view, at, photo));
  });
  if (items.length === 0) return [];
  view.legend.add('photo', 'Photo, with its view', (at) => eye(view, at, {}));
  return [{ kind: 'layer', name: 'photos', items }];
}

function heightMark(view: PlanView, at: Spot): Item[] {
  const tick = (direction: Spot) =>
    line([shift(at, direction, -2 * view.unit), shift(at, direction, 2 * view.unit)], pen(view, 'soft', 0.6));
  return [tick({ x: 1, y: 0 }), tick({ x: 0, y: 1 })];
}

/** Clear heights where they were taken. */
export function heightsLayer(view: PlanView): Item[] {
  const { job, unit, places, legend } = view;
  if (job.plan.heights.length === 0) return [];
  const height = (at: Point) => view.toSheet(at);
  legend.add('height', 'Clear height', (at) => [
    ...heightMark(view, { x: at.x - 6 * unit, y: at.y }),
    lettering(view, { x: at.x - 2 * unit, y: at.y + 2.4 * unit }, 'h', {
      color: 'soft',
      size: LETTERING.small,
    }),
  ]);
  const items = job.plan.heights.flatMap((h) => {
    const at = height(h.at);
    places.take(around(at, 2 * unit));
    const text = `h ${lengthIn(view.style, h.clearHeightM, 4)}`;
    const label = letterNear(view, {
      at,
      lines: [text],
      gap: 2.6,
      reach: 40,
      color: 'soft',
      size: LETTERING.small,
    });
    return drawnFor('height', h.id, [...heightMark(view, at), ...label]);
  });
  return [{ kind: 'layer', name: 'heights', items }];
}
