import { describe, expect, it } from 'vitest';
import {
  annualDamping,
  annualDampingDepthM,
  annualLagDays,
  undisturbedGroundC,
} from '../../src/ground/undisturbed.ts';

const SOURCE = 'Kusuda and Achenbach 1965 formula (from memory), table computed separately from it';
const PER_DAY = 86_400;

describe('annual damping in dry, average and wet soil', () => {
  // Tolerances are half of the last digit printed in the table.
  const rows = [
    {
      diffusivityM2PerDay: 0.025,
      depthM: 1.7,
      at: [0.5, 0.746, 17, 1, 0.556, 34, 2, 0.309, 68, 3, 0.172, 102],
    },
    {
      diffusivityM2PerDay: 0.05,
      depthM: 2.41,
      at: [0.5, 0.813, 12, 1, 0.66, 24, 2, 0.436, 48, 3, 0.288, 72],
    },
    {
      diffusivityM2PerDay: 0.08,
      depthM: 3.05,
      at: [0.5, 0.849, 9.5, 1, 0.72, 19, 2, 0.519, 38, 3, 0.374, 57],
    },
  ];
  it.each(rows)(`$diffusivityM2PerDay m²/day (${SOURCE})`, ({ diffusivityM2PerDay, depthM, at }) => {
    const diffusivity = diffusivityM2PerDay / PER_DAY;
    expect(Math.abs(annualDampingDepthM(diffusivity) - depthM)).toBeLessThanOrEqual(0.005);
    for (let i = 0; i < at.length; i += 3) {
      const [z, ratio, lag] = [at[i]!, at[i + 1]!, at[i + 2]!];
      expect(Math.abs(annualDamping(z, diffusivity) - ratio)).toBeLessThanOrEqual(0.0005);
      expect(Math.abs(annualLagDays(z, diffusivity) - lag)).toBeLessThanOrEqual(lag === 9.5 ? 0.05 : 0.5);
    }
  });
});

describe('ground temperature by day and depth', () => {
  const wave = { meanC: 16, amplitudeK: 11, coldestDay: 35 };
  // Tolerance: half of the last printed digit.
  const rows = [
    { day: 15, at: [0.5, 8.39, 1, 10.73, 2, 14.15] },
    { day: 196, at: [0.5, 23.49, 1, 21.14, 2, 17.74] },
    { day: 288, at: [0.5, 20.78, 1, 21.07, 2, 20.45] },
  ];
  it.each(rows)(`day $day (${SOURCE})`, ({ day, at }) => {
    for (let i = 0; i < at.length; i += 2) {
      const t = undisturbedGroundC(wave, at[i]!, day, 0.05 / PER_DAY);
      expect(Math.abs(t - at[i + 1]!)).toBeLessThanOrEqual(0.005);
    }
  });

  it('is coldest at the surface on the coldest day, and the wave repeats each year', () => {
    expect(undisturbedGroundC(wave, 0, 35, 6e-7)).toBeCloseTo(5, 12);
    expect(undisturbedGroundC(wave, 1.3, 100 + 365, 6e-7)).toBeCloseTo(
      undisturbedGroundC(wave, 1.3, 100, 6e-7),
      10,
    );
  });
});
