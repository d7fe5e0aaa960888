import { describe, expect, it } from 'vitest';
import { type Band, known } from '../../src/moisture/band.ts';
import { moistureBudget } from '../../src/moisture/budget.ts';
import type { BudgetInput, LinedGround, OpenGround } from '../../src/moisture/budget-input.ts';
import { permeanceFromPerms } from '../../src/moisture/permeance.ts';
import { moistureSources } from '../../src/moisture/sources.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { saturationPressurePa } from '../../src/psychrometrics/saturation-pressure.ts';

const guess = (value: number, low: number, high: number): Band => ({ value, low, high, assumed: true });
const codes = (notices: readonly { code: string }[]) => notices.map(({ code }) => code);

const bare: OpenGround = {
  key: 'floor',
  title: 'Bare earth',
  areaM2: known(120),
  groundTemperatureC: known(16),
  dryLayerSPerM: known(1000),
};
const lined: LinedGround = {
  key: 'floor',
  title: 'Liner',
  areaM2: known(120),
  groundTemperatureC: known(16),
  sheetKgPerM2SPa: known(permeanceFromPerms(0.06)),
  openFraction: known(0.01),
  dryLayerSPerM: known(1000),
};
const read: BudgetInput = {
  state: { kind: 'read', relativeHumidity: known(0.55) },
  airTemperatureC: known(20),
  pressurePa: 101_325,
  surfaceTransferMPerS: known(0.002),
};
const steady = { ...read, state: { kind: 'steady' } } as const;
const path = (budget: ReturnType<typeof moistureBudget>, key: string) =>
  budget.paths.find((one) => one.key === key)!;

