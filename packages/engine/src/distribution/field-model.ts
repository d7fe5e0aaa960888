import { EngineError } from '../numerics/engine-error.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Ending } from '../numerics/solution.ts';
import { SEA_LEVEL_PRESSURE_PA } from '../psychrometrics/standard-pressure.ts';
import { type AirMover, airMover } from './air-mover.ts';
import { type CellGraph, cellGraph, DUCT } from './cell-graph.ts';
import { type GridLevel, gridLevels } from './coarsen.ts';
import { type EvaluatorRoom, evaluatorRoom } from './evaluator-room.ts';
import type { FieldSite, SourceKind } from './field-site.ts';
import { joinedSpaces } from './joined-spaces.ts';
import { laneSums } from './lane-vectors.ts';
import { LANES } from './lanes.ts';
import { CELL_M, type FieldMesh, fieldMesh } from './mesh.ts';
import { AIR_J_PER_KG_K, AIR_KG_PER_M3, USUAL_SPREAD_K } from './mixing.ts';
import { cellOfPlace, type PlaceCells, placeCells } from './places.ts';

/** One exchange of water or heat, spread over the cells of its place. */
export interface SpreadExchange {
  readonly what: string;
  readonly kind: SourceKind | 'heat';
  readonly cells: Int32Array;
  /** m³/s of air of the exchange's own state that would do the same. */
  readonly conductance: Float64Array;
  /** Humidity ratio or °C. */
  readonly drawnTo: number;
}

/** A site made ready: cells, faces, grids to solve on, and everything that does not hang on machine and fans. */
export interface FieldModel {
  readonly site: FieldSite;
  readonly mesh: FieldMesh;
  /** Mesh faces first, then the ducts of transfers. */
  readonly graph: CellGraph;
  readonly levels: readonly GridLevel[];
  /** By face of the graph; see `MeshFaces`. Ducts have none. */
  readonly opening: Float64Array;
  readonly exchange: Float64Array;
  /** Space of each cell that air can move through. */
  readonly space: Int32Array;
  readonly vapor: readonly SpreadExchange[];
  readonly heat: readonly SpreadExchange[];
  /** What leaves each cell by itself, by cell and lane, m³/s: two lanes of humidity, two of temperature. */
  readonly loss: Float64Array;
  /** What each cell is given, m³/s times humidity ratio, and m³/s times °C. */
  readonly waterGiven: Float64Array;
  readonly heatGiven: Float64Array;
  /** Sums over all cells. */
  readonly totals: { readonly loss: Float64Array; readonly waterGiven: number };
  /** Flow of leaks and transfers by face, m³/s. */
  readonly steadyFlow: Float64Array;
  /** Part of it that transfers move. */
  readonly transferFlow: Float64Array;
  /** Air that enters and leaves each cell by pressure, m³/s. */
  readonly leak: Float64Array;
  readonly pressurePa: number;
  /** Solves air flows on these grids. */
  readonly mover: AirMover;
  /** Room to solve on the grid of this number and all coarser ones; used again by each solution. */
  readonly room: (level: number) => EvaluatorRoom;
  readonly ending: Ending | null;
  readonly notices: readonly Notice[];
}

/** Imbalance of leaks that is rounding, m³/s. */
const ROUNDING_M3_PER_S = 1e-9;

/**
 * Makes a site ready for solving.
 * @param cellM side of the cells [m]; 0.25 by default, 0.125 for a final map
 * @throws EngineError for a plan or figures that make no sense
 */
