import { excerpt, type IssueLog, report } from './read-issue.ts';
import type { Place } from './year.ts';

/** A number of a place line: its name, where it stands and what it may be. */
interface PlaceField {
  readonly name: string;
  readonly index: number;
  readonly min: number;
  readonly max: number;
  readonly unit: string;
}

/** Positions (first field 0) of the numbers in the place line of a format. */
export interface PlaceLayout {
  readonly latitude: number;
  readonly longitude: number;
  readonly utcOffset: number;
  readonly elevation: number;
}

/** Hours by which clock time may differ from sun time; the widest on land is a little over three. */
const CLOCK_AGAINST_SUN_H = 4;

/**
 * The place that the head line of a weather file names. Missing numbers, numbers out of range and a longitude that
 * cannot belong to the time zone (a lost sign) are reported, and nothing is returned.
 */
export function readPlace(
  name: string,
  fields: readonly string[],
  layout: PlaceLayout,
  line: number,
  log: IssueLog,
): Place | undefined {
  const before = log.count;
  const number = (field: PlaceField): number => placeNumber(fields, field, line, log);
  const latitudeDeg = number({
    name: 'latitude',
    index: layout.latitude,
    min: -90,
    max: 90,
    unit: 'degrees',
  });
  const longitudeDeg = number({
    name: 'longitude',
    index: layout.longitude,
    min: -180,
    max: 180,
    unit: 'degrees',
  });
  const utcOffsetHours = number({
    name: 'time zone',
    index: layout.utcOffset,
    min: -12,
    max: 14,
    unit: 'hours from universal time',
  });
  const elevationM = number({
    name: 'elevation',
    index: layout.elevation,
    min: -450,
    max: 6000,
    unit: 'm above sea level',
  });
  if (log.count > before) return undefined;
  const gap = Math.abs(utcOffsetHours - longitudeDeg / 15) % 24;
  if (Math.min(gap, 24 - gap) > CLOCK_AGAINST_SUN_H) {
    report(log, {
      line,
      column: layout.longitude + 1,
      found: `longitude ${longitudeDeg}, time zone ${utcOffsetHours}`,
      expected: 'longitude, east positive, within the time zone',
      message:
        `Line ${line}: longitude ${longitudeDeg}° cannot have a clock ${utcOffsetHours} hours from universal time. ` +
        'Look at the signs: both are negative in the Americas.',
    });
    return undefined;
  }
  return { name, latitudeDeg, longitudeDeg, elevationM, utcOffsetHours };
}

function placeNumber(fields: readonly string[], field: PlaceField, line: number, log: IssueLog): number {
  const text = fields[field.index]?.trim() ?? '';
  const value = text === '' ? Number.NaN : Number(text);
  if (value >= field.min && value <= field.max) return value;
  const expected = `${field.min} to ${field.max} ${field.unit}`;
  report(log, {
    line,
    column: field.index + 1,
    found: excerpt(text),
    expected,
    message: `Line ${line}, column ${field.index + 1}: ${field.name} is "${excerpt(text)}"; it must be ${expected}.`,
  });
  return Number.NaN;
}
