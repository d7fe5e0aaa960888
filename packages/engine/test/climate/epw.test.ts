import { describe, expect, it } from 'vitest';
import { hourIndexOf } from '../../src/climate/calendar.ts';
import { readEpw } from '../../src/climate/epw.ts';
import type { ReadIssue, ReadResult } from '../../src/climate/read-issue.ts';
import { liquidSaturationPressurePa } from '../../src/climate/station-dew-point.ts';
import type { ClimateYear } from '../../src/climate/year.ts';
import { EPW_HEAD, epwLines, epwRow, type MadeHour, madeHours } from './made-weather.ts';

const FIRST_ROW_LINE = 9;

function read(lines: readonly string[]): ReadResult {
  return readEpw(lines.join('\r\n'));
}

function yearOf(result: ReadResult): ClimateYear {
  if (!result.ok) throw new Error(result.issues.map((issue) => issue.message).join('\n'));
  return result.year;
}

function issuesOf(result: ReadResult): readonly ReadIssue[] {
  expect(result.ok).toBe(false);
  return result.ok ? [] : result.issues;
}

function onlyIssue(result: ReadResult): ReadIssue {
  const issues = issuesOf(result);
  expect(issues.map((issue) => issue.message)).toHaveLength(1);
  return issues[0]!;
}

const july4Noon = hourIndexOf(7, 4, 12);

type Change = (h: MadeHour) => unknown;

/** The same change to a run of hours. */
function over(first: number, count: number, change: Change): (hours: MadeHour[]) => void {
  return (hours) => {
    for (let k = 0; k < count; k++) change(hours[(first + k) % 8760]!);
  };
}

describe('a sound EPW file', () => {
  const year = yearOf(read(epwLines()));
  const hours = madeHours();

  it('gives the place of its head line', () => {
    expect(year.place).toEqual({
      name: 'Madeville, ZZ',
      latitudeDeg: 36.5,
      longitudeDeg: -78.25,
      utcOffsetHours: -5,
      elevationM: 240,
    });
    expect(year.kind).toBe('typical-year-file');
    expect(year.source).toContain('999999');
    expect(year.source).toContain('1977 to 2004');
  });

  it('gives each quantity of an hour at its place', () => {
    const h = hours[july4Noon]!;
    expect(year.temperatureC[july4Noon]).toBe(Number(h.temperatureC));
    expect(year.pressurePa[july4Noon]).toBe(Number(h.pressurePa));
    expect(year.globalHorizontalWPerM2[july4Noon]).toBe(Number(h.globalWPerM2));
    expect(year.windFromDeg[july4Noon]).toBe(Number(h.windFromDeg));
    expect(year.windSpeedMPerS[july4Noon]).toBe(Number(h.windSpeed));
    const vapor = liquidSaturationPressurePa(Number(h.dewPointC));
    expect(year.humidityRatio[july4Noon]).toBeCloseTo(
      (0.621945 * vapor) / (Number(h.pressurePa) - vapor),
      12,
    );
  });

  it('has no repairs and no notice', () => {
    expect(year.repairs).toEqual({
      count: 0,
      filled: [],
      dewPointFromRelativeHumidity: 0,
      dewPointLowered: 0,
      negativeSolarZeroed: 0,
    });
    expect(year.notices).toEqual([]);
  });

  it('is read the same with bare line feeds, a byte order mark and blank lines at the end', () => {
    const other = yearOf(readEpw(`\ufeff${epwLines().join('\n')}\n\n`));
    expect(other.temperatureC).toEqual(year.temperatureC);
  });

  it('may start in July', () => {
    const lines = epwLines();
    const rows = lines.slice(8);
    const start = hourIndexOf(7, 1, 1);
    const turned = yearOf(read([...EPW_HEAD, ...rows.slice(start), ...rows.slice(0, start)]));
    expect(turned.temperatureC).toEqual(year.temperatureC);
    expect(turned.notices).toEqual([]);
  });

  it('may end before the rain columns', () => {
    const short = epwLines().map((line, i) => (i < 8 ? line : line.split(',').slice(0, 32).join(',')));
    expect(yearOf(read(short)).windSpeedMPerS).toEqual(year.windSpeedMPerS);
  });

  it('of one calendar year without a mark of a typical year is a single year', () => {
    const head = [EPW_HEAD[0]!.replace('TMY3', 'airport record'), ...EPW_HEAD.slice(1)];
    const single = yearOf(read([...head, ...hours.map((h) => epwRow(h, 2012))]));
    expect(single.kind).toBe('single-year-file');
    expect(single.source).toContain('year 2012');
  });
});

