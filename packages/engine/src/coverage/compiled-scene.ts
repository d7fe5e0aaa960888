import type { Notice } from '../numerics/notice.ts';
import { type Bar, barsOf } from './bars.ts';
import { type Blockers, blockersOf } from './blockers.ts';
import type { CoverageScene } from './scene.ts';
import { type Solids, solidsOf } from './solids.ts';

/** A scene made ready for looking around in. */
export interface CompiledScene {
  readonly scene: CoverageScene;
  readonly solids: Solids;
  readonly blockers: Blockers;
  readonly bars: readonly Bar[];
  readonly notices: readonly Notice[];
}

/**
 * Checks a scene and makes it ready.
 * @throws EngineError `bad-geometry` for an outline without area, `not-finite` or `out-of-range` for places and sizes
 */
export function compileScene(scene: CoverageScene): CompiledScene {
  const solids = solidsOf(scene);
  const { bars, notices } = barsOf(scene);
  return { scene, solids, blockers: blockersOf(solids), bars, notices };
}
