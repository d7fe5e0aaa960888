import { describe, expect, it } from 'vitest';
import { type SuspendedFloor, suspendedFloor, underfloorTemperatureC } from '../../src/ground/iso13370.ts';
import { periodicDepthM, SOILS } from '../../src/ground/soil-types.ts';

const EXAMPLE: SuspendedFloor = {
  areaM2: 120,
  exposedPerimeterM: 44,
  groundConductivityWPerMK: 2,
  wallThicknessM: 0.2,
  floorHeightM: 0.6,
  wallWPerM2K: 1.7,
  floorWPerM2K: 1.6,
  ventM2PerM: 0.0015,
  windMPerS: 4,
  shielding: 'average',
};

describe('suspended floor, ISO 13370:2017 formulas 2 to 11 and G.1, G.4 (quoted), example computed separately', () => {
  // Tolerance: half of the last printed digit.
  const rows = [
    { quantity: 'characteristicDimensionM', expected: 5.4545, tolerance: 5e-5 },
    { quantity: 'equivalentThicknessM', expected: 0.62, tolerance: 5e-3 },
    { quantity: 'groundWPerM2K', expected: 0.7557, tolerance: 5e-5 },
    { quantity: 'sidesWPerM2K', expected: 0.4538, tolerance: 5.1e-5 },
    { quantity: 'transmittanceWPerM2K', expected: 0.6888, tolerance: 5e-5 },
    { quantity: 'ventilationM3PerS', expected: 0.00779, tolerance: 5e-6 },
  ] as const;
  it.each(rows)('$quantity', ({ quantity, expected, tolerance }) => {
    expect(Math.abs(suspendedFloor(EXAMPLE).value[quantity] - expected)).toBeLessThanOrEqual(tolerance);
  });

  it('temperature of the space with 20 °C above and 12 °C outdoors', () => {
    expect(Math.abs(underfloorTemperatureC(EXAMPLE, 20, 12).value - 16.56)).toBeLessThanOrEqual(0.005);
  });

  it('twice the vents', () => {
    const { value } = suspendedFloor({ ...EXAMPLE, ventM2PerM: 0.003 });
    expect(Math.abs(value.sidesWPerM2K - 0.5335)).toBeLessThanOrEqual(5e-5);
    expect(Math.abs(value.transmittanceWPerM2K - 0.714)).toBeLessThanOrEqual(5e-4);
  });

  it('an insulated floor', () => {
    const { value } = suspendedFloor({ ...EXAMPLE, floorWPerM2K: 0.3 });
    expect(Math.abs(value.transmittanceWPerM2K - 0.2404)).toBeLessThanOrEqual(5e-5);
  });

  it('periodic depths of clay, sand and rock: 2.2, 3.2, 4.2 m (table H.1, quoted; tolerance half a digit)', () => {
    for (const [key, depth] of [
      ['clay-or-silt', 2.2],
      ['sand-or-gravel', 3.2],
      ['rock', 4.2],
    ] as const) {
      const soil = SOILS.find((s) => s.key === key)!;
      expect(Math.abs(periodicDepthM(soil) - depth)).toBeLessThanOrEqual(0.05);
    }
  });

  it('dry, average and wet soil have the diffusivities of their class, m²/day', () => {
    for (const [key, perDay] of [
      ['dry', 0.025],
      ['average', 0.05],
      ['wet', 0.08],
    ] as const) {
      const soil = SOILS.find((s) => s.key === key)!;
      expect((soil.conductivityWPerMK / soil.heatCapacityJPerM3K) * 86_400).toBeCloseTo(perDay, 10);
    }
  });
});
