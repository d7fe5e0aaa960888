import { cosDeg, directionDeg, sinDeg } from '../geometry/bearing.ts';
import { distanceM, type Point } from '../geometry/point.ts';
import type { FieldMachine } from './arrangement.ts';
import { middleOf } from './field-grid.ts';
import type { FieldPlan } from './field-plan.ts';
import type { FieldMesh } from './mesh.ts';
import type { PlacingRule, PlacingRules } from './placing-rules.ts';

/** A place and direction for the machine that the rules allow. */
export interface MachinePlace {
  readonly at: Point;
  readonly bearingDeg: number;
  readonly wayM: number;
  readonly pumped: boolean;
}

/** A place, or a place and direction, that a rule forbids. */
export interface ExcludedPlace {
  readonly at: Point;
  /** Null when the rule concerns the place whatever the direction. */
  readonly bearingDeg: number | null;
  readonly rule: PlacingRule;
  readonly why: string;
}

/** Directions that are looked into at each place, degrees. */
const DIRECTIONS = [0, 45, 90, 135, 180, 225, 270, 315] as const;
/** Of these the ones with the longest free run are worked out; a run this long counts as endless, m. */
const DIRECTIONS_TRIED = 4;
const LONG_RUN_M = 6;
/** From intake to outlet of a machine that stands, not of one with a duct: those are farther apart. */
const LONGEST_BODY_M = 1.2;
const SHORTEST_BODY_M = 0.3;
const USUAL_BODY_M = 0.75;

/** The machine with its middle at a place, blowing in a direction. */
export function machineAt(machine: FieldMachine, at: Point, bearingDeg: number): FieldMachine {
  const length = distanceM(machine.intake, machine.outlet);
  const half = (length > SHORTEST_BODY_M && length <= LONGEST_BODY_M ? length : USUAL_BODY_M) / 2;
  const dx = half * sinDeg(bearingDeg);
  const dy = half * cosDeg(bearingDeg);
  return {
    ...machine,
    intake: { xM: at.xM - dx, yM: at.yM - dy },
    outlet: { xM: at.xM + dx, yM: at.yM + dy },
    bearingDeg,
  };
}

/** Whether a duct carries the machine's air away. */
export function isDucted({ intake, outlet }: FieldMachine): boolean {
  return distanceM(intake, outlet) > LONGEST_BODY_M;
}

/** Middle of a machine; its intake when it has a duct. */
export function middleOfMachine(machine: FieldMachine): Point {
  const { intake, outlet } = machine;
  return isDucted(machine) ? intake : { xM: (intake.xM + outlet.xM) / 2, yM: (intake.yM + outlet.yM) / 2 };
}

/** Directions for a machine at a place with enough free run, longest first, and those without. */
export function directionsAt(
  machine: FieldMachine,
  at: Point,
  rules: PlacingRules,
): { readonly tried: readonly number[]; readonly excluded: readonly ExcludedPlace[] } {
  const free: { readonly bearingDeg: number; readonly runM: number }[] = [];
  const excluded: ExcludedPlace[] = [];
  for (const bearingDeg of DIRECTIONS) {
    const { runM, ok } = rules.run(machineAt(machine, at, bearingDeg).outlet, bearingDeg);
    if (ok) free.push({ bearingDeg, runM: Math.min(runM, LONG_RUN_M) });
    else {
      excluded.push({
        at,
        bearingDeg,
        rule: 'outlet-run',
        why: `${runM.toFixed(1)} m free ahead of its outlet, and ${rules.freeRunM} m are needed`,
      });
    }
  }
  free.sort((a, b) => b.runM - a.runM || a.bearingDeg - b.bearingDeg);
  return { tried: free.slice(0, DIRECTIONS_TRIED).map(({ bearingDeg }) => bearingDeg), excluded };
}

/** Middles of an even grid over the extent of the mesh. */
function gridPlaces({ grid }: FieldMesh, spacingM: number): Point[] {
  const widthM = grid.columns * grid.cellXM;
  const depthM = grid.rows * grid.cellYM;
  const across = Math.max(1, Math.round(widthM / spacingM));
  const up = Math.max(1, Math.round(depthM / spacingM));
  return Array.from({ length: across * up }, (_, k) => ({
    xM: grid.minXM + (((k % across) + 0.5) * widthM) / across,
    yM: grid.minYM + ((Math.floor(k / across) + 0.5) * depthM) / up,
  }));
}

