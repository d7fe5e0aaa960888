import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkMonthly, type GivenMonth } from '../../src/climate/given-months.ts';
import type { MonthlyClimate } from '../../src/climate/monthly.ts';
import { monthlyOf } from '../../src/climate/monthly.ts';
import { liquidSaturationPressurePa } from '../../src/climate/station-dew-point.ts';
import { STATIONS, stationById } from '../../src/climate/stations.ts';
import { synthesizeYear } from '../../src/climate/synthesize.ts';
import type { ClimateYear, Place } from '../../src/climate/year.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';

/** The promise: monthly means to 0.05 K and 0.1 g/kg. */
const MEAN_TOLERANCE_K = 0.05;
const HUMIDITY_TOLERANCE = 0.0001;

function holdsMonths(year: ClimateYear, monthly: MonthlyClimate): void {
  monthlyOf(year).months.forEach((actual, m) => {
    const wanted = monthly.months[m]!;
    const near = (name: string, a: number, b: number, tolerance: number): void => {
      expect(Math.abs(a - b), `month ${m + 1}: ${name} is ${a}, wanted ${b}`).toBeLessThanOrEqual(tolerance);
    };
    near('dry bulb', actual.temperatureMeanC, wanted.temperatureMeanC, MEAN_TOLERANCE_K);
    near('humidity ratio', actual.humidityRatioMean, wanted.humidityRatioMean, HUMIDITY_TOLERANCE);
    near('pressure', actual.pressurePa, wanted.pressurePa, 1);
    near('wind', actual.windSpeedMPerS, wanted.windSpeedMPerS, 0.001);
    if (wanted.temperatureMaxC !== undefined && wanted.temperatureMinC !== undefined) {
      expect(actual.temperatureMaxC).toBeLessThanOrEqual(wanted.temperatureMaxC + 1e-9);
      expect(actual.temperatureMinC).toBeGreaterThanOrEqual(wanted.temperatureMinC - 1e-9);
    }
  });
}

function isPossible(year: ClimateYear): void {
  for (let hour = 0; hour < 8760; hour++) {
    const possible =
      Number.isFinite(year.temperatureC[hour]!) &&
      year.humidityRatio[hour]! > 0 &&
      year.relativeHumidity[hour]! > 0 &&
      year.relativeHumidity[hour]! <= 1 &&
      year.windSpeedMPerS[hour]! >= 0 &&
      year.windFromDeg[hour]! >= 0 &&
      year.windFromDeg[hour]! <= 360 &&
      year.globalHorizontalWPerM2[hour]! >= 0;
    if (!possible) throw new Error(`hour ${hour} is not possible`);
  }
}

describe.each(STATIONS)('a year synthesized for $id', ({ monthly, place }) => {
  const year = synthesizeYear(monthly, place, 4);

  it('has the monthly statistics it was made from', () => {
    expect(year.temperatureEnding.converged).toBe(true);
    expect(year.humidityEnding.converged).toBe(true);
    holdsMonths(year, monthly);
    isPossible(year);
    monthlyOf(year).months.forEach((month, m) => {
      const wanted = monthly.months[m]!;
      // Fronts give way to the daily range; in the dullest climates a remnant of half a kelvin stays.
      expect(Math.abs(month.dailyRangeK - wanted.dailyRangeK)).toBeLessThan(0.5);
      expect(Math.abs(month.globalHorizontalMeanWPerM2! - wanted.globalHorizontalMeanWPerM2!)).toBeLessThan(
        0.5,
      );
    });
  });
});

describe('a synthesized year', () => {
  const { monthly, place } = stationById('greensboro_nc')!;
  const year = synthesizeYear(monthly, place, 7);

  it('is the same for the same seed and another for another', () => {
    expect(synthesizeYear(monthly, place, 7)).toEqual(year);
    expect(synthesizeYear(monthly, place, 8).temperatureC).not.toEqual(year.temperatureC);
  });

  it('says that it is none and what was assumed', () => {
    expect(year.kind).toBe('synthesized');
    const codes = year.notices.map((notice) => notice.code);
    expect(codes).toContain('synthesized-hours');
    expect(codes).toContain('assumed-wind-direction');
    expect(codes).not.toContain('assumed-extremes');
    expect(codes).not.toContain('assumed-clearness');
  });

  it('is warmest at about 15:00 and coldest at about 06:00', () => {
    const course = new Array<number>(24).fill(0);
    for (let hour = 0; hour < 8760; hour++) course[hour % 24]! += year.temperatureC[hour]! / 365;
    expect(Math.abs(course.indexOf(Math.max(...course)) + 1 - 15)).toBeLessThanOrEqual(1);
    expect(Math.abs(course.indexOf(Math.min(...course)) + 1 - 6)).toBeLessThanOrEqual(1);
  });

  it('has weather of days: daily means differ, and stay alike from one day to the next', () => {
    const days = Array.from({ length: 31 }, (_, day) => {
      let sum = 0;
      for (let k = 0; k < 24; k++) sum += year.temperatureC[day * 24 + k]!;
      return sum / 24;
    });
    const mean = days.reduce((a, b) => a + b, 0) / 31;
    const variance = days.reduce((sum, day) => sum + (day - mean) ** 2, 0) / 31;
    const lagged = days.slice(1).reduce((sum, day, i) => sum + (day - mean) * (days[i]! - mean), 0) / 30;
    // January at this station: standard deviation of daily means 5.1 K (computed from the hourly file).
    expect(Math.sqrt(variance)).toBeGreaterThan(2.5);
    expect(Math.sqrt(variance)).toBeLessThan(8);
    expect(lagged / variance).toBeGreaterThan(0.3);
  });

  it('has no jump from one hour to the next, the turn of the year included', () => {
    for (let hour = 0; hour < 8760; hour++) {
      const next = (hour + 1) % 8760;
      expect(Math.abs(year.temperatureC[next]! - year.temperatureC[hour]!)).toBeLessThan(6);
    }
  });

  it('has its sun at noon and none at midnight', () => {
    for (let day = 0; day < 365; day++) {
      expect(year.globalHorizontalWPerM2[day * 24]).toBe(0);
      expect(year.globalHorizontalWPerM2[day * 24 + 12]).toBeGreaterThan(0);
    }
  });
});

