import { describe, expect, it } from 'vitest';
import {
  type SuspendedFloor,
  suspendedFloor,
  underfloorTemperatureC,
  unheatedBasementWPerM2K,
} from '../../src/ground/iso13370.ts';
import { suspendedFloorPeriodic } from '../../src/ground/iso13370-periodic.ts';
import { SOILS } from '../../src/ground/soil-types.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';

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

describe('suspended floor, physics that must hold', () => {
  it('heat through the floor equals heat from house to outdoors', () => {
    // Exact but for rounding, since one heat capacity of air serves both formulas.
    const t = underfloorTemperatureC(EXAMPLE, 23, 4).value;
    expect(EXAMPLE.floorWPerM2K * (23 - t)).toBeCloseTo(
      suspendedFloor(EXAMPLE).value.transmittanceWPerM2K * (23 - 4),
      12,
    );
  });

  it('warns that the vent formula is low, and only where there are vents', () => {
    expect(suspendedFloor(EXAMPLE).notices.map((n) => n.code)).toEqual(['vent-formula-low']);
    expect(suspendedFloor({ ...EXAMPLE, ventM2PerM: 0 }).notices).toEqual([]);
  });

  it('walls in the ground count only beyond 0.5 m below grade', () => {
    const at = (depthBelowGradeM: number) =>
      suspendedFloor({ ...EXAMPLE, depthBelowGradeM }).value.groundWPerM2K;
    expect(at(0.5)).toBe(at(0));
    expect(at(0.51)).toBeGreaterThan(at(0.5));
    expect(at(1.5)).toBeGreaterThan(at(0.51));
  });

  it('a thick ground layer uses the second formula', () => {
    const insulated = { ...EXAMPLE, groundInsulationM2KPerW: 4 };
    const { value } = suspendedFloor(insulated);
    // d_g = 0.2 + 2 (0.17 + 4 + 0.04) = 8.62 m > B, so U_g = 2/(0.457 · 5.454545 + 8.62).
    expect(value.groundWPerM2K).toBeCloseTo(2 / (0.457 * (240 / 44) + 8.62), 12);
  });

  it('a basement without depth, air change or wall tends to the plain floor on ground', () => {
    const u = unheatedBasementWPerM2K({
      ...EXAMPLE,
      floorHeightM: 0,
      depthBelowGradeM: 0.01,
      airChangesPerHour: 0,
      airVolumeM3: 96,
    });
    const ground = suspendedFloor(EXAMPLE).value.groundWPerM2K;
    // 1 cm of wall in the ground is still there: 0.44 m² at up to 5.9 W/(m²·K) (one film, 0.17 m²K/W), spread over 120 m².
    const plain = 1 / (1 / 1.6 + 1 / ground);
    expect(u).toBeGreaterThan(plain);
    expect(u).toBeLessThan(1 / (1 / 1.6 + 1 / (ground + (0.44 * 5.9) / 120)));
  });

  it('a basement worked out by hand from formulas 13, 16 and 19', () => {
    // z 1.2, d_f 0.62, d_w = 2 (0.13 + 0.04) = 0.34, coupling 0.34; B 5.454545.
    const floor = ((2 * 2) / (Math.PI * (240 / 44) + 1.22)) * Math.log((Math.PI * (240 / 44)) / 1.22 + 1);
    const walls = (4 / (Math.PI * 1.2)) * (1 + 0.17 / 1.54) * Math.log(1.2 / 0.34 + 1);
    const loss = 120 * floor + 1.2 * 44 * walls + 0.6 * 44 * 1.7 + 0.33 * 0.5 * 200;
    const u = unheatedBasementWPerM2K({
      ...EXAMPLE,
      depthBelowGradeM: 1.2,
      airChangesPerHour: 0.5,
      airVolumeM3: 200,
    });
    expect(u).toBeCloseTo(1 / (1 / 1.6 + 120 / loss), 12);
  });

  it('periodic coefficients: the swing of the house reaches the ground less than through the floor alone', () => {
    const soil = SOILS.find((s) => s.key === 'sand-or-gravel')!;
    const { insideWPerK, outsideWPerK } = suspendedFloorPeriodic(EXAMPLE, soil);
    expect(insideWPerK).toBeLessThan(120 * 1.6);
    // By hand, annex H with delta = sqrt(365 · 86400 · 1e-6/pi) = 3.1683 m and U_x = 0.45375.
    const delta = Math.sqrt(31.536 / Math.PI);
    expect(insideWPerK).toBeCloseTo(120 / (1 / 1.6 + 1 / (2 / delta + 0.45375)), 10);
    const h = (0.37 * 44 * 2 * Math.log(delta / 0.62 + 1) + 0.45375 * 120) * 1.6;
    expect(outsideWPerK).toBeCloseTo(h / (2 / delta + 0.45375 + 1.6), 10);
  });

  it.each([
    { change: { areaM2: 0 }, code: 'out-of-range', text: /floor area in m²/ },
    { change: { groundConductivityWPerMK: Number.NaN }, code: 'not-finite', text: /ground conductivity/ },
    { change: { windMPerS: 61 }, code: 'out-of-range', text: /wind speed/ },
  ])('refuses $change', ({ change, code, text }) => {
    const act = () => suspendedFloor({ ...EXAMPLE, ...change });
    expect(act).toThrow(EngineError);
    expect(act).toThrow(text);
    expect(act).toThrow(expect.objectContaining({ code }));
  });
});
