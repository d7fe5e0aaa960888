import type { Assessment, DistributionBand, DistributionState } from '@undercroft/assessment';
import type { Job, Point } from '@undercroft/record';
import type { ColorName } from '../../look/tokens.ts';
import { builtLayers } from '../coverage/coverage-drawing.ts';
import { type SheetContent, sidePicture, sideSheet } from '../coverage/side-sheet.ts';
import { area, type Drawing, type Item, line, type Room, type Spot } from '../display-list.ts';
import type { Word } from '../plan/spanish.ts';
import { LETTERING, lettering, type PlanView, pen } from '../plan/view.ts';
import { textWidth } from '../text-width.ts';
import { BAND_EDGES, bandColor, THRESHOLDS } from './air-bands.ts';
import { partsAbove, type Rings } from './contours.ts';

/** The bands in the key, driest first. */
const BAND_WORDS = [
  'RH below 50%',
  '50% to 55%',
  '55% to 60%',
  '60% to 65%',
  '65% to 70%',
  '70% to 75%',
  '75% to 80%',
  '80% to 85%',
  '85% to 90%',
  '90% to 95%',
  '95% and more',
] as const satisfies readonly Word[];
const percent = (share: number) => `${Math.round(100 * share)}%`;

/** A line that reads on every color below it. */
function haloed(view: PlanView, points: readonly Spot[], width: number, dash?: readonly number[]): Item[] {
  return [
    line(points, pen(view, 'fieldHalo', width + 1.6)),
    line(points, pen(view, 'fieldInk', width, dash)),
  ];
}

const closed = (ring: readonly Point[], view: PlanView): Spot[] => ring.map(view.toSheet);

/** Stretches of a ring that run inside the walls; the rest follows the edge of the grid. */
function middleOf(ring: readonly Spot[], view: PlanView): Spot | undefined {
  const { frame } = view;
  const inside = ring.filter((p) => within(p, view.outline));
  if (inside.length < 6) return undefined;
  const at = inside[Math.floor(inside.length / 2)];
  const near = 16 * view.unit;
  const clear =
    at.x - frame.left > near &&
    frame.right - at.x > near &&
    at.y - frame.top > near &&
    frame.bottom - at.y > near;
  return clear ? at : undefined;
}

function within({ x, y }: Spot, outline: readonly Spot[]): boolean {
  let inside = false;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length];
    if (a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
  });
  return inside;
}

function valueLabel(view: PlanView, at: Spot, text: string): Item[] {
  const size = LETTERING.small * view.unit;
  const width = textWidth(text, size) + 3 * view.unit;
  const height = size * 1.15;
  const box = [
    { x: at.x - width / 2, y: at.y - height / 2 },
    { x: at.x + width / 2, y: at.y - height / 2 },
    { x: at.x + width / 2, y: at.y + height / 2 },
    { x: at.x - width / 2, y: at.y + height / 2 },
  ];
  return [
    area(box, { fill: 'fieldHalo' }),
    lettering(view, { x: at.x, y: at.y + 0.35 * size }, text, {
      align: 'middle',
      size: LETTERING.small,
      color: 'fieldInk',
    }),
  ];
}

const longest = (rings: Rings) => [...rings].sort((a, b) => b.length - a.length)[0] ?? [];

/** The relative humidity over the floor in bands of color, with the lines that decide. */
export function fieldLayer(
  view: PlanView,
  state: DistributionState,
  band?: Pick<DistributionBand, 'low' | 'high'>,
): { readonly floor: Item[]; readonly lines: Item[] } {
  const { map } = state;
  const parts = partsAbove(map, map.relativeHumidity, BAND_EDGES);
  const cut = (name: string, items: readonly Item[]): Item => ({
    kind: 'layer',
    name,
    within: view.outline,
    items,
  });
  const fill = BAND_EDGES.flatMap((edge, i): Item[] => {
    const rings = parts.get(edge) ?? [];
    return rings.length === 0
      ? []
      : [{ kind: 'area', outlines: rings.map((r) => closed(r, view)), fill: bandColor(i + 1) }];
  });
  const floor = [cut('air', [area(view.outline, { fill: bandColor(0) }), ...fill])];
  const lines = THRESHOLDS.flatMap((value) =>
    (parts.get(value) ?? []).flatMap((ring) => haloed(view, closed(ring, view), value === 0.7 ? 1.3 : 0.9)),
  );
  const doubtful = band === undefined ? [] : [band.low, band.high];
  const dashes = doubtful.flatMap((one) =>
    [...(partsAbove(one.map, one.map.relativeHumidity, [0.7]).get(0.7) ?? [])].flatMap((ring) =>
      haloed(view, closed(ring, view), 0.7, [3, 2.5]),
    ),
  );
  const labels = THRESHOLDS.flatMap((value) => {
    const at = middleOf(closed(longest(parts.get(value) ?? []), view), view);
    return at === undefined ? [] : valueLabel(view, at, percent(value));
  });
  noteScale(view, band !== undefined);
  return { floor, lines: [cut('air-lines', [...dashes, ...lines]), ...labels] };
}

