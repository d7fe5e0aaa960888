import type { Assessment, CrawlPlanShown } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import type { Job, Point } from '@undercroft/record';
import { area, type Drawing, type Item, line, type Room, type Spot } from '../display-list.ts';
import { onSheet } from '../plan/structure.ts';
import { lettering, type PlanView, pen } from '../plan/view.ts';
import { along, around, heading, leftOf, shift } from '../polygon.ts';
import { builtLayers } from './coverage-drawing.ts';
import { type SheetContent, sidePicture, sideSheet } from './side-sheet.ts';
import { floorShownLayer } from './unseen-layers.ts';

const way = (view: PlanView) => pen(view, 'accent', 1.1, [5, 2.2]);

/** The way from stop to stop, with an arrow in the middle of each leg. */
function wayItems(view: PlanView, path: readonly Point[]): Item[] {
  const spots = path.map(view.toSheet);
  if (spots.length < 2) return [];
  const middle = Math.floor((spots.length - 1) / 2);
  const [a, b] = [spots[middle], spots[middle + 1]];
  const tip = along(a, b, 0.55);
  const direction = heading(a, b);
  const back = shift(tip, direction, -4.2 * view.unit);
  return [
    line(spots, way(view)),
    area(
      [
        tip,
        shift(back, leftOf(direction), 2.2 * view.unit),
        shift(back, leftOf(direction), -2.2 * view.unit),
      ],
      {
        fill: 'accent',
      },
    ),
  ];
}

const RADIUS = 5.2;

function stopItems(view: PlanView, at: Spot, number: string, bearings: readonly number[]): Item[] {
  const { unit } = view;
  const rays = bearings.flatMap((bearing) => {
    const direction = onSheet(bearing);
    const from = shift(at, direction, RADIUS * unit);
    const tip = shift(at, direction, 13.5 * unit);
    const back = shift(tip, direction, -3.4 * unit);
    const side = leftOf(direction);
    return [
      line([from, back], pen(view, 'ink', 0.9)),
      area([tip, shift(back, side, 1.6 * unit), shift(back, side, -1.6 * unit)], { fill: 'ink' }),
    ];
  });
  return [
    ...rays,
    { kind: 'circle', at, radius: RADIUS * unit, fill: 'accent', stroke: pen(view, 'sheet', 0.6) },
    lettering(view, { x: at.x, y: at.y + 2.6 * unit }, number, {
      align: 'middle',
      color: 'onAccent',
      face: 'strong',
    }),
  ];
}

function crawlItems(view: PlanView, plan: CrawlPlanShown, floor: readonly Item[]): Item[] {
  const { unit, legend, places } = view;
  const built = builtLayers(view, floor);
  const ways = [...plan.stops.map((s) => s.path), plan.wayBack].flatMap((path) => wayItems(view, path));
  const stops = plan.stops.flatMap(({ at, number, shots }) => {
    const spot = view.toSheet(at);
    places.take(around(spot, 14 * unit));
    return stopItems(
      view,
      spot,
      String(number),
      shots.map((s) => s.bearingDeg),
    );
  });
  if (stops.length > 0) {
    legend.add('stop', 'Stop of the crawl, by number', (at) => stopItems(view, at, '1', []), 15);
    legend.add('way', 'Way of the crawl', (at) => [
      line(
        [
          { x: at.x - 11 * unit, y: at.y },
          { x: at.x + 11 * unit, y: at.y },
        ],
        way(view),
      ),
    ]);
    legend.add('point', 'Where to point the camera', (at) =>
      stopItems(view, { x: at.x - 14 * unit, y: at.y }, '', [90]).slice(0, 2),
    );
  }
  return [
    ...built.items,
    { kind: 'layer', name: 'crawl-way', items: ways },
    { kind: 'layer', name: 'crawl-stops', items: stops },
    ...built.labels(),
  ];
}

function content(assessment: Assessment, plan: CrawlPlanShown): SheetContent {
  const { stops, lengthM, what } = plan;
  const length = units.formatQuantity(lengthM, 'length', 'us', 0);
  const shots = stops.reduce((sum, s) => sum + s.shots.length, 0);
  const { coverage } = assessment;
  return {
    title: what === 'rest' ? 'Crawl for what is not shown yet' : 'Crawl that shows everything',
    description: `Plan of the space with a crawl of ${stops.length} stops and ${shots} pictures, ${length} from the access door and back, and the directions to point the camera at each. The table of this section gives the same.`,
    items: (view) =>
      crawlItems(
        view,
        plan,
        coverage === undefined || what === 'all'
          ? [area(view.outline, { fill: 'sheet' })]
          : floorShownLayer(view, coverage),
      ),
    notes: [
      `${stops.length} stops, ${shots} pictures, about ${length}.`,
      'Passable by the drawing; never a word',
      'that it is safe to enter.',
    ],
  };
}

/** The crawl for paper, on a sheet of its own that the surveyor takes along. */
export const crawlSheet = (
  job: Job,
  assessment: Assessment,
  plan: CrawlPlanShown,
  room: Required<Room>,
): Drawing => sideSheet(job, assessment, room, content(assessment, plan));

/** The crawl for a screen. */
export const crawlPicture = (job: Job, assessment: Assessment, plan: CrawlPlanShown, room: Room): Drawing =>
  sidePicture(job, assessment, room, content(assessment, plan));
