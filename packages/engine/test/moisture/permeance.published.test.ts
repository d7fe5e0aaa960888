import { describe, expect, it } from 'vitest';
import {
  equivalentAirThicknessM,
  permeanceFromPerms,
  permsFromPermeance,
  retarderClass,
  seriesPermeance,
} from '../../src/moisture/permeance.ts';
import { LAYERS, layerPermeance } from '../../src/moisture/sheets.ts';
import { moistureSources } from '../../src/moisture/sources.ts';
import { saturationPressurePa } from '../../src/psychrometrics/saturation-pressure.ts';

describe('perms and classes', () => {
  // ASTM E96 perm from the exact inch and grain; sd with 2e-10 kg/(m s Pa) (ISO 13788). Half of the last printed digit.
  const rows = [
    { perms: 0.1, ng: 5.72135, sd: 35.0, sdTolerance: 0.05 },
    { perms: 1, ng: 57.2135, sd: 3.5, sdTolerance: 0.005 },
    { perms: 10, ng: 572.135, sd: 0.35, sdTolerance: 0.0005 },
  ];
  it.each(rows)('$perms perm', ({ perms, ng, sd, sdTolerance }) => {
    const permeance = permeanceFromPerms(perms);
    expect(Math.abs(permeance * 1e12 - ng)).toBeLessThanOrEqual(1e-5 * ng);
    expect(Math.abs(equivalentAirThicknessM(permeance) - sd)).toBeLessThanOrEqual(sdTolerance);
    expect(permsFromPermeance(permeance)).toBeCloseTo(perms, 12);
  });

  // IRC R702.7 limits, seen in secondary pages; at, just inside and just outside each.
  it.each([
    [0.099, 'I'],
    [0.1, 'I'],
    [0.101, 'II'],
    [0.999, 'II'],
    [1, 'II'],
    [1.001, 'III'],
    [9.999, 'III'],
    [10, 'III'],
    [10.01, 'none'],
  ])('%d perm is class %s', (perms, expected) => {
    expect(retarderClass(permeanceFromPerms(perms as number))).toBe(expected);
  });

  it('6 mil on 4 in of concrete: 0.0558 perm', () => {
    expect(Math.abs(seriesPermeance([0.06, 0.8]) - 0.0558)).toBeLessThanOrEqual(5e-5);
  });

  it('a tight layer stops all', () => {
    expect(seriesPermeance([3, 0, 7])).toBe(0);
  });

  it('6 mil over soil of 15 °C, air 20 °C/50 %: 536.05 Pa, 0.1590 g/(m² day); 0.2650 at 0.1 perm, 2.650 at 1 perm', () => {
    const dp = saturationPressurePa(15) - 0.5 * saturationPressurePa(20);
    expect(Math.abs(dp - 536.05)).toBeLessThanOrEqual(0.005);
    const g = (perms: number) => 86_400_000 * permeanceFromPerms(perms) * dp;
    expect(Math.abs(g(0.06) - 0.159)).toBeLessThanOrEqual(5e-5);
    expect(Math.abs(g(0.1) - 0.265)).toBeLessThanOrEqual(5e-5);
    expect(Math.abs(g(1) - 2.65)).toBeLessThanOrEqual(5e-4);
  });
});

describe('table of layers', () => {
  // ng/(s m² Pa) as printed next to the perms (ASHRAE Handbook table, from memory); half of the last digit.
  it.each([
    ['polyethylene-4-mil', 4.6, 0.05],
    ['polyethylene-6-mil', 3.4, 0.05],
    ['polyethylene-10-mil', 1.7, 0.05],
    ['extruded-polystyrene-1-in', 69, 0.5],
    ['concrete-4-in', 46, 0.5],
    ['hollow-block-8-in', 137, 0.5],
    ['brick-4-in', 46, 0.5],
    ['plywood-quarter-in', 40, 0.5],
  ])('%s: %d ng/(s m² Pa)', (key, ng, tolerance) => {
    const layer = LAYERS.find((one) => one.key === key)!;
    expect(Math.abs(layerPermeance(layer).value * 1e12 - (ng as number))).toBeLessThanOrEqual(
      tolerance as number,
    );
  });

  it('4 in of concrete has 3.2 perm inch', () => {
    expect(LAYERS.find(({ key }) => key === 'concrete-4-in')!.perms * 4).toBeCloseTo(3.2, 12);
  });

  it('ISO 10456 sd values of 0.15 and 0.25 mm lie in the range of their rows', () => {
    for (const [key, sd] of [
      ['polyethylene-6-mil', 50],
      ['polyethylene-10-mil', 100],
    ] as const) {
      const row = LAYERS.find((one) => one.key === key)!;
      const perms = permsFromPermeance(2e-10 / sd);
      // 0.0699 and 0.0350 perm.
      expect(perms).toBeGreaterThanOrEqual(row.lowPerms);
      expect(perms).toBeLessThanOrEqual(row.highPerms);
    }
  });

  it('every row is in order, once, with a source that exists', () => {
    const sources = new Set<string>(Object.values(moistureSources).map(({ id }) => id));
    for (const row of LAYERS) {
      expect(row.lowPerms).toBeLessThanOrEqual(row.perms);
      expect(row.perms).toBeLessThanOrEqual(row.highPerms);
      expect(sources).toContain(row.sourceId);
    }
    expect(new Set(LAYERS.map(({ key }) => key)).size).toBe(LAYERS.length);
  });
});
