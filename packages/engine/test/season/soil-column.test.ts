import { describe, expect, it } from 'vitest';
import { periodicGroundWave } from '../../src/ground/periodic-wave.ts';
import { compileCase } from '../../src/season/compiled-case.ts';
import { defaultSeasonCase } from '../../src/season/default-case.ts';
import { createSoilSolver, stepHeat } from '../../src/season/heat-step.ts';
import type { SeasonCase } from '../../src/season/season-case.ts';
import { createDrive, createState, createStepResult } from '../../src/season/state.ts';

/** A column with nothing but soil: air held at the outdoor temperature by a gale, no coupling sideways. */
function bare(layersM: number[], deepDistanceM: number, deepTemperatureC: number): SeasonCase {
  const base = defaultSeasonCase();
  return {
    ...base,
    soil: { ...base.soil, layersM, lateralWPerM2K: 0, deepDistanceM, deepTemperatureC },
    house: { ...base.house, floorUWPerM2K: 0 },
    walls: { ...base.walls, aboveGradeUWPerM2K: 0, belowGradeUWPerM2K: 0 },
  };
}

function driven(space: SeasonCase) {
  const c = compileCase(space, 101325);
  const drive = createDrive();
  drive.outdoorKgPerS = 1e6;
  drive.houseKgPerS = 0;
  drive.runShare = 0;
  drive.solarWPerM2 = 0;
  return { c, drive, state: createState(c, 10, 0.005), out: createStepResult() };
}

describe('soil column', () => {
  it('carries the steady heat flow of its resistances in series', () => {
    const space = bare([0.05, 0.2, 0.75], 2, 14);
    const { c, drive, state, out } = driven(space);
    const solver = createSoilSolver(c, 3600 * 24 * 10, 1);
    drive.outdoorC = 26;
    for (let i = 0; i < 500; i++) stepHeat(c, solver, drive, state, out);
    const k = space.soil.conductivityWPerMK;
    const perM2 = (26 - 14) / (1 / space.soil.surfaceCoefficientWPerM2K + (0.05 + 0.2 + 0.75 + 2) / k);
    const atSurface = 26 - perM2 / space.soil.surfaceCoefficientWPerM2K;
    expect(out.placesC[1]!).toBeCloseTo(atSurface, 4);
    expect(state.soilC[2]!).toBeCloseTo(14 + (perM2 * (2 + 0.75 / 2)) / k, 6);
  });

  it.each([
    { name: 'year', periodS: 365 * 86_400, thickness: 0.15, layers: 90, steps: 365 },
    { name: 'day', periodS: 86_400, thickness: 0.01, layers: 90, steps: 24 },
  ])(
    'follows a $name of sinusoidal air as the exact solution does',
    ({ periodS, thickness, layers, steps }) => {
      const space = bare(new Array<number>(layers).fill(thickness), 0, 10);
      const { c, drive, state, out } = driven(space);
      const solver = createSoilSolver(c, periodS / steps, 0.5);
      state.soilC.fill(10);
      const {
        conductivityWPerMK: k,
        heatCapacityJPerM3K: heat,
        surfaceCoefficientWPerM2K: film,
      } = space.soil;
      for (const layer of [0, 3, 9]) {
        let cosine = 0;
        let sine = 0;
        for (let i = 0; i < 8 * steps; i++) {
          const angle = (2 * Math.PI * (i + 0.5)) / steps;
          drive.outdoorC = 10 + 8 * Math.cos(angle);
          stepHeat(c, solver, drive, state, out);
          if (i < 7 * steps) continue;
          // The state stands at the end of the step.
          const end = (2 * Math.PI * (i + 1)) / steps;
          cosine += (2 / steps) * (state.soilC[layer]! - 10) * Math.cos(end);
          sine += (2 / steps) * (state.soilC[layer]! - 10) * Math.sin(end);
        }
        const exact = periodicGroundWave((layer + 0.5) * thickness, periodS, k, k / heat, film);
        // 1.5 %: layers of finite thickness, 24 steps to the day.
        expect(Math.abs(Math.hypot(cosine, sine) / (8 * exact.ratio) - 1)).toBeLessThan(0.015);
        expect(Math.abs(Math.atan2(sine, cosine) - exact.lagRad)).toBeLessThan(0.02);
      }
    },
  );
});
