import type { PictureShown, SeenThing } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import type { WithCoverage } from '../../drawing/coverage/coverage-drawing.ts';
import { ranges } from '../../drawing/coverage/stations.ts';
import { thumbnail } from '../../drawing/coverage/thumbnail.ts';
import { readablePicture } from '../../pictures/readable.ts';
import { day, moment } from '../../words/dates.ts';
import { both } from '../../words/quantities.ts';
import { type Block, type Cell, type GalleryEntry, heading, paragraph, soft, strong } from '../blocks.ts';
import type { ReportExtras } from '../extras.ts';

type NameOf = (thing: SeenThing) => string;

/** What things are called, out of the parts of the coverage that name them. */
function namesIn({ coverage }: WithCoverage): NameOf {
  const names = new Map<string, string>();
  const add = (kind: string, list: readonly { readonly id: string; readonly name: string }[]) => {
    for (const { id, name } of list) names.set(`${kind} ${id}`, name);
  };
  add('wall', coverage.walls);
  add('interior-wall', coverage.interiorWalls);
  add('pier', coverage.piers);
  add('vent', coverage.vents);
  return ({ kind, id }) => names.get(`${kind} ${id}`) ?? id;
}

/** Numbered things in short: `piers 3–5`; walls by name. Joist bays are told in the table. */
function showsWords(shows: readonly SeenThing[], nameOf: NameOf): string {
  const numbered = (kind: SeenThing['kind'], one: string) => {
    const numbers = shows
      .filter((s) => s.kind === kind)
      .map((s) => Number(nameOf(s).slice(nameOf(s).lastIndexOf(' ') + 1)));
    if (numbers.length === 0) return [];
    return [`${one}${numbers.length === 1 ? '' : 's'} ${ranges(numbers)}`];
  };
  const walls = shows.filter((s) => s.kind === 'wall' || s.kind === 'interior-wall').map(nameOf);
  return [...numbered('pier', 'pier'), ...numbered('vent', 'vent'), ...new Set(walls)].join(', ');
}

/** What all pictures have in common and need not be told with each: who took them, and on which day. */
function roundOf(
  pictures: readonly PictureShown[],
): { readonly who: string; readonly on: string } | undefined {
  const rounds = new Set(pictures.map((p) => `${day(p.takenAt)}\n${p.who}`));
  if (rounds.size !== 1) return undefined;
  const [on, who] = [...rounds][0].split('\n');
  return { who, on };
}

function textOf(picture: PictureShown, nameOf: NameOf, oneRound: boolean): Cell {
  const { number, kind, caption, takenAt, who, floorM2, newM2, shows, assumed } = picture;
  const things = showsWords(shows, nameOf);
  const fresh = newM2 < 0.05 ? 'none of it new' : `${both(newM2, 'area', 0, 1)} of it new`;
  const guess = assumed.length === 0 ? '' : ' View partly assumed.';
  return [
    [
      strong(`${number}`),
      { text: caption === undefined ? (kind === 'clip' ? '  Clip' : '') : `  ${caption}` },
    ],
    [soft(oneRound ? takenAt.slice(11, 16) : `${moment(takenAt)}, ${who}`)],
    [
      {
        text: `Floor ${both(floorM2, 'area', 0, 1)}, ${fresh}${things === '' ? '' : `; ${things}`}.${guess}`,
      },
    ],
  ];
}

/** Pictures in the order in which they were taken, each with where it was taken and what it shows. */
export function gallery(job: Job, assessment: WithCoverage, { pictures }: ReportExtras): Block[] {
  const { coverage } = assessment;
  if (coverage.pictures.length === 0) return [];
  const nameOf = namesIn(assessment);
  const files = new Map(
    [...job.media.photos, ...job.media.clips].map(({ id, sha256 }) => [id, pictures?.get(sha256)]),
  );
  const round = roundOf(coverage.pictures);
  const entries = coverage.pictures.map((picture): GalleryEntry => {
    const bytes = picture.kind === 'clip' ? undefined : files.get(picture.id);
    const readable = bytes === undefined ? null : readablePicture(bytes);
    const things = showsWords(picture.shows, nameOf);
    const about = picture.caption === undefined ? '' : ` ${picture.caption}.`;
    return {
      id: `picture-${picture.number}`,
      from: `coverage/pictures/${picture.id}`,
      description: `Picture ${picture.number}.${about} Taken ${moment(picture.takenAt)} by ${picture.who}${things === '' ? '' : `; in it: ${things}`}.`,
      ...(readable === null ? {} : { picture: readable }),
      plan: (room) => thumbnail(job, assessment, picture, room),
      text: textOf(picture, nameOf, round !== undefined),
    };
  });
  const missing = entries.filter((e) => e.picture === undefined).length;
  const taken = round === undefined ? [] : [paragraph(`All taken by ${round.who} on ${round.on}.`, 'note')];
  const note =
    missing === 0
      ? []
      : [
          paragraph(
            `${missing === entries.length ? 'None of the pictures is' : `${missing} of ${entries.length} pictures are not`} at hand here or printable; what they show is reckoned from place and direction.`,
            'note',
          ),
        ];
  return [heading(3, 'Pictures', 'pictures'), ...taken, ...note, { kind: 'gallery', entries }];
}
