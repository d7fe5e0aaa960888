import { coverage as engine, geometry as engineGeometry } from '@undercroft/engine';
import { isSurveyed, type Job, type Point } from '@undercroft/record';
import { Assumptions } from '../assumptions.ts';
import { type SceneGeometry, sceneOf } from './scene.ts';
import { picturesOf } from './stations.ts';

/** Floor that one picture shows: each ring less the shadows that lie in it. A clip has several, one for each place. */
export interface PictureView {
  /** Id of the photo or clip in the record. */
  readonly id: string;
  readonly regions: readonly Pick<engine.VisibleRegion, 'polygon' | 'shadows'>[];
}

/**
 * The floor that each picture of a job shows, in the order in which they were taken; none for a job without walls.
 * @throws EngineError for sizes of the plan that make no sense
 */
export function pictureViews(job: Job, geometry: SceneGeometry): PictureView[] {
  if (!isSurveyed(job)) return [];
  const { scene } = sceneOf(job, geometry);
  return picturesOf(job, new Assumptions()).placed.map(({ picture, stations }) => ({
    id: picture.id,
    regions: stations.map((station) => {
      const { polygon, shadows } = engine.visibleRegion(scene, station);
      return { polygon, shadows };
    }),
  }));
}

/** Ids of the pictures that show a place of the floor. */
export function picturesShowing(views: readonly PictureView[], at: Point): string[] {
  const isIn = (ring: readonly Point[]) => engineGeometry.pointInPolygon(at, ring, 0) !== 'outside';
  return views
    .filter(({ regions }) =>
      regions.some(({ polygon, shadows }) => polygon.length > 2 && isIn(polygon) && !shadows.some(isIn)),
    )
    .map(({ id }) => id);
}