export function fieldModel(site: FieldSite, cellM: number = CELL_M): FieldModel {
  const mesh = fieldMesh(site.plan, cellM);
  const notices = [...mesh.notices];
  const pressurePa = requireRange('air pressure (Pa)', site.pressurePa ?? SEA_LEVEL_PRESSURE_PA, 5e4, 1.1e5);
  const { graph, transferFace } = graphOf(mesh, site);
  const ducts = graph.faceA.length - mesh.faceA.length;
  const trade = Math.sqrt(
    requireRange('temperature spread (K)', site.spreadK ?? USUAL_SPREAD_K, 0, 5) / USUAL_SPREAD_K,
  );
  const opening = padded(mesh.opening, ducts);
  const exchange = padded(mesh.exchangeM3PerS, ducts).map((v) => v * trade);
  const strength = opening.map((v, f) => v * STRENGTH_MIXING + exchange[f]!);
  const levels = gridLevels(graph, strength);
  const mover = airMover(levels, opening);
  const moves = Uint8Array.from(opening, (v) => (v > 0 ? 1 : 0));
  const space = joinedSpaces(mesh.count, graph.faceA, graph.faceB, moves);
  const sums = {
    loss: new Float64Array(LANES * mesh.count),
    waterGiven: new Float64Array(mesh.count),
    heatGiven: new Float64Array(mesh.count),
    leak: new Float64Array(mesh.count),
  };
  const vapor = site.vapor.map((e) => {
    const name = `conductance of ${e.what} (kg/s)`;
    const perUnit = requireRange(name, e.conductanceKgPerS, 0, 100) / AIR_KG_PER_M3;
    const drawnTo = requireRange(`humidity ratio of ${e.what}`, e.humidityRatio, 0, 1);
    return spread(e.what, e.kind, placeCells(mesh, e.place, e.what), e.per, perUnit, drawnTo);
  });
  const heat = site.heat.map((e) => {
    const name = `conductance of ${e.what} (W/K)`;
    const perUnit = requireRange(name, e.conductanceWPerK, 0, 1e5) / (AIR_KG_PER_M3 * AIR_J_PER_KG_K);
    const drawnTo = requireRange(`temperature of ${e.what} (°C)`, e.temperatureC, -60, 80);
    return spread(e.what, 'heat', placeCells(mesh, e.place, e.what), e.per, perUnit, drawnTo);
  });
  for (const e of vapor) addExchange(e, sums.loss, 0, sums.waterGiven);
  for (const e of heat) addExchange(e, sums.loss, 2, sums.heatGiven);
  addFixed(site, mesh, sums);
  const unbalanced = addLeaks(site, mesh, space, sums);
  if (unbalanced > 0) {
    notices.push({
      code: 'leaks-unbalanced',
      message: `Air that enters and air that leaves differ by ${unbalanced.toPrecision(2)} m³/s in spaces that walls close off; the difference was let out or in over their whole floor.`,
    });
  }
  const { flow: leakFlow, ending } = mover(new Float64Array(graph.faceA.length), sums.leak);
  const transferFlow = new Float64Array(graph.faceA.length);
  (site.transfers ?? []).forEach((transfer, k) => {
    const name = `transfer ${k + 1}`;
    const from = cellOfPlace(mesh, transfer.from, `${name}, inlet`);
    const to = cellOfPlace(mesh, transfer.to, `${name}, outlet`);
    const back = moveBetween(mover, graph, space, from, to, transfer.flowM3PerS, name);
    for (let f = 0; f < back.length; f += 1) transferFlow[f] = transferFlow[f]! + back[f]!;
    const { face, sign } = transferFace[k]!;
    transferFlow[face] = transferFlow[face]! + sign * transfer.flowM3PerS;
    sums.heatGiven[to] = sums.heatGiven[to]! + (transfer.powerW ?? 0) / (AIR_KG_PER_M3 * AIR_J_PER_KG_K);
  });
  const totals = {
    loss: new Float64Array(LANES),
    waterGiven: sums.waterGiven.reduce((sum, given) => sum + given, 0),
  };
  laneSums(sums.loss, totals.loss);
  return {
    site,
    mesh,
    graph,
    levels,
    opening,
    exchange,
    space,
    vapor,
    heat,
    ...sums,
    totals,
    steadyFlow: leakFlow.map((q, f) => q + transferFlow[f]!),
    transferFlow,
    pressurePa,
    mover,
    room: roomsOf(levels),
    ending,
    notices,
  };
}

function roomsOf(levels: readonly GridLevel[]): FieldModel['room'] {
  const rooms: EvaluatorRoom[] = [];
  return (level) => {
    rooms[level] ??= evaluatorRoom(levels.slice(level));
    return rooms[level]!;
  };
}

/** Mixing at which barriers are judged when cells are joined into coarser ones, m²/s. */
const STRENGTH_MIXING = 0.01;

function padded(values: Float64Array, more: number): Float64Array {
  const result = new Float64Array(values.length + more);
  result.set(values);
  return result;
}

/** The faces of the mesh, and a duct for each transfer whose ends are no neighbors. */
function graphOf(
  mesh: FieldMesh,
  site: FieldSite,
): { graph: CellGraph; transferFace: { face: number; sign: 1 | -1 }[] } {
  const faceA = [...mesh.faceA];
  const faceB = [...mesh.faceB];
  const faceAxis = [...mesh.faceAxis];
  const transferFace = (site.transfers ?? []).map(({ from, to, flowM3PerS }, k) => {
    requireRange(`flow of transfer ${k + 1} (m³/s)`, flowM3PerS, 1e-6, 5);
    const a = cellOfPlace(mesh, from, `transfer ${k + 1}, inlet`);
    const b = cellOfPlace(mesh, to, `transfer ${k + 1}, outlet`);
    if (a === b) throw new EngineError('bad-geometry', `transfer ${k + 1}: both its ends lie in one cell`);
    for (let f = 0; f < faceA.length; f += 1) {
      if (faceA[f] === a && faceB[f] === b) return { face: f, sign: 1 as const };
      if (faceA[f] === b && faceB[f] === a) return { face: f, sign: -1 as const };
    }
    faceA.push(a);
    faceB.push(b);
    faceAxis.push(DUCT);
    return { face: faceA.length - 1, sign: 1 as const };
  });
  const graph = cellGraph({
    count: mesh.count,
    column: mesh.column,
    row: mesh.row,
    faceA: Int32Array.from(faceA),
    faceB: Int32Array.from(faceB),
    faceAxis: Uint8Array.from(faceAxis),
  });
  return { graph, transferFace };
}

