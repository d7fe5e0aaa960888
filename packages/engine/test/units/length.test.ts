import { describe, expect, test } from 'vitest';
import type { LengthUnit } from '../../src/units/index.ts';
import { parseLength } from '../../src/units/index.ts';

const INCH = 25_400_000;

function nanometers(text: string, unit?: LengthUnit): number {
  const parsed = parseLength(text, unit);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.problem}`);
  return parsed.nanometers;
}

function problem(text: string, unit?: LengthUnit): string {
  const parsed = parseLength(text, unit);
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.reading}`);
  expect(parsed.hint.length).toBeGreaterThan(5);
  return parsed.problem;
}

describe('lengths that mean one thing', () => {
  test.each([
    [`12' 6-1/2"`],
    [`12'6 1/2`],
    ['12 6 1/2'],
    ['12-6-1/2'],
    [`12' 6½"`],
    [`12' 6 ½"`],
    ['150 1/2"'],
    ['150.5in'],
    ['12ft6-1/2in'],
    ['12 ft 6 1/2 in'],
    [`12'-6 1/2"`],
    ['12 ft. 6 1/2 in.'],
    ['12 feet 6 1/2 inches'],
    ['12 pies 6 1/2 pulg'],
    ['12’ 6½”'],
    ['12′ 6 1⁄2″'],
    [`12' 6 1/2''`],
    ['12 6 1/2"'],
    [`12' 6.5"`],
    ['12–6–1/2'],
    ['  12 FT   6 1/2 IN  '],
  ])('%s is 150 1/2 in', (text) => {
    expect(nanometers(text)).toBe(150.5 * INCH);
  });

  test.each<[string, number]>([
    ['12 6', 150 * INCH],
    ['12-6', 150 * INCH],
    [`12.5'`, 150 * INCH],
    ['12.5ft', 150 * INCH],
    ['12 1/2 ft', 150 * INCH],
    [`12' 1/2"`, 144.5 * INCH],
    ['6in', 6 * INCH],
    ['6-in', 6 * INCH],
    ['6 1/2"', 6.5 * INCH],
    ['½"', INCH / 2],
    ['1/64in', 396_875],
    [`12' 11 63/64"`, 144 * INCH + 11 * INCH + 63 * 396_875],
    ['12 0', 144 * INCH],
    ['3.81m', 3_810_000_000],
    ['381cm', 3_810_000_000],
    ['3810 mm', 3_810_000_000],
    ['.5 m', 500_000_000],
    ['0.1in', 2_540_000],
    ['1.0000000004 m', 1_000_000_000],
    ['1.0000000006 m', 1_000_000_001],
  ])('%s', (text, expected) => {
    expect(nanometers(text)).toBe(expected);
  });

  test('the reading is told in both systems', () => {
    const reading = (text: string) => {
      const parsed = parseLength(text);
      return parsed.ok ? parsed.reading : parsed.problem;
    };
    expect(reading(`12' 6 1/2"`)).toBe('12 ft 6 1/2 in = 3.823 m');
    expect(reading('6in')).toBe('6 in = 152 mm');
    expect(reading('0in')).toBe('0 in = 0 mm');
    expect(reading(`14'`)).toBe('14 ft = 4.267 m');
    expect(reading('1 m')).toBe('about 3 ft 3 3/8 in = 1.000 m');
    expect(reading('3/64"')).toBe('3/64 in = 1 mm');
  });
});

