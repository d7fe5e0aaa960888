import { type Assessment, type CrawlPlanShown, type CrawlStop, compassWord } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { crawlPicture, crawlSheet } from '../../drawing/coverage/crawl-drawing.ts';
import { plain } from '../../words/names.ts';
import { tapeText } from '../../words/quantities.ts';
import { type Block, type Cell, cell, figure, heading, paragraph } from '../blocks.ts';
import type { ReportExtras } from '../extras.ts';

function introduction({ stops, lengthM, view, stationsProven, stationsLowerBound }: CrawlPlanShown): string {
  const shots = stops.reduce((sum, s) => sum + s.shots.length, 0);
  const fewest = stationsProven
    ? 'No plan with fewer stops, chosen from places 1 m apart, shows as much.'
    : `Fewer than ${stationsLowerBound} stops cannot show as much; these ${stops.length} do.`;
  return `${stops.length} stops and ${shots} pictures, ${tapeText(lengthM)} of crawling from the access door and back, with a camera that takes in ${Math.round(view.fieldOfViewDeg)}° and a lamp good to ${tapeText(view.rangeM)}. ${fewest}`;
}

function stopRow({ number, fromWalls, legM, shots }: CrawlStop): Cell[] {
  return [
    cell(figure(String(number))),
    cell(figure(tapeText(legM))),
    cell({ text: fromWalls.map((w) => `${tapeText(w.distanceM)} from the ${w.name}`).join(', ') }),
    shots.map((s) => [
      figure(s.id),
      { text: `  ${compassWord(s.compassDeg)}, ` },
      figure(`${s.compassDeg}°`),
    ]),
  ];
}

/** A crawl to take along: where to stand and where to point. */
export function crawl(job: Job, assessment: Assessment, { crawl: plan }: ReportExtras): Block[] {
  if (plan === undefined) return [];
  const title = plan.what === 'rest' ? 'A crawl for what is not shown yet' : 'A crawl that shows everything';
  if (plan.stops.length === 0) {
    return [
      heading(3, title, 'crawl'),
      paragraph('Nothing is left that a crawl could show.'),
      ...plan.notices.map((n) => paragraph(plain(n.message))),
    ];
  }
  const hidden = [...new Set(plan.outOfSight.map((h) => h.name ?? 'part of the floor'))];
  return [
    heading(3, title, 'crawl'),
    paragraph(introduction(plan)),
    ...(hidden.length === 0
      ? []
      : [paragraph(`Parts of these are seen from no place that one can crawl to: ${hidden.join(', ')}.`)]),
    ...plan.notices.map((n) => paragraph(plain(n.message))),
    paragraph(
      'The plan says what is passable by the drawing, never that it is safe to enter. Before going in: air, gas, wires, water, and somebody outside.',
      'note',
    ),
    {
      kind: 'figure',
      id: 'crawl-plan',
      caption: 'The crawl, with its stops and the directions to point the camera.',
      placement: 'sheet',
      onScreen: (room) => crawlPicture(job, assessment, plan, room),
      onPaper: (room) => crawlSheet(job, assessment, plan, room),
    },
    {
      kind: 'table',
      caption: 'Stand here, point there; directions are from true north',
      columns: [
        { title: 'Stop', weight: 8, align: 'end' },
        { title: 'Crawl', weight: 20, align: 'end' },
        { title: 'Stand', weight: 44 },
        { title: 'Point', weight: 28 },
      ],
      rows: plan.stops.map(stopRow),
    },
    paragraph(
      'Numbers of pictures are the stop and a letter; write them on the photo or say them in the clip.',
      'note',
    ),
  ];
}