describe('gaps', () => {
  it('of six hours are bridged on a straight line, counted and told', () => {
    const hours = madeHours();
    const year = yearOf(read(epwLines(over(july4Noon, 6, (h) => (h.temperatureC = '99.9')))));
    const before = Number(hours[july4Noon - 1]!.temperatureC);
    const after = Number(hours[july4Noon + 6]!.temperatureC);
    expect(year.temperatureC[july4Noon + 1]).toBeCloseTo(before + (2 * (after - before)) / 7, 10);
    expect(year.repairs.count).toBe(6);
    expect(year.repairs.filled).toEqual([{ quantity: 'dry bulb', firstHour: july4Noon, hours: 6 }]);
    expect(year.notices.map((notice) => notice.code)).toEqual(['gaps-filled']);
    expect(year.notices[0]!.message).toContain('July 4, hour 12');
  });

  it('of seven hours are an issue that names the first and the last line', () => {
    const issue = onlyIssue(read(epwLines(over(july4Noon, 7, (h) => (h.pressurePa = '999999')))));
    const first = FIRST_ROW_LINE + july4Noon;
    expect(issue.line).toBe(first);
    expect(issue.message).toContain(
      `Lines ${first} to ${first + 6}: station pressure is missing for 7 hours`,
    );
  });

  it.each<[string, Change]>([
    ['dry bulb', (h) => (h.temperatureC = '99.9')],
    ['dry bulb', (h) => (h.temperatureC = '-9999')],
    ['dry bulb', (h) => (h.temperatureC = '')],
    ['station pressure', (h) => (h.pressurePa = '999999')],
    ['wind speed', (h) => (h.windSpeed = '999')],
    ['wind direction', (h) => (h.windFromDeg = '999')],
    ['global horizontal radiation', (h) => (h.globalWPerM2 = '9999')],
  ])('marks for missing are known: %s %#', (quantity, change) => {
    const year = yearOf(read(epwLines(over(100, 2, change))));
    expect(year.repairs.filled).toEqual([{ quantity, firstHour: 100, hours: 2 }]);
    expect(year.repairs.count).toBe(2);
  });

  it('of whole lines are bridged over the turn of the year', () => {
    const lines = epwLines();
    const year = yearOf(read([...lines.slice(0, 8), ...lines.slice(10, -1)]));
    expect(year.repairs.filled).toEqual([{ quantity: 'whole hours', firstHour: 8759, hours: 3 }]);
    expect(year.repairs.count).toBe(18);
    const hours = madeHours();
    const step = (Number(hours[2]!.temperatureC) - Number(hours[8758]!.temperatureC)) / 4;
    expect(year.temperatureC[0]).toBeCloseTo(Number(hours[8758]!.temperatureC) + 2 * step, 10);
  });

  it('of the wind direction turn the shorter way', () => {
    const year = yearOf(
      read(
        epwLines((hours) => {
          hours[500]!.windFromDeg = '350';
          hours[501]!.windFromDeg = '999';
          hours[502]!.windFromDeg = '30';
        }),
      ),
    );
    expect(year.windFromDeg[501]).toBeCloseTo(10, 10);
  });

  it('of the wind direction in calm hours are no gaps', () => {
    const year = yearOf(
      read(
        epwLines(
          over(300, 30, (h) => {
            h.windFromDeg = '999';
            h.windSpeed = '0.0';
          }),
        ),
      ),
    );
    expect(year.repairs.count).toBe(0);
    expect(year.windFromDeg[329]).toBe(year.windFromDeg[299]);
  });

  it('of the dew point are filled from the relative humidity, however long', () => {
    const full = yearOf(read(epwLines()));
    const year = yearOf(read(epwLines(over(0, 8760, (h) => (h.dewPointC = '99.9')))));
    expect(year.repairs.dewPointFromRelativeHumidity).toBe(8760);
    expect(year.notices.map((notice) => notice.code)).toContain('dew-point-from-relative-humidity');
    // Whole percents of humidity: half a percent of saturation, 0.1 g/kg at 20 °C.
    expect(Math.abs(year.humidityRatio[july4Noon]! - full.humidityRatio[july4Noon]!)).toBeLessThan(0.0002);
  });

  it('that are short but make up more than 5 % are refused', () => {
    const everyTenth = (hours: MadeHour[]): void => {
      for (let k = 0; k < 8760; k += 10) hours[k]!.windSpeed = '999';
    };
    expect(onlyIssue(read(epwLines(everyTenth))).found).toBe('876 hours without wind speed');
  });
});

