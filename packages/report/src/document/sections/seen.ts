import type { Assessment } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { planPicture } from '../../drawing/plan/picture.ts';
import { planSheet } from '../../drawing/plan/sheet.ts';
import { moment } from '../../words/dates.ts';
import { coverWords } from '../../words/names.ts';
import { both, tapeText } from '../../words/quantities.ts';
import {
  type Block,
  type Cell,
  cell,
  type Figure,
  figure,
  heading,
  type Inline,
  paragraph,
  type Section,
  soft,
  strong,
  type Table,
} from '../blocks.ts';

/** Lengths of whole spaces are read in feet with a tenth, not in sixteenths. */
const span = (meters: number) => both(meters, 'length', 1, 2);

function sizes(job: Job, assessment: Assessment): Table {
  const { geometry } = assessment;
  const { clearHeightM: height, closure } = geometry;
  const assumed = height.assumed;
  const rows: [name: string, value: Inline[], from?: string][] = [
    ['Floor', [figure(both(geometry.floorAreaM2, 'area', 0, 1))], 'geometry/floorAreaM2'],
    ['Around the walls', [figure(span(geometry.perimeterM))], 'geometry/perimeterM'],
    [
      'Clear height',
      [
        { text: tapeText(height.mean), look: 'figure', assumed },
        { text: ' on average, ' },
        {
          text: `${tapeText(height.minimum)} to ${tapeText(height.maximum)}`,
          look: 'figure',
          assumed,
        },
        { text: assumed ? '; assumed, none was taken' : `, ${job.plan.heights.length} taken` },
      ],
      'geometry/clearHeightM',
    ],
    [
      'Volume',
      [{ text: both(geometry.volumeM3, 'volume', 0, 1), look: 'figure', assumed }],
      'geometry/volumeM3',
    ],
    ['Bare earth', [figure(both(geometry.bareEarthM2, 'area', 0, 1))], 'geometry/bareEarthM2'],
    ['Piers', [figure(String(geometry.pierCount))], 'geometry/pierCount'],
    [
      'Open vents, net free area',
      [
        figure(both(geometry.openVentAreaM2, 'area', 1, 2)),
        { text: `, ${job.plan.vents.length} vents drawn` },
      ],
      'geometry/openVentAreaM2',
    ],
  ];
  if (closure !== undefined) {
    const precision = Number.isFinite(closure.precision) ? `, 1 in ${Math.round(closure.precision)}` : '';
    rows.push([
      'Closing of the tape',
      [
        figure(both(closure.misclosureM, 'length')),
        { text: `${precision}: ${closure.verdict}${closure.hint === undefined ? '' : `. ${closure.hint}`}` },
      ],
    ]);
  }
  return {
    kind: 'table',
    caption: 'Sizes of the space',
    headless: true,
    columns: [
      { title: 'What', weight: 30 },
      { title: 'Size', weight: 70 },
    ],
    rows: rows.map(([name, value]): Cell[] => [cell(soft(name)), cell(...value)]),
    rowsFrom: rows.map(([, , from]) => from ?? 'geometry'),
  };
}

function floors(assessment: Assessment): Block[] {
  const { zones, floorAreaM2 } = assessment.geometry;
  if (zones.length < 2) return [];
  return [
    {
      kind: 'table',
      caption: 'What the floor is made of',
      columns: [
        { title: 'Part of the floor', weight: 46 },
        { title: 'Cover', weight: 20 },
        { title: 'Area', weight: 22, align: 'end' },
        { title: 'Share', weight: 12, align: 'end' },
      ],
      rows: zones.map((z) => [
        cell({ text: z.name }),
        cell({ text: coverWords(z.cover) }),
        cell(figure(both(z.areaM2, 'area', 0, 1))),
        cell(figure(`${Math.round((100 * z.areaM2) / floorAreaM2)}%`)),
      ]),
      rowsFrom: zones.map((z) => `geometry/zones/${z.id}`),
    },
  ];
}

function plan(job: Job, assessment: Assessment): Figure {
  return {
    kind: 'figure',
    id: 'plan',
    from: 'geometry',
    caption: 'Plan of the space as surveyed. Dimensions are in feet and inches.',
    placement: 'sheet',
    onScreen: (room) => planPicture(job, assessment, room),
    onPaper: (room) => planSheet(job, assessment, room),
  };
}

function findings(job: Job): Block[] {
  if (job.findings.length === 0) return [paragraph('No findings were entered.')];
  const visits = new Set(job.findings.map((f) => `${f.who}, ${moment(f.when)}`));
  const one = visits.size === 1 ? ` All seen by ${[...visits][0]}.` : '';
  return [
    {
      kind: 'table',
      caption: `Findings, numbered as on the plan.${one}`,
      compact: one !== '',
      columns: [
        { title: 'No.', weight: 6, align: 'end' },
        { title: 'Finding', weight: one === '' ? 54 : 94 },
        ...(one === '' ? [{ title: 'Seen by, when', weight: 40 }] : []),
      ],
      rows: job.findings.map((f, i) => [
        cell(figure(String(i + 1))),
        findingLines(f),
        ...(one === '' ? [cell(soft(`${f.who}, ${moment(f.when)}`))] : []),
      ]),
      rowsFrom: job.findings.map((f) => `job/finding/${f.id}`),
    },
  ];
}

function findingLines({ title, place, note, photoIds }: Job['findings'][number]): Cell {
  const about: string[] = [];
  if (place.at === undefined) about.push(place.words ?? 'not placed on the plan');
  else if (place.words !== undefined) about.push(place.words);
  if (note !== undefined) about.push(note);
  if (photoIds.length > 0) about.push(`${photoIds.length} photo${photoIds.length === 1 ? '' : 's'}`);
  return about.length === 0 ? cell(strong(title)) : [[strong(title)], [soft(about.join('. '))]];
}

/** Sizes, plan and findings. */
export function seen(job: Job, assessment: Assessment): Section {
  return {
    id: 'seen',
    title: 'What was seen',
    from: 'geometry',
    blocks: [
      heading(2, 'What was seen', 'seen'),
      sizes(job, assessment),
      ...floors(assessment),
      plan(job, assessment),
      heading(3, 'Findings', 'findings'),
      ...findings(job),
    ],
  };
}