describe('paths at the air as read', () => {
  it('a liner with 1 % open on soil of 16 °C: 0.28 kg/day through holes, 0.02 through the sheet', () => {
    // Same case as the liner table, computed separately: half of the last digit.
    const budget = moistureBudget({ ...read, linedGround: [lined] });
    expect(Math.abs(path(budget, 'liner-open:floor').kgPerDay - 0.28)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(path(budget, 'liner-sheet:floor').kgPerDay - 0.02)).toBeLessThanOrEqual(0.005);
    expect(budget.unexplainedKgPerDay).toBeCloseTo(-budget.totalInKgPerDay, 12);
  });

  it('every kind of path is counted once, with the sign of its direction', () => {
    const budget = moistureBudget({
      ...read,
      openGround: [bare],
      linedGround: [{ ...lined, key: 'rest' }],
      seams: [
        {
          key: 'laps',
          title: 'Open laps',
          lengthM: known(60),
          gapM: known(0.02),
          lapM: known(0.075),
          pumpingFactor: known(3),
          groundTemperatureC: known(16),
        },
      ],
      edges: [
        {
          key: 'north',
          title: 'North edge',
          lengthM: known(12),
          gapM: known(0.01),
          groundTemperatureC: known(16),
          dryLayerSPerM: known(500),
        },
      ],
      piers: [
        {
          key: 'all',
          title: 'Piers',
          lengthM: known(24),
          gapM: known(0.005),
          groundTemperatureC: known(16),
          dryLayerSPerM: known(500),
        },
      ],
      standingWater: [{ key: 'pond', title: 'Pond', areaM2: known(2), temperatureC: known(20) }],
      dampMasonry: [
        {
          key: 'walls',
          title: 'Block wall',
          areaM2: known(30),
          permeanceKgPerM2SPa: known(137e-12),
          behindTemperatureC: known(15),
        },
      ],
      wickingMasonry: [
        {
          key: 'south',
          title: 'South wall',
          lengthM: known(10),
          faceHeightM: known(0.8),
          thicknessM: known(0.15),
          sorptivityMPerRootS: known(1.29e-4),
          wetPorosity: known(0.2),
          surfaceTemperatureC: known(17),
        },
      ],
      coldSurfaces: [{ key: 'duct', title: 'Duct', areaM2: known(10), temperatureC: known(8) }],
      outsideAir: {
        key: 'out',
        title: 'Outdoor air',
        flowM3PerS: known(0.01),
        humidityRatio: known(0.0165),
      },
      houseAir: {
        key: 'house',
        title: 'House air',
        flowM3PerS: known(0.004),
        humidityRatio: known(0.0072),
      },
      otherAir: [{ key: 'leak', title: 'Duct leak', flowM3PerS: known(0.002), humidityRatio: known(0.0068) }],
      entered: [{ key: 'dryer', title: 'Clothes dryer', kgPerDay: known(1.7) }],
      dehumidifier: { kind: 'collected', kgPerDay: known(9) },
    });
    const signs = Object.fromEntries(budget.paths.map(({ key, kgPerDay }) => [key, Math.sign(kgPerDay)]));
    expect(signs).toEqual({
      'open-ground:floor': 1,
      'liner-sheet:rest': 1,
      'liner-open:rest': 1,
      'seam:laps': 1,
      'edge:north': 1,
      'pier:all': 1,
      'standing-water:pond': 1,
      'damp-masonry:walls': 1,
      'wicking-masonry:south': 1,
      'cold-surface:duct': -1,
      'outside-air': 1,
      'house-air': -1,
      'air:leak': -1,
      'entered:dryer': 1,
      dehumidifier: -1,
    });
    // By hand: 60 m, 3 times pumped, laps of the 2.4 g/(m day) example (2.36 at 4.119e-3 kg/m³).
    expect(Math.abs(path(budget, 'seam:laps').kgPerDay - 60 * 3 * 2.4e-3)).toBeLessThanOrEqual(60 * 3 * 5e-5);
    // By hand: 1.344 kg/(m² day) on 2 m² at 20 °C/55 %.
    expect(Math.abs(path(budget, 'standing-water:pond').kgPerDay - 2.688)).toBeLessThanOrEqual(0.002);
    // By hand: 137 ng, 30 m², (1705.45 - 0.55 · 2338.80) Pa.
    const dp = 1705.45 - 0.55 * 2338.8;
    expect(path(budget, 'damp-masonry:walls').kgPerDay).toBeCloseTo(86_400 * 30 * 137e-12 * dp, 4);
    // By hand: W of 20 °C/55 % is 7.9968 g/kg.
    const w = (0.621945 * 0.55 * saturationPressurePa(20)) / (101_325 - 0.55 * saturationPressurePa(20));
    expect(path(budget, 'outside-air').kgPerDay).toBeCloseTo(86_400 * 1.2 * 0.01 * (0.0165 - w), 9);
    expect(path(budget, 'house-air').kgPerDay).toBeCloseTo(86_400 * 1.2 * 0.004 * (0.0072 - w), 9);
    const inflow = budget.paths.reduce((sum, { kgPerDay }) => sum + Math.max(0, kgPerDay), 0);
    expect(budget.totalInKgPerDay).toBeCloseTo(inflow, 12);
    expect(budget.unexplainedKgPerDay).toBeCloseTo(budget.removedKgPerDay - inflow, 10);
    expect(Math.abs(budget.closureKgPerDay)).toBeLessThan(1e-9 * inflow);
    const sources = new Set<string>(Object.values(moistureSources).map(({ id }) => id));
    for (const { sourceId } of budget.paths) expect(sources).toContain(sourceId);
  });

  it('air that goes up into the house wets it and leaves the crawl air as it is', () => {
    const budget = moistureBudget({
      ...read,
      outsideAir: { key: 'o', title: 'Outdoor air', flowM3PerS: known(0.02), humidityRatio: known(0.012) },
      houseAir: { key: 'h', title: 'House air', flowM3PerS: known(-0.015), humidityRatio: known(0.0065) },
    });
    expect(path(budget, 'house-air').kgPerDay).toBe(0);
    const w = budget.humidityRatio;
    expect(budget.toHouseKgPerDay).toBeCloseTo(86_400 * 1.2 * 0.015 * (w - 0.0065), 9);
    expect(codes(budget.notices)).not.toContain('air-not-balanced');
  });

  it('says when more air goes up than comes in', () => {
    const budget = moistureBudget({
      ...read,
      outsideAir: { key: 'o', title: 'Outdoor air', flowM3PerS: known(0.014), humidityRatio: known(0.012) },
      houseAir: { key: 'h', title: 'House air', flowM3PerS: known(-0.015), humidityRatio: known(0.0065) },
    });
    expect(codes(budget.notices)).toContain('air-not-balanced');
  });

  it('flows of air count less on a mountain', () => {
    const at = (pressurePa: number) =>
      moistureBudget({
        ...read,
        pressurePa,
        outsideAir: { key: 'o', title: 'Outdoor air', flowM3PerS: known(0.01), humidityRatio: known(0.02) },
      });
    const low = at(101_325);
    const high = at(83_500);
    expect(path(high, 'outside-air').kgPerDay / (0.02 - high.humidityRatio)).toBeCloseTo(
      ((83_500 / 101_325) * path(low, 'outside-air').kgPerDay) / (0.02 - low.humidityRatio),
      8,
    );
  });

  it('tells a missing source from a missing sink', () => {
    const source = moistureBudget({
      ...read,
      openGround: [bare],
      dehumidifier: { kind: 'collected', kgPerDay: known(40) },
    });
    // 28.5 kg/day from the ground, 40 collected.
    expect(source.unexplainedKgPerDay).toBeGreaterThan(0);
    expect(codes(source.notices)).toContain('source-not-found');
    const sink = moistureBudget({ ...read, openGround: [bare] });
    expect(sink.unexplainedKgPerDay).toBeLessThan(0);
    expect(codes(sink.notices)).toContain('sink-not-found');
  });

  it('does not cry wolf where the guesses cover the rest', () => {
    const budget = moistureBudget({
      ...read,
      openGround: [{ ...bare, dryLayerSPerM: guess(1000, 500, 2350) }],
      dehumidifier: { kind: 'collected', kgPerDay: known(30) },
    });
    expect(codes(budget.notices)).toEqual(['largest-doubt']);
    expect(budget.notices[0]!.message).toContain('resistance of the dry layer');
  });

  it('takes a humidistat machine as running above its setting and says that this is a guess', () => {
    const at = (relativeHumidity: number) =>
      moistureBudget({
        ...read,
        state: { kind: 'read', relativeHumidity: known(relativeHumidity) },
        openGround: [bare],
        dehumidifier: { kind: 'humidistat', ratedKgPerDay: known(33), setRelativeHumidity: 0.55 },
      });
    const high = at(0.7);
    expect(path(high, 'dehumidifier').kgPerDay).toBeLessThan(-20);
    expect(path(high, 'dehumidifier').high).toBeCloseTo(0, 12);
    expect(codes(high.notices)).toContain('run-time-unknown');
    expect(path(at(0.45), 'dehumidifier').kgPerDay).toBeCloseTo(0, 12);
    expect(path(at(0.55), 'dehumidifier').kgPerDay).toBeCloseTo(path(at(0.55), 'dehumidifier').low / 2, 9);
  });
});

