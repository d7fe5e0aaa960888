import { distanceM } from '../geometry/point.ts';
import { requireRange } from '../numerics/require-range.ts';
import { type CompiledScene, compileScene } from './compiled-scene.ts';
import { CELL_M, type FloorGrid, floorGrid, ringFiller } from './floor-grid.ts';
import { type Interval, insideRings, subtract, unite } from './intervals.ts';
import type { CoverageScene, Station } from './scene.ts';
import { type StationSeen, seenFrom } from './station-seen.ts';
import { MAX_INCIDENCE_DEG } from './visible-region.ts';

/** How finely and how strictly coverage looks. */
export interface CoverageOptions {
  /** Side of the floor cells [m], 0.02 to 1; 0.1 by default. */
  readonly cellM?: number;
  /** A surface seen flatter than this from its normal does not count as seen [degrees], 1 to 90; 75 by default. */
  readonly maxIncidenceDeg?: number;
  /** Unseen regions smaller than this are only added up [m²]; 0.1 by default. */
  readonly leastUnseenM2?: number;
}

/** A scene with what each of some stations shows of it. */
export interface SceneSeen {
  readonly compiled: CompiledScene;
  readonly grid: FloorGrid;
  readonly stations: readonly StationSeen[];
  /** For each face, vent and bay, the stretches that anybody could see: where the open floor reaches it. */
  readonly faceOpen: readonly (readonly Interval[])[];
  readonly ventOpen: readonly (readonly Interval[])[];
  readonly bayOpen: readonly (readonly Interval[])[];
}

/** Looks around from every station. Throws as `coverage`. */
export function lookAround(
  scene: CoverageScene,
  stations: readonly Station[],
  options: CoverageOptions,
): SceneSeen {
  return lookAroundIn(compileScene(scene), stations, options);
}

/** As `lookAround`, in a scene made ready before. */
export function lookAroundIn(
  compiled: CompiledScene,
  stations: readonly Station[],
  options: CoverageOptions,
): SceneSeen {
  const { scene } = compiled;
  const grid = floorGrid(compiled, options.cellM ?? CELL_M);
  const steepest = requireRange(
    'largest angle from a surface normal (degrees)',
    options.maxIncidenceDeg ?? MAX_INCIDENCE_DEG,
    1,
    90,
  );
  const filler = ringFiller(grid);
  const faceOpen = openFaces(compiled);
  return {
    compiled,
    grid,
    stations: stations.map((station) => seenFrom(compiled, grid, filler, station, steepest)),
    faceOpen,
    ventOpen: (scene.vents ?? []).map(({ id, edge, offsetM, widthM }) => {
      requireRange(`vent ${id}: index of its wall`, edge, 0, scene.outline.length - 1);
      requireRange(`vent ${id}: offset (m)`, offsetM, -1000, 1000);
      requireRange(`vent ${id}: width (m)`, widthM, 0, 1000);
      return subtract([{ fromM: offsetM, toM: offsetM + widthM }], notIn(faceOpen[edge]!));
    }),
    bayOpen: openBays(compiled),
  };
}

function openFaces({ blockers: b, solids }: CompiledScene): Interval[][] {
  const stretches: Interval[][] = solids.faces.map(() => []);
  for (let i = 0; i < b.count; i += 1) {
    if (b.face[i]! < 0) continue;
    stretches[b.face[i]!]!.push({
      fromM: Math.min(b.uA[i]!, b.uB[i]!),
      toM: Math.max(b.uA[i]!, b.uB[i]!),
    });
  }
  return stretches.map(unite);
}

/** The rest of the line outside some stretches. */
function notIn(stretches: readonly Interval[]): Interval[] {
  return subtract([{ fromM: Number.NEGATIVE_INFINITY, toM: Number.POSITIVE_INFINITY }], stretches);
}

function openBays({ scene, solids }: CompiledScene): Interval[][] {
  const rings = solids.rings.map(({ ring }) => ring);
  return (scene.bays ?? []).map(({ from, to }) => {
    const lengthM = distanceM(from, to);
    const within = insideRings(from, to, 0, lengthM, [solids.outline]);
    return subtract(within, insideRings(from, to, 0, lengthM, rings));
  });
}
