import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { saturationPressurePa } from '../../src/psychrometrics/saturation-pressure.ts';
import { defaultSeasonCase } from '../../src/season/default-case.ts';
import { runSeason } from '../../src/season/run.ts';
import type { SeasonCase, SeasonWeather } from '../../src/season/season-case.ts';
import type { SeasonResult } from '../../src/season/season-result.ts';
import { fullCase, networkCase, prototypeCases, prototypeWeather } from './test-cases.ts';

type Numbers<A> = A extends fc.Arbitrary<infer T> ? T : never;

/** Weather from a few numbers: a yearly and a daily wave, relative humidity swinging between two ends, wind. */
const weatherNumbers = fc.record({
  meanC: fc.double({ min: -25, max: 40, noNaN: true }),
  yearK: fc.double({ min: 0, max: 30, noNaN: true }),
  dayK: fc.double({ min: 0, max: 12, noNaN: true }),
  dry: fc.double({ min: 0.01, max: 1, noNaN: true }),
  damp: fc.double({ min: 0.01, max: 1, noNaN: true }),
  pressurePa: fc.double({ min: 60_000, max: 104_000, noNaN: true }),
  wind: fc.constantFrom(0, 0, 3, 20),
  sun: fc.constantFrom(0, 800),
});

function weatherOf(w: Numbers<typeof weatherNumbers>): SeasonWeather {
  const temperatureC = new Float64Array(8760);
  const humidityRatio = new Float64Array(8760);
  for (let i = 0; i < 8760; i++) {
    const t =
      w.meanC -
      w.yearK * Math.cos((2 * Math.PI * i) / 8760) -
      w.dayK * Math.cos((2 * Math.PI * (i - 3)) / 24);
    temperatureC[i] = Math.min(50, Math.max(-40, t));
    const share = 0.5 + 0.5 * Math.sin((2 * Math.PI * i) / 97);
    // The driest and dampest air that the ends allow; above 4.5 kPa there is no weather on earth.
    const p = Math.min(4500, (w.dry + share * (w.damp - w.dry)) * saturationPressurePa(temperatureC[i]!));
    humidityRatio[i] = (0.621945 * p) / (w.pressurePa - p);
  }
  return {
    temperatureC,
    humidityRatio,
    pressurePa: new Float64Array(8760).fill(w.pressurePa),
    windSpeedMPerS: new Float64Array(8760).fill(w.wind),
    globalHorizontalWPerM2: Float64Array.from(temperatureC, (_, i) =>
      Math.max(0, w.sun * Math.sin((2 * Math.PI * ((i % 24) - 6)) / 24)),
    ),
  };
}

const caseNumbers = fc.record({
  areaM2: fc.constantFrom(5, 97, 1000),
  heightM: fc.constantFrom(0.3, 0.9, 2.5),
  openFraction: fc.constantFrom(0, 0.005, 0.3, 1),
  dry: fc.constantFrom(0, 500, 4700),
  standing: fc.constantFrom(0, 0, 1),
  rising: fc.constantFrom(0, 20),
  ach: fc.constantFrom(0, 0, 0.05, 3, 30),
  houseAch: fc.constantFrom(0, 0.5),
  network: fc.constantFrom(0, 0, 40, 8000),
  floorU: fc.constantFrom(0, 0.3, 1.6),
  ductsM2: fc.constantFrom(0, 25),
  supply: fc.constantFrom(0, 0.05),
  machines: fc.constantFrom(0, 1, 2),
  setPoint: fc.double({ min: 0.3, max: 0.7, noNaN: true }),
  ratedKgPerDay: fc.constantFrom(1, 33, 200),
  planCoefficient: fc.constantFrom(1, 0.6, 1.4),
  latent: fc.boolean(),
  otherKg: fc.constantFrom(0, 50),
  fail: fc.boolean(),
});

function caseOf(v: Numbers<typeof caseNumbers>): SeasonCase {
  const base = defaultSeasonCase();
  const scale = v.areaM2 / base.planAreaM2;
  const part = (w: SeasonCase['wood']['joists']) => ({
    ...w,
    areaM2: w.areaM2 * scale,
    surfaceMassKg: w.surfaceMassKg * scale,
    coreMassKg: w.coreMassKg * scale,
  });
  const machine = {
    ratedKgPerDay: v.ratedKgPerDay,
    ratedLPerKWh: 2,
    setPoint: v.setPoint,
    cold: 'low-temperature' as const,
    planCoefficient: v.planCoefficient,
  };
  return {
    ...base,
    planAreaM2: v.areaM2,
    heightM: v.heightM,
    cover: {
      ...base.cover,
      zones: [
        {
          areaM2: v.areaM2,
          openFraction: v.openFraction,
          sheetPermeanceKgPerM2SPa: 3.4e-12,
          dryLayerResistanceSPerM: v.dry,
        },
      ],
      standingWaterAreaM2: v.standing * 0.1 * v.areaM2,
    },
    walls: { ...base.walls, capillary: { ...base.walls.capillary, lengthM: v.rising } },
    wood: { joists: part(base.wood.joists), girder: part(base.wood.girder), sill: part(base.wood.sill) },
    house: { ...base.house, floorUWPerM2K: v.floorU },
    ducts: { ...base.ducts, areaM2: v.ductsM2, supplyFlowM3PerS: v.supply },
    airExchange:
      v.network > 0
        ? networkCase(v.network).airExchange
        : {
            kind: 'fixed',
            airChangesPerHour: v.ach,
            perKelvin: 0,
            referenceC: 20,
            houseAirChangesPerHour: v.houseAch,
          },
    machines: [machine, { ...machine, setPoint: v.setPoint - 0.05 }].slice(0, v.machines),
    otherWaterKgPerDay: v.otherKg,
    failures: v.fail ? [{ what: 'power', fromHour: 4000, toHour: 4400 }] : [],
    latentAtSurfaces: v.latent,
  };
}