describe('ranges', () => {
  it('a path runs from its worst to its best corner, by hand', () => {
    const budget = moistureBudget({
      ...read,
      openGround: [{ ...bare, areaM2: guess(10, 8, 14), dryLayerSPerM: guess(1000, 500, 2350) }],
    });
    const middle = path(budget, 'open-ground:floor');
    expect(middle.low).toBeCloseTo(middle.kgPerDay * 0.8 * (1500 / 2850), 10);
    expect(middle.high).toBeCloseTo(middle.kgPerDay * 1.4 * (1500 / 1000), 10);
    expect(middle.assumed).toBe(true);
  });

  it('sums: extremes add, independent guesses add as root of squares', () => {
    const zone = (key: string, area: Band): OpenGround => ({ ...bare, key, areaM2: area });
    const budget = moistureBudget({
      ...read,
      openGround: [zone('a', guess(10, 7, 13)), zone('b', guess(20, 16, 24))],
    });
    const perM2 = path(budget, 'open-ground:a').kgPerDay / 10;
    const { value, low, high, likelyLow, likelyHigh } = budget.totalIn;
    expect([value, low, high].map((x) => x / perM2)).toEqual([
      expect.closeTo(30, 9),
      expect.closeTo(23, 9),
      expect.closeTo(37, 9),
    ]);
    // 3 and 4 give 5.
    expect(likelyLow / perM2).toBeCloseTo(25, 9);
    expect(likelyHigh / perM2).toBeCloseTo(35, 9);
  });

  it('doubt in the reading of the air widens what is unexplained, not the single paths', () => {
    const sharp = moistureBudget({ ...read, openGround: [bare] });
    const blunt = moistureBudget({
      ...read,
      state: { kind: 'read', relativeHumidity: { value: 0.55, low: 0.52, high: 0.58, assumed: false } },
      openGround: [bare],
    });
    expect(sharp.unexplained!.low).toBe(sharp.unexplained!.high);
    expect(blunt.unexplained!.high - blunt.unexplained!.low).toBeGreaterThan(1);
    expect(path(blunt, 'open-ground:floor').low).toBe(path(blunt, 'open-ground:floor').high);
  });
});