describe('faults are named by line', () => {
  it('a row with too few columns', () => {
    const lines = epwLines();
    lines[1000] = lines[1000]!.split(',').slice(0, 20).join(',');
    const issue = onlyIssue(read(lines));
    expect(issue).toMatchObject({ line: 1001, found: '20 columns', expected: '35 columns' });
  });

  it('a field that is no number', () => {
    const issue = onlyIssue(read(epwLines(over(42, 1, (h) => (h.dewPointC = 'n/a')))));
    expect(issue).toMatchObject({ line: FIRST_ROW_LINE + 42, column: 8, found: 'n/a' });
    expect(issue.message).toContain('dew point');
  });

  it.each(['0x1F', 'Infinity', '1..5', '--3', '1e'])('"%s" is no number', (text) => {
    expect(onlyIssue(read(epwLines(over(42, 1, (h) => (h.temperatureC = text))))).found).toBe(text);
  });

  it('an impossible value', () => {
    const issue = onlyIssue(read(epwLines(over(42, 1, (h) => (h.windSpeed = '-2.5')))));
    expect(issue).toMatchObject({ line: FIRST_ROW_LINE + 42, column: 22, found: '-2.5' });
  });

  it('an hour that stands twice, with the line of the first', () => {
    const lines = epwLines();
    lines.splice(2001, 0, lines[2000]!);
    const issue = onlyIssue(read(lines));
    expect(issue.line).toBe(2002);
    expect(issue.message).toContain('line 2001');
  });

  it('a date that is none', () => {
    const lines = epwLines();
    lines[100] = lines[100]!.replace(/^(\d+),1,4,/, '$1,1,32,');
    expect(onlyIssue(read(lines)).message).toContain('Line 101: there is no month 1, day 32');
  });

  it('a file that was cut off', () => {
    const text = epwLines().join('\r\n');
    const issues = issuesOf(readEpw(text.slice(0, Math.round(text.length / 2))));
    expect(issues).toHaveLength(2);
    expect(issues.some((issue) => issue.message.includes('the file seems to be cut off'))).toBe(true);
    expect(issues.some((issue) => issue.message.includes('December 31, hour 24, are not there'))).toBe(true);
  });

  it('a file that was cut off between two lines', () => {
    const issue = onlyIssue(read(epwLines().slice(0, 5000)));
    expect(issue.line).toBe(5000);
    expect(issue.message).toContain('The file ends at line 5000: 3768 hours');
  });

  it('a day that is missing in the middle', () => {
    const lines = epwLines();
    lines.splice(8 + hourIndexOf(3, 3, 1), 24);
    const issue = onlyIssue(read(lines));
    expect(issue.found).toBe('24 hours missing: March 3, hour 1 to March 3, hour 24');
    expect(issue.line).toBe(8 + hourIndexOf(3, 3, 1));
  });

  it('hours counted from 0', () => {
    const lines = epwLines().map((line, i) =>
      i < 8 ? line : line.replace(/^(\d+,\d+,\d+),(\d+)/, shiftHour),
    );
    const issues = issuesOf(read(lines));
    expect(issues[0]!.message).toContain('counts hours from 0 to 23');
    expect(issues.filter((issue) => issue.found === 'hour 0')).toHaveLength(1);
  });

  it('semicolons and decimal commas', () => {
    const lines = epwLines().map((line, i) => (i < 8 ? line : line.replaceAll(',', ';')));
    const result = read(lines);
    expect(issuesOf(result)[0]!.message).toContain('separated by semicolons');
    expect(result.ok ? 0 : result.issueCount).toBe(8761);
    expect(issuesOf(result)).toHaveLength(20);
  });

  it('dew points above the dry bulb: one by one when few', () => {
    const issue = onlyIssue(read(epwLines(over(70, 1, (h) => (h.dewPointC = '30.0')))));
    expect(issue.line).toBe(FIRST_ROW_LINE + 70);
    expect(issue.message).toContain('dew point 30.0 °C');
  });

  it('dew points above the dry bulb by up to 1 K are lowered and counted', () => {
    const above = (by: number): ReadResult =>
      read(epwLines(over(70, 1, (h) => (h.dewPointC = (Number(h.temperatureC) + by).toFixed(1)))));
    expect(yearOf(above(0)).repairs.count).toBe(0);
    expect(yearOf(above(0.9)).repairs).toMatchObject({ dewPointLowered: 1, count: 1 });
    expect(issuesOf(above(1.1))).toHaveLength(1);
  });

  it('swapped columns of dry bulb and dew point', () => {
    const issue = onlyIssue(
      read(
        epwLines(
          over(0, 8760, (h) => {
            [h.temperatureC, h.dewPointC] = [h.dewPointC, h.temperatureC];
          }),
        ),
      ),
    );
    expect(issue.message).toContain('may be swapped');
  });
});

