import type { CrawlPlanShown } from '@undercroft/assessment';
import { noticeLines } from './notices.ts';
import { percent, taped, tapedFrom, toward } from './print-coverage.ts';
import { heading, wrap } from './wrap.ts';

/** What is known of how good the plan is. */
function proofText({
  stops,
  stationsProven,
  stationsLowerBound,
  lengthProven,
  lengthLowerBoundM,
}: CrawlPlanShown) {
  const stations = stationsProven
    ? 'No plan with fewer stops shows as much'
    : `Fewer than ${stationsLowerBound} stops cannot show as much, ${stops.length} do`;
  const way = lengthProven
    ? 'no way through them is shorter'
    : `no way through them is shorter than ${taped(lengthLowerBoundM)}`;
  return `${stations} from places 1 m apart; ${way}.`;
}

/** A planned crawl for people: stand here, point there. */
export function crawlLines(plan: CrawlPlanShown, columns: number): string[] {
  const { stops, what, lengthM, view, outOfSight, floorShare } = plan;
  const title = what === 'all' ? 'A crawl that shows everything' : 'A crawl for what is not shown yet';
  if (stops.length === 0 && plan.notices.length === 0) {
    return [...heading(title), ...wrap('Nothing is left that a crawl could show.', columns, '  ')];
  }
  const shots = stops.reduce((sum, s) => sum + s.shots.length, 0);
  const hidden = [...new Set(outOfSight.map((h) => h.name ?? 'part of the floor'))];
  return [
    ...heading(title),
    ...wrap(
      `${stops.length} stops, ${shots} pictures, ${taped(lengthM)} of crawling from the access door and back. Camera: ${Math.round(view.fieldOfViewDeg)}° wide, lamp good to ${taped(view.rangeM)}. Then ${percent(floorShare)} of the floor is shown.`,
      columns,
      '  ',
    ),
    ...wrap(proofText(plan), columns, '  '),
    ...stops.flatMap((stop) => [
      ...wrap(
        `Crawl ${taped(stop.legM)}. Stand ${tapedFrom(stop.fromWalls)}.`,
        columns,
        `${String(stop.number).padStart(4)}  `,
      ),
      ...stop.shots.flatMap(({ id, compassDeg }) =>
        wrap(`Point ${toward(compassDeg)}.`, columns, `      ${id.padEnd(4)} `),
      ),
    ]),
    ...(hidden.length === 0
      ? []
      : wrap(
          `Parts of these are seen from no place that one can crawl to: ${hidden.join(', ')}.`,
          columns,
          '  ',
        )),
    ...noticeLines(plan.notices, columns),
    ...wrap(
      'The plan says what is passable by the drawing, never that it is safe to enter. Before going in: air, gas, wires, water, and somebody outside.',
      columns,
      '  ',
    ),
  ];
}
