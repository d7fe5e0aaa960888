import type { Assessment, CoverageAssessment, LineShown, UnseenPart } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import type { WithCoverage } from '../../drawing/coverage/coverage-drawing.ts';
import { coveragePicture, coverageSheet } from '../../drawing/coverage/coverage-drawing.ts';
import { capital, coverWords, plain } from '../../words/names.ts';
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
import type { ReportExtras } from '../extras.ts';
import { claims } from './claims.ts';
import { crawl } from './crawl.ts';
import { gallery } from './gallery.ts';

const areaWords = (m2: number) => both(m2, 'area', 0, 1);

/** A share in whole percent; in tenths where whole ones would make it seem everything. */
export function shareText(share: number): string {
  const rounded = Math.round(100 * share);
  return rounded === 100 && share < 1 ? `${Math.floor(1000 * share) / 10}%` : `${rounded}%`;
}

/** A line is shown where this much of it is. Common practice, no source. */
const ENOUGH = 0.9;

function lineRow(title: string, list: readonly LineShown[]): [string, Inline[]][] {
  const open = list.filter((l) => l.share !== undefined);
  if (open.length === 0) return [];
  const rest = open.filter((l) => (l.share ?? 0) < ENOUGH);
  const names = rest.slice(0, 8).map((l) => `${l.name} ${shareText(l.share ?? 0)}`);
  const more = rest.length > names.length ? `, ${rest.length - names.length} more` : '';
  const which: Inline[] = rest.length === 0 ? [] : [{ text: `; not wholly: ${names.join(', ')}${more}` }];
  return [[title, [figure(`${open.length - rest.length} of ${open.length}`), ...which]]];
}

function facts({ floor, pictures, unplaced, walls, piers, vents, bays }: CoverageAssessment): Table {
  const hidden = piers.filter((p) => p.facesShown < p.facesOpen);
  const names = hidden.slice(0, 8).map((p) => `${p.name} ${p.facesShown} of ${p.facesOpen} faces`);
  const more = hidden.length > names.length ? `, ${hidden.length - names.length} more` : '';
  const bayCount = bays.filter((b) => (b.share ?? 0) >= ENOUGH).length;
  const rows: [string, Inline[]][] = [
    [
      'Pictures with a place and a direction',
      [
        figure(String(pictures.length)),
        ...(unplaced.length === 0 ? [] : [{ text: `; ${unplaced.length} without, which count for nothing` }]),
      ],
    ],
    [
      'Floor in a picture',
      [
        figure(`${areaWords(floor.seenM2)}, ${shareText(floor.share)}`),
        { text: ' of ' },
        figure(areaWords(floor.areaM2)),
        ...(floor.coveredM2 < 0.05
          ? []
          : [{ text: '; ' }, figure(areaWords(floor.coveredM2)), { text: ' under obstacles besides' }]),
      ],
    ],
    ...lineRow('Walls', walls),
    ...(piers.length === 0
      ? []
      : [
          [
            'Piers on every face',
            [
              figure(`${piers.length - hidden.length} of ${piers.length}`),
              ...(hidden.length === 0 ? [] : [{ text: `; ${names.join(', ')}${more}` }]),
            ],
          ] as [string, Inline[]],
        ]),
    ...lineRow('Vents', vents),
    ...(bays.length === 0
      ? []
      : [['Joist bays up to the subfloor', [figure(`${bayCount} of ${bays.length}`)]] as [string, Inline[]]]),
  ];
  return {
    kind: 'table',
    caption: 'What the pictures show',
    headless: true,
    columns: [
      { title: 'What', weight: 30 },
      { title: 'How much', weight: 70 },
    ],
    rows: rows.map(([name, value]): Cell[] => [cell(soft(name)), cell(...value)]),
  };
}

function unseenRow({ areaM2, fromWalls, standsIn, covers }: UnseenPart): Cell[] {
  const place = fromWalls.map((w) => `${tapeText(w.distanceM)} from the ${w.name}`).join(', ');
  const telling = standsIn.filter((s) => ['obstacle', 'zone', 'finding', 'equipment'].includes(s.kind));
  const rest = standsIn.filter((s) => !telling.includes(s)).map((s) => s.name);
  const things: Inline[] = [
    ...telling.map((s, i) => strong(i === 0 ? capital(s.name) : `, ${s.name}`)),
    ...(rest.length === 0 ? [] : [soft(`${telling.length === 0 ? '' : '; '}${rest.join(', ')}`)]),
  ];
  return [
    cell(figure(areaWords(areaM2))),
    cell({ text: place }),
    cell({ text: covers.map(coverWords).join(', ') }),
    things.length === 0 ? cell(soft('nothing')) : cell(...things),
  ];
}

function unseen({ unseen: parts, floor }: CoverageAssessment): Block[] {
  if (parts.length === 0) return [];
  const scattered =
    floor.scatteredM2 < 0.05 ? '' : ` ${areaWords(floor.scatteredM2)} more lies in small places.`;
  return [
    heading(3, 'What was not shown', 'not-in-picture'),
    paragraph(
      `What no picture shows is not known to be bad, and it is not known to be good: somebody has to look.${scattered}`,
      'note',
    ),
    {
      kind: 'table',
      caption: 'Floor in no picture, and what is drawn there',
      columns: [
        { title: 'Area', weight: 18, align: 'end' },
        { title: 'Where, to a place in it', weight: 34 },
        { title: 'Ground as drawn', weight: 16 },
        { title: 'What stands there as drawn', weight: 32 },
      ],
      rows: parts.map(unseenRow),
      rowsFrom: parts.map(() => 'coverage/unseen'),
    },
  ];
}

function plan(job: Job, assessment: WithCoverage): Figure {
  return {
    kind: 'figure',
    id: 'coverage-plan',
    caption: 'What the pictures show: light floor is in a picture, dark hatched floor in none.',
    placement: 'sheet',
    onScreen: (room) => coveragePicture(job, assessment, room),
    onPaper: (room) => coverageSheet(job, assessment, room),
  };
}

/** What the pictures show, what they do not, and what they prove. */
export function shown(job: Job, assessment: Assessment, extras: ReportExtras): Section | undefined {
  const { coverage } = assessment;
  if (coverage === undefined) return undefined;
  const whole = { ...assessment, coverage };
  return {
    id: 'shown',
    title: 'What was shown',
    from: 'coverage',
    blocks: [
      heading(2, 'What was shown', 'shown'),
      ...coverage.notices.map((n) => paragraph(plain(n.message))),
      ...(coverage.pictures.length === 0 ? [] : [facts(coverage), plan(job, whole), ...unseen(coverage)]),
      ...claims(coverage),
      ...gallery(job, whole, extras),
      ...crawl(job, assessment, extras),
    ],
  };
}
