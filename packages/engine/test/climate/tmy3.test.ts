import { describe, expect, it } from 'vitest';
import { hourIndexOf } from '../../src/climate/calendar.ts';
import type { ReadIssue, ReadResult } from '../../src/climate/read-issue.ts';
import { readTmy3 } from '../../src/climate/tmy3.ts';
import type { ClimateYear } from '../../src/climate/year.ts';
import { type MadeHour, madeHours, TMY3_HEAD, tmy3Lines, tmy3Row } from './made-weather.ts';

const read = (lines: readonly string[]): ReadResult => readTmy3(`${lines.join('\n')}\n`);

function yearOf(result: ReadResult): ClimateYear {
  if (!result.ok) throw new Error(result.issues.map((issue) => issue.message).join('\n'));
  return result.year;
}

function issuesOf(result: ReadResult): readonly ReadIssue[] {
  expect(result.ok).toBe(false);
  return result.ok ? [] : result.issues;
}

const two = (n: number): string => String(n).padStart(2, '0');

describe('a sound TMY3 file', () => {
  const year = yearOf(read(tmy3Lines()));

  it('gives the place, quoted name included', () => {
    expect(year.place).toEqual({
      name: 'MADEVILLE, EAST, ZZ',
      latitudeDeg: 36.5,
      longitudeDeg: -78.25,
      utcOffsetHours: -5,
      elevationM: 240,
    });
    expect(year.kind).toBe('typical-year-file');
  });

  it('finds its columns by name and turns millibar into pascal', () => {
    const at = hourIndexOf(10, 31, 24);
    const h = madeHours()[at]!;
    expect(year.temperatureC[at]).toBe(Number(h.temperatureC));
    expect(year.pressurePa[at]).toBeCloseTo(Number(h.pressurePa), 6);
    expect(year.windFromDeg[at]).toBe(Number(h.windFromDeg));
    expect(year.windSpeedMPerS[at]).toBe(Number(h.windSpeed));
    expect(year.globalHorizontalWPerM2[at]).toBe(Number(h.globalWPerM2));
    expect(year.notices).toEqual([]);
  });

  it('keeps values that elsewhere mean missing: 999 mbar, 99 % and 99°', () => {
    const other = yearOf(
      read(
        tmy3Lines((hours) => {
          hours[50]!.pressurePa = '99900';
          hours[50]!.windFromDeg = '99';
        }),
      ),
    );
    expect(other.repairs.count).toBe(0);
    expect(other.pressurePa[50]).toBeCloseTo(99_900, 6);
    expect(other.windFromDeg[50]).toBe(99);
  });

  it.each(['-9900', '99', '99.9', '9999'])('bridges a dry bulb of %s, a mark for missing', (mark) => {
    const other = yearOf(read(tmy3Lines((hours) => (hours[50]!.temperatureC = mark))));
    expect(other.repairs).toMatchObject({
      count: 1,
      filled: [{ quantity: 'dry bulb', firstHour: 50, hours: 1 }],
    });
  });
});

describe('faults of TMY3 files', () => {
  it('dates written day first are one issue, at the first day after the twelfth', () => {
    const lines = [...TMY3_HEAD, ...madeHours().map((h) => tmy3Row(h, `${two(h.day)}/${two(h.month)}/1990`))];
    const issues = issuesOf(read(lines));
    expect(issues).toHaveLength(1);
    expect(issues[0]!.message).toContain('the date 13/01/1990 is written day first');
    expect(issues[0]!.line).toBe(2 + 12 * 24 + 1);
  });

  it('one wrong month is an issue of its line only', () => {
    const lines = tmy3Lines();
    lines[302] = lines[302]!.replace(/^01/, '31');
    expect(issuesOf(read(lines)).map((issue) => issue.line)).toEqual([303]);
  });

  it('dates in another form', () => {
    const lines = [...TMY3_HEAD, ...madeHours().map((h) => tmy3Row(h, `1990-${two(h.month)}-${two(h.day)}`))];
    expect(issuesOf(read(lines))[0]!.message).toContain('is not a date as MM/DD/YYYY');
  });

  it('half hours and hour 0', () => {
    const lines = tmy3Lines();
    lines[10] = lines[10]!.replace(/,\d\d:00,/, ',08:30,');
    lines[25] = lines[25]!.replace(/,24:00,/, ',00:00,');
    expect(issuesOf(read(lines)).map((issue) => issue.found)).toEqual(['08:30', '00:00']);
  });

  it('a column in another unit, by its title', () => {
    const lines = tmy3Lines();
    lines[1] = lines[1]!.replace('Dry-bulb (C)', 'Dry-bulb (F)');
    const issues = issuesOf(read(lines));
    expect(issues).toHaveLength(1);
    expect(issues[0]).toMatchObject({ line: 2, column: 5, found: 'Dry-bulb (F)', expected: 'Dry-bulb (C)' });
  });

  it('a column in another unit, by its values', () => {
    const inPascal = (hours: MadeHour[]): void => {
      for (const h of hours) h.pressurePa += '00';
    };
    const issues = issuesOf(read(tmy3Lines(inPascal)));
    expect(issues).toHaveLength(1);
    expect(issues[0]!.message).toContain('does not fit mbar but would fit Pa');
  });

  it('a column that is not there', () => {
    const lines = tmy3Lines();
    lines[1] = lines[1]!.replace('Wspd (m/s)', 'Gust (m/s)');
    expect(issuesOf(read(lines)).map((issue) => issue.expected)).toEqual(['Wspd (m/s)']);
  });

  it('a lost place line', () => {
    const issues = issuesOf(read(tmy3Lines().slice(1)));
    expect(issues[0]).toMatchObject({ line: 1, found: expect.stringContaining('Date (MM/DD/YYYY)') });
  });

  it('a place out of range', () => {
    const lines = tmy3Lines();
    lines[0] = lines[0]!.replace('36.500', '365.00');
    expect(issuesOf(read(lines)).map((issue) => issue.column)).toEqual([5]);
  });

  it('a wrong number of columns', () => {
    const lines = tmy3Lines();
    lines[500] += ',1';
    expect(issuesOf(read(lines))[0]).toMatchObject({
      line: 501,
      found: '13 columns',
      expected: '12 columns',
    });
  });

  it('a long gap, with its first and last line', () => {
    const issues = issuesOf(
      read(
        tmy3Lines((hours) => {
          for (let k = 30; k < 40; k++) hours[k]!.windSpeed = '-9900';
        }),
      ),
    );
    expect(issues[0]!.message).toContain('Lines 33 to 42: wind speed is missing for 10 hours');
  });
});
