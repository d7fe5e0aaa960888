export type { MarkedClip } from './clip-stations.ts';
export { stationsOfClip } from './clip-stations.ts';
export type { Coverage, StationShare, UnseenRegion } from './coverage.ts';
export { coverage } from './coverage.ts';
export type { Interval } from './intervals.ts';
export type { JoistRun } from './joist-bays.ts';
export { bayReachM, joistBays } from './joist-bays.ts';
export type { LineSeen } from './line-seen.ts';
export type { Claim, MissingProof, Proof, ProofOptions, ProofSubject } from './proof.ts';
export { proofOf } from './proof.ts';
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
export type { CoverageOptions } from './scene-seen.ts';
export type { StandingThing } from './stands-in.ts';
export type { VisibleRegion } from './visible-region.ts';
export { MAX_INCIDENCE_DEG, visibleRegion } from './visible-region.ts';
