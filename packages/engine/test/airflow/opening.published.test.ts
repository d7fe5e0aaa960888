import { describe, expect, it } from 'vitest';
import { typicalLeakage } from '../../src/airflow/leakage-values.ts';
import {
  flowM3PerS,
  gapLeakageAreaM2,
  holeLeakageAreaM2,
  lawFromBlowerDoor,
  lawFromLeakageArea,
  leakageAreaM2,
  quickAirChangesPerHour,
} from '../../src/airflow/opening.ts';
import { convert } from '../../src/units/convert.ts';

/** Worked outside this project from A = Q50 (4/50)^n sqrt(rho/8); tolerance half a unit of the last printed digit. */
const chain = [
  { exponent: 0.6, leakageCm2: 402, cfm50PerIn2: 16.1 },
  { exponent: 0.65, leakageCm2: 354, cfm50PerIn2: 18.2 },
  { exponent: 0.7, leakageCm2: 312, cfm50PerIn2: 20.7 },
];

describe('blower door to leakage area', () => {
  for (const row of chain) {
    it(`1000 cfm at 50 Pa, exponent ${row.exponent}`, () => {
      const law = lawFromBlowerDoor(convert(1000, 'cfm', 'm3/s'), row.exponent);
      const area = leakageAreaM2(law);
      expect(Math.abs(convert(area, 'm2', 'cm2') - row.leakageCm2)).toBeLessThanOrEqual(0.5);
      expect(Math.abs(1000 / convert(area, 'm2', 'in2') - row.cfm50PerIn2)).toBeLessThanOrEqual(0.05);
      // back the other way
      const back = lawFromLeakageArea(area, row.exponent);
      expect(back.coefficient).toBeCloseTo(law.coefficient, 12);
      expect(convert(flowM3PerS(back, 50), 'm3/s', 'cfm')).toBeCloseTo(1000, 8);
    });
  }

  it('halves by the exponent and carries the sign of the pressure', () => {
    const law = { coefficient: 0.031, exponent: 0.65 };
    expect(flowM3PerS(law, -7) / flowM3PerS(law, 1)).toBeCloseTo(-(7 ** 0.65), 12);
    expect(flowM3PerS(law, 0)).toBe(0);
  });
});

describe('holes and gaps', () => {
  it('counts a vent and a gap with 0.6 of their area', () => {
    expect(holeLeakageAreaM2(0.05)).toBeCloseTo(0.03, 12);
    expect(gapLeakageAreaM2(1.2, 0.006)).toBeCloseTo(0.6 * 1.2 * 0.006, 12);
  });

  it('passes through a hole what the orifice equation gives', () => {
    const pressurePa = 9;
    const expected = 0.6 * 0.02 * Math.sqrt((2 * pressurePa) / 1.2);
    expect(flowM3PerS(lawFromLeakageArea(holeLeakageAreaM2(0.02), 0.5), pressurePa)).toBeCloseTo(
      expected,
      12,
    );
  });
});

describe('typical leakage, recalled from the ASHRAE table of component leakage areas', () => {
  const rows = [
    { key: 'crawlExposedWall', cm2: [10, 8, 17] },
    { key: 'wallVent', cm2: [129, 129, 129] },
    { key: 'accessDoorPlain', cm2: [30, 10, 30] },
    { key: 'accessDoorWeatherstripped', cm2: [18, 8, 18] },
    { key: 'sillUncaulked', cm2: [4, 1, 4] },
    { key: 'sillCaulked', cm2: [0.8, 0.4, 1.2] },
    { key: 'floorHoleUncaulked', cm2: [6, 2, 24] },
    { key: 'floorHoleCaulked', cm2: [2, 1, 2] },
    { key: 'floorOverCrawl', cm2: [2.2, 0.4, 4.9] },
  ] as const;

  for (const { key, cm2 } of rows) {
    it(key, () => {
      const value = typicalLeakage[key];
      [value.leakageM2, value.lowM2, value.highM2].forEach((area, i) => {
        expect(convert(area, 'm2', 'cm2')).toBeCloseTo(cm2[i]!, 9);
      });
      expect(value.source.provenance).toBe('memory');
    });
  }

  it('covers every row', () => {
    expect(rows.map(({ key }) => key).sort()).toEqual(Object.keys(typicalLeakage).sort());
  });
});

describe('limits of the opening law', () => {
  it('takes exponents from 0.5 to 1', () => {
    expect(lawFromBlowerDoor(0.4, 0.5).exponent).toBe(0.5);
    expect(lawFromBlowerDoor(0.4, 1).exponent).toBe(1);
    expect(() => lawFromBlowerDoor(0.4, 0.499)).toThrow('flow exponent must be from 0.5 to 1; got 0.499');
    expect(() => lawFromLeakageArea(0.02, 1.001)).toThrow('flow exponent must be from 0.5 to 1; got 1.001');
  });

  it('refuses negative and missing figures', () => {
    expect(() => lawFromBlowerDoor(-0.1)).toThrow('flow at 50 Pa, m3/s, must be from 0');
    expect(() => lawFromLeakageArea(Number.NaN)).toThrow('leakage area, m2, must be a number');
    expect(() => gapLeakageAreaM2(-1, 0.01)).toThrow('gap length, m, must be from 0');
    expect(() => gapLeakageAreaM2(1, -0.01)).toThrow('gap width, m, must be from 0');
    expect(() => flowM3PerS({ coefficient: 0.1, exponent: 0.65 }, Number.POSITIVE_INFINITY)).toThrow(
      'pressure difference, Pa, must be a number',
    );
  });

  it('says what the rule of twenty is worth', () => {
    const rule = quickAirChangesPerHour(8);
    expect(rule.value).toBeCloseTo(0.4, 12);
    expect(rule.notices.map(({ code }) => code)).toEqual(['rule-of-thumb']);
    expect(rule.notices[0]!.message).toContain('not hold for a crawl space alone');
  });
});