/** Puts the scale into the key: what each color is, and the lines. */
function noteScale(view: PlanView, withBand: boolean): void {
  const { unit, legend } = view;
  const patch =
    (color: ColorName) =>
    (at: Spot): Item[] => [
      area(
        [
          { x: at.x - 11 * unit, y: at.y - 4 * unit },
          { x: at.x + 11 * unit, y: at.y - 4 * unit },
          { x: at.x + 11 * unit, y: at.y + 4 * unit },
          { x: at.x - 11 * unit, y: at.y + 4 * unit },
        ],
        { fill: color, stroke: pen(view, 'rule', 0.4) },
      ),
    ];
  const across = (at: Spot) => [
    { x: at.x - 11 * unit, y: at.y },
    { x: at.x + 11 * unit, y: at.y },
  ];
  for (const [i, words] of BAND_WORDS.entries()) legend.add(`air-${i}`, words, patch(bandColor(i)), 10);
  legend.add('air-line', '60, 70 and 80% RH', (at) => haloed(view, across(at), 1.1));
  if (withBand) {
    legend.add('air-doubt', '70% with least, most mixing', (at) => haloed(view, across(at), 0.7, [3, 2.5]));
  }
}

function arrow(view: PlanView, at: Spot, bearingDeg: number, length: number): Item[] {
  const turn = (bearingDeg * Math.PI) / 180;
  const along = { x: Math.sin(turn), y: -Math.cos(turn) };
  const side = { x: along.y, y: -along.x };
  const end = { x: at.x + along.x * length, y: at.y + along.y * length };
  const barb = 4 * view.unit;
  const head = (sign: number) => ({
    x: end.x - along.x * barb + sign * side.x * barb * 0.7,
    y: end.y - along.y * barb + sign * side.y * barb * 0.7,
  });
  return [...haloed(view, [at, end], 1.2), ...haloed(view, [head(1), end, head(-1)], 1.2)];
}

/** Machine, duct and fans with the way they blow. */
export function movers(
  view: PlanView,
  { machine, fans }: Pick<DistributionBand, 'machine' | 'fans'>,
): Item[] {
  const { unit, toSheet, legend } = view;
  const intake = toSheet(machine.intake);
  const outlet = toSheet(machine.outlet);
  const jet = Math.max(14 * unit, Math.min((machine.throwM ?? 0) * view.scale, 90 * unit));
  const dot = (at: Spot, radius: number): Item => ({
    kind: 'circle',
    at,
    radius: radius * unit,
    fill: 'fieldInk',
    stroke: { color: 'fieldHalo', width: 1.2 * unit },
  });
  legend.add('air-machine', 'Machine, with its jet', (at) => [
    ...arrow(view, at, 90, 11 * unit),
    dot({ x: at.x - 5 * unit, y: at.y }, 3.6),
  ]);
  if (fans.length > 0) {
    legend.add('air-fan', 'Fan, with its jet', (at) => [
      ...arrow(view, at, 90, 11 * unit),
      dot({ x: at.x - 5 * unit, y: at.y }, 2.4),
    ]);
  }
  return [
    ...(machine.ducted ? haloed(view, [intake, outlet], 1.6, [5, 2]) : []),
    ...(machine.bearingDeg === null ? [] : arrow(view, outlet, machine.bearingDeg, jet)),
    dot(intake, 4.2),
    ...(machine.ducted ? [dot(outlet, 2.6)] : []),
    ...fans.flatMap((fan) => [
      ...arrow(view, toSheet(fan.at), fan.bearingDeg, 22 * unit),
      dot(toSheet(fan.at), 2.8),
    ]),
  ];
}

type Arranged = DistributionBand;

function items(view: PlanView, band: Arranged): Item[] {
  const { floor, lines } = fieldLayer(view, band.value, band);
  const built = builtLayers(view, floor);
  const worst = view.toSheet(band.value.highest.at);
  return [
    ...built.items,
    ...lines,
    ...movers(view, band),
    ...valueLabel(view, worst, `dampest ${percent(band.value.highest.relativeHumidity)}`),
  ];
}

function content(title: string, band: Arranged): SheetContent {
  const { intakeRelativeHumidity: intake, farEndRelativeHumidity: far, shareAbove70 } = band.ranges;
  return {
    title,
    description: `Plan of the space with the relative humidity that its air comes to in steps of 5 points. The intake reads ${percent(intake.value)}, the far end ${percent(far.value)} (${percent(far.low)} to ${percent(far.high)}); ${percent(shareAbove70.value)} of the floor is above 70%. The table of this section gives the same.`,
    items: (view) => items(view, band),
    notes: [
      'Computed, with the middle of what mixing may be;',
      'dashed: with the least and the most. A ranking with a',
      'band and no reading. It does not hold close to the',
      'machine, where the jet is not flat.',
    ],
  };
}

/** The air of an arrangement on a sheet of its own; all maps are on one scale of color. */
export const airSheet = (
  job: Job,
  facts: Assessment,
  band: Arranged,
  title: string,
  room: Required<Room>,
): Drawing => sideSheet(job, facts, room, content(title, band));

/** The same for a screen. */
export const airPicture = (job: Job, facts: Assessment, band: Arranged, title: string, room: Room): Drawing =>
  sidePicture(job, facts, room, content(title, band));
