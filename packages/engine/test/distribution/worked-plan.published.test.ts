import { describe, expect, it } from 'vitest';
import type { Arrangement } from '../../src/distribution/arrangement.ts';
import { fieldModel } from '../../src/distribution/field-model.ts';
import { fieldResult } from '../../src/distribution/field-result.ts';
import { nearestCell } from '../../src/distribution/places.ts';
import { steadyField } from '../../src/distribution/steady-field.ts';
import { machineAlone, type WorkedPlan, workedFan, workedMachine, workedSite } from './worked-plan.ts';

// The worked plan was computed with the same equations by another program; its table is printed in whole points of
// relative humidity, two digits of duty, one of water and whole percent of floor.

interface Printed {
  readonly duty: number;
  readonly kgPerDay?: number;
  readonly mean: number;
  readonly corner: number;
  readonly above70: number;
}

function solve(plan: WorkedPlan, arrangement: Arrangement, mixingM2PerS: number) {
  const model = fieldModel(workedSite(plan), 0.25);
  const state = steadyField(model, arrangement, { mixingM2PerS });
  const { maps, numbers } = fieldResult(model, arrangement, state);
  const corner = maps.relativeHumidity[nearestCell(model.mesh, { xM: 11.5, yM: 9.5 }, 0.1)]!;
  return { state, numbers, corner };
}

function expectPrinted({ state, numbers, corner }: ReturnType<typeof solve>, printed: Printed): void {
  expect(state.endings.duty.converged).toBe(true);
  expect(state.endings.transport.converged).toBe(true);
  expect(Math.abs(state.balance.water)).toBeLessThan(1e-10);
  expect(Math.abs(state.balance.heat)).toBeLessThan(1e-10);
  // Two points of relative humidity are asked for; one is reached, half of it rounding of the print.
  expect(Math.abs(100 * numbers.meanRelativeHumidity - printed.mean)).toBeLessThan(1);
  expect(Math.abs(100 * corner - printed.corner)).toBeLessThan(1);
  // Half a digit of rounding and half a digit of the program.
  expect(Math.abs(state.machine!.duty - printed.duty)).toBeLessThan(0.01);
  if (printed.kgPerDay !== undefined) {
    expect(Math.abs(86_400 * state.machine!.removalKgPerS - printed.kgPerDay)).toBeLessThan(0.1);
  }
  // A tenth of a point of humidity moves up to 1.5 % of the floor across the line of 70 %.
  expect(Math.abs(100 * numbers.shareAbove70 - printed.above70)).toBeLessThan(5);
}

const LAYOUTS: readonly {
  readonly name: string;
  readonly walls: boolean;
  readonly bearingDeg: number | null;
  readonly rows: readonly [number, number, number, number, number, number][];
}[] = [
  {
    name: 'open plan, clear jet',
    walls: false,
    bearingDeg: 90,
    rows: [
      [0.003, 0.2, 4.7, 63, 76, 18],
      [0.009, 0.18, 4.4, 67, 75, 33],
      [0.02, 0.18, 4.4, 67, 73, 25],
    ],
  },
  {
    name: 'open plan, outlet blocked',
    walls: false,
    bearingDeg: null,
    rows: [
      [0.003, 0.08, 2, 84, 93, 93],
      [0.009, 0.12, 3, 77, 85, 89],
      [0.02, 0.15, 3.8, 72, 77, 79],
    ],
  },
  {
    name: 'cross wall and low duct, clear jet',
    walls: true,
    bearingDeg: 90,
    rows: [
      [0.003, 0.13, 3, 75, 91, 66],
      [0.009, 0.14, 3.3, 74, 86, 69],
      [0.02, 0.15, 3.7, 72, 80, 57],
    ],
  },
  {
    name: 'cross wall and low duct, outlet blocked',
    walls: true,
    bearingDeg: null,
    rows: [
      [0.003, 0.07, 1.8, 86, 96, 91],
      [0.009, 0.11, 2.6, 80, 90, 84],
      [0.02, 0.14, 3.4, 74, 82, 74],
    ],
  },
];

describe('layouts of the worked plan', () => {
  for (const { name, walls, bearingDeg, rows } of LAYOUTS) {
    it.each(rows)(
      `${name}: K %d, duty %d, %d kg/day, mean %d, corner %d, above 70 on %d percent`,
      (...row) => {
        const [mixing, duty, kgPerDay, mean, corner, above70] = row;
        const solved = solve({ walls }, machineAlone({ bearingDeg }), mixing);
        expectPrinted(solved, { duty, kgPerDay, mean, corner, above70 });
        // Ideal mixing: duty 0.27, 6.1 kg/day.
        const { mixed } = solved.state;
        expect(Math.abs(mixed!.machine.duty - 0.27)).toBeLessThan(0.005);
        expect(Math.abs(86_400 * mixed!.machine.removalKgPerS - 6.1)).toBeLessThan(0.05);
      },
    );
  }

  it('third layout at K 0.009 in detail', () => {
    const { state, numbers } = solve({}, machineAlone(), 0.009);
    const { machine } = state;
    const rows: readonly [number, number, number][] = [
      // Humidity ratios to 0.3 %, by which the saturation formulas in use differ; the rest in the last printed digit.
      [machine!.duty, 0.136, 0.0015],
      [86_400 * machine!.removalKgPerS, 3.27, 0.015],
      [machine!.heatW, 177, 1],
      [1000 * machine!.intakeHumidityRatio, 9.44, 0.028],
      [1000 * numbers.meanHumidityRatio, 11.59, 0.035],
      [1000 * Math.max(...state.humidityRatio), 13.29, 0.04],
      [machine!.intakeC, 22.7, 0.1],
      [numbers.meanTemperatureC, 21.2, 0.1],
    ];
    for (const [got, printed, tolerance] of rows) expect(Math.abs(got - printed)).toBeLessThan(tolerance);
    expect(numbers.signature.present).toBe(true);
  });
});

