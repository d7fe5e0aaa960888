import { describe, expect, it } from 'vitest';
import { checkMonthly, type GivenMonth, type MonthlyResult } from '../../src/climate/given-months.ts';
import { liquidSaturationPressurePa, stationDewPointC } from '../../src/climate/station-dew-point.ts';

/** Twelve made months with humidity given as a dew point; demonstration values. */
function months(): GivenMonth[] {
  return Array.from({ length: 12 }, (_, m) => {
    const season = -Math.cos((2 * Math.PI * (m + 0.5)) / 12);
    return {
      temperatureMeanC: 15 + 11 * season,
      dailyRangeK: 10.5,
      dewPointMeanC: 9 + 10 * season,
      pressurePa: 99_100 + m,
      windSpeedMPerS: 3.2,
    };
  });
}

function changed(month: number, change: Partial<Record<keyof GivenMonth, unknown>>): GivenMonth[] {
  return months().map((given, m) => (m === month ? ({ ...given, ...change } as GivenMonth) : given));
}

function okOf(result: MonthlyResult): Extract<MonthlyResult, { ok: true }> {
  if (!result.ok) throw new Error(result.issues.map((issue) => issue.message).join('\n'));
  return result;
}

const pathsOf = (given: readonly GivenMonth[]): string[] => {
  const result = checkMonthly(given, 'test');
  return result.ok ? [] : result.issues.map((issue) => issue.path);
};

describe('monthly values that a person gives', () => {
  it('as dew points get a humidity ratio a little above that of the mean dew point', () => {
    const { monthly, notices } = okOf(checkMonthly(months(), 'test'));
    const [january] = monthly.months;
    const vapor = liquidSaturationPressurePa(months()[0]!.dewPointMeanC!);
    const atMean = (0.621945 * vapor) / (99_100 - vapor);
    // Smallest and largest ratio of the 264 station months: 1.00 and 1.28.
    expect(january!.humidityRatioMean / atMean).toBeGreaterThan(1);
    expect(january!.humidityRatioMean / atMean).toBeLessThan(1.28);
    expect(notices.map((notice) => notice.code)).toEqual(['humidity-ratio-from-mean-dew-point']);
  });

  it('as relative humidity get vapor at the mean temperature', () => {
    const given = months().map(({ dewPointMeanC, ...rest }) => ({ ...rest, relativeHumidityMean: 0.7 }));
    const { monthly, notices } = okOf(checkMonthly(given, 'test'));
    const july = monthly.months[6]!;
    const vapor = 0.7 * liquidSaturationPressurePa(july.temperatureMeanC);
    expect(july.humidityRatioMean).toBeCloseTo((0.621945 * vapor) / (july.pressurePa - vapor), 10);
    expect(july.dewPointMeanC).toBeLessThanOrEqual(stationDewPointC(vapor));
    expect(july).not.toHaveProperty('relativeHumidityMean');
    expect(notices.map((notice) => notice.code)).toEqual(['humidity-ratio-from-mean-relative-humidity']);
  });

  it('as humidity ratios are kept, and the dew point follows', () => {
    const given = okOf(checkMonthly(months(), 'test')).monthly.months;
    const without = given.map(({ dewPointMeanC, ...rest }) => rest);
    const { monthly, notices } = okOf(checkMonthly(without, 'test'));
    expect(notices).toEqual([]);
    monthly.months.forEach((month, m) => {
      expect(month.humidityRatioMean).toBe(given[m]!.humidityRatioMean);
      expect(month.dewPointMeanC).toBeCloseTo(months()[m]!.dewPointMeanC!, 6);
    });
  });

  it('with a dew point above the dry bulb name the month', () => {
    const result = checkMonthly(changed(6, { dewPointMeanC: 30.5 }), 'test');
    expect(result.ok ? [] : result.issues).toHaveLength(1);
    expect(result.ok ? '' : result.issues[0]!.message).toContain(
      'July: the dew point of 30.5 °C is above the dry bulb',
    );
    expect(pathsOf(changed(6, { dewPointMeanC: 30.5 }))).toEqual(['months[6].dewPointMeanC']);
  });

  it.each<[keyof GivenMonth, unknown]>([
    ['temperatureMeanC', 78],
    ['temperatureMeanC', undefined],
    ['temperatureMeanC', '15'],
    ['dailyRangeK', 0],
    ['dailyRangeK', Number.NaN],
    ['pressurePa', 991],
    ['windSpeedMPerS', -1],
    ['humidityRatioMean', 9.5],
    ['humidityRatioMean', 0.03],
    ['relativeHumidityMean', 70],
    ['temperatureMinC', 40],
    ['temperatureMaxC', -10],
    ['globalHorizontalMeanWPerM2', 900],
  ])('with %s of %s are refused', (field, value) => {
    expect(pathsOf(changed(3, { [field]: value }))).toEqual([`months[3].${field}`]);
  });

  it('without any humidity are refused', () => {
    expect(pathsOf(changed(3, { dewPointMeanC: undefined }))).toEqual(['months[3].dewPointMeanC']);
  });

  it('have all faults collected, months missing included', () => {
    const given = changed(0, { windSpeedMPerS: -1, dailyRangeK: 99 }).slice(0, 11);
    expect(pathsOf(given)).toEqual(['months', 'months[0].dailyRangeK', 'months[0].windSpeedMPerS']);
  });

  it('at the limits stand, just outside they do not', () => {
    expect(pathsOf(changed(3, { dailyRangeK: 0.5, windSpeedMPerS: 30 }))).toEqual([]);
    expect(pathsOf(changed(3, { dailyRangeK: 0.49 }))).toHaveLength(1);
    expect(pathsOf(changed(3, { windSpeedMPerS: 30.01 }))).toHaveLength(1);
  });
});
