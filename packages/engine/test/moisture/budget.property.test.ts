import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fallingZero } from '../../src/moisture/balance-root.ts';
import { type Band, known } from '../../src/moisture/band.ts';
import { moistureBudget } from '../../src/moisture/budget.ts';
import type { BudgetInput } from '../../src/moisture/budget-input.ts';
import { groundEvaporationKgPerM2S } from '../../src/moisture/ground-evaporation.ts';
import { linerPermeance } from '../../src/moisture/liner.ts';
import { vaporDensityKgPerM3 } from '../../src/moisture/vapor-density.ts';
import { saturationPressurePa } from '../../src/psychrometrics/saturation-pressure.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const band = (min: number, max: number): fc.Arbitrary<Band> =>
  fc
    .tuple(between(min, max), between(min, max), between(min, max), fc.boolean())
    .map(([a, b, c, assumed]) => {
      const [low, value, high] = [a, b, c].sort((x, y) => x - y) as [number, number, number];
      return { low, value, high, assumed };
    });

/** Budgets with some of each kind of path, over the whole range of air. */
const anyBudget = (state: 'read' | 'steady'): fc.Arbitrary<BudgetInput> =>
  fc
    .record({
      temperature: band(-40, 50),
      humidity: band(0.01, 1),
      ground: band(-30, 35),
      area: band(0, 200),
      open: band(0, 1),
      dry: band(0, 5000),
      sheet: band(0, 5e-11),
      flow: band(0, 0.5),
      outdoor: band(0, 0.025),
      house: band(-0.2, 0.2),
      cold: band(-30, 30),
      entered: band(0, 20),
      rated: band(0, 60),
      set: between(0.3, 0.9),
      machine: fc.constantFrom('none', 'collected', 'running', 'humidistat'),
      with: fc.tuple(fc.boolean(), fc.boolean(), fc.boolean(), fc.boolean()),
    })
    .map((r) => ({
      state: state === 'steady' ? { kind: 'steady' } : { kind: 'read', relativeHumidity: r.humidity },
      airTemperatureC: r.temperature,
      pressurePa: 98_700,
      openGround: [
        { key: 'a', title: 'Bare', areaM2: r.area, groundTemperatureC: r.ground, dryLayerSPerM: r.dry },
      ],
      ...(r.with[0] && {
        linedGround: [
          {
            key: 'b',
            title: 'Liner',
            areaM2: r.area,
            groundTemperatureC: r.ground,
            sheetKgPerM2SPa: r.sheet,
            openFraction: r.open,
            dryLayerSPerM: r.dry,
          },
        ],
      }),
      ...(r.with[1] && {
        wickingMasonry: [
          {
            key: 'c',
            title: 'Wall',
            lengthM: known(14),
            faceHeightM: known(0.9),
            thicknessM: known(0.2),
            sorptivityMPerRootS: known(1.3e-4),
            wetPorosity: known(0.22),
            surfaceTemperatureC: r.ground,
          },
        ],
        coldSurfaces: [{ key: 'd', title: 'Duct', areaM2: known(9), temperatureC: r.cold }],
      }),
      ...(r.with[2] && {
        outsideAir: { key: 'o', title: 'Outdoors', flowM3PerS: r.flow, humidityRatio: r.outdoor },
        houseAir: { key: 'h', title: 'House', flowM3PerS: r.house, humidityRatio: r.outdoor },
      }),
      ...(r.with[3] && { entered: [{ key: 'e', title: 'Entered', kgPerDay: r.entered }] }),
      ...(r.machine === 'collected' && { dehumidifier: { kind: 'collected', kgPerDay: r.entered } }),
      ...(r.machine === 'running' && {
        dehumidifier: { kind: 'running', ratedKgPerDay: r.rated, runFraction: r.open },
      }),
      ...(r.machine === 'humidistat' && {
        dehumidifier: { kind: 'humidistat', ratedKgPerDay: r.rated, setRelativeHumidity: r.set },
      }),
    })) as fc.Arbitrary<BudgetInput>;

function allFinite(value: unknown, where = 'budget'): void {
  if (typeof value === 'number') expect(Number.isFinite(value), where).toBe(true);
  else if (value !== null && typeof value === 'object') {
    for (const [key, inner] of Object.entries(value)) {
      // Perfectly dry air has no dew point.
      if (key !== 'dewPointC') allFinite(inner, `${where}.${key}`);
    }
  }
}

