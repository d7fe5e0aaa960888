import { moisture, psychrometrics } from '@undercroft/engine';
import { describe, expect, it } from 'vitest';
import { Assumptions, measured } from '../../src/assumptions.ts';
import { budgetInput } from '../../src/budget/budgets.ts';
import { demoJob } from '../season/jobs.ts';
import { demoWith, fieldOf, spaceOf } from './spaces.ts';

const AIR_KG_PER_M3 = 1.2;
const NAMES = ['doubted-liner', 'sound-closed'] as const;

/** Water that the steady balance brings into air of a humidity, without its machine, kg/s. */
function balanced(name: (typeof NAMES)[number], relativeHumidity: number): number {
  const job = demoJob(name);
  const { day } = fieldOf(job, 0.5);
  const { dehumidifier: _, ...input } = budgetInput(
    job,
    spaceOf(job).space,
    day.conditions,
    new Assumptions(),
  );
  const state = { kind: 'read' as const, relativeHumidity: measured(relativeHumidity) };
  const { paths } = moisture.moistureBudget({ ...input, state });
  return paths.reduce((sum, p) => sum + (p.key.startsWith('cold-surface') ? 0 : p.kgPerDay), 0) / 86_400;
}

/** Water that all cells of the field together are given in such air, kg/s. */
function given(name: (typeof NAMES)[number], relativeHumidity: number): number {
  const { model, day } = fieldOf(demoJob(name), 0.5);
  const { crawlC, pressurePa } = day.conditions;
  const w = psychrometrics.humidityRatioFromRelativeHumidity(crawlC.value, relativeHumidity, pressurePa);
  return AIR_KG_PER_M3 * (model.totals.waterGiven - model.totals.loss[0] * w);
}

describe.each(NAMES)('the sources of %s', (name) => {
  const { setRelativeHumidity = 0 } = demoJob(name).plan.equipment.find((e) => e.kind === 'dehumidifier')!;

  it.each([setRelativeHumidity, 0.9])('together are those of the balance at %f', (relativeHumidity) => {
    const whole = balanced(name, relativeHumidity);
    expect(Math.abs(whole)).toBeGreaterThan(1e-6);
    // Straight lines through both states, so nothing but rounding is lost.
    expect(Math.abs(given(name, relativeHumidity) / whole - 1)).toBeLessThan(1e-6);
  });

  it('bring air in as they let air out', () => {
    const { leaks = [] } = fieldOf(demoJob(name), 0.5).model.site;
    const into = leaks.reduce((sum, l) => sum + Math.max(0, l.flowM3PerS), 0);
    const net = leaks.reduce((sum, l) => sum + l.flowM3PerS, 0);
    expect(into).toBeGreaterThan(1e-3);
    expect(Math.abs(net) / into).toBeLessThan(1e-9);
  });

  it('hold the air at the temperature of the day where no machine runs', () => {
    const { model, day } = fieldOf(demoJob(name), 0.5);
    let heat = 0;
    let loss = 0;
    for (let cell = 0; cell < model.mesh.count; cell += 1) {
      heat += model.heatGiven[cell];
      loss += model.loss[4 * cell + 2];
    }
    expect(heat / loss).toBeCloseTo(day.conditions.crawlC.value, 6);
  });
});

it('keeps water whose place has no cell of its own, and water of a seam off the floor', () => {
  const job = demoWith('doubted-liner', (plan) => {
    plan.zones[0].outline = [
      { xM: 13.901, yM: 7.001 },
      { xM: 13.903, yM: 7.001 },
      { xM: 13.903, yM: 7.003 },
    ];
    plan.seams[0].path = [
      { xM: 30, yM: 3 },
      { xM: 40, yM: 3 },
    ];
  });
  const { model, day } = fieldOf(job, 0.5);
  const { dehumidifier: _, ...input } = budgetInput(
    job,
    spaceOf(job).space,
    day.conditions,
    new Assumptions(),
  );
  const state = { kind: 'read' as const, relativeHumidity: measured(0.55) };
  const whole = moisture
    .moistureBudget({ ...input, state })
    .paths.reduce((sum, p) => sum + p.kgPerDay / 86_400, 0);
  const { crawlC, pressurePa } = day.conditions;
  const w = psychrometrics.humidityRatioFromRelativeHumidity(crawlC.value, 0.55, pressurePa);
  const field = AIR_KG_PER_M3 * (model.totals.waterGiven - model.totals.loss[0] * w);
  expect(Math.abs(field / whole - 1)).toBeLessThan(1e-6);
});
