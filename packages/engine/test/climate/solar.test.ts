import { describe, expect, it } from 'vitest';
import { clearSkyWPerM2 } from '../../src/climate/synthesis/solar.ts';
import type { Place } from '../../src/climate/year.ts';

const at = (latitudeDeg: number, longitudeDeg: number, utcOffsetHours: number): Place => ({
  name: 'Madeville',
  latitudeDeg,
  longitudeDeg,
  elevationM: 0,
  utcOffsetHours,
});

const june21 = (31 + 28 + 31 + 30 + 31 + 20) * 24;
const december21 = (365 - 11) * 24;

describe('clear sky', () => {
  it('follows from the height of the sun: at the Tropic of Cancer in June the noon sun stands overhead', () => {
    const clear = clearSkyWPerM2(at(23.44, 0, 0));
    const noon = Math.max(clear[june21 + 11]!, clear[june21 + 12]!);
    // Half an hour from noon cos z is 0.993 (hour angle 7.5°, latitude and declination 23.4°).
    expect(noon).toBeCloseTo(1098 * 0.9928 * Math.exp(-0.059 / 0.9928), -0.5);
  });

  it('has a day of 24 hours beyond the polar circle in June and none in December', () => {
    const clear = clearSkyWPerM2(at(75, 0, 0));
    for (let hour = 0; hour < 24; hour++) {
      expect(clear[june21 + hour]).toBeGreaterThan(0);
      expect(clear[december21 + hour]).toBe(0);
    }
  });

  it('has 12 hours of sun at the equator all year', () => {
    const clear = clearSkyWPerM2(at(0, 0, 0));
    for (const day of [june21, december21]) {
      const hours = clear.subarray(day, day + 24).filter((value) => value > 0).length;
      expect(Math.abs(hours - 12)).toBeLessThanOrEqual(1);
    }
  });

  it('comes later by the clock in the west of a time zone: 7.5° are half an hour', () => {
    const centerOfMass = (clear: Float64Array): number => {
      let sum = 0;
      let moment = 0;
      for (let hour = 0; hour < 24; hour++) {
        sum += clear[june21 + hour]!;
        moment += clear[june21 + hour]! * (hour + 0.5);
      }
      return moment / sum;
    };
    const shift =
      centerOfMass(clearSkyWPerM2(at(36, -82.5, -5))) - centerOfMass(clearSkyWPerM2(at(36, -75, -5)));
    expect(shift).toBeCloseTo(0.5, 2);
  });

  it('has its mean noon within the equation of time: in early November the sun is 16 minutes early', () => {
    const november3 = (304 + 2) * 24;
    const clear = clearSkyWPerM2(at(0, 0, 0));
    let sum = 0;
    let moment = 0;
    for (let hour = 0; hour < 24; hour++) {
      sum += clear[november3 + hour]!;
      moment += clear[november3 + hour]! * (hour + 0.5);
    }
    expect((12 - moment / sum) * 60).toBeGreaterThan(15);
    expect((12 - moment / sum) * 60).toBeLessThan(18);
  });
});