describe('lengths that could mean several things are asked about', () => {
  test.each([
    ['12', '"12" has no unit: it could be 12 ft, 12 in, 12 m or 12 cm'],
    ['12.6', '"12.6" has no unit: it could be 12.6 ft, 12.6 in, 12 ft 6 in, 12.6 m or 12.6 cm'],
    ['12.60', '"12.60" has no unit: it could be 12.60 ft, 12.60 in, 12.60 m or 12.60 cm'],
    ['6 1/2', '"6 1/2" has no unit: it could be 6 1/2 in or 6 1/2 ft'],
    ['1/2', '"1/2" has no unit: it could be 1/2 in or 1/2 ft'],
    [`12' 14"`, `"12' 14"" has 14 inches after the feet, which is a foot or more`],
    ['12 14', '"12 14" has 14 inches after the feet, which is a foot or more'],
    [`12' 12"`, `"12' 12"" has 12 inches after the feet, which is a foot or more`],
    ['12,5 m', '"12,5 m" has a comma, which could be a decimal mark or a thousands mark'],
    ['1,250.5 in', '"1,250.5 in" has a comma, which could be a decimal mark or a thousands mark'],
  ])('%s', (text, expected) => {
    expect(problem(text)).toBe(expected);
  });

  test('the unit of the field settles it', () => {
    expect(nanometers('12', 'ft')).toBe(144 * INCH);
    expect(nanometers('12', 'in')).toBe(12 * INCH);
    expect(nanometers('12', 'm')).toBe(12_000_000_000);
    expect(nanometers('12', 'cm')).toBe(120_000_000);
    expect(nanometers('12', 'mm')).toBe(12_000_000);
    expect(nanometers('6 1/2', 'ft')).toBe(78 * INCH);
    expect(nanometers('6 1/2', 'in')).toBe(6.5 * INCH);
    expect(nanometers('5in', 'ft')).toBe(5 * INCH);
  });

  test('but not a fraction or two numbers in a metric field', () => {
    expect(problem('6 1/2', 'cm')).toContain('6 1/2 in or 6 1/2 ft');
    expect(problem('12 6', 'cm')).toBe('"12 6" could be feet and inches, or two numbers in cm');
  });
});

describe('texts that are no length', () => {
  test.each([
    ['', 'no length was typed'],
    ['-3"', '"-3"" is negative'],
    ['−3 m', '"-3 m" is negative'],
    ['12 11/2', '"12 11/2": the fraction 11/2 is one or more'],
    ['6 2/2"', '"6 2/2"": the fraction 2/2 is one or more'],
    ['6 1/3"', '"6 1/3"": 1/3 is not a fraction on a tape'],
    ['6⅓"', '"6 1/3"": 1/3 is not a fraction on a tape'],
    ['6 1/128"', '"6 1/128"": 1/128 is not a fraction on a tape'],
    ['6 1/0"', '"6 1/0"": 1/0 is not a fraction on a tape'],
    [`7" 5'`, `"7" 5'" has inches before feet`],
    [`12.5' 6"`, `"12.5' 6"" has a part of a foot and inches`],
    [`12 1/2' 6"`, `"12 1/2' 6"" has a part of a foot and inches`],
    ['12.5 6', '"12.5 6" has a part of a foot and inches'],
    ['6.5 1/2"', '"6.5 1/2"" has a decimal and a fraction'],
    [`5' 6.5 1/2"`, `"5' 6.5 1/2"" has a decimal and a fraction`],
    ['3 1/2 m', '"3 1/2 m" has a fraction of a metric unit'],
    ['3 m 20 cm', '"3 m 20 cm" mixes units'],
    ['3 m 6 in', '"3 m 6 in" mixes units'],
    ['12 6 3 1/2', '"12 6 3 1/2" has too many numbers'],
    ['12 6 ft', '"12 6 ft" has too many numbers'],
    [`5' 6 7"`, `"5' 6 7"" has too many numbers`],
    [`5' 6" 7"`, `"5' 6" 7"" is not a length`],
    ['ft', '"ft" is not a length'],
    ['1/2 1/4 in', '"1/2 1/4 in" is not a length'],
    ['12--6', '"12--6" has a dash that joins nothing'],
    ['12-', '"12-" has a dash that joins nothing'],
    ['12 yards', '"yards" in "12 yards" is not part of a length'],
    ['12 ft @', '"@" in "12 ft @" is not part of a length'],
    ['9007199 m', undefined],
    ['9007200 m', '"9007200 m" is longer than 9007 km'],
  ])('%s', (text, expected) => {
    if (expected === undefined) expect(nanometers(text)).toBe(9_007_199 * 1e9);
    else expect(problem(text)).toBe(expected);
  });
});
