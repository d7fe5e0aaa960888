import { describe, expect, it } from 'vitest';
import { groundEvaporationKgPerM2S, openGroundPermeance } from '../../src/moisture/ground-evaporation.ts';
import { linerPermeance, seamDiffusionKgPerMS, WORKMANSHIP } from '../../src/moisture/liner.ts';
import { permeanceFromPerms, permsFromPermeance } from '../../src/moisture/permeance.ts';
import { vaporDensityKgPerM3 } from '../../src/moisture/vapor-density.ts';
import { saturationPressurePa } from '../../src/psychrometrics/saturation-pressure.ts';

// Soil 16 °C, air 20 °C/55 %, 1000 s/m, 120 m², sheet of 6 mil (0.06 perm).
const AREA = 120;
const air = 0.55 * saturationPressurePa(20);
const open = 86_400 * AREA * groundEvaporationKgPerM2S(16, 1, vaporDensityKgPerM3(air, 20), 0.002, 1000);
const sheet = 86_400 * AREA * permeanceFromPerms(0.06) * (saturationPressurePa(16) - air);

describe('liner with open spots, table computed separately from the resistance form', () => {
  // Printed kg/day: half of the last digit. From 0.5 % on the source prints the flow through the open spots alone.
  const rows = [
    { f: 0.001, openKgPerDay: 0.03, tolerance: 0.005, perms: 0.15, permsTolerance: 0.005 },
    { f: 0.005, openKgPerDay: 0.14, tolerance: 0.005, perms: 0.5, permsTolerance: 0.05 },
    { f: 0.01, openKgPerDay: 0.28, tolerance: 0.005, perms: 0.9, permsTolerance: 0.05 },
    { f: 0.02, openKgPerDay: 0.57, tolerance: 0.005, perms: 1.8, permsTolerance: 0.05 },
    { f: 0.05, openKgPerDay: 1.4, tolerance: 0.05, perms: 4.4, permsTolerance: 0.05 },
    { f: 0.1, openKgPerDay: 2.8, tolerance: 0.05, perms: 8.8, permsTolerance: 0.05 },
    { f: 0.2, openKgPerDay: 5.7, tolerance: 0.05, perms: 17.5, permsTolerance: 0.05 },
    { f: 1, openKgPerDay: 28, tolerance: 0.5, perms: 87, permsTolerance: 0.5 },
  ];
  it.each(rows)('open share $f', ({ f, openKgPerDay, tolerance, perms, permsTolerance }) => {
    expect(Math.abs(f * open - openKgPerDay)).toBeLessThanOrEqual(tolerance);
    const whole = linerPermeance(f, permeanceFromPerms(0.06), openGroundPermeance(0.002, 1000, 16));
    expect(Math.abs(permsFromPermeance(whole) - perms)).toBeLessThanOrEqual(permsTolerance);
  });

  it('the intact sheet passes 0.02 kg/day', () => {
    expect(Math.abs(sheet - 0.02)).toBeLessThanOrEqual(0.005);
  });

  it('a thousandth of open ground passes as much as the intact sheet, and more', () => {
    expect(0.001 * open).toBeGreaterThan(0.999 * sheet);
  });

  it('a flat lap of 300 mm with 2 mm gap passes 0.06, a puckered one of 75 mm with 20 mm 2.4 g/(m day)', () => {
    const gPerDay = (gap: number, lap: number) => 86_400_000 * seamDiffusionKgPerMS(gap, lap, 4.1e-3);
    expect(Math.abs(gPerDay(0.002, 0.3) - 0.06)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(gPerDay(0.02, 0.075) - 2.4)).toBeLessThanOrEqual(0.05);
  });

  it('the vapor density difference of those laps, 4.1e-3 kg/m³, is that of the table', () => {
    const difference = vaporDensityKgPerM3(saturationPressurePa(16), 16) - vaporDensityKgPerM3(air, 20);
    expect(Math.abs(difference - 4.1e-3)).toBeLessThanOrEqual(5e-5);
  });

  it('grades of workmanship follow each other without overlap, each with its middle inside', () => {
    let before = 0;
    for (const grade of WORKMANSHIP) {
      expect(grade.low).toBeGreaterThanOrEqual(before);
      expect(grade.openFraction).toBeGreaterThan(grade.low);
      expect(grade.openFraction).toBeLessThan(grade.high);
      before = grade.high;
    }
  });
});
