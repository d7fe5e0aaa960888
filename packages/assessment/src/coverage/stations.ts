import { coverage as engine, type Notice } from '@undercroft/engine';
import type { Job, Media } from '@undercroft/record';
import type { Assumptions } from '../assumptions.ts';
import type { PictureShown, PictureUnplaced } from './coverage-assessment.ts';

type Photo = Media['photos'][number];
type Clip = Media['clips'][number];

/** A picture with the stations that it amounts to: one for a photo, many along the way of a clip. */
export interface PlacedPicture {
  readonly picture: Omit<PictureShown, 'floorM2' | 'newM2' | 'shows'>;
  readonly stations: readonly engine.Station[];
}

export interface PicturesOfJob {
  readonly placed: readonly PlacedPicture[];
  readonly unplaced: readonly PictureUnplaced[];
  readonly notices: readonly Notice[];
}

type Shot = { readonly kind: 'photo'; readonly item: Photo } | { readonly kind: 'clip'; readonly item: Clip };

const NO_PLACE = 'It has no place on the plan, so it shows nothing for certain.';
const NO_DIRECTION = 'Nobody noted where the camera pointed, so it shows nothing for certain.';

/** What was assumed of pictures, each once for all of them. */
function viewOf({ fieldOfViewDeg, rangeM }: Photo | Clip, place: Photo['place']) {
  const { heightM } = place;
  const { USUAL_VIEW } = engine;
  const assumed: ('fieldOfViewDeg' | 'rangeM')[] = [];
  if (fieldOfViewDeg === undefined) assumed.push('fieldOfViewDeg');
  if (rangeM === undefined) assumed.push('rangeM');
  return {
    view: {
      fieldOfViewDeg: Math.max(0.1, fieldOfViewDeg ?? USUAL_VIEW.fieldOfViewDeg),
      rangeM: Math.max(0.01, rangeM ?? USUAL_VIEW.rangeM),
    },
    height: heightM !== undefined && heightM > 0 ? { heightM } : {},
    assumed,
  };
}

function stationsOfShot({ kind, item }: Shot, height: { readonly heightM?: number }, view: View) {
  const { id, place, bearingDeg } = item;
  if (kind === 'clip' && item.marks.length > 0) {
    const bearing = bearingDeg === undefined ? {} : { bearingDeg };
    return engine.stationsOfClip({ id, marks: item.marks, ...bearing, ...view, ...height });
  }
  // All around, no bearing is needed.
  const known = bearingDeg ?? (view.fieldOfViewDeg === 360 ? 0 : undefined);
  if (place.at === undefined || known === undefined) return { stations: [], notices: [] };
  return { stations: [{ id, at: place.at, bearingDeg: known, ...view, ...height }], notices: [] };
}

type View = { readonly fieldOfViewDeg: number; readonly rangeM: number };

function noteAssumed(placed: readonly PlacedPicture[], assumptions: Assumptions): void {
  const without = (part: 'fieldOfViewDeg' | 'rangeM') =>
    placed.filter((p) => p.picture.assumed.includes(part)).length;
  const { fieldOfViewDeg, rangeM } = engine.USUAL_VIEW;
  const some = (count: number) => `Not noted for ${count} of ${placed.length} pictures; `;
  const angle = without('fieldOfViewDeg');
  if (angle > 0) {
    const why = `${some(angle)}a phone held on its side takes in about this much (common practice, no source).`;
    assumptions.note('pictureFieldOfView', 'Angle that a picture takes in', fieldOfViewDeg, why, '°');
  }
  const range = without('rangeM');
  if (range > 0) {
    const why = `${some(range)}a head lamp shows seams and cracks to about here (common practice, no source).`;
    assumptions.note('pictureRange', 'How far a picture shows detail', rangeM, why, 'm');
  }
}

/** Photos and clips of a job in the order in which they were taken, with what each amounts to. */
export function picturesOf(job: Job, assumptions: Assumptions): PicturesOfJob {
  const { photos, clips } = job.media;
  const shots: Shot[] = [
    ...photos.map((item) => ({ kind: 'photo', item }) as const),
    ...clips.map((item) => ({ kind: 'clip', item }) as const),
  ];
  const time = new Map(shots.map(({ item }) => [item, Date.parse(item.takenAt)]));
  shots.sort((a, b) => time.get(a.item)! - time.get(b.item)! || (a.item.id < b.item.id ? -1 : 1));
  const placed: PlacedPicture[] = [];
  const unplaced: PictureUnplaced[] = [];
  const notices: Notice[] = [];
  for (const shot of shots) {
    const { kind, item } = shot;
    const { view, height, assumed } = viewOf(item, item.place);
    const found = stationsOfShot(shot, height, view);
    const [first] = found.stations;
    notices.push(...found.notices);
    if (first === undefined) {
      const hasPlace = item.place.at !== undefined || (kind === 'clip' && item.marks.length > 0);
      unplaced.push({ id: item.id, kind, why: hasPlace ? NO_DIRECTION : NO_PLACE });
      continue;
    }
    const picture = {
      id: item.id,
      kind,
      number: placed.length + 1,
      takenAt: item.takenAt,
      who: item.who,
      at: { xM: first.at.xM, yM: first.at.yM },
      bearingDeg: first.bearingDeg,
      ...view,
      assumed,
      ...(item.caption === undefined ? {} : { caption: item.caption }),
    };
    placed.push({ picture, stations: found.stations });
  }
  noteAssumed(placed, assumptions);
  return { placed, unplaced, notices };
}
