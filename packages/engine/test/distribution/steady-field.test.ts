import { describe, expect, it } from 'vitest';
import type { Arrangement, FieldMachine } from '../../src/distribution/arrangement.ts';
import { fieldBand } from '../../src/distribution/field-band.ts';
import { fieldModel } from '../../src/distribution/field-model.ts';
import { fieldResult } from '../../src/distribution/field-result.ts';
import type { FieldSite } from '../../src/distribution/field-site.ts';
import { movedAir } from '../../src/distribution/moved-air.ts';
import { steadyField } from '../../src/distribution/steady-field.ts';
import type { Point } from '../../src/geometry/point.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { machineAlone, rectangle, workedFan, workedMachine, workedSite } from './worked-plan.ts';

const MIXING = 0.009;

describe('balances', () => {
  it.each([
    { name: 'machine alone', site: workedSite(), arrangement: machineAlone() },
    { name: 'with a fan', site: workedSite(), arrangement: { machine: workedMachine(), fans: [workedFan] } },
    { name: 'no machine', site: workedSite({ walls: false }), arrangement: {} },
    { name: 'too small', site: workedSite(), arrangement: machineAlone({ ratedKgPerDay: 1 }) },
    {
      name: 'air by pressure, a transfer fan, fixed sources',
      site: {
        ...workedSite(),
        leaks: [
          {
            what: 'vent',
            place: { kind: 'walls', edges: [0] },
            flowM3PerS: 0.02,
            humidityRatio: 0.018,
            temperatureC: 29,
          },
          {
            what: 'floor',
            place: { kind: 'floor' },
            flowM3PerS: -0.02,
            humidityRatio: 0.009,
            temperatureC: 24,
          },
        ],
        transfers: [{ from: { xM: 2, yM: 9 }, to: { xM: 10, yM: 9 }, flowM3PerS: 0.03, powerW: 12 }],
        fixed: [{ what: 'hose', place: { kind: 'at', at: { xM: 3, yM: 3 } }, waterKgPerS: 1e-6, heatW: 40 }],
      } satisfies FieldSite,
      arrangement: machineAlone({ cycling: 'part-load' }),
    },
  ] as readonly { name: string; site: FieldSite; arrangement: Arrangement }[])(
    '$name: water and heat close to 1e-10',
    ({ site, arrangement }) => {
      const model = fieldModel(site);
      const state = steadyField(model, arrangement, { mixingM2PerS: MIXING });
      expect(Math.abs(state.balance.water)).toBeLessThan(1e-10);
      expect(Math.abs(state.balance.heat)).toBeLessThan(1e-10);
      expect(state.endings.transport.converged).toBe(true);
      const { numbers } = fieldResult(model, arrangement, state);
      // Rows of water sum to nothing: what comes in, the machine takes.
      const sum = numbers.water.reduce((s, row) => s + row.kgPerDay, 0);
      const most = Math.max(...numbers.water.map((row) => Math.abs(row.kgPerDay)));
      expect(Math.abs(sum / most)).toBeLessThan(1e-9);
    },
  );
});

