import { describe, expect, it } from 'vitest';
import { moldGrowthPerHour } from '../../src/mold/growth.ts';
import { cleanSurface, stepMoldIndex } from '../../src/mold/step.ts';
import { seededRandom } from '../../src/numerics/seeded-random.ts';
import { defaultSeasonCase } from '../../src/season/default-case.ts';
import { loopRoom } from '../../src/season/loop-room.ts';
import { middleGrowthPerHour, tableMoldGrowth } from '../../src/season/mold-growth.ts';
import { closeMoldMonth, createMoldTracks, recordMold, startMold } from '../../src/season/mold-record.ts';
import { stepPlaces } from '../../src/season/step-values.ts';

const { MOLD_C, MOLD_PA, VAPOR_PA } = stepPlaces;
const { values } = loopRoom;
const SURFACES = 4;

describe('mold of the season against the mold index itself', () => {
  const random = seededRandom(17);
  const tracks = createMoldTracks(defaultSeasonCase(), true);
  startMold(tracks);

  it('grows at its rate within 1e-7 of it above 1 °C', () => {
    for (const { parameters: p } of tracks) {
      for (let i = 0; i < 500; i++) {
        const t = 1 + 48.9 * random();
        const h = 0.79 + 0.21 * random();
        const exact = moldGrowthPerHour(0, 1e9, t, h, p);
        const ours = p.earlyGrowth * middleGrowthPerHour(p) * tableMoldGrowth(t, h);
        expect(Math.abs(ours / exact - 1)).toBeLessThan(1e-7);
      }
    }
  });

  it('has the same index after a year of damp and dry spells, on each surface and in each class', () => {
    const exact = tracks.map(() => cleanSurface());
    const peaks = tracks.map(() => 0);
    for (let hour = 0; hour < 8760; hour++) {
      const humidity = 0.84 + 0.2 * Math.sin(hour / 300) * random();
      values[VAPOR_PA] = 1000;
      for (let surface = 0; surface < SURFACES; surface++) {
        // Each surface is a little colder, and so damper, than the one before.
        values[MOLD_C + surface] = 14 + 16 * Math.sin(hour / 700) - surface;
        values[MOLD_PA + surface] = 1000 / (humidity + 0.01 * surface);
      }
      recordMold(tracks);
      tracks.forEach(({ surface, parameters }, k) => {
        const state = exact[k]!;
        const h = Math.min(1, humidity + 0.01 * surface);
        stepMoldIndex(state, values[MOLD_C + surface]!, h, 1, parameters);
        peaks[k] = Math.max(peaks[k]!, state.index);
      });
    }
    closeMoldMonth(tracks, 11);
    tracks.forEach((track, k) => {
      expect(track.last).toBeCloseTo(exact[k]!.index, 6);
      expect(track.peak).toBeCloseTo(peaks[k]!, 6);
    });
    expect(Math.max(...peaks)).toBeGreaterThan(3);
  });
});
