import { climate } from '@undercroft/engine';

/** A calendar date as people in the United States write it: `2031-05-14` gives `May 14, 2031`. */
export function day(iso: string): string {
  const [year, month, date] = iso.slice(0, 10).split('-').map(Number);
  return `${climate.MONTH_NAMES[month - 1]} ${date}, ${year}`;
}

/** A time stamp in the time of its place: `2031-05-14T09:20:00-04:00` gives `May 14, 2031, 09:20`. */
export function moment(instant: string): string {
  return `${day(instant)}, ${instant.slice(11, 16)}`;
}
