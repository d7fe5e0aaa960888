import { describe, expect, it } from 'vitest';
import { periodicGroundWave } from '../../src/ground/periodic-wave.ts';
import { compileCase } from '../../src/season/compiled-case.ts';
import { defaultSeasonCase } from '../../src/season/default-case.ts';
import { stepHeat } from '../../src/season/heat-step.ts';
import { loadCase } from '../../src/season/load-case.ts';
import { loopRoom } from '../../src/season/loop-room.ts';
import type { SeasonCase } from '../../src/season/season-case.ts';
import { createState, keepState, loadState } from '../../src/season/state.ts';

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

const { drive, placesC } = loopRoom;

/** Puts the column into the working room, all soil at `startC`; returns a reader of its temperatures. */
function driven(space: SeasonCase, seconds: number, theta: number, startC: number): () => Float64Array {
  const compiled = compileCase(space, 101325);
  const state = createState(compiled, 10, 0.005);
  state.soilC.fill(startC);
  loadCase(compiled, seconds, theta);
  loadState(state);
  Object.assign(drive, {
    outdoorKgPerS: 1e6,
    houseKgPerS: 0,
    runShare: 0,
    solarWPerM2: 0,
    fanW: 0,
    houseC: 20,
    supplyC: 14,
    yearCos: 0.5,
    yearSin: 0.5,
  });
  return () => {
    keepState(state);
    return state.soilC;
  };
}

describe('soil column', () => {
  it('carries the steady heat flow of its resistances in series', () => {
    const space = bare([0.05, 0.2, 0.75], 2, 14);
    const soilC = driven(space, 3600 * 24 * 10, 1, 10);
    drive.outdoorC = 26;
    for (let i = 0; i < 500; i++) stepHeat();
    const k = space.soil.conductivityWPerMK;
    const perM2 = (26 - 14) / (1 / space.soil.surfaceCoefficientWPerM2K + (0.05 + 0.2 + 0.75 + 2) / k);
    const atSurface = 26 - perM2 / space.soil.surfaceCoefficientWPerM2K;
    expect(placesC[1]!).toBeCloseTo(atSurface, 4);
    expect(soilC()[2]!).toBeCloseTo(14 + (perM2 * (2 + 0.75 / 2)) / k, 6);
  });

  it.each([
    { name: 'year', periodS: 365 * 86_400, thickness: 0.15, layers: 90, steps: 365 },
    { name: 'day', periodS: 86_400, thickness: 0.01, layers: 90, steps: 24 },
  ])(
    'follows a $name of sinusoidal air as the exact solution does',
    ({ periodS, thickness, layers, steps }) => {
      const space = bare(new Array<number>(layers).fill(thickness), 0, 10);
      const soilC = driven(space, periodS / steps, 0.5, 10);
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
          stepHeat();
          if (i < 7 * steps) continue;
          // The state stands at the end of the step.
          const end = (2 * Math.PI * (i + 1)) / steps;
          const aboveMean = soilC()[layer]! - 10;
          cosine += (2 / steps) * aboveMean * Math.cos(end);
          sine += (2 / steps) * aboveMean * Math.sin(end);
        }
        const exact = periodicGroundWave((layer + 0.5) * thickness, periodS, k, k / heat, film);
        // 1.5 %: layers of finite thickness, 24 steps to the day.
        expect(Math.abs(Math.hypot(cosine, sine) / (8 * exact.ratio) - 1)).toBeLessThan(0.015);
        expect(Math.abs(Math.atan2(sine, cosine) - exact.lagRad)).toBeLessThan(0.02);
      }
    },
  );
});