describe('steady humidity', () => {
  it('of ground and outdoor air alone is their mean weighted by conductance, by hand', () => {
    // Ground 15 °C: beta = A/(1/h + r) = 0.08 m³/s of vapor density; air 0.05 m³/s of humidity ratio at 1.2 kg/m³.
    const budget = moistureBudget({
      ...steady,
      openGround: [{ ...bare, groundTemperatureC: known(15) }],
      outsideAir: { key: 'o', title: 'Outdoor air', flowM3PerS: known(0.05), humidityRatio: known(0.006) },
    });
    // Independent referee: bisection on the vapor pressure with the two printed formulas.
    const beta = 120 / (1 / 0.002 + 1000);
    const net = (p: number) =>
      beta * (saturationPressurePa(15) / (461.5 * 288.15) - p / (461.5 * 293.15)) +
      1.2 * 0.05 * (0.006 - (0.621945 * p) / (101_325 - p));
    let [low, high] = [0, 2338];
    for (let i = 0; i < 100; i++) {
      const middle = (low + high) / 2;
      if (net(middle) > 0) low = middle;
      else high = middle;
    }
    expect(budget.relativeHumidity).toBeCloseTo(low / saturationPressurePa(20), 10);
    expect(budget.steadyHumidityRatio).toBe(budget.humidityRatio);
    expect(Math.abs(budget.closureKgPerDay)).toBeLessThan(1e-9 * budget.totalInKgPerDay);
    expect(budget.ending!.converged).toBe(true);
  });

  const humid: BudgetInput = {
    ...steady,
    linedGround: [{ ...lined, openFraction: guess(0.05, 0.03, 0.08) }],
    outsideAir: { key: 'o', title: 'Outdoor air', flowM3PerS: known(0.008), humidityRatio: known(0.0155) },
  };

  it('a humidistat that can hold its setting holds it, and its water closes the balance', () => {
    const budget = moistureBudget({
      ...humid,
      dehumidifier: { kind: 'humidistat', ratedKgPerDay: known(33), setRelativeHumidity: 0.55 },
    });
    expect(budget.relativeHumidity).toBeCloseTo(0.55, 12);
    const machine = path(budget, 'dehumidifier');
    expect(machine.kgPerDay).toBeCloseTo(-budget.totalInKgPerDay, 10);
    expect(machine.low).toBeLessThan(machine.kgPerDay);
    expect(machine.high).toBeGreaterThan(machine.kgPerDay);
    expect(budget.machineRunFraction).toBeGreaterThan(0.3);
    expect(budget.machineRunFraction).toBeLessThan(1);
    expect(budget.relativeHumiditySpread!.low).toBeCloseTo(0.55, 10);
    expect(budget.relativeHumiditySpread!.high).toBeCloseTo(0.55, 10);
  });

  it('a humidistat that cannot runs through, stays above, and says so', () => {
    const budget = moistureBudget({
      ...humid,
      dehumidifier: { kind: 'humidistat', ratedKgPerDay: known(5), setRelativeHumidity: 0.55 },
    });
    expect(budget.relativeHumidity).toBeGreaterThan(0.56);
    expect(budget.machineRunFraction).toBe(1);
    expect(codes(budget.notices)).toContain('machine-too-small');
    expect(Math.abs(budget.closureKgPerDay)).toBeLessThan(1e-9 * budget.totalInKgPerDay);
  });

  it('a humidistat in air that stays dry by itself rests', () => {
    const budget = moistureBudget({
      ...humid,
      outsideAir: { key: 'o', title: 'Outdoor air', flowM3PerS: known(0.05), humidityRatio: known(0.004) },
      dehumidifier: { kind: 'humidistat', ratedKgPerDay: known(33), setRelativeHumidity: 0.6 },
    });
    expect(budget.relativeHumidity).toBeLessThan(0.6);
    expect(path(budget, 'dehumidifier').kgPerDay).toBe(0);
    expect(budget.machineRunFraction).toBe(0);
  });

  it('a machine that always runs dries further than one that is held', () => {
    const budget = moistureBudget({
      ...humid,
      dehumidifier: { kind: 'running', ratedKgPerDay: known(33), runFraction: known(1) },
    });
    expect(budget.relativeHumidity).toBeLessThan(0.55);
    expect(Math.abs(budget.closureKgPerDay)).toBeLessThan(1e-9 * budget.totalInKgPerDay);
  });

  it('sources that nothing takes away saturate the air and condense', () => {
    const budget = moistureBudget({
      ...steady,
      entered: [{ key: 'leak', title: 'Plumbing leak', kgPerDay: known(3.5) }],
    });
    expect(budget.relativeHumidity).toBeCloseTo(1, 12);
    expect(path(budget, 'excess').kgPerDay).toBeCloseTo(-3.5, 10);
    expect(codes(budget.notices)).toContain('saturated');
    expect(budget.closureKgPerDay).toBeCloseTo(0, 10);
  });

  it('sinks that nothing feeds are named and do not give a humidity below zero', () => {
    const budget = moistureBudget({
      ...steady,
      entered: [{ key: 'odd', title: 'Taken out', kgPerDay: known(-2) }],
    });
    expect(budget.humidityRatio).toBe(0);
    expect(codes(budget.notices)).toContain('sinks-exceed-sources');
    expect(budget.ending!.converged).toBe(false);
    expect(budget.ending!.reason).toBe('no-bracket');
    expect(budget.closureKgPerDay).toBeCloseTo(0, 10);
  });

  it('the likely range of humidity lies within the extremes and around the answer', () => {
    const { relativeHumiditySpread: spread } = moistureBudget({
      ...humid,
      linedGround: [{ ...lined, openFraction: guess(0.01, 0.008, 0.013) }],
      outsideAir: { key: 'o', title: 'Outdoor air', flowM3PerS: known(0.008), humidityRatio: known(0.0095) },
      surfaceTransferMPerS: undefined,
      airTemperatureC: { value: 20, low: 19.5, high: 20.5, assumed: false },
    });
    expect(spread!.low).toBeLessThan(spread!.likelyLow);
    expect(spread!.likelyLow).toBeLessThan(spread!.value);
    expect(spread!.value).toBeLessThan(spread!.likelyHigh);
    expect(spread!.likelyHigh).toBeLessThan(spread!.high);
  });
});

