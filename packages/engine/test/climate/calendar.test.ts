import { describe, expect, it } from 'vitest';
import {
  DAYS_PER_MONTH,
  hourIndexOf,
  hourInWords,
  MONTH_START_HOUR,
  monthOfHour,
} from '../../src/climate/calendar.ts';

describe('the calendar of a climate year', () => {
  it('has the same hours in its two tables and in the calendar', () => {
    for (let month = 0; month < 12; month++) {
      const days = new Date(Date.UTC(2023, month + 1, 0)).getUTCDate();
      expect(DAYS_PER_MONTH[month]).toBe(days);
      expect(MONTH_START_HOUR[month]).toBe((Date.UTC(2023, month, 1) - Date.UTC(2023, 0, 1)) / 3_600_000);
    }
    expect(MONTH_START_HOUR[12]).toBe(8760);
  });

  it('names every hour and finds it again', () => {
    for (let hour = 0; hour < 8760; hour++) {
      const date = new Date(Date.UTC(2023, 0, 1, hour));
      const month = date.getUTCMonth();
      expect(monthOfHour(hour)).toBe(month);
      expect(hourIndexOf(month + 1, date.getUTCDate(), date.getUTCHours() + 1)).toBe(hour);
    }
    expect(hourInWords(0)).toBe('January 1, hour 1');
    expect(hourInWords(8759)).toBe('December 31, hour 24');
  });

  it.each([
    [0, 1, 1],
    [13, 1, 1],
    [1, 0, 1],
    [1, 32, 1],
    [2, 29, 1],
    [4, 31, 5],
    [1, 1, 0],
    [1, 1, 25],
    [1.5, 1, 1],
    [Number.NaN, 1, 1],
  ])('has no hour for month %f, day %f, hour %f', (month, day, hour) => {
    expect(hourIndexOf(month, day, hour)).toBe(-1);
  });
});