describe('symmetry', () => {
  const flip = ({ xM, yM }: Point): Point => ({ xM: 12 - xM, yM });
  const mirrored = (site: FieldSite): FieldSite => ({
    ...site,
    plan: {
      ...site.plan,
      outline: [...site.plan.outline].reverse().map(flip),
      interiorWalls: site.plan.interiorWalls!.map((w) => ({ ...w, from: flip(w.from), to: flip(w.to) })),
      ducts: site.plan.ducts!.map((d) => ({ ...d, path: d.path.map(flip) })),
    },
    vapor: site.vapor.map((e) => {
      const { place } = e;
      if (place.kind !== 'floor') return e;
      return {
        ...e,
        place: {
          kind: 'floor' as const,
          ...(place.within === undefined ? {} : { within: place.within.map(flip) }),
          ...(place.except === undefined ? {} : { except: place.except.map((ring) => ring.map(flip)) }),
        },
      };
    }),
  });
  // Places inside cells and not on the lines of the grid.
  const machine: Partial<FieldMachine> = { intake: { xM: 1.1, yM: 1.1 }, outlet: { xM: 1.9, yM: 1.1 } };

  it('a mirrored plan has the mirrored field', () => {
    const there = fieldModel(workedSite());
    const back = fieldModel(mirrored(workedSite()));
    const one = steadyField(there, machineAlone(machine), { mixingM2PerS: MIXING });
    const other = steadyField(
      back,
      machineAlone({ intake: flip(machine.intake!), outlet: flip(machine.outlet!), bearingDeg: 270 }),
      { mixingM2PerS: MIXING },
    );
    expect(other.machine!.duty).toBeCloseTo(one.machine!.duty, 6);
    let worst = 0;
    for (let i = 0; i < there.mesh.count; i += 1) {
      const twin = back.mesh.cellAt[there.mesh.row[i]! * 48 + 47 - there.mesh.column[i]!]!;
      worst = Math.max(worst, Math.abs(one.humidityRatio[i]! / other.humidityRatio[twin]! - 1));
    }
    // The duty is found to 1e-6 of humidity.
    expect(worst).toBeLessThan(3e-6);
  });

  it('turned by a quarter turn it is the same', () => {
    const turn = ({ xM, yM }: Point): Point => ({ xM: 10 - yM, yM: xM });
    const site = workedSite({ walls: false, cornerFraction: 0.01 });
    const turned = { ...site, plan: { ...site.plan, outline: rectangle(10, 12) } };
    const one = steadyField(fieldModel(site), machineAlone(machine), { mixingM2PerS: MIXING });
    const other = steadyField(
      fieldModel({
        ...turned,
        vapor: turned.vapor
          .filter((e) => e.what !== 'damp corner')
          .map((e) => (e.what === 'ground' ? { ...e, place: { kind: 'floor' } } : e)),
      }),
      machineAlone({ intake: turn(machine.intake!), outlet: turn(machine.outlet!), bearingDeg: 0 }),
      { mixingM2PerS: MIXING },
    );
    expect(other.machine!.removalKgPerS / one.machine!.removalKgPerS).toBeCloseTo(1, 4);
  });
});

describe('how the machine fares', () => {
  const model = fieldModel(workedSite());
  const solve = (change: Partial<FieldMachine>) =>
    steadyField(model, machineAlone(change), { mixingM2PerS: MIXING });

  it('holds its set-point at the intake', () => {
    const state = solve({});
    expect(state.outcome).toBe('holds');
    expect(state.machine!.intakeRelativeHumidity).toBeCloseTo(0.55, 5);
    expect(state.machine!.sensorRelativeHumidity).toBeCloseTo(state.machine!.intakeRelativeHumidity, 12);
  });

  it('holds it at a remote humidistat, and runs more for it', () => {
    const sensor = { xM: 11.5, yM: 9.5 };
    const near = solve({});
    const state = solve({ sensor, setPoint: 0.75 });
    expect(state.outcome).toBe('holds');
    expect(state.machine!.sensorRelativeHumidity).toBeCloseTo(0.75, 5);
    expect(state.machine!.intakeRelativeHumidity).toBeLessThan(0.5);
    expect(state.machine!.duty).toBeGreaterThan(near.machine!.duty);
  });

  it('runs through when it is too small, and says so', () => {
    const state = solve({ ratedKgPerDay: 1 });
    expect(state.outcome).toBe('undersized');
    expect(state.machine!.duty).toBe(1);
    expect(state.machine!.sensorRelativeHumidity).toBeGreaterThan(0.55);
  });

  it('stands idle where the air is dry enough', () => {
    const site = workedSite();
    const dry = fieldModel({ ...site, vapor: site.vapor.map((e) => ({ ...e, humidityRatio: 0.008 })) });
    const state = steadyField(dry, machineAlone(), { mixingM2PerS: MIXING });
    expect(state.outcome).toBe('idle');
    expect(state.machine!.duty).toBe(0);
    expect(state.machine!.removalKgPerS).toBe(0);
    expect(fieldResult(dry, machineAlone(), state).numbers.planCoefficient).toBeNull();
  });

  it('does nothing in air that is too cold for it', () => {
    const state = solve({ cold: 'household', lowestIntakeC: 23 });
    expect(state.outcome).toBe('too-cold');
    expect(state.machine!.removalKgPerS).toBe(0);
    expect(state.mixed!.outcome).toBe('too-cold');
  });

  it('runs more where each start costs water', () => {
    const ideal = solve({ cycling: 'ideal' });
    const partLoad = solve({ cycling: 'part-load' });
    expect(partLoad.machine!.duty).toBeGreaterThan(ideal.machine!.duty * 1.05);
  });

  it('a state nearby to start from changes the way and not the answer', () => {
    const first = solve({});
    const moved = { intake: { xM: 1.3, yM: 1.1 }, outlet: { xM: 2.1, yM: 1.1 } };
    const fresh = solve(moved);
    const near = steadyField(model, machineAlone(moved), { mixingM2PerS: MIXING, near: first });
    expect(near.machine!.duty).toBeCloseTo(fresh.machine!.duty, 5);
    for (let i = 0; i < model.mesh.count; i += 97) {
      expect(near.humidityRatio[i]! / fresh.humidityRatio[i]!).toBeCloseTo(1, 5);
    }
  });

  it('a ranking differs by less than a twentieth of a point', () => {
    const full = fieldResult(model, machineAlone(), solve({})).numbers;
    const quick = fieldResult(
      model,
      machineAlone(),
      steadyField(model, machineAlone(), { mixingM2PerS: MIXING, accuracy: 'ranking' }),
    ).numbers;
    expect(Math.abs(quick.dampest.relativeHumidity - full.dampest.relativeHumidity)).toBeLessThan(5e-4);
  });
});