describe('input that makes no sense', () => {
  it.each([
    { change: {}, text: /at least one path/ },
    {
      change: { openGround: [bare, bare] },
      text: /two paths of the budget have the key "open-ground:floor"/,
    },
    { change: { openGround: [{ ...bare, areaM2: known(-1) }] }, text: /area of "Bare earth" in m²/ },
    {
      change: { openGround: [{ ...bare, areaM2: guess(5, 6, 7) }] },
      text: /value between low and high; got 6, 5, 7/,
    },
    { change: { openGround: [bare], airTemperatureC: known(51) }, text: /air temperature in °C/ },
    { change: { openGround: [bare], pressurePa: 1013 }, text: /pressure in Pa/ },
    {
      change: { linedGround: [{ ...lined, openFraction: known(1.01) }] },
      text: /open share of "Liner" in fraction/,
    },
    {
      change: {
        openGround: [bare],
        state: { kind: 'read', relativeHumidity: known(Number.NaN) },
      },
      text: /relative humidity as a fraction must be a number/,
    },
  ] as { change: Partial<BudgetInput>; text: RegExp }[])('$text', ({ change, text }) => {
    const act = () => moistureBudget({ ...read, ...change });
    expect(act).toThrow(EngineError);
    expect(act).toThrow(text);
  });
});
