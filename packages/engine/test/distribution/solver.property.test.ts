import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellGraph } from '../../src/distribution/cell-graph.ts';
import { gridLevels } from '../../src/distribution/coarsen.ts';
import { fieldModel } from '../../src/distribution/field-model.ts';
import { fieldSystem } from '../../src/distribution/field-system.ts';
import { bernoulli, createOperator, setOperator } from '../../src/distribution/lane-operator.ts';
import { LANES } from '../../src/distribution/lanes.ts';
import { potentialSolver } from '../../src/distribution/potential-flow.ts';
import { solveLanes, solverRoom } from '../../src/distribution/solve-lanes.ts';
import { steadyField } from '../../src/distribution/steady-field.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';
import { bandedDirect } from './banded-direct.ts';
import { machineAlone, workedSite } from './worked-plan.ts';

/** A random network on a grid: some faces closed, some narrow, flows that need not balance, ducts across. */
function network(columns: number, rows: number, seed: number, ducts: number) {
  const random = seededRandom(seed);
  const count = columns * rows;
  const faceA: number[] = [];
  const faceB: number[] = [];
  const axis: number[] = [];
  for (let i = 0; i < count; i += 1) {
    if ((i + 1) % columns !== 0 && random() > 0.15) {
      faceA.push(i);
      faceB.push(i + 1);
      axis.push(0);
    }
    if (i + columns < count && random() > 0.15) {
      faceA.push(i);
      faceB.push(i + columns);
      axis.push(1);
    }
  }
  const isPair = (a: number, b: number) => faceA.some((from, f) => from === a && faceB[f] === b);
  for (let k = 0; k < ducts; k += 1) {
    const a = Math.floor(random() * count);
    const b = Math.floor(random() * count);
    if (a >= b || isPair(a, b)) continue;
    faceA.push(a);
    faceB.push(b);
    axis.push(2);
  }
  const graph = cellGraph({
    count,
    column: Int32Array.from({ length: count }, (_, i) => i % columns),
    row: Int32Array.from({ length: count }, (_, i) => Math.floor(i / columns)),
    faceA: Int32Array.from(faceA),
    faceB: Int32Array.from(faceB),
    faceAxis: Uint8Array.from(axis),
  });
  const conductance = Float64Array.from(axis, (a) => (a === 2 ? 0 : 10 ** (-3 + 2 * random())));
  const flow = Float64Array.from(axis, () => (random() - 0.5) * 10 ** (-3 + 3 * random()));
  const loss = Float64Array.from({ length: LANES * count }, () => 10 ** (-5 + 2 * random()));
  const given = Float64Array.from({ length: LANES * count }, () => random());
  return { graph, conductance, flow, loss, given, axis };
}