describe('plan coefficient', () => {
  it('1 for mixed air, below 1 for a pocket, and the season reads the mean of it', () => {
    const model = fieldModel(workedSite());
    const arrangement = machineAlone();
    const state = steadyField(model, arrangement, { mixingM2PerS: MIXING });
    const { numbers } = fieldResult(model, arrangement, state);
    expect(numbers.planCoefficient).toBeGreaterThan(0.4);
    expect(numbers.planCoefficient).toBeLessThan(0.8);
    // By its definition.
    const off = state.offHumidityRatio;
    expect(numbers.planCoefficient).toBeCloseTo(
      (off - numbers.meanHumidityRatio) / (off - state.machine!.intakeHumidityRatio),
      12,
    );
    // The humidistat's own warmth makes the season's coefficient smaller still.
    expect(numbers.seasonPlanCoefficient).toBeLessThan(numbers.planCoefficient!);
    const mixed = steadyField(model, arrangement, { mixingM2PerS: 8 });
    expect(fieldResult(model, arrangement, mixed).numbers.planCoefficient).toBeCloseTo(1, 1);
  });

  it('above 1 where dry air is carried to the far end and wet air drawn home', () => {
    const model = fieldModel(workedSite());
    const arrangement = machineAlone({ outlet: { xM: 10.5, yM: 8.5 }, bearingDeg: null });
    const state = steadyField(model, arrangement, { mixingM2PerS: MIXING });
    expect(fieldResult(model, arrangement, state).numbers.planCoefficient).toBeGreaterThan(1);
  });
});

describe('band', () => {
  it('has three states, starts each from the middle, and states its limits', () => {
    const model = fieldModel(workedSite());
    const band = fieldBand(model, machineAlone(), { low: 0.003, value: 0.009, high: 0.02 });
    const duties = [band.low, band.value, band.high].map(({ state }) => state.machine!.duty);
    // Printed 0.13, 0.14, 0.15.
    expect(duties[0]).toBeLessThan(duties[1]!);
    expect(duties[1]).toBeLessThan(duties[2]!);
    expect(band.limits.map(({ code }) => code)).toEqual(['mixing-uncertain', 'near-machine']);
  });

  it('warns of wet ground, wind, height and a cold floor', () => {
    const site = workedSite({ openFraction: 1, cornerFraction: 1, airChangesPerHour: 6 });
    const model = fieldModel({
      ...site,
      vapor: site.vapor.map((e) => (e.kind === 'outdoor' ? { ...e, humidityRatio: 0.006 } : e)),
      plan: { ...site.plan, heightM: 2.2 },
      heat: [
        { what: 'ground', place: { kind: 'floor' }, conductanceWPerK: 5, per: 'each', temperatureC: 12 },
        { what: 'floor above', place: { kind: 'floor' }, conductanceWPerK: 3, per: 'each', temperatureC: 24 },
      ],
    });
    const band = fieldBand(model, {}, { low: 0.003, value: 0.009, high: 0.02 });
    expect(band.limits.map(({ code }) => code)).toEqual([
      'mixing-uncertain',
      'too-high',
      'wind-through',
      'humidity-steps-with-height',
      'cold-floor',
    ]);
  });
});

