import { describe, expect, it } from 'vitest';
import { fieldDay } from '../../src/distribution/field-day.ts';
import { fieldModel } from '../../src/distribution/field-model.ts';
import { steadyField } from '../../src/distribution/steady-field.ts';
import { machineAlone, workedSite } from './worked-plan.ts';

const mixingM2PerS = 0.009;

describe('a day by steps', () => {
  const model = fieldModel(workedSite(), 0.5);
  const arrangement = machineAlone({ intake: { xM: 1.2, yM: 1.2 }, outlet: { xM: 2.2, yM: 1.2 } });
  const start = steadyField(model, arrangement, { mixingM2PerS });

  it('the humidistat switches, and water and heat close', () => {
    const day = fieldDay(model, arrangement, { mixingM2PerS, start, stepS: 600 });
    expect(day.converged).toBe(true);
    expect(Math.abs(day.balance.water)).toBeLessThan(1e-9);
    expect(Math.abs(day.balance.heat)).toBeLessThan(1e-9);
    expect(day.starts).toBeGreaterThan(1);
    expect(day.steps).toHaveLength(144);
    for (let k = 1; k < day.steps.length; k += 1) {
      const before = day.steps[k - 1]!;
      const now = day.steps[k]!;
      if (before.sensorRelativeHumidity > 0.58) expect(now.running).toBe(true);
      else if (before.sensorRelativeHumidity < 0.52) expect(now.running).toBe(false);
      else expect(now.running).toBe(before.running);
    }
  });

  it('runs through when it is too small and comes to the steady state', () => {
    const small = machineAlone({ ...arrangement.machine, ratedKgPerDay: 2 });
    const steady = steadyField(model, small, { mixingM2PerS });
    expect(steady.outcome).toBe('undersized');
    const day = fieldDay(model, small, { mixingM2PerS, start, stepS: 3600, hours: 240 });
    // It waits one step: at its start the humidistat reads a little above the setting.
    expect(day.runShare).toBeCloseTo(239 / 240, 12);
    expect(day.starts).toBe(1);
    for (let i = 0; i < model.mesh.count; i += 31) {
      expect(day.humidityRatio[i]! / steady.humidityRatio[i]!).toBeCloseTo(1, 6);
      expect(day.temperatureC[i]! / steady.temperatureC[i]!).toBeCloseTo(1, 6);
    }
    expect(day.waterKg / 10 / (86_400 * steady.machine!.removalKgPerS)).toBeCloseTo(1, 1);
  });

  it('without a machine in its own steady state nothing happens', () => {
    const still = steadyField(model, {}, { mixingM2PerS });
    const day = fieldDay(model, {}, { mixingM2PerS, start: still, hours: 6 });
    for (let i = 0; i < model.mesh.count; i += 17) {
      expect(day.humidityRatio[i]! / still.humidityRatio[i]!).toBeCloseTo(1, 8);
    }
    expect(day.waterKg).toBe(0);
    expect(day.steps[0]!.sensorRelativeHumidity).toBeNaN();
  });

  it('follows what the exchanges draw to', () => {
    const still = steadyField(model, {}, { mixingM2PerS });
    // Outdoors, the third exchange of water, as dry as nothing.
    const day = fieldDay(
      model,
      {},
      {
        mixingM2PerS,
        start: still,
        drawnTo: () => ({ vapor: [0.0147, 0.0147, 0] }),
      },
    );
    expect(day.steps.at(-1)!.meanRelativeHumidity).toBeLessThan(day.steps[0]!.meanRelativeHumidity - 0.1);
  });

  it('refuses a step or stretch that makes no sense', () => {
    expect(() => fieldDay(model, {}, { mixingM2PerS, start, stepS: 5 })).toThrow(/step/);
    expect(() => fieldDay(model, {}, { mixingM2PerS, start, hours: 0.01 })).toThrow(/hours/);
  });
});
