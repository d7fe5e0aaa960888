import { describe, expect, it } from 'vitest';
import { runSeason } from '../../src/season/run.ts';
import { prototypeCases, prototypeWeather } from './prototype-year.ts';

/**
 * A stylized year of a closed and a vented crawl space, worked out by an independent rough program from the same state
 * equations (all inputs stand in `prototype-year.ts`). It held whole percent and hourly explicit steps, so monthly means
 * agree within 3 points of relative humidity and yearly sums within 15 %.
 */
const RH_TOLERANCE = 0.03;
const SUM_TOLERANCE = 0.15;

const rows: { name: string; monthlyPercent: number[] }[] = [
  { name: 'a', monthlyPercent: [70, 69, 71, 75, 81, 87, 90, 90, 85, 80, 75, 72] },
  { name: 'b', monthlyPercent: [40, 41, 47, 57, 69, 81, 85, 84, 74, 61, 50, 44] },
  { name: 'b2', monthlyPercent: [49, 50, 56, 65, 76, 85, 88, 85, 77, 65, 55, 51] },
  { name: 'c', monthlyPercent: [47, 44, 45, 50, 57, 66, 73, 78, 78, 74, 66, 56] },
  { name: 'c2', monthlyPercent: [70, 67, 68, 73, 78, 83, 87, 89, 89, 87, 82, 76] },
  { name: 'd', monthlyPercent: [45, 42, 44, 49, 57, 63, 65, 66, 65, 64, 59, 51] },
  { name: 'e', monthlyPercent: [43, 41, 43, 49, 55, 55, 55, 55, 55, 55, 53, 47] },
  { name: 'f', monthlyPercent: Array(12).fill(55) },
];

const results = new Map(
  runSeason(Object.values(prototypeCases()), prototypeWeather(), { hourly: true }).map((r) => [r.name, r]),
);

function summerPercent(name: string): number {
  const months = results.get(name)!.months.slice(5, 8);
  return (100 * months.reduce((sum, m) => sum + m.relativeHumidity, 0)) / 3;
}

describe('the stylized year of a mild, humid climate', () => {
  for (const { name, monthlyPercent } of rows) {
    it(`case ${name}: monthly relative humidity within 3 points`, () => {
      results.get(name)!.months.forEach((month, i) => {
        expect(Math.abs(month.relativeHumidity - monthlyPercent[i]! / 100)).toBeLessThanOrEqual(RH_TOLERANCE);
      });
    });
  }

  it.each([
    ['b', 83.4],
    ['c', 72.2],
    ['d', 64.8],
    ['e', 55.0],
  ])('case %s: June to August mean near %f %%', (name, percent) => {
    // Means of three months: the roundings of single months cancel, 1 point is left for the different time stepping.
    expect(Math.abs(summerPercent(name) - percent)).toBeLessThanOrEqual(1);
  });

  it.each([
    ['a', 0.129, 0.204],
    ['b', 0.079, 0.179],
    ['b2', 0.092, 0.188],
    ['c', 0.084, 0.153],
    ['c2', 0.127, 0.199],
    ['d', 0.081, 0.123],
    ['e', 0.079, 0.102],
  ])('case %s: wood surface from %f to %f over the year', (name, lowest, highest) => {
    // 3 points of humidity are 0.5 to 1 % of moisture content near 80 %.
    const series = results.get(name)!.hourly!.woodMoistureSurface;
    expect(Math.abs(Math.min(...series) - lowest)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(Math.max(...series) - highest)).toBeLessThanOrEqual(0.01);
  });

  it.each([
    ['e', 233, 144],
    ['f', 2419, 1542],
  ])('case %s: %f liters and %f kWh in the year', (name, liters, kWh) => {
    // The prototype has no part-load loss; up to a tenth of the energy on top is expected of one that has.
    const result = results.get(name)!;
    expect(Math.abs(result.waterRemovedKg / liters - 1)).toBeLessThanOrEqual(SUM_TOLERANCE);
    expect(Math.abs(result.energyKWh / kWh - 1)).toBeLessThanOrEqual(SUM_TOLERANCE);
  });

  it('case a: evaporation from the ground is most in November and least in July, in g/m² and day', () => {
    const yearly = results.get('a')!.waterKg.openGround / (97 * 365);
    expect(yearly).toBeGreaterThan(0.065);
    expect(yearly).toBeLessThan(0.245);
  });

  it('closing the vents over a liner with 5 % open ground makes the winter worse than venting', () => {
    const winter = (name: string) =>
      [11, 0, 1].reduce((sum, m) => sum + results.get(name)!.months[m]!.relativeHumidity, 0) / 3;
    expect(winter('c2') - winter('b')).toBeGreaterThan(0.2);
    expect(results.get('c2')!.daysAbove80).toBeGreaterThan(results.get('b')!.daysAbove80);
  });
});

/**
 * Field studies of vented and closed crawl spaces in the Carolinas, 2001 to 2005 (Advanced Energy, twelve houses): vented
 * often above 80 % in summer, closed with some supply air barely above 60 %.
 */
describe('what was measured in twelve houses', () => {
  it('vented over a full sheet: 78 to 90 % in summer, more than half of the hours above 80 %', () => {
    expect(summerPercent('b')).toBeGreaterThan(78);
    expect(summerPercent('b')).toBeLessThan(90);
    const series = results.get('b')!.hourly!.relativeHumidity.slice(151 * 24, 243 * 24);
    expect(series.filter((h) => h > 0.8).length / series.length).toBeGreaterThan(0.5);
  });

  it('closed with supply air: 55 to 68 % in summer and never above 80 %', () => {
    expect(summerPercent('d')).toBeGreaterThan(55);
    expect(summerPercent('d')).toBeLessThan(68);
    expect(results.get('d')!.hoursAbove80).toBe(0);
  });
});
