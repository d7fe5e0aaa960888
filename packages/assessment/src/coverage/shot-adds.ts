import { isSurveyed, type Job, type Point } from '@undercroft/record';
import { Assumptions } from '../assumptions.ts';
import { coverageOf } from './coverage.ts';
import type { CoverageAssessment } from './coverage-assessment.ts';
import { type PictureView, pictureViews } from './picture-views.ts';
import type { SceneGeometry } from './scene.ts';

/** A picture that somebody is about to take. Sizes that are absent are taken as usual, see `USUAL_VIEW`. */
export interface Shot {
  readonly at: Point;
  /** Clockwise from the plan's y axis [degrees]. */
  readonly bearingDeg: number;
  readonly fieldOfViewDeg?: number;
  readonly rangeM?: number;
  readonly heightM?: number;
}

/** What a picture would show, and what it would add to those that were taken. */
export interface ShotAdds {
  readonly view: PictureView;
  /** Floor that it would show, and the part of it that no picture shows yet [m²]. */
  readonly floorM2: number;
  readonly newM2: number;
  /** Names of walls, piers, vents and bays of which no picture shows anything yet; of a pier, any face. */
  readonly newThings: readonly string[];
  /** Floor that no picture would show then [m²], and its parts. */
  readonly leftM2: number;
  readonly unseen: CoverageAssessment['unseen'];
}

const SHOT_ID = 'shot-to-be-taken';

/** The job as if the picture had been taken, after all others. */
function taken(job: Job, { at, heightM, ...look }: Shot): Job {
  const place = { at, ...(heightM === undefined ? {} : { heightM }) };
  const photo: Job['media']['photos'][number] = {
    id: SHOT_ID,
    sha256: '0'.repeat(64),
    bytes: 1,
    mediaType: 'image/jpeg',
    takenAt: '9999-12-31T23:59:59Z',
    who: 'nobody yet',
    place,
    ...look,
  };
  return { ...job, media: { ...job.media, photos: [...job.media.photos, photo] } };
}

const onlyShot = (pictures: readonly string[]) => pictures.length === 1 && pictures[0] === SHOT_ID;

/** Things of which only this picture shows something, each once. */
function newThings(shown: CoverageAssessment): string[] {
  const { walls, interiorWalls, vents, bays, piers } = shown;
  return [
    ...new Set([
      ...[...walls, ...interiorWalls, ...vents, ...bays]
        .filter((t) => onlyShot(t.pictures))
        .map((t) => t.name),
      ...piers.filter((p) => p.faces.some((f) => onlyShot(f.pictures))).map((p) => p.name),
    ]),
  ];
}

/**
 * What a picture would add; undefined for a job without walls. Costs what `coverageOf` costs.
 * @throws EngineError for sizes that make no sense
 */
export function shotAdds(job: Job, geometry: SceneGeometry, shot: Shot): ShotAdds | undefined {
  const then = taken(job, shot);
  if (!isSurveyed(then)) return undefined;
  const shown = coverageOf(then, geometry, new Assumptions());
  const own = shown.pictures.find((p) => p.id === SHOT_ID);
  const alone = { ...then, media: { ...then.media, photos: then.media.photos.slice(-1), clips: [] } };
  const [view] = pictureViews(alone, geometry);
  if (own === undefined || view === undefined) return undefined;
  return {
    view,
    floorM2: own.floorM2,
    newM2: own.newM2,
    newThings: newThings(shown),
    leftM2: shown.floor.areaM2 - shown.floor.seenM2,
    unseen: shown.unseen,
  };
}
