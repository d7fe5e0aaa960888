import { describe, expect, it } from 'vitest';
import { designHour, designMonth } from '../../src/climate/design-day.ts';
import { stationById } from '../../src/climate/stations.ts';
import type { ClimateYear } from '../../src/climate/year.ts';

/** A made year in which hour k has humidity ratio 0.001 + k · 1e-6 and dry bulb 5 + k / 400. */
function rampYear(): ClimateYear {
  const ramp = (from: number, step: number): Float64Array =>
    Float64Array.from({ length: 8760 }, (_, k) => from + k * step);
  return {
    place: { name: 'Ramp', latitudeDeg: 0, longitudeDeg: 0, elevationM: 0, utcOffsetHours: 0 },
    temperatureC: ramp(5, 1 / 400),
    relativeHumidity: ramp(0.5, 0),
    humidityRatio: ramp(0.001, 1e-6),
    pressurePa: ramp(100_000, 0),
    windSpeedMPerS: ramp(2, 0),
    windFromDeg: ramp(0, 0),
    globalHorizontalWPerM2: ramp(0, 0),
    source: 'made',
    kind: 'synthesized',
    notices: [],
    repairs: {
      count: 0,
      filled: [],
      dewPointFromRelativeHumidity: 0,
      dewPointLowered: 0,
      negativeSolarZeroed: 0,
    },
  };
}

describe('the design month', () => {
  it('is the most humid one, not the hottest', () => {
    const { monthly } = stationById('denver_co')!;
    const hottest = monthly.months.map((m) => m.temperatureMeanC);
    const design = designMonth(monthly);
    expect(design.humidityRatioMean).toBe(Math.max(...monthly.months.map((m) => m.humidityRatioMean)));
    expect(design.month).not.toBe(hottest.indexOf(Math.max(...hottest)) + 1);
    expect(design.temperatureMeanC).toBe(monthly.months[design.month - 1]!.temperatureMeanC);
  });

  it('is July at a mixed-humid station', () => {
    expect(designMonth(stationById('greensboro_nc')!.monthly).month).toBe(7);
  });
});

describe('the design hour', () => {
  it('is exceeded in 35 hours at 0.4 %', () => {
    const year = rampYear();
    const { humidityRatio } = designHour(year);
    expect(year.humidityRatio.filter((ratio) => ratio > humidityRatio)).toHaveLength(35);
  });

  it('has the mean dry bulb of the hours about as humid', () => {
    const design = designHour(rampYear(), 0.1);
    // 876 hours above hour 7883; ±2 % of 0.008883 is ±177 hours around it.
    expect(design.humidityRatio).toBeCloseTo(0.001 + 7883e-6, 12);
    expect(design.coincidentHours).toBe(355);
    expect(design.temperatureC).toBeCloseTo(5 + 7883 / 400, 9);
    expect(design.pressurePa).toBeCloseTo(100_000, 6);
  });

  it('at a share of 0 is the most humid hour', () => {
    expect(designHour(rampYear(), 0).humidityRatio).toBeCloseTo(0.001 + 8759e-6, 12);
  });

  it.each([-0.01, 0.51, Number.NaN])('for a share of %d is refused', (share) => {
    expect(() => designHour(rampYear(), share)).toThrow('share of hours');
  });
});