function numbersIn(value: unknown, path: string, out: [string, number][]): [string, number][] {
  if (typeof value === 'number') out.push([path, value]);
  else if (value instanceof Float64Array) {
    const i = value.findIndex((v) => !Number.isFinite(v));
    if (i >= 0) out.push([`${path}[${i}]`, value[i]!]);
  } else if (value !== null && typeof value === 'object') {
    for (const [key, inner] of Object.entries(value)) numbersIn(inner, `${path}.${key}`, out);
  }
  return out;
}

function expectSound(result: SeasonResult): void {
  const bad = numbersIn(result, '', []).filter(([, v]) => !Number.isFinite(v));
  expect(bad.slice(0, 5)).toEqual([]);
  expect(Math.abs(result.closure.water)).toBeLessThan(1e-9);
  expect(Math.abs(result.closure.energy)).toBeLessThan(1e-9);
  for (const month of result.months) {
    expect(month.relativeHumidity).toBeGreaterThan(0);
    expect(month.relativeHumidity).toBeLessThanOrEqual(1);
    expect(month.woodMoistureSurface).toBeGreaterThanOrEqual(0);
    expect(month.waterRemovedKg).toBeGreaterThanOrEqual(0);
  }
  const { hourly } = result;
  hourly?.relativeHumidity.forEach((h) => {
    if (!(h > 0 && h <= 1)) throw new Error(`relative humidity ${h}`);
  });
}

describe('a settled year of any space in any weather', () => {
  it('has no NaN, stays in range, and closes water and energy to 1e-9', () => {
    fc.assert(
      fc.property(caseNumbers, weatherNumbers, (space, weather) => {
        expectSound(runSeason([caseOf(space)], weatherOf(weather), { hourly: true })[0]!);
      }),
      { numRuns: 40, seed: 20250711, endOnFailure: true },
    );
  }, 120_000);
});

describe('signs', () => {
  const weather = prototypeWeather();
  const year = (space: SeasonCase) => runSeason([space], weather)[0]!;
  const summerOf = (r: SeasonResult) => r.months.slice(5, 8).reduce((s, m) => s + m.relativeHumidity, 0) / 3;

  it('more air evaporates more from open ground', () => {
    const { a } = prototypeCases();
    const exchange = { ...a.airExchange, airChangesPerHour: 6 } as SeasonCase['airExchange'];
    expect(year({ ...a, airExchange: exchange }).waterKg.openGround).toBeGreaterThan(
      year(a).waterKg.openGround,
    );
  });

  it('leakier crawl space over a liner, wetter wood in summer', () => {
    const { c } = prototypeCases();
    const summerWood = (ach: number) =>
      year({
        ...c,
        airExchange: { ...c.airExchange, airChangesPerHour: ach } as SeasonCase['airExchange'],
      }).months[6]!.woodMoistureSurface;
    expect(summerWood(0.5)).toBeGreaterThan(summerWood(0.06));
    expect(summerWood(3)).toBeGreaterThan(summerWood(0.5));
  });

  it('a colder house wets the floor in summer', () => {
    const { b } = prototypeCases();
    const warmer = summerOf(year({ ...b, house: { ...b.house, coolingTemperatureC: 26 } }));
    const colder = summerOf(year({ ...b, house: { ...b.house, coolingTemperatureC: 21 } }));
    expect(colder).toBeGreaterThan(warmer);
  });

  it('a dehumidifier that fails for two weeks in July leaves a damper July than one that runs', () => {
    const { e } = prototypeCases();
    const failed = year({
      ...e,
      failures: [{ what: 'dehumidifier', fromHour: 181 * 24, toHour: 195 * 24 }],
    });
    const runs = year(e);
    expect(failed.months[6]!.relativeHumidity).toBeGreaterThan(runs.months[6]!.relativeHumidity + 0.03);
    expect(failed.months[2]!.relativeHumidity).toBeCloseTo(runs.months[2]!.relativeHumidity, 3);
  });

  it('an intake in its own dry pocket leaves the space damper than its set-point', () => {
    const { f } = prototypeCases();
    const mixed = year(f);
    const pocket = year({ ...f, machines: f.machines.map((m) => ({ ...m, planCoefficient: 0.5 })) });
    expect(summerOf(pocket)).toBeGreaterThan(summerOf(mixed) + 0.05);
    expect(pocket.waterRemovedKg).toBeLessThan(mixed.waterRemovedKg);
  });

  it('gives the same result alone and beside others, and again', () => {
    const cases = [...Object.values(prototypeCases()), fullCase(), networkCase(800), networkCase(8000)];
    const together = runSeason(cases, weather);
    cases.forEach((space, i) => {
      expect(runSeason([space], weather)[0]).toEqual(together[i]);
    });
  });
});