function spread(
  what: string,
  kind: SpreadExchange['kind'],
  { cells, parts, total }: PlaceCells,
  per: 'each' | 'whole',
  perUnit: number,
  drawnTo: number,
): SpreadExchange {
  const by = per === 'each' ? perUnit : total > 0 ? perUnit / total : 0;
  return { what, kind, cells, conductance: parts.map((part) => part * by), drawnTo };
}

/** Adds an exchange to both lanes of its kind, the first being `lane`. */
function addExchange(
  { cells, conductance, drawnTo }: SpreadExchange,
  loss: Float64Array,
  lane: number,
  given: Float64Array,
): void {
  for (let k = 0; k < cells.length; k += 1) {
    const cell = cells[k]!;
    const c = conductance[k]!;
    const at = LANES * cell + lane;
    loss[at] = loss[at]! + c;
    loss[at + 1] = loss[at + 1]! + c;
    given[cell] = given[cell]! + c * drawnTo;
  }
}

type Sums = Pick<FieldModel, 'loss' | 'waterGiven' | 'heatGiven' | 'leak'>;

function addFixed(site: FieldSite, mesh: FieldMesh, sums: Sums): void {
  for (const source of site.fixed ?? []) {
    const { cells, parts, total } = placeCells(mesh, source.place, source.what);
    const water = requireRange(`water of ${source.what} (kg/s)`, source.waterKgPerS ?? 0, -1, 1);
    const heatW = requireRange(`heat of ${source.what} (W)`, source.heatW ?? 0, -1e6, 1e6);
    for (let k = 0; k < cells.length; k += 1) {
      const cell = cells[k]!;
      const part = parts[k]! / total / AIR_KG_PER_M3;
      sums.waterGiven[cell] = sums.waterGiven[cell]! + part * water;
      sums.heatGiven[cell] = sums.heatGiven[cell]! + (part * heatW) / AIR_J_PER_KG_K;
    }
  }
}

/** Adds leaks; returns the sum of what did not balance in spaces of their own, m³/s. */
function addLeaks(site: FieldSite, mesh: FieldMesh, space: Int32Array, sums: Sums): number {
  const leaks = site.leaks ?? [];
  if (leaks.length === 0) return 0;
  const { loss, waterGiven, heatGiven, leak } = sums;
  let entering = 0;
  let water = 0;
  let warmth = 0;
  const enter = (cell: number, q: number, humidityRatio: number, temperatureC: number): void => {
    leak[cell] = leak[cell]! + q;
    if (q > 0) {
      waterGiven[cell] = waterGiven[cell]! + q * humidityRatio;
      heatGiven[cell] = heatGiven[cell]! + q * temperatureC;
    } else
      for (let lane = 0; lane < LANES; lane += 1) loss[LANES * cell + lane] = loss[LANES * cell + lane]! - q;
  };
  for (const { what, place, flowM3PerS, humidityRatio, temperatureC } of leaks) {
    requireRange(`flow of ${what} (m³/s)`, flowM3PerS, -100, 100);
    requireRange(`humidity ratio of ${what}`, humidityRatio, 0, 1);
    requireRange(`temperature of ${what} (°C)`, temperatureC, -60, 80);
    const { cells, parts, total } = placeCells(mesh, place, what);
    for (let k = 0; k < cells.length; k += 1) {
      enter(cells[k]!, (flowM3PerS * parts[k]!) / total, humidityRatio, temperatureC);
    }
    if (flowM3PerS > 0) {
      entering += flowM3PerS;
      water += flowM3PerS * humidityRatio;
      warmth += flowM3PerS * temperatureC;
    }
  }
  const surplus: number[] = [];
  const floor: number[] = [];
  space.forEach((s, cell) => {
    surplus[s] = (surplus[s] ?? 0) + leak[cell]!;
    floor[s] = (floor[s] ?? 0) + mesh.areaM2[cell]!;
  });
  const wrong = surplus.reduce((sum, q) => sum + Math.abs(q), 0);
  if (wrong <= ROUNDING_M3_PER_S * Math.max(1, surplus.length)) return 0;
  if (entering === 0) {
    throw new EngineError(
      'bad-input',
      'air leaks: air leaves the space but none enters it; give what replaces it',
    );
  }
  space.forEach((s, cell) => {
    const q = (-surplus[s]! * mesh.areaM2[cell]!) / floor[s]!;
    if (q !== 0) enter(cell, q, water / entering, warmth / entering);
  });
  return wrong;
}

/** Air flow, by face, that goes back from `to` to `from` when a duct carries air the other way. */
function moveBetween(
  mover: AirMover,
  graph: CellGraph,
  space: Int32Array,
  from: number,
  to: number,
  flowM3PerS: number,
  name: string,
): Float64Array {
  if (space[from] !== space[to]) {
    throw new EngineError(
      'bad-geometry',
      `${name}: no opening lets the air that it moves flow back; make one, or put both ends on one side of the wall`,
    );
  }
  const source = new Float64Array(graph.count);
  source[to] = source[to]! + flowM3PerS;
  source[from] = source[from]! - flowM3PerS;
  return mover(new Float64Array(graph.faceA.length), source).flow;
}