/** Plain elimination with row exchange. */
function direct(matrix: number[][], b: number[]): number[] {
  const n = b.length;
  const a = matrix.map((row, i) => [...row, b[i]!]);
  for (let k = 0; k < n; k += 1) {
    let pivot = k;
    for (let i = k + 1; i < n; i += 1) if (Math.abs(a[i]![k]!) > Math.abs(a[pivot]![k]!)) pivot = i;
    [a[k], a[pivot]] = [a[pivot]!, a[k]!];
    for (let i = k + 1; i < n; i += 1) {
      const by = a[i]![k]! / a[k]![k]!;
      if (by !== 0) for (let j = k; j <= n; j += 1) a[i]![j]! -= by * a[k]![j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i -= 1) {
    let s = a[i]![n]!;
    for (let j = i + 1; j < n; j += 1) s -= a[i]![j]! * x[j]!;
    x[i] = s / a[i]![i]!;
  }
  return x;
}

/** The matrix of one lane, written out from what a face means. */
function written(net: ReturnType<typeof network>, lane: number): number[][] {
  const { graph, conductance, flow, loss, axis } = net;
  const matrix = Array.from({ length: graph.count }, (_, i) =>
    Array.from({ length: graph.count }, (_, j) => (i === j ? loss[LANES * i + lane]! : 0)),
  );
  for (let f = 0; f < axis.length; f += 1) {
    const [a, b, d, q] = [graph.faceA[f]!, graph.faceB[f]!, conductance[f]!, flow[f]!];
    const fromA = axis[f] === 2 ? Math.max(0, q) : d * bernoulli(-q / d);
    const fromB = axis[f] === 2 ? Math.max(0, -q) : d * bernoulli(q / d);
    matrix[a]![a]! += fromA;
    matrix[b]![a]! -= fromA;
    matrix[b]![b]! += fromB;
    matrix[a]![b]! -= fromB;
  }
  return matrix;
}

const nets = fc.record({
  columns: fc.integer({ min: 1, max: 9 }),
  rows: fc.integer({ min: 1, max: 9 }),
  seed: fc.integer({ min: 1, max: 1e6 }),
  ducts: fc.integer({ min: 0, max: 3 }),
});

describe('solver', () => {
  it('gives what plain elimination gives, in every lane', () => {
    fc.assert(
      fc.property(nets, ({ columns, rows, seed, ducts }) => {
        const net = network(columns, rows, seed, ducts);
        const operator = createOperator(gridLevels(net.graph, net.conductance));
        setOperator(operator, net.conductance, net.flow, net.loss);
        const x = new Float64Array(net.loss.length);
        const ending = solveLanes(operator, net.given, x, solverRoom(net.graph.count), 1e-12);
        expect(ending.converged).toBe(true);
        for (let lane = 0; lane < LANES; lane += 1) {
          const b = Array.from({ length: net.graph.count }, (_, i) => net.given[LANES * i + lane]!);
          const exact = direct(written(net, lane), b);
          const scale = Math.max(...exact.map(Math.abs));
          exact.forEach((value, i) => {
            // Losses down to 1e-5 beside faces of 1e-1: what is left of 1e-12 is up to 1e4 times that.
            expect(Math.abs(x[LANES * i + lane]! - value) / scale).toBeLessThan(1e-7);
          });
        }
      }),
      { numRuns: 25 },
    );
  });

  it('closes what all cells lose with what they are given, whatever it was asked for', () => {
    fc.assert(
      fc.property(nets, ({ columns, rows, seed, ducts }) => {
        const net = network(columns, rows, seed, ducts);
        const operator = createOperator(gridLevels(net.graph, net.conductance));
        setOperator(operator, net.conductance, net.flow, net.loss);
        const x = new Float64Array(net.loss.length);
        solveLanes(operator, net.given, x, solverRoom(net.graph.count), 1e-3);
        for (let lane = 0; lane < LANES; lane += 1) {
          let left = 0;
          let all = 0;
          for (let i = lane; i < x.length; i += LANES) {
            left += net.given[i]! - net.loss[i]! * x[i]!;
            all += net.given[i]!;
          }
          expect(Math.abs(left / all)).toBeLessThan(1e-13);
        }
      }),
      { numRuns: 20 },
    );
  });

  it('says why it gave up on what cannot be solved', () => {
    const net = network(6, 6, 3, 0);
    const operator = createOperator(gridLevels(net.graph, net.conductance));
    // Nothing is lost and something is given: there is no answer.
    setOperator(
      operator,
      net.conductance,
      new Float64Array(net.flow.length),
      new Float64Array(net.loss.length),
    );
    const ending = solveLanes(operator, net.given, new Float64Array(net.loss.length), solverRoom(36), 1e-10);
    expect(ending.converged).toBe(false);
    expect(ending.reason).not.toBe('tolerance-met');
    expect(ending.residual).toBeGreaterThan(1e-3);
  });

  it('potential of a flow: every cell gives away its source', () => {
    fc.assert(
      fc.property(nets, ({ columns, rows, seed }) => {
        const net = network(columns + 1, rows + 1, seed, 0);
        // All faces open: one joined space, the sum of whose sources is nothing.
        const { graph, conductance } = net;
        const space = new Set<number>([0]);
        for (let grown = true; grown; ) {
          grown = false;
          graph.faceA.forEach((a, f) => {
            const b = graph.faceB[f]!;
            if (space.has(a) === space.has(b)) return;
            space.add(a).add(b);
            grown = true;
          });
        }
        const cells = [...space];
        if (cells.length < 2) return;
        const source = new Float64Array(graph.count);
        source[cells[0]!] = 0.3;
        source[cells.at(-1)!] = -0.3;
        const solve = potentialSolver(gridLevels(graph, conductance), conductance);
        const { potential, ending } = solve(source, 1e-12);
        expect(ending.converged).toBe(true);
        const left = source.slice();
        graph.faceA.forEach((a, f) => {
          const b = graph.faceB[f]!;
          const q = conductance[f]! * (potential[a]! - potential[b]!);
          left[a]! -= q;
          left[b]! += q;
        });
        expect(Math.max(...left.map(Math.abs))).toBeLessThan(1e-12);
      }),
      { numRuns: 25 },
    );
  });
});

describe('against plain elimination within the band', () => {
  it('a state of the worked plan is the same', () => {
    const model = fieldModel(workedSite(), 0.5);
    const arrangement = machineAlone({ intake: { xM: 1.2, yM: 1.2 }, outlet: { xM: 2.2, yM: 1.2 } });
    const state = steadyField(model, arrangement, { mixingM2PerS: 0.009 });
    const system = fieldSystem(model, arrangement, state.air, 0.009);
    const { duty, waterGiven } = state.machine!;
    const loss = Float64Array.from({ length: model.mesh.count }, (_, i) => system.loss[LANES * i]!);
    loss[system.intake]! += duty * system.flowM3PerS;
    const given = system.waterGiven.slice();
    given[system.outlet]! += waterGiven;
    const [exact] = bandedDirect(
      model.graph,
      system.still.map((d, f) => d + duty * system.stirred[f]!),
      system.steadyFlow.map((q, f) => q + duty * system.machineFlow[f]!),
      loss,
      [given],
    );
    state.humidityRatio.forEach((w, i) => {
      expect(Math.abs(w / exact![i]! - 1)).toBeLessThan(1e-7);
    });
  });
});
