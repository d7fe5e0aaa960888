import { type AirNetwork, createNetwork, type NetworkInput } from '../airflow/network.ts';
import { createNetworkState, type NetworkState } from '../airflow/network-state.ts';
import { solveNetwork } from '../airflow/solve-network.ts';
import { loopRoom } from './loop-room.ts';

const { drive } = loopRoom;

/** Nodes are even in the signed square root of temperature differences: there the flows are nearly straight. */
const OUT_LOW = -9.6;
const OUT_STEP = 0.8;
const OUT_NODES = 25;
const CRAWL_LOW = -7.2;
const CRAWL_STEP = 1.2;
const CRAWL_NODES = 13;
const WIND_STEP = 0.75;
const WIND_NODES = 22;
/**
 * Outdoor inflow, house inflow, floor share, and how far it is: 0 not solved, 1 solved, 2 solved with the seven further
 * corners of the cell above it.
 */
const VALUES = 4;
const STATE = 3;
const CELL_SOLVED = 2;
const WIND_STRIDE = VALUES;
const CRAWL_STRIDE = WIND_STRIDE * WIND_NODES;
const OUT_STRIDE = CRAWL_STRIDE * CRAWL_NODES;

/**
 * Flows of one network over outdoor temperature, crawl temperature and wind, for one house temperature. A node is
 * solved when the weather first comes near it and kept.
 */
export interface FlowTable {
  readonly network: AirNetwork;
  readonly solver: NetworkState;
  readonly houseC: number;
  readonly nodes: Float64Array;
  /** Solves so far, and how many of them did not converge. */
  solved: number;
  failed: number;
}

export function createFlowTable(input: NetworkInput, houseC: number): FlowTable {
  const network = createNetwork(input);
  return {
    network,
    solver: createNetworkState(network),
    houseC,
    nodes: new Float64Array(OUT_STRIDE * OUT_NODES),
    solved: 0,
    failed: 0,
  };
}

function signedRoot(x: number): number {
  return x < 0 ? -Math.sqrt(-x) : Math.sqrt(x);
}

function signedSquare(x: number): number {
  return x < 0 ? -x * x : x * x;
}

function solveNode(table: FlowTable, at: number): void {
  const out = Math.floor(at / OUT_STRIDE);
  const crawl = Math.floor((at % OUT_STRIDE) / CRAWL_STRIDE);
  const wind = Math.floor((at % CRAWL_STRIDE) / WIND_STRIDE);
  const outdoorTemperatureC = clampC(table.houseC + signedSquare(OUT_LOW + out * OUT_STEP));
  const crawlTemperatureC = clampC(outdoorTemperatureC + signedSquare(CRAWL_LOW + crawl * CRAWL_STEP));
  const { nodes, solver } = table;
  // Each node starts from rest, so that its value does not hang on which was solved before.
  solver.ending.converged = false;
  solveNetwork(
    table.network,
    {
      outdoorTemperatureC,
      crawlTemperatureC,
      houseTemperatureC: table.houseC,
      windMPerS: wind * WIND_STEP,
    },
    solver,
  );
  table.solved++;
  if (!solver.ending.converged) table.failed++;
  nodes[at] = solver.crawlOutdoorInflowKgPerS;
  nodes[at + 1] = solver.houseToCrawlKgPerS;
  nodes[at + 2] = solver.houseInflowShareThroughFloor;
  nodes[at + STATE] = 1;
}

/** The network takes −60 to 90 °C. */
function clampC(temperatureC: number): number {
  return Math.min(90, Math.max(-60, temperatureC));
}

/** Sets the flows of the drive from the table, linear between nodes and, in wind beyond the last, on from there. */
export function lookUpFlows(table: FlowTable, crawlC: number): void {
  const { nodes, houseC } = table;
  const { outdoorC } = drive;
  const x = cell((signedRoot(outdoorC - houseC) - OUT_LOW) * (1 / OUT_STEP), OUT_NODES);
  const y = cell((signedRoot(crawlC - outdoorC) - CRAWL_LOW) * (1 / CRAWL_STEP), CRAWL_NODES);
  const z = drive.windMPerS * (1 / WIND_STEP);
  const i = x | 0;
  const j = y | 0;
  const k = Math.min(z | 0, WIND_NODES - 2);
  const at = i * OUT_STRIDE + j * CRAWL_STRIDE + k * WIND_STRIDE;
  if (nodes[at + STATE] !== CELL_SOLVED) solveCell(table, at);
  const outdoor = blend(nodes, at, x - i, y - j, z - k);
  const house = blend(nodes, at + 1, x - i, y - j, z - k);
  const share = blend(nodes, at + 2, x - i, y - j, z - k);
  drive.outdoorKgPerS = Math.max(outdoor, 0);
  drive.houseKgPerS = Math.max(house, 0);
  drive.floorShare = share < 0 ? 0 : Math.min(share, 1);
}

/** Solves what is not yet solved of the eight corners above a node. */
function solveCell(table: FlowTable, at: number): void {
  const { nodes } = table;
  for (let corner = 0; corner < 8; corner++) {
    const there =
      at +
      ((corner & 1) === 0 ? 0 : OUT_STRIDE) +
      ((corner & 2) === 0 ? 0 : CRAWL_STRIDE) +
      ((corner & 4) === 0 ? 0 : WIND_STRIDE);
    if (nodes[there + STATE] === 0) solveNode(table, there);
  }
  nodes[at + STATE] = CELL_SOLVED;
}

/** One value at a point between the eight corners above a node. */
function blend(nodes: Float64Array, at: number, fx: number, fy: number, fz: number): number {
  const a = nodes[at]!;
  const b = nodes[at + CRAWL_STRIDE]!;
  const c = nodes[at + OUT_STRIDE]!;
  const d = nodes[at + OUT_STRIDE + CRAWL_STRIDE]!;
  const calm = a + fz * (nodes[at + WIND_STRIDE]! - a);
  const warm = b + fz * (nodes[at + CRAWL_STRIDE + WIND_STRIDE]! - b);
  const low = calm + fy * (warm - calm);
  const far = c + fz * (nodes[at + OUT_STRIDE + WIND_STRIDE]! - c);
  const both = d + fz * (nodes[at + OUT_STRIDE + CRAWL_STRIDE + WIND_STRIDE]! - d);
  return low + fx * (far + fy * (both - far) - low);
}

function cell(x: number, nodes: number): number {
  return x < 0 ? 0 : Math.min(x, nodes - 1.000001);
}
