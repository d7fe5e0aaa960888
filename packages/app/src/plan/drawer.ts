import type { CausesAssessment } from '@undercroft/assessment';
import type { SurveyedJob } from '@undercroft/record';
import type {
  ChainSvg,
  ChainSvgOptions,
  PlanFacts,
  PlanSceneOptions,
  PlanSceneSvg,
} from '@undercroft/report';
import { wrap } from 'comlink';
import { latestWins } from '../worker/latest-wins.ts';

/** What the drawing worker answers. */
export interface Draw {
  scene(job: SurveyedJob, readings: PlanFacts['readings'], options: PlanSceneOptions): Promise<PlanSceneSvg>;
  chain(causes: CausesAssessment, options: ChainSvgOptions): Promise<ChainSvg>;
}

let drawer: Draw | undefined;

/** A worker of its own: a year that is being computed never keeps a drawing waiting. */
function theDrawer(): Draw {
  drawer ??= wrap<Draw>(
    new Worker(new URL('./draw-worker.ts', import.meta.url), { type: 'module', name: 'draw' }),
  ) as unknown as Draw;
  return drawer;
}

interface Ask {
  readonly job: SurveyedJob;
  readonly readings: PlanFacts['readings'];
  readonly options: PlanSceneOptions;
}

/** A queue for one view: what is asked while a drawing is made waits, and only the newest of it is drawn. */
export const sceneQueue = () =>
  latestWins(({ job, readings, options }: Ask) => theDrawer().scene(job, readings, options));

/** The chain of causes of an assessment, drawn. */
export const drawChain = (causes: CausesAssessment, options: ChainSvgOptions): Promise<ChainSvg> =>
  theDrawer().chain(causes, options);