describe('any budget', () => {
  it('closes, has no NaN, and each middle lies in its range: read', () => {
    fc.assert(
      fc.property(anyBudget('read'), (input) => {
        const budget = moistureBudget(input);
        allFinite(budget);
        expect(Math.abs(budget.closureKgPerDay)).toBeLessThanOrEqual(
          1e-9 * (budget.totalInKgPerDay + budget.removedKgPerDay),
        );
        for (const path of budget.paths) {
          expect(path.low).toBeLessThanOrEqual(path.kgPerDay);
          expect(path.kgPerDay).toBeLessThanOrEqual(path.high);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('closes, has no NaN, and stays between dry and saturated: steady', () => {
    fc.assert(
      fc.property(anyBudget('steady'), (input) => {
        const budget = moistureBudget(input);
        allFinite(budget);
        // The floor is the arithmetic: flows cancel out of terms of up to 1000 kg/day, each good to 1e-14.
        expect(Math.abs(budget.closureKgPerDay)).toBeLessThanOrEqual(
          1e-9 * (budget.totalInKgPerDay + budget.removedKgPerDay) + 1e-11,
        );
        expect(budget.relativeHumidity).toBeGreaterThanOrEqual(0);
        expect(budget.relativeHumidity).toBeLessThanOrEqual(1 + 1e-9);
        const spread = budget.relativeHumiditySpread!;
        expect(spread.low).toBeLessThanOrEqual(spread.likelyLow);
        expect(spread.likelyLow).toBeLessThanOrEqual(spread.value);
        expect(spread.value).toBeLessThanOrEqual(spread.likelyHigh);
        expect(spread.likelyHigh).toBeLessThanOrEqual(spread.high);
        for (const path of budget.paths) {
          expect(path.low).toBeLessThanOrEqual(path.kgPerDay + 1e-12);
          expect(path.kgPerDay).toBeLessThanOrEqual(path.high + 1e-12);
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe('ground and liner', () => {
  const density = (t: number, rh: number) => vaporDensityKgPerM3(rh * saturationPressurePa(t), t);

  it('drier air draws more from the ground', () => {
    fc.assert(
      fc.property(
        between(-40, 50),
        between(-40, 50),
        between(0.05, 1),
        between(0, 5000),
        (ground, t, rh, r) => {
          const g = (humidity: number) =>
            groundEvaporationKgPerM2S(ground, 1, density(t, humidity), 0.002, r);
          expect(g(rh - 0.04)).toBeGreaterThan(g(rh));
          expect(Number.isFinite(g(rh))).toBe(true);
        },
      ),
    );
  });

  it('a liner without open spots is its sheet; all open, it is the ground; between, it never falls', () => {
    fc.assert(
      fc.property(
        between(0, 1),
        between(0, 0.9),
        between(0, 20),
        between(21, 500),
        (f, step, sheet, open) => {
          expect(linerPermeance(0, sheet, open)).toBe(sheet);
          expect(linerPermeance(1, sheet, open)).toBe(open);
          const more = Math.min(1, f + step);
          expect(linerPermeance(more, sheet, open)).toBeGreaterThanOrEqual(
            linerPermeance(f, sheet, open) - 1e-12,
          );
        },
      ),
    );
  });

  it('the budget of a wholly open liner is that of bare ground', () => {
    fc.assert(
      fc.property(between(5, 30), between(0.2, 0.9), (t, rh) => {
        const common = {
          state: { kind: 'read', relativeHumidity: known(rh) },
          airTemperatureC: known(t),
          pressurePa: 101_325,
        } as const;
        const zone = {
          key: 'z',
          title: 'Floor',
          areaM2: known(77),
          groundTemperatureC: known(15),
          dryLayerSPerM: known(640),
        };
        const lined = { ...zone, sheetKgPerM2SPa: known(3e-12), openFraction: known(1) };
        const open = moistureBudget({ ...common, openGround: [zone] });
        const liner = moistureBudget({ ...common, linedGround: [lined] });
        expect(liner.unexplainedKgPerDay).toBeCloseTo(open.unexplainedKgPerDay, 9);
      }),
    );
  });

  it('wetter outdoor air never dries the space', () => {
    fc.assert(
      fc.property(between(0, 0.02), between(0, 0.005), between(0.001, 0.2), (w, more, flow) => {
        const at = (humidityRatio: number) =>
          moistureBudget({
            state: { kind: 'steady' },
            airTemperatureC: known(21),
            pressurePa: 101_325,
            openGround: [
              {
                key: 'z',
                title: 'Floor',
                areaM2: known(90),
                groundTemperatureC: known(17),
                dryLayerSPerM: known(800),
              },
            ],
            outsideAir: {
              key: 'o',
              title: 'Outdoors',
              flowM3PerS: known(flow),
              humidityRatio: known(humidityRatio),
            },
          }).relativeHumidity;
        expect(at(w + more)).toBeGreaterThanOrEqual(at(w) - 1e-12);
      }),
      { numRuns: 50 },
    );
  });
});

describe('zero of a falling function', () => {
  it('is found for kinked and steep functions', () => {
    fc.assert(
      fc.property(between(0.001, 0.999), between(-6, 6), between(0, 1e4), (root, power, kink) => {
        const f = (x: number) => (root - x) * 10 ** power + (x < root ? kink * (root - x) ** 2 : 0);
        const { x, ending } = fallingZero(f, 0, 1, 0);
        expect(ending.converged).toBe(true);
        expect(Math.abs(x - root)).toBeLessThan(1e-14);
      }),
    );
  });

  it('says when there is none', () => {
    expect(fallingZero((x) => 3 - x, 0, 2, 1e-9)).toMatchObject({
      x: 2,
      ending: { converged: false, reason: 'no-bracket', residual: 1 },
    });
    expect(fallingZero((x) => -3 - x, 0, 2, 1e-9)).toMatchObject({
      x: 0,
      ending: { converged: false, reason: 'no-bracket', residual: 3 },
    });
  });
});
