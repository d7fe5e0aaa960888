import { describe, expect, it } from 'vitest';
import { fieldModel } from '../../src/distribution/field-model.ts';
import type { FieldPlan } from '../../src/distribution/field-plan.ts';
import type { FieldSite } from '../../src/distribution/field-site.ts';
import { openingExchangeM2PerS } from '../../src/distribution/mixing.ts';
import { steadyField } from '../../src/distribution/steady-field.ts';
import { endHeld, H, K, RHO } from './analytic-cases.ts';
import { rectangle } from './worked-plan.ts';

/** Water, kg/s, through a channel of 10 m between ends of 1 and 0, something standing across it at 5 m. */
function through(cellM: number, widthM: number, across: Partial<FieldPlan>, spreadK: number): number {
  const ends = (humidityRatio: number, atXM: number): FieldSite['vapor'] =>
    Array.from({ length: Math.round(widthM / cellM) }, (_, row) => ({
      ...endHeld(cellM, atXM, humidityRatio),
      place: { kind: 'at' as const, at: { xM: atXM, yM: (row + 0.5) * cellM } },
    }));
  const site: FieldSite = {
    plan: { outline: rectangle(10, widthM), heightM: H, ...across },
    spreadK,
    vapor: [...ends(1, 0), ...ends(0, 10)],
    heat: [{ what: 'ground', place: { kind: 'floor' }, conductanceWPerK: 5, per: 'each', temperatureC: 20 }],
  };
  const model = fieldModel(site, cellM);
  const { humidityRatio } = steadyField(model, {}, { mixingM2PerS: K });
  let water = 0;
  for (let row = 0; row < model.mesh.grid.rows; row += 1) {
    const cell = model.mesh.cellAt[row * model.mesh.grid.columns]!;
    water += ((RHO * H * K * cellM) / (cellM / 2)) * (1 - humidityRatio[cell]!);
  }
  return water;
}

/** Digits that a state solved to 1e-9 of its sources gives in a flow. */
const SOLVED = 6;

const duct = (clearanceM: number, widthM: number, lengthM: number): Partial<FieldPlan> => ({
  ducts: [
    {
      id: 'd',
      path: [
        { xM: 5, yM: 0 },
        { xM: 5, yM: lengthM },
      ],
      widthM,
      clearanceM,
    },
  ],
});

describe('what stands across a channel, against resistances in series', () => {
  it.each([
    { cellM: 0.25, open: 0.2, depthM: 0.25 },
    { cellM: 0.125, open: 0.2, depthM: 0.25 },
    { cellM: 0.125, open: 0.05, depthM: 0.6 },
    { cellM: 0.5, open: 0.75, depthM: 0.4 },
  ])('duct $depthM m wide leaving $open of the height, cells of $cellM m', ({ cellM, open, depthM }) => {
    const free = 10 / (RHO * H * K);
    const narrow = ((1 / open - 1) * depthM) / (RHO * H * K);
    const water = through(cellM, 1, duct(open * H, depthM, 1), 0);
    expect(water / (1 / (free + narrow))).toBeCloseTo(1, SOLVED);
  });

  it('air that trades places through the gap goes beside what mixes', () => {
    const cellM = 0.25;
    const open = 0.3;
    const one = cellM / (RHO * H * K);
    const gap =
      1 / (one + ((1 / open - 1) * 0.25) / (RHO * H * K)) + RHO * openingExchangeM2PerS(open * H, 0.7);
    const expected = 1 / ((10 - cellM) / (RHO * H * K) + 1 / gap);
    expect(through(cellM, 1, duct(open * H, 0.25, 1), 0.7) / expected).toBeCloseTo(1, SOLVED);
  });

  it('a wall without an opening lets nothing through', () => {
    const wall = { id: 'w', from: { xM: 5, yM: -1 }, to: { xM: 5, yM: 3 } };
    expect(through(0.25, 1, { interiorWalls: [wall] }, 0.5)).toBeLessThan(1e-12);
  });

  it('an opening narrower than a cell counts by its width', () => {
    // The gap is all the width there is: as wide a wall beside it changes nothing but the share of the face.
    const wall = (openings: readonly { offsetM: number; widthM: number }[]) => ({
      interiorWalls: [{ id: 'w', from: { xM: 5, yM: 0 }, to: { xM: 5, yM: 1 }, openings }],
    });
    const whole = through(0.25, 1, wall([{ offsetM: 0, widthM: 1 }]), 0);
    const free = (RHO * H * K) / 10;
    expect(whole / free).toBeCloseTo(1, SOLVED);
    const half = through(0.5, 0.5, wall([{ offsetM: 0.1, widthM: 0.25 }]), 0);
    // One face, half of it open: the resistance of that face doubles.
    const face = 0.5 / (RHO * H * K);
    expect(half / (0.5 / ((9.5 / 0.5) * face + 2 * face))).toBeCloseTo(1, SOLVED);
  });

  it('a girder higher than the space, or whose clearance nobody took, is no barrier', () => {
    const girder = (clearanceM?: number) => ({
      girders: [
        {
          id: 'g',
          from: { xM: 5, yM: 0 },
          to: { xM: 5, yM: 1 },
          widthM: 0.2,
          ...(clearanceM === undefined ? {} : { clearanceM }),
        },
      ],
    });
    const free = through(0.25, 1, {}, 0.5);
    expect(through(0.25, 1, girder(H), 0.5)).toBeCloseTo(free, 14);
    expect(through(0.25, 1, girder(), 0.5)).toBeCloseTo(free, 14);
    expect(through(0.25, 1, girder(0.99 * H), 0)).toBeLessThan(free);
  });

  it('a slanting wall is as tight as a straight one, and its gap as wide', () => {
    // The same opening of 1 m in a wall across a corner, at 45 degrees and straight: within 15 % of each other, as the
    // stairs of the slanting one lie a little otherwise.
    const slanted = {
      interiorWalls: [
        {
          id: 'w',
          from: { xM: 3, yM: 0 },
          to: { xM: 7, yM: 4 },
          openings: [{ offsetM: 2 * Math.SQRT2 - 0.5, widthM: 1 }],
        },
      ],
    };
    const straight = {
      interiorWalls: [
        { id: 'w', from: { xM: 5, yM: 0 }, to: { xM: 5, yM: 4 }, openings: [{ offsetM: 1.5, widthM: 1 }] },
      ],
    };
    const ratio = through(0.125, 4, slanted, 0) / through(0.125, 4, straight, 0);
    expect(ratio).toBeGreaterThan(0.85);
    expect(ratio).toBeLessThan(1.15);
    const closed = { interiorWalls: [{ id: 'w', from: { xM: 3, yM: 0 }, to: { xM: 7, yM: 4 } }] };
    expect(through(0.125, 4, closed, 0.5)).toBeLessThan(1e-12);
  });
});