function shiftHour(_all: string, date: string, hour: string): string {
  return `${date},${Number(hour) - 1}`;
}

describe('wrong units are said', () => {
  const fahrenheit = (text: string): string => (Number(text) * 1.8 + 32).toFixed(1);
  it.each([
    ['degrees Fahrenheit', 7, (h: MadeHour) => (h.temperatureC = fahrenheit(h.temperatureC))],
    ['degrees Fahrenheit', 8, (h: MadeHour) => (h.dewPointC = fahrenheit(h.dewPointC))],
    ['kelvin', 7, (h: MadeHour) => (h.temperatureC = (Number(h.temperatureC) + 273.15).toFixed(1))],
    ['mbar (hPa)', 10, (h: MadeHour) => (h.pressurePa = (Number(h.pressurePa) / 100).toFixed(1))],
    ['kPa', 10, (h: MadeHour) => (h.pressurePa = (Number(h.pressurePa) / 1000).toFixed(2))],
    ['inches of mercury', 10, (h: MadeHour) => (h.pressurePa = (Number(h.pressurePa) / 3386.39).toFixed(2))],
    ['psi', 10, (h: MadeHour) => (h.pressurePa = (Number(h.pressurePa) / 6894.76).toFixed(2))],
    [
      'fractions 0 to 1',
      9,
      (h: MadeHour) => (h.relativeHumidityPercent = String(Number(h.relativeHumidityPercent) / 100)),
    ],
    ['kJ/m²', 14, (h: MadeHour) => (h.globalWPerM2 = (Number(h.globalWPerM2) * 3.6).toFixed(0))],
    ['kWh/m²', 14, (h: MadeHour) => (h.globalWPerM2 = (Number(h.globalWPerM2) / 1000).toFixed(3))],
  ] as const)('%s in column %i', (unit, column, change) => {
    const issues = issuesOf(read(epwLines(over(0, 8760, change))));
    const named = issues.find((issue) => issue.column === column && issue.found.includes(unit));
    expect(named?.message).toContain(`would fit ${unit}`);
  });
});

