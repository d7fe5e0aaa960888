import { describe, expect, it } from 'vitest';
import {
  enhancedCrawlWindCoefficient,
  enhancedInfiltration,
  enhancedStackCoefficient,
} from '../../src/airflow/enhanced-single-zone.ts';
import type { ShelterClass, Stories } from '../../src/airflow/shelter.ts';
import { eavesWindFactor, shelterWindFactor } from '../../src/airflow/shelter.ts';
import { basicInfiltrationM3PerS, stackFactor, stackFlowM3PerS } from '../../src/airflow/single-zone.ts';
import { wallPressureCoefficient } from '../../src/airflow/wind-pressure.ts';
import { convert } from '../../src/units/convert.ts';

const handbook = 'ASHRAE Fundamentals (SI), chapter Ventilation and Infiltration';

describe('basic model', () => {
  const rows = [
    {
      inputs: {
        leakageAreaM2: 0.05,
        stories: 2,
        shelterClass: 3,
        temperatureDifferenceK: 39,
        windMPerS: 6.7,
      },
      expected: 265,
      tolerance: 0.5,
      source: `${handbook}, worked example, printed in whole m3/h`,
    },
    {
      inputs: {
        leakageAreaM2: 0.069,
        stories: 1,
        shelterClass: 4,
        temperatureDifferenceK: 17,
        windMPerS: 2.7,
      },
      expected: 141,
      tolerance: 0.5,
      source: `${handbook}, worked example, printed in whole m3/h`,
    },
  ] as const;

  for (const row of rows) {
    it(`${row.expected} m3/h`, () => {
      const flow = convert(basicInfiltrationM3PerS(row.inputs), 'm3/s', 'm3/h');
      expect(Math.abs(flow - row.expected)).toBeLessThanOrEqual(row.tolerance);
    });
  }

  it('rebuilds its one-story stack coefficient 0.000145 from R 0.5, X 0 and 2.5 m at 20 C', () => {
    const flow = stackFlowM3PerS({
      leakageAreaM2: 0.04,
      stackFactor: stackFactor(0.5, 0),
      heightM: 2.5,
      temperatureDifferenceK: 11,
      indoorTemperatureC: 20,
    });
    // (L/s)2/(cm4 K); half a unit of the last printed digit
    const coefficient = (flow * 1000) ** 2 / (400 ** 2 * 11);
    expect(Math.abs(coefficient - 0.000145)).toBeLessThanOrEqual(0.0000005);
  });

  it('grows with wind and less shelter, and does not care which side is warmer', () => {
    const at = (shelterClass: ShelterClass, windMPerS: number, temperatureDifferenceK: number) =>
      basicInfiltrationM3PerS({
        leakageAreaM2: 0.06,
        stories: 3,
        shelterClass,
        temperatureDifferenceK,
        windMPerS,
      });
    expect(at(2, 5, 8)).toBeGreaterThan(at(3, 5, 8));
    expect(at(2, 6, 8)).toBeGreaterThan(at(2, 5, 8));
    expect(at(2, 5, -8)).toBe(at(2, 5, 8));
    expect(at(5, 0, 0)).toBe(0);
  });
});

