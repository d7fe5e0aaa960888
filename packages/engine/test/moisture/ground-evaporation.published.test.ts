import { describe, expect, it } from 'vitest';
import {
  dryLayerResistanceSPerM,
  groundEvaporationKgPerM2S,
  groundSurface,
  openGroundPermeance,
  surfaceTransferMPerS,
} from '../../src/moisture/ground-evaporation.ts';
import { permsFromPermeance } from '../../src/moisture/permeance.ts';
import { vaporDensityKgPerM3 } from '../../src/moisture/vapor-density.ts';
import { waterEvaporationKgPerM2S } from '../../src/moisture/water-surface.ts';
import { saturationPressurePa } from '../../src/psychrometrics/saturation-pressure.ts';

const airDensity = (t: number, rh: number) => vaporDensityKgPerM3(rh * saturationPressurePa(t), t);
const gPerM2Day = (kgPerM2S: number) => kgPerM2S * 86_400_000;

describe('open ground, table computed separately from the resistance form (Lewis analogy; h_m 0.002 m/s)', () => {
  // Soil at the temperature of the air. Printed to whole g/(m² day): tolerance half a gram.
  const rows = [
    { air: 'cool', t: 12, rh: 0.7, wet: 553, r500: 276, r1000: 184, r2350: 97 },
    { air: 'mild', t: 15, rh: 0.75, wet: 554, r500: 277, r1000: 185, r2350: 97 },
    { air: 'warm', t: 20, rh: 0.8, wet: 597, r500: 299, r1000: 199, r2350: 105 },
    { air: 'after drying', t: 20, rh: 0.55, wet: 1344, r500: 672, r1000: 448, r2350: 236 },
  ];
  it.each(rows)('$air air, $t °C', ({ t, rh, wet, r500, r1000, r2350 }) => {
    const at = (r: number) => gPerM2Day(groundEvaporationKgPerM2S(t, 1, airDensity(t, rh), 0.002, r));
    expect(Math.abs(at(0) - wet)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(at(500) - r500)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(at(1000) - r1000)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(at(2350) - r2350)).toBeLessThanOrEqual(0.5);
  });

  it('average ground spans the 185 to 450 g/(m² day) of its class, near the 400 that research gives', () => {
    const r = groundSurface('average').dryLayerSPerM;
    const damp = gPerM2Day(groundEvaporationKgPerM2S(15, 1, airDensity(15, 0.75), 0.002, r));
    const dried = gPerM2Day(groundEvaporationKgPerM2S(20, 1, airDensity(20, 0.55), 0.002, r));
    // Rounded to 5 g in the source.
    expect(Math.abs(damp - 185)).toBeLessThanOrEqual(2.5);
    expect(Math.abs(dried - 450)).toBeLessThanOrEqual(2.5);
  });

  it('still air of 1.5 and 3 W/(m² K) has transfer coefficients of 0.0014 and 0.0028 m/s', () => {
    expect(Math.abs(surfaceTransferMPerS(1.5) - 0.0014)).toBeLessThanOrEqual(5e-5);
    expect(Math.abs(surfaceTransferMPerS(3) - 0.0028)).toBeLessThanOrEqual(5e-5);
  });

  it('10 mm of crust has 1600 to 4000 s/m; 2350 s/m lies at a pore factor of 0.17', () => {
    expect(dryLayerResistanceSPerM(0.01, 0.25)).toBeCloseTo(1600, 9);
    expect(dryLayerResistanceSPerM(0.01, 0.1)).toBeCloseTo(4000, 9);
    // 2353 rounded to 50 in the class.
    expect(Math.abs(dryLayerResistanceSPerM(0.01, 0.17) - 2350)).toBeLessThanOrEqual(25);
  });

  it('bare ground is worth 262 perm wet and 87 perm with 1000 s/m, at 16 °C', () => {
    expect(Math.abs(permsFromPermeance(openGroundPermeance(0.002, 0, 16)) - 262)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(permsFromPermeance(openGroundPermeance(0.002, 1000, 16)) - 87)).toBeLessThanOrEqual(0.5);
  });

  it('free water gives 1.3 kg/(m² day) at 20 °C and 55 %', () => {
    const kgPerDay = 86_400 * waterEvaporationKgPerM2S(20, airDensity(20, 0.55));
    expect(Math.abs(kgPerDay - 1.3)).toBeLessThanOrEqual(0.05);
  });
});