describe('doubtful but usable files have notices', () => {
  const codes = (result: ReadResult): string[] => yearOf(result).notices.map((notice) => notice.code);

  it('relative humidity that contradicts the dew point', () => {
    expect(codes(read(epwLines(over(700, 3, (h) => (h.relativeHumidityPercent = '2')))))).toEqual([
      'humidity-columns-disagree',
    ]);
  });

  it('pressure reduced to sea level at a high place', () => {
    const lines = epwLines();
    lines[0] = lines[0]!.replace('240.0', '1650.0');
    expect(codes(read(lines))).toEqual(['pressure-against-elevation']);
  });

  it('wind in km/h', () => {
    const change = (h: MadeHour): string => (h.windSpeed = (Number(h.windSpeed) * 3.6).toFixed(1));
    expect(codes(read(epwLines(over(0, 8760, change))))).toEqual(['wind-implausible']);
  });

  it('lines in another order', () => {
    const lines = epwLines();
    [lines[100], lines[2000], lines[4000]] = [lines[4000]!, lines[100]!, lines[2000]!];
    expect(codes(read(lines))).toEqual(['hours-out-of-order']);
  });

  it('a leap day', () => {
    const lines = epwLines();
    const feb28 = lines.slice(8 + hourIndexOf(2, 28, 1), 8 + hourIndexOf(3, 1, 1));
    const feb29 = feb28.map((line) => line.replace(/^(\d+),2,28,/, '$1,2,29,'));
    lines.splice(8 + hourIndexOf(3, 1, 1), 0, ...feb29);
    expect(lines).toHaveLength(8 + 8784);
    const year = yearOf(read(lines));
    expect(year.notices.map((notice) => notice.code)).toEqual(['leap-day-dropped']);
    expect(year.temperatureC).toEqual(yearOf(read(epwLines())).temperatureC);
  });

  it('solar radiation a little below zero at night', () => {
    const year = yearOf(read(epwLines(over(0, 2, (h) => (h.globalWPerM2 = '-3')))));
    expect(year.repairs).toMatchObject({ negativeSolarZeroed: 2, count: 2 });
    expect(year.globalHorizontalWPerM2[1]).toBe(0);
  });

  it('freezing air above saturation over ice', () => {
    const year = yearOf(
      read(
        epwLines(
          over(10, 4, (h) => {
            h.temperatureC = '-12.0';
            h.dewPointC = '-12.0';
            h.relativeHumidityPercent = '100';
          }),
        ),
      ),
    );
    expect(year.notices.map((notice) => notice.code)).toEqual(['relative-humidity-capped-over-ice']);
    expect(year.relativeHumidity[11]).toBe(1);
  });
});

describe('the head', () => {
  const withHead = (index: number, line: string): ReadResult => {
    const lines = epwLines();
    lines[index] = line;
    return read(lines);
  };

  it('without LOCATION', () => {
    expect(onlyIssue(withHead(0, 'COMMENTS 0,')).message).toContain('LOCATION is missing');
  });

  it('with a short LOCATION', () => {
    expect(onlyIssue(withHead(0, 'LOCATION,Madeville,ZZ')).message).toContain('3 fields');
  });

  it.each([
    ['latitude', 7, '95.2,-78.25,-5.0,240.0'],
    ['longitude', 8, '36.50,-190,-5.0,240.0'],
    ['time zone', 9, '36.50,-78.25,EST,240.0'],
    ['elevation', 10, '36.50,-78.25,-5.0,7010.0'],
  ] as const)('with an impossible %s', (name, column, numbers) => {
    const issue = onlyIssue(withHead(0, `LOCATION,Madeville,ZZ,USA,TMY3,999999,${numbers}`));
    expect(issue).toMatchObject({ line: 1, column });
    expect(issue.message).toContain(name);
  });

  it('with a longitude that lost its sign', () => {
    const issue = onlyIssue(withHead(0, 'LOCATION,Madeville,ZZ,USA,TMY3,999999,36.50,78.25,-5.0,240.0'));
    expect(issue.message).toContain('Look at the signs');
  });

  it('with two records per hour', () => {
    const issue = onlyIssue(withHead(7, 'DATA PERIODS,1,2,Data,Sunday, 1/ 1,12/31'));
    expect(issue).toMatchObject({ line: 8, column: 3, found: '2' });
  });

  it('without DATA PERIODS', () => {
    expect(onlyIssue(withHead(7, 'COMMENTS 3,')).message).toContain('DATA PERIODS');
  });

  it('alone', () => {
    expect(onlyIssue(read(EPW_HEAD)).message).toContain('no readable hour');
  });
});
