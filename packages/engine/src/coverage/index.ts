export type { PlannedView } from './candidate-stations.ts';
export { candidateStations } from './candidate-stations.ts';
export type { MarkedClip } from './clip-stations.ts';
export { stationsOfClip } from './clip-stations.ts';
export type { CoverProblem, CoverSolution, CoverSolver } from './cover-problem.ts';
export type { Coverage, StationShare, UnseenRegion } from './coverage.ts';
export { coverage } from './coverage.ts';
export type { CrawlPlan, HiddenThing, PlannedStop, PlanOptions } from './crawl-plan.ts';
export { planCrawl, planCrawlWith } from './crawl-plan.ts';
export type { CrawlRoute, RouteOptions, RouteStop } from './crawl-route.ts';
export { crawlRoute } from './crawl-route.ts';
export type { Interval } from './intervals.ts';
export type { JoistRun } from './joist-bays.ts';
export { bayReachM, joistBays } from './joist-bays.ts';
export type { LineSeen } from './line-seen.ts';
export type { Crawler } from './passable-floor.ts';
export { USUAL_CRAWLER } from './passable-floor.ts';
export { pointings } from './pointings.ts';
export type { Claim, Proof, ProofOptions } from './proof.ts';
export { proofOf } from './proof.ts';
export type { MissingProof, ProofSubject } from './proof-parts.ts';
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
export { setCover, setCoverWith } from './set-cover.ts';
export type { Sight, SightKind } from './sights.ts';
export { coverageSources } from './sources.ts';
export type { StandingThing } from './stands-in.ts';
export type { VisibleRegion } from './visible-region.ts';
export { MAX_INCIDENCE_DEG, visibleRegion } from './visible-region.ts';