describe('jets in the space', () => {
  const jetOf = (site: FieldSite, change: Partial<FieldMachine>) => {
    const { throwM: _, ...machine } = workedMachine(change);
    return movedAir(fieldModel(site), { machine }).machine!.jet!;
  };

  it('end at a wall, a low duct, or where they are blocked', () => {
    const open = workedSite({ walls: false });
    expect(jetOf(open, { bearingDeg: 90 })).toMatchObject({ throwM: 3.2, endedBy: 'low-space' });
    const away = jetOf(open, { bearingDeg: 180 });
    expect(away.endedBy).toBe('obstacle');
    expect(away.freeRunM).toBeCloseTo(1, 9);
    expect(jetOf(open, { outlet: { xM: 1.75, yM: 0.3 }, bearingDeg: 180 }).endedBy).toBe('outlet-blocked');
    // The duct leaves a fifth of the height.
    expect(jetOf(workedSite(), { outlet: { xM: 3, yM: 5 }, bearingDeg: 0 }).freeRunM).toBeCloseTo(1.5, 9);
    // The opening leaves four fifths.
    expect(jetOf(workedSite(), { outlet: { xM: 5, yM: 5.1 }, bearingDeg: 90 }).throwM).toBe(3.2);
    expect(jetOf(workedSite(), { outlet: { xM: 5, yM: 3 }, bearingDeg: 90 }).throwM).toBeCloseTo(1, 9);
  });

  it('mix the bay that they blow into, not what lies behind a low duct', () => {
    const { bay, mixingM2PerS } = jetOf(workedSite(), { mixingM2PerS: undefined as never });
    expect(bay).not.toBeNull();
    // 0.1 m²/s times the cube root of power over volume: 78 m² of the 120 lie on this side.
    expect(mixingM2PerS).toBeGreaterThan(0.011);
  });
});

describe('refusals', () => {
  const refuse = (run: () => unknown, message: RegExp) => {
    expect(run).toThrow(EngineError);
    expect(run).toThrow(message);
  };
  const closed: FieldSite = {
    ...workedSite({ walls: false }),
    plan: {
      outline: rectangle(12, 10),
      heightM: 0.8,
      interiorWalls: [{ id: 'w', from: { xM: 6, yM: 0 }, to: { xM: 6, yM: 10 } }],
    },
  };

  it('an outlet behind a wall without an opening', () => {
    refuse(
      () =>
        steadyField(fieldModel(closed), machineAlone({ outlet: { xM: 8, yM: 2 } }), { mixingM2PerS: MIXING }),
      /no opening lets its air flow back/,
    );
  });

  it('nothing that binds the air', () => {
    const site = workedSite();
    refuse(
      () => steadyField(fieldModel({ ...site, vapor: [] }), {}, { mixingM2PerS: MIXING }),
      /nothing binds the humidity/,
    );
    refuse(
      () => steadyField(fieldModel({ ...site, heat: [] }), {}, { mixingM2PerS: MIXING }),
      /nothing binds the temperature/,
    );
  });

  it('figures that make no sense', () => {
    const model = fieldModel(workedSite());
    refuse(() => steadyField(model, machineAlone({ setPoint: 55 }), { mixingM2PerS: MIXING }), /set-point/);
    refuse(() => steadyField(model, machineAlone(), { mixingM2PerS: 0 }), /background mixing/);
    refuse(
      () => steadyField(model, machineAlone({ intake: { xM: 40, yM: 1 } }), { mixingM2PerS: MIXING }),
      /intake/,
    );
  });

  it('leaks that leave and none that enter; a difference is spread and told', () => {
    const leak = (flowM3PerS: number) => ({
      what: 'vent',
      place: { kind: 'walls' as const },
      flowM3PerS,
      humidityRatio: 0.017,
      temperatureC: 28,
    });
    refuse(() => fieldModel({ ...workedSite(), leaks: [leak(-0.01)] }), /none enters/);
    const model = fieldModel({ ...workedSite(), leaks: [leak(0.01)] });
    expect(model.notices.map(({ code }) => code)).toContain('leaks-unbalanced');
    expect(model.leak.reduce((s, q) => s + q, 0)).toBeCloseTo(0, 12);
  });
});
