import { searchArrangements } from '../src/distribution/arrangement-search.ts';
import { type FieldModel, fieldModel } from '../src/distribution/field-model.ts';
import { fieldSystem } from '../src/distribution/field-system.ts';
import { LANES } from '../src/distribution/lanes.ts';
import { movedAir } from '../src/distribution/moved-air.ts';
import { steadyField } from '../src/distribution/steady-field.ts';
import { bandedDirect } from '../test/distribution/banded-direct.ts';
import { bigArrangement, bigDragged, bigSearch, bigSpace } from '../test/distribution/big-space.ts';

const mixingM2PerS = 0.01;
const models = new Map<number, FieldModel>();

/** The space in cells of a size, made ready once. */
function model(cellM: number): FieldModel {
  const known = models.get(cellM);
  if (known !== undefined) return known;
  const made = fieldModel(bigSpace(), cellM);
  models.set(cellM, made);
  return made;
}

function state(cellM: number): void {
  steadyField(model(cellM), bigArrangement, { mixingM2PerS });
}

/** Humidity and temperature with their answers to the machine, at one duty, by plain elimination within the band. */
function plain(cellM: number): void {
  const ready = model(cellM);
  const system = fieldSystem(ready, bigArrangement, movedAir(ready, bigArrangement), mixingM2PerS);
  const duty = 0.2;
  const conductance = system.still.map((d, f) => d + duty * system.stirred[f]!);
  const flow = system.steadyFlow.map((q, f) => q + duty * system.machineFlow[f]!);
  const unit = new Float64Array(ready.mesh.count);
  unit[system.outlet] = 1;
  [0, 2].forEach((lane) => {
    const loss = Float64Array.from({ length: ready.mesh.count }, (_, i) => system.loss[LANES * i + lane]!);
    loss[system.intake]! += duty * system.flowM3PerS;
    bandedDirect(ready.graph, conductance, flow, loss, [
      lane === 0 ? system.waterGiven : system.heatGiven,
      unit,
    ]);
  });
}

let before = steadyField(model(0.25), bigArrangement, { mixingM2PerS });
let dragged = false;

/** Slope of the logarithm of the time over that of the cells, from 4 thousand to half a million. */
function growth(): number {
  const points = [0.25, 0.125, 0.0625, 0.03125, 0.0236].map((cellM) => {
    const ready = fieldModel(bigSpace(), cellM);
    const rounds = cellM > 0.1 ? 7 : cellM > 0.05 ? 3 : 2;
    let best = Number.POSITIVE_INFINITY;
    for (let k = 0; k < rounds; k += 1) {
      const start = performance.now();
      steadyField(ready, bigArrangement, { mixingM2PerS });
      best = Math.min(best, performance.now() - start);
    }
    return { x: Math.log(ready.mesh.count), y: Math.log(best) };
  });
  const mean = (of: (p: { x: number; y: number }) => number) =>
    points.reduce((sum, p) => sum + of(p), 0) / points.length;
  const x = mean((p) => p.x);
  const y = mean((p) => p.y);
  return mean((p) => (p.x - x) * (p.y - y)) / mean((p) => (p.x - x) ** 2);
}

/** What the runner measures, one core: 280 m² with piers, a cross wall and a low duct. */
export const benches = [
  {
    id: 'field.state18k',
    goal: 400,
    warm: 2,
    rounds: 7,
    run: () => {
      state(0.125);
    },
    plain: () => {
      plain(0.125);
    },
    plainRounds: 1,
  },
  {
    id: 'field.stateQuarterMeter',
    goal: 60,
    warm: 8,
    rounds: 21,
    run: () => {
      state(0.25);
    },
    plain: () => {
      plain(0.25);
    },
  },
  {
    id: 'field.drag',
    goal: 80,
    warm: 8,
    rounds: 21,
    run: () => {
      dragged = !dragged;
      before = steadyField(model(0.25), dragged ? bigDragged : bigArrangement, {
        mixingM2PerS,
        near: before,
      });
    },
  },
  {
    id: 'field.search300',
    goal: 8000,
    warm: 0,
    rounds: 1,
    run: () => {
      const { screened } = searchArrangements(model(0.25), bigSearch);
      if (screened < 300) throw new Error(`${screened} candidates are fewer than 300`);
    },
  },
  { id: 'field.growthExponent', goal: 1.15, unit: 'power of n', warm: 0, rounds: 1, measure: growth },
];