describe('repairs of the third layout, K 0.009', () => {
  const rows: readonly {
    readonly name: string;
    readonly plan?: WorkedPlan;
    readonly with: Arrangement;
    readonly printed: Printed;
  }[] = [
    {
      name: 'unit twice as big',
      with: machineAlone({ ratedKgPerDay: 66, flowM3PerS: 0.17, outletM2: 0.06 }),
      printed: { duty: 0.06, mean: 76, corner: 87, above70: 76 },
    },
    {
      name: 'set-point 50 %',
      with: machineAlone({ setPoint: 0.5 }),
      printed: { duty: 0.19, mean: 69, corner: 82, above70: 50 },
    },
    {
      name: 'set-point 45 %',
      with: machineAlone({ setPoint: 0.45 }),
      printed: { duty: 0.28, mean: 63, corner: 78, above70: 46 },
    },
    {
      name: 'set-point 40 %',
      with: machineAlone({ setPoint: 0.4 }),
      printed: { duty: 0.42, mean: 57, corner: 73, above70: 10 },
    },
    {
      name: 'unit at the wall opening, jet through it',
      with: machineAlone({ intake: { xM: 4.25, yM: 5 }, outlet: { xM: 5, yM: 5 } }),
      printed: { duty: 0.18, mean: 67, corner: 73, above70: 12 },
    },
    {
      name: 'fan through the opening',
      with: { machine: workedMachine(), fans: [workedFan] },
      printed: { duty: 0.17, mean: 69, corner: 75, above70: 68 },
    },
    {
      name: 'fan of the machine runs on',
      with: machineAlone({ fanAlwaysOn: true }),
      printed: { duty: 0.2, mean: 64, corner: 74, above70: 39 },
    },
    {
      name: 'damp patch cured',
      plan: { cornerFraction: 0.01 },
      with: machineAlone(),
      printed: { duty: 0.13, mean: 73, corner: 82, above70: 68 },
    },
    {
      name: 'liner 0.2 % open everywhere, rim 0.05 air changes',
      plan: { openFraction: 0.002, cornerFraction: 0.002, airChangesPerHour: 0.05 },
      with: machineAlone(),
      printed: { duty: 0.05, mean: 65, corner: 70, above70: 6 },
    },
    {
      name: 'outlet ducted to the far corner',
      with: machineAlone({ outlet: { xM: 10.5, yM: 8.5 }, bearingDeg: null }),
      printed: { duty: 0.31, mean: 50, corner: 36, above70: 0 },
    },
  ];

  it.each(rows)('$name', ({ plan = {}, with: arrangement, printed }) => {
    expectPrinted(solve(plan, arrangement, 0.009), printed);
  });

  it('a bigger machine in the same place leaves the floor damper', () => {
    const small = solve({}, machineAlone(), 0.009);
    const big = solve({}, machineAlone({ ratedKgPerDay: 66, flowM3PerS: 0.17, outletM2: 0.06 }), 0.009);
    expect(big.numbers.meanRelativeHumidity).toBeGreaterThan(small.numbers.meanRelativeHumidity + 0.01);
    expect(big.numbers.dampest.relativeHumidity).toBeGreaterThan(
      small.numbers.dampest.relativeHumidity + 0.01,
    );
    expect(big.state.machine!.removalKgPerS).toBeLessThan(small.state.machine!.removalKgPerS);
  });
});

describe('cells of half the size', () => {
  // Printed for the third layout: mean 74.0 % at 0.25 m and 74.2 % at 0.125 m, greatest 85.6 % at both.
  it('change mean and greatest humidity little', () => {
    const at = (cellM: number) => {
      const model = fieldModel(workedSite(), cellM);
      const state = steadyField(model, machineAlone(), { mixingM2PerS: 0.009 });
      return fieldResult(model, machineAlone(), state).numbers;
    };
    const coarse = at(0.25);
    const fine = at(0.125);
    expect(Math.abs(100 * coarse.meanRelativeHumidity - 74)).toBeLessThan(0.3);
    expect(Math.abs(100 * fine.meanRelativeHumidity - 74.2)).toBeLessThan(0.4);
    expect(Math.abs(100 * coarse.highest.relativeHumidity - 85.6)).toBeLessThan(0.3);
    expect(Math.abs(100 * fine.highest.relativeHumidity - 85.6)).toBeLessThan(0.5);
  });
});