describe('enhanced model', () => {
  const house = {
    coefficient: 0.078,
    exponent: 0.6,
    stories: 1,
    foundation: 'crawl-space',
    flue: false,
    shelterClass: 4,
    temperatureDifferenceK: 16,
    windMPerS: 2.7,
  } as const;

  it('gives the printed stack flow and total of the crawl space example', () => {
    const { value, notices } = enhancedInfiltration(house);
    expect(Math.abs(value.stackM3PerS - 0.0222)).toBeLessThanOrEqual(0.00005);
    expect(Math.abs(convert(value.totalM3PerS, 'm3/s', 'm3/h') - 83)).toBeLessThanOrEqual(0.5);
    expect(notices.map(({ code }) => code)).toEqual(['outside-table-basis']);
  });

  it('gives the printed wind flow 0.0056 with the exponent 1.34 that the example used although its n is 0.6', () => {
    const { value, notices } = enhancedInfiltration({ ...house, exponent: 0.67 });
    expect(Math.abs(value.windM3PerS - 0.0056)).toBeLessThanOrEqual(0.00005);
    expect(notices).toEqual([]);
  });

  it('rebuilds the table: 0.0539 and 0.131 against the printed 0.054 and 0.128', () => {
    const split = { exponent: 0.67, floorCeilingShare: 0.5, ceilingLessFloor: 0 };
    // worked outside this project without the air temperature it took: 293 or 293.15 K differ in the last digit
    expect(Math.abs(enhancedStackCoefficient(split, 2.5) - 0.0539)).toBeLessThanOrEqual(0.0001);
    expect(Math.abs(enhancedStackCoefficient(split, 2.5) - 0.054)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(enhancedCrawlWindCoefficient(split) - 0.131)).toBeLessThanOrEqual(0.0005);
    // the form is recalled; it misses the printed table value by 2.5 %
    expect(Math.abs(enhancedCrawlWindCoefficient(split) / 0.128 - 1)).toBeLessThanOrEqual(0.03);
  });

  /** Printed tables: coefficients seen through unit inputs (c 1, 1 K; 1 m/s made local). */
  const tables = [
    { foundation: 'crawl-space', flue: false, stack: [0.054, 0.078, 0.098], wind: [0.128, 0.142, 0.151] },
    { foundation: 'crawl-space', flue: true, stack: [0.069, 0.089, 0.107], wind: [0.128, 0.142, 0.154] },
    { foundation: 'slab', flue: false, stack: [0.054, 0.078, 0.098], wind: [0.156, 0.17, 0.17] },
    { foundation: 'slab', flue: true, stack: [0.069, 0.089, 0.107], wind: [0.142, 0.156, 0.167] },
  ] as const;
  for (const { foundation, flue, stack, wind } of tables) {
    it(`has the ${handbook} coefficients, ${foundation}, ${flue ? 'with' : 'no'} flue`, () => {
      for (const stories of [1, 2, 3] as const) {
        const local = shelterWindFactor(1, flue, stories) * eavesWindFactor(stories);
        const { value } = enhancedInfiltration({
          coefficient: 1,
          exponent: 0.67,
          stories,
          foundation,
          flue,
          shelterClass: 1,
          temperatureDifferenceK: 1,
          windMPerS: 1 / local,
        });
        expect(value.stackM3PerS).toBeCloseTo(stack[stories - 1]!, 10);
        expect(value.windM3PerS).toBeCloseTo(wind[stories - 1]!, 10);
      }
    });
  }
});

describe('shelter and height', () => {
  it('has the printed factors', () => {
    const classes = [1, 2, 3, 4, 5] as const;
    expect(classes.map((c) => shelterWindFactor(c))).toEqual([1, 0.9, 0.7, 0.5, 0.3]);
    expect(classes.map((c) => shelterWindFactor(c, true))).toEqual([1.1, 1.02, 0.86, 0.7, 0.54]);
    expect(([1, 2, 3] as const).map(eavesWindFactor)).toEqual([0.48, 0.59, 0.67]);
  });

  it('has recalled factors for taller houses with a flue that follow the rule of the one-story row', () => {
    // s = s_walls (1 - Y) + 1.5 Y with one flue share Y for each count of stories; the printed digit is 0.01
    for (const [stories, flueShare] of [
      [1, 0.2],
      [2, 0.14],
      [3, 0.11],
    ] as const) {
      for (const shelterClass of [1, 2, 3, 4, 5] as const) {
        const rule = shelterWindFactor(shelterClass) * (1 - flueShare) + 1.5 * flueShare;
        expect(Math.abs(shelterWindFactor(shelterClass, true, stories) - rule)).toBeLessThanOrEqual(0.00501);
      }
    }
  });

  it('refuses classes and stories that the tables do not have', () => {
    expect(() => shelterWindFactor(6 as ShelterClass)).toThrow(
      'shelter class must be 1, 2, 3, 4 or 5; got 6',
    );
    expect(() => eavesWindFactor(4 as Stories)).toThrow('stories must be 1, 2 or 3; got 4');
  });
});

describe('wall pressure', () => {
  it('is 0.6 windward, -0.3 leeward and -0.65 on the sides (order of low-rise walls, recalled)', () => {
    expect(wallPressureCoefficient(0)).toBeCloseTo(0.6, 12);
    expect(wallPressureCoefficient(180)).toBeCloseTo(-0.3, 12);
    expect(wallPressureCoefficient(90)).toBeCloseTo(-0.65, 12);
    expect(wallPressureCoefficient(270)).toBe(wallPressureCoefficient(90));
    expect(wallPressureCoefficient(-35)).toBeCloseTo(wallPressureCoefficient(325), 12);
  });

  it('falls from windward to the side', () => {
    for (let angle = 0; angle < 90; angle += 5) {
      expect(wallPressureCoefficient(angle + 5)).toBeLessThan(wallPressureCoefficient(angle));
    }
  });
});
