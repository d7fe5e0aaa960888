export type {
  CoverageScene,
  JoistBay,
  SceneDuct,
  SceneGirder,
  SceneObstacle,
  ScenePier,
  SceneThing,
  SceneVent,
  SceneWall,
  Station,
} from './scene.ts';
export { USUAL_VIEW } from './scene.ts';
export type { VisibleRegion } from './visible-region.ts';
export { MAX_INCIDENCE_DEG, visibleRegion } from './visible-region.ts';