describe('what the months do not tell', () => {
  const plain = (change: Partial<GivenMonth> = {}): MonthlyClimate => {
    const months = Array.from({ length: 12 }, (_, m): GivenMonth => {
      const season = -Math.cos((2 * Math.PI * (m + 0.5)) / 12);
      return {
        temperatureMeanC: 13 + 11 * season,
        dailyRangeK: 9,
        dewPointMeanC: 6 + 10 * season,
        pressurePa: 98_500 + 20 * m,
        windSpeedMPerS: 3 + 0.1 * m,
        ...change,
      };
    });
    const result = checkMonthly(months, 'made months');
    if (!result.ok) throw new Error(result.issues.map((issue) => issue.message).join('\n'));
    return result.monthly;
  };
  const place: Place = {
    name: 'Madeville',
    latitudeDeg: 37,
    longitudeDeg: -80,
    elevationM: 250,
    utcOffsetHours: -5,
  };

  it('is assumed and named', () => {
    const year = synthesizeYear(plain(), place, 1);
    const codes = year.notices.map((notice) => notice.code);
    expect(codes).toContain('assumed-extremes');
    expect(codes).toContain('assumed-clearness');
    holdsMonths(year, plain());
  });

  it('a windless climate stays windless', () => {
    expect(Math.max(...synthesizeYear(plain({ windSpeedMPerS: 0 }), place, 1).windSpeedMPerS)).toBe(0);
  });

  it('solar means above a clear sky are said not to be met', () => {
    const codes = synthesizeYear(plain({ globalHorizontalMeanWPerM2: 450 }), place, 1).notices.map(
      (n) => n.code,
    );
    expect(codes).toContain('solar-mean-not-met');
  });

  it('a daily range that does not fit between the extremes is said to be off', () => {
    const months = plain().months.map((month) => ({
      ...month,
      dailyRangeK: 16,
      temperatureMinC: month.temperatureMeanC - 4,
      temperatureMaxC: month.temperatureMeanC + 4,
    }));
    const year = synthesizeYear({ months, source: 'made' }, place, 1);
    expect(year.notices.map((notice) => notice.code)).toContain('daily-range-not-met');
    holdsMonths(year, { months, source: 'made' });
  });

  it('air at saturation all month cannot be, and is said to be off', () => {
    const still = plain({ dailyRangeK: 1 }).months;
    const months = still.map((month) => {
      const saturated = liquidSaturationPressurePa(month.temperatureMeanC);
      return {
        ...month,
        temperatureMinC: month.temperatureMeanC - 2,
        temperatureMaxC: month.temperatureMeanC + 2,
        // Saturation over such small swings is at most 1 % above that of the mean.
        humidityRatioMean: (1.08 * 0.621945 * saturated) / (month.pressurePa - saturated),
      };
    });
    const year = synthesizeYear({ months, source: 'made' }, place, 1);
    expect(year.humidityEnding.converged).toBe(false);
    expect(year.notices.map((notice) => notice.code)).toContain('humidity-mean-not-met');
    isPossible(year);
  });

  it('impossible months, places and seeds are refused', () => {
    const bad = { months: plain().months.slice(1), source: 'made' };
    expect(() => synthesizeYear(bad, place, 1)).toThrow(EngineError);
    expect(() => synthesizeYear(bad, place, 1)).toThrow('There are 11 months');
    expect(() => synthesizeYear(plain(), { ...place, latitudeDeg: 91 }, 1)).toThrow('latitude');
    expect(() => synthesizeYear(plain(), place, Number.NaN)).toThrow('seed');
  });

  it('holds the means for any sensible months', () => {
    fc.assert(
      fc.property(
        fc.record({
          mean: fc.double({ min: -5, max: 22, noNaN: true }),
          swing: fc.double({ min: 0, max: 14, noNaN: true }),
          range: fc.double({ min: 3, max: 18, noNaN: true }),
          drier: fc.double({ min: 3, max: 18, noNaN: true }),
          seed: fc.integer(),
        }),
        ({ mean, swing, range, drier, seed }) => {
          const months = plain().months.map((month, m): GivenMonth => {
            const season = -Math.cos((2 * Math.PI * (m + 0.5)) / 12);
            const temperatureMeanC = mean + swing * season;
            return {
              temperatureMeanC,
              dailyRangeK: range,
              dewPointMeanC: temperatureMeanC - drier,
              pressurePa: month.pressurePa,
              windSpeedMPerS: 2,
            };
          });
          const checked = checkMonthly(months, 'made');
          if (!checked.ok) throw new Error(checked.issues[0]!.message);
          const year = synthesizeYear(checked.monthly, place, seed);
          holdsMonths(year, checked.monthly);
          isPossible(year);
        },
      ),
      { numRuns: 15, seed: 21 },
    );
  });
});
