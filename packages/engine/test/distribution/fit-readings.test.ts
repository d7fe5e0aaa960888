import { describe, expect, it } from 'vitest';
import { fieldModel } from '../../src/distribution/field-model.ts';
import { type FieldReading, fitReadings } from '../../src/distribution/fit-readings.ts';
import { nearestCell } from '../../src/distribution/places.ts';
import { scaledSources } from '../../src/distribution/scaled-sources.ts';
import { steadyField } from '../../src/distribution/steady-field.ts';
import type { Point } from '../../src/geometry/point.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';
import { relativeHumidityFromHumidityRatio } from '../../src/psychrometrics/humidity-ratio.ts';
import { machineAlone, workedSite } from './worked-plan.ts';

const model = fieldModel(workedSite(), 0.5);
const arrangement = machineAlone({ intake: { xM: 1.2, yM: 1.2 }, outlet: { xM: 2.2, yM: 1.2 } });
const PLACES: readonly Point[] = [
  { xM: 3, yM: 3 },
  { xM: 5, yM: 9 },
  { xM: 8, yM: 2 },
  { xM: 11, yM: 5 },
  { xM: 11, yM: 9 },
  { xM: 1, yM: 6 },
];

/** Readings in a space whose mixing and ground sources are known. */
function readingsOf(
  mixingM2PerS: number,
  strength: number,
  places: readonly Point[],
  noise = 0,
  withTemperature = true,
): FieldReading[] {
  const random = seededRandom(11);
  const truth = scaledSources(model, ['ground', 'wall'], strength);
  const state = steadyField(truth, arrangement, { mixingM2PerS });
  return places.map((at) => {
    const cell = nearestCell(model.mesh, at, 0.1);
    const temperatureC = state.temperatureC[cell]!;
    const relativeHumidity =
      relativeHumidityFromHumidityRatio(temperatureC, state.humidityRatio[cell]!, 101_325) +
      noise * (random() - 0.5);
    return { at, relativeHumidity, ...(withTemperature ? { temperatureC } : {}) };
  });
}

describe('fit to readings', () => {
  it.each([
    { mixing: 0.004, strength: 1.8 },
    { mixing: 0.016, strength: 0.6 },
  ])('finds the mixing of $mixing m²/s and sources $strength times as strong', ({ mixing, strength }) => {
    const fit = fitReadings(model, arrangement, readingsOf(mixing, strength, PLACES), {
      mixingM2PerS: 0.009,
      // Readings without scatter, against a start that may be off by far: what was known before hardly weighs.
      scatter: 0.003,
      mixingFactor: 10,
      sourceFactor: 10,
    });
    if (fit.outcome !== 'fitted') throw new Error(fit.outcome);
    expect(fit.ending.converged).toBe(true);
    expect(fit.mixingM2PerS.value / mixing).toBeGreaterThan(0.93);
    expect(fit.mixingM2PerS.value / mixing).toBeLessThan(1.07);
    expect(fit.sourceStrength.value / strength).toBeGreaterThan(0.95);
    expect(fit.sourceStrength.value / strength).toBeLessThan(1.05);
    expect(fit.misfit).toBeLessThan(0.003);
    expect(fit.misfit).toBeLessThan(fit.misfitBefore);
    expect(fit.mixingM2PerS.determined).toBe(true);
    expect(fit.sourceStrength.determined).toBe(true);
    expect(fit.residuals).toHaveLength(PLACES.length);
  });

  it('with scatter of two points the truth lies in the band, or near it', () => {
    const fit = fitReadings(model, arrangement, readingsOf(0.006, 1.4, PLACES, 0.04, false), {
      mixingM2PerS: 0.009,
    });
    if (fit.outcome !== 'fitted') throw new Error(fit.outcome);
    // Two of its own deviations.
    const within = ({ low, value, high }: typeof fit.mixingM2PerS, truth: number) =>
      truth > (value * low * low) / (value * value) && truth < (value * high * high) / (value * value);
    expect(within(fit.mixingM2PerS, 0.006)).toBe(true);
    expect(within(fit.sourceStrength, 1.4)).toBe(true);
  });

  it('says that mixing stays undetermined where it is strong', () => {
    const open = fieldModel(workedSite({ walls: false, cornerFraction: 0.01 }), 0.5);
    const still = steadyField(open, {}, { mixingM2PerS: 0.05 });
    const readings = PLACES.map((at) => {
      const cell = nearestCell(open.mesh, at, 0.1);
      return {
        at,
        relativeHumidity: Math.min(
          1,
          relativeHumidityFromHumidityRatio(still.temperatureC[cell]!, still.humidityRatio[cell]!, 101_325),
        ),
      };
    });
    const fit = fitReadings(open, {}, readings, { mixingM2PerS: 0.009 });
    if (fit.outcome !== 'fitted') throw new Error(fit.outcome);
    expect(fit.mixingM2PerS.determined).toBe(false);
    expect(fit.notices.map(({ code }) => code)).toContain('mixing-undetermined');
  });

  it('says when something is missing in the model, and where', () => {
    const readings = readingsOf(0.009, 1, PLACES).map((reading, k) =>
      k === 5 ? { ...reading, relativeHumidity: reading.relativeHumidity + 0.3 } : reading,
    );
    const fit = fitReadings(model, arrangement, readings, { mixingM2PerS: 0.009 });
    const poor = fit.notices.find(({ code }) => code === 'poor-fit');
    expect(poor?.message).toMatch(/At \(1\.0, 6\.0\) it is \d+ points damper/);
  });

  it('takes the duty that was measured', () => {
    const fit = fitReadings(model, arrangement, readingsOf(0.009, 1, PLACES), {
      mixingM2PerS: 0.009,
      duty: 0.3,
    });
    if (fit.outcome !== 'fitted') throw new Error(fit.outcome);
    expect(fit.state.outcome).toBe('given');
    expect(fit.state.machine!.duty).toBe(0.3);
    // It runs twice as much as the humidities tell: the sources must be stronger.
    expect(fit.sourceStrength.value).toBeGreaterThan(1.3);
  });

  it('says so when too few places were read', () => {
    const three = readingsOf(0.009, 1, PLACES.slice(0, 3));
    expect(fitReadings(model, arrangement, three, { mixingM2PerS: 0.009 })).toMatchObject({
      outcome: 'too-few-readings',
      places: 3,
      needed: 4,
    });
    // A fourth beside one of them is no new place; a meter off it is.
    const beside = (xM: number) => [...three, { ...three[0]!, at: { xM, yM: 3 } }];
    expect(fitReadings(model, arrangement, beside(3.99), { mixingM2PerS: 0.009 }).outcome).toBe(
      'too-few-readings',
    );
    expect(fitReadings(model, arrangement, beside(4), { mixingM2PerS: 0.009 }).outcome).toBe('fitted');
  });

  it('refuses a humidity in percent', () => {
    const readings = readingsOf(0.009, 1, PLACES).map((r) => ({ ...r, relativeHumidity: 70 }));
    expect(() => fitReadings(model, arrangement, readings, { mixingM2PerS: 0.009 })).toThrow(
      /humidity of reading 1/,
    );
  });
});
