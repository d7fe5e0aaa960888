import { partitionAreas } from '../geometry/partition-areas.ts';
import type { Point } from '../geometry/point.ts';
import type { Notice } from '../numerics/notice.ts';
import { compileScene } from './compiled-scene.ts';
import type { CoverageScene, Station } from './scene.ts';
import { shadowRings } from './shadows.ts';
import { viewFrom } from './station-view.ts';

/** The floor that one station sees. */
export interface VisibleRegion {
  /**
   * Ring of what walls, piers and range leave in view; empty when the station stands nowhere near the open floor. The
   * arcs of the range are chords at most 1 mm inside them.
   */
  readonly polygon: readonly Point[];
  /** Rings of floor hidden by low obstacles, ducts, girders and lintels; they may overlap and stick out. */
  readonly shadows: readonly (readonly Point[])[];
  /**
   * Floor seen: within the polygon less the shadows [m²]. Without shadows exact up to rounding; with them arcs count
   * as chords, which is at most 0.7 mm times their length too little.
   */
  readonly areaM2: number;
  readonly notices: readonly Notice[];
}

/** A surface seen flatter than this from its normal shows no detail, degrees. Common practice, no source. */
export const MAX_INCIDENCE_DEG = 75;

/**
 * What part of the floor a station sees, from its place, bearing, field of view and range.
 *
 * Walls, interior walls, piers, obstacles of unknown height and places of hardly any clear height hide all that lies
 * behind them. Bodies of known height over the floor hide what the line from the lamp to the floor would have to pass
 * through them to reach (see `hiddenBehind`). The vertical field of view is not looked at.
 * @throws EngineError as `compileScene` and for a station with figures that are no figures or out of range
 */
export function visibleRegion(scene: CoverageScene, station: Station): VisibleRegion {
  const compiled = compileScene(scene);
  const view = viewFrom(compiled, station, MAX_INCIDENCE_DEG);
  if (view.eye === null) {
    return { polygon: [], shadows: [], areaM2: 0, notices: [...compiled.notices, notInSpace([station.id])] };
  }
  const shadows = shadowRings(compiled.bars, view.eye, view.eyeM, 0, station.rangeM);
  const areaM2 =
    shadows.length === 0
      ? view.areaM2
      : partitionAreas(
          [view.polygon, ...shadows],
          (inside) => (inside.indexOf(true, 1) < 0 ? (inside[0] ? 0 : -1) : -1),
          1,
        )[0]!;
  return { polygon: view.polygon, shadows, areaM2, notices: compiled.notices };
}

/** Says which stations stand nowhere near the open floor. */
export function notInSpace(ids: readonly string[]): Notice {
  return {
    code: 'station-not-in-space',
    message: `${ids.length === 1 ? 'Station' : 'Stations'} ${ids.join(', ')} ${ids.length === 1 ? 'stands' : 'stand'} outside the walls or inside something solid and show nothing.`,
  };
}