/**
 * Places on a grid over the floor, each in the four of eight directions with the longest free run, and which rule forbids
 * the others.
 */
export function machinePlaces(
  mesh: FieldMesh,
  machine: FieldMachine,
  rules: PlacingRules,
  spacingM: number,
): { readonly allowed: readonly MachinePlace[]; readonly excluded: readonly ExcludedPlace[] } {
  const allowed: MachinePlace[] = [];
  const excluded: ExcludedPlace[] = [];
  for (const at of gridPlaces(mesh, spacingM)) {
    const verdict = rules.place(at);
    if (!verdict.ok) {
      excluded.push({ at, bearingDeg: null, rule: verdict.rule, why: verdict.why });
      continue;
    }
    const directions = directionsAt(machine, at, rules);
    excluded.push(...directions.excluded);
    const { wayM, pumped } = verdict;
    for (const bearingDeg of directions.tried) allowed.push({ at, bearingDeg, wayM, pumped });
  }
  return { allowed, excluded };
}

/**
 * Places for the end of a duct or a humidistat: the dampest one after the other, each at some distance from those before
 * and from walls.
 * @param count how many at most
 */
export function dampestPlaces(
  mesh: FieldMesh,
  relativeHumidity: Float64Array,
  apartM: number,
  count: number,
): Point[] {
  const order = Array.from(relativeHumidity.keys()).sort(
    (a, b) => relativeHumidity[b]! - relativeHumidity[a]! || a - b,
  );
  const found: Point[] = [];
  for (const cell of order) {
    if (found.length >= count) break;
    if (!isOffWalls(mesh, cell)) continue;
    const at = middleOf(mesh.grid, mesh.column[cell]!, mesh.row[cell]!);
    if (found.every((other) => distanceM(other, at) >= apartM)) found.push(at);
  }
  return found;
}

/** A duct ends so far from walls and piers, m. */
const OFF_WALLS_M = 0.7;

function isOffWalls({ grid, cellAt, column, row }: FieldMesh, cell: number): boolean {
  const across = Math.round(OFF_WALLS_M / grid.cellXM);
  const up = Math.round(OFF_WALLS_M / grid.cellYM);
  return [
    [across, 0],
    [-across, 0],
    [0, up],
    [0, -up],
  ].every(([dc, dr]) => {
    const c = column[cell]! + dc!;
    const r = row[cell]! + dr!;
    return c >= 0 && r >= 0 && c < grid.columns && r < grid.rows && cellAt[r * grid.columns + c]! >= 0;
  });
}

/** A place and direction for a fan. */
export interface FanPlace {
  readonly at: Point;
  readonly bearingDeg: number;
}

/** A fan stands so far before the opening that it blows through, m. Common practice, no source. */
const BEFORE_OPENING_M = 1;

/**
 * Places for fans with a free run ahead: before each opening of an interior wall, blowing through it either way, and on a
 * wide grid along the axis with the longest free run.
 */
export function fanPlaces(
  mesh: FieldMesh,
  walls: NonNullable<FieldPlan['interiorWalls']>,
  rules: PlacingRules,
  spacingM: number,
): FanPlace[] {
  const places: FanPlace[] = [];
  for (const { from, to, openings = [] } of walls) {
    const length = distanceM(from, to);
    if (length === 0) continue;
    const dx = (to.xM - from.xM) / length;
    const dy = (to.yM - from.yM) / length;
    for (const { offsetM, widthM } of openings) {
      const along = offsetM + widthM / 2;
      for (const side of [1, -1]) {
        const at = {
          xM: from.xM + along * dx - side * BEFORE_OPENING_M * dy,
          yM: from.yM + along * dy + side * BEFORE_OPENING_M * dx,
        };
        const bearingDeg = directionDeg(side * dy, -side * dx)!;
        if (rules.run(at, bearingDeg).ok) places.push({ at, bearingDeg });
      }
    }
  }
  for (const at of gridPlaces(mesh, spacingM)) {
    const runs = [0, 90, 180, 270].map((bearingDeg) => ({ bearingDeg, ...rules.run(at, bearingDeg) }));
    const best = runs.reduce((a, b) => (b.runM > a.runM ? b : a));
    if (best.ok) places.push({ at, bearingDeg: best.bearingDeg });
  }
  return places;
}
