import { DAYS_PER_MONTH } from '../../src/climate/calendar.ts';

/** One hour of the made year, SI but for percent; every quantity has its own value and its own rhythm. */
export interface MadeHour {
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  temperatureC: string;
  dewPointC: string;
  relativeHumidityPercent: string;
  pressurePa: string;
  globalWPerM2: string;
  windFromDeg: string;
  windSpeed: string;
}

/** 8760 made hours: a plain year with a warm July and a daily swing. Demonstration data, no place's weather. */
export function madeHours(): MadeHour[] {
  const hours: MadeHour[] = [];
  let dayOfYear = 0;
  DAYS_PER_MONTH.forEach((days, m) => {
    for (let day = 1; day <= days; day++) {
      dayOfYear++;
      for (let hour = 1; hour <= 24; hour++) hours.push(madeHour(m + 1, day, hour, dayOfYear));
    }
  });
  return hours;
}

function madeHour(month: number, day: number, hour: number, dayOfYear: number): MadeHour {
  const season = -Math.cos((2 * Math.PI * (dayOfYear - 15)) / 365);
  const daily = Math.cos((2 * Math.PI * (hour - 15)) / 24);
  const temperature = 13 + 12 * season + 5 * daily;
  const dewPoint = 13 + 12 * season - 6;
  // Magnus form, close enough to the readers' saturation curve for whole percents.
  const saturation = (t: number): number => Math.exp((17.27 * t) / (237.3 + t));
  return {
    month,
    day,
    hour,
    temperatureC: temperature.toFixed(1),
    dewPointC: dewPoint.toFixed(1),
    relativeHumidityPercent: ((100 * saturation(dewPoint)) / saturation(temperature)).toFixed(0),
    pressurePa: String(98_400 + 10 * (dayOfYear % 30)),
    globalWPerM2: Math.max(0, 700 * daily).toFixed(0),
    windFromDeg: String((dayOfYear * 10 + hour) % 360),
    windSpeed: (3.1 + daily).toFixed(1),
  };
}

export const EPW_HEAD: readonly string[] = [
  'LOCATION,Madeville,ZZ,USA,TMY3,999999,36.50,-78.25,-5.0,240.0',
  'DESIGN CONDITIONS,0',
  'TYPICAL/EXTREME PERIODS,0',
  'GROUND TEMPERATURES,0',
  'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
  'COMMENTS 1,made for tests',
  'COMMENTS 2,',
  'DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31',
];

/** Years as in a typical year: each month from its own, not in order. */
const YEARS = [1991, 1984, 2001, 1979, 1999, 1988, 1977, 1995, 1983, 2004, 1980, 1998];

export function epwRow(h: MadeHour, year = YEARS[h.month - 1]!): string {
  const head = `${year},${h.month},${h.day},${h.hour},0,?9?9?9`;
  const air = `${h.temperatureC},${h.dewPointC},${h.relativeHumidityPercent},${h.pressurePa}`;
  const sun = `0,0,330,${h.globalWPerM2},0,0,0,0,0,0`;
  const wind = `${h.windFromDeg},${h.windSpeed}`;
  return `${head},${air},${sun},${wind},5,5,16.1,77777,9,999999999,150,0.1000,0,88,999.000,999.0,99.0`;
}

/** Lines of a made EPW file; `change` may alter the hours before they are written. */
export function epwLines(change?: (hours: MadeHour[]) => void): string[] {
  const hours = madeHours();
  change?.(hours);
  return [...EPW_HEAD, ...hours.map((h) => epwRow(h))];
}

export const TMY3_HEAD: readonly string[] = [
  '999998,"MADEVILLE, EAST",ZZ,-5.0,36.500,-78.250,240',
  'Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),Dry-bulb (C),Dry-bulb source,Dew-point (C),RHum (%),' +
    'Pressure (mbar),Wdir (degrees),Wspd (m/s),Lprecip depth (mm)',
];

const two = (n: number): string => String(n).padStart(2, '0');

export function tmy3Row(h: MadeHour, date = `${two(h.month)}/${two(h.day)}/${YEARS[h.month - 1]}`): string {
  const mbar = (Number(h.pressurePa) / 100).toFixed(1);
  return (
    `${date},${two(h.hour)}:00,0,${h.globalWPerM2},${h.temperatureC},A,${h.dewPointC},${h.relativeHumidityPercent},` +
    `${mbar},${h.windFromDeg},${h.windSpeed},-9900`
  );
}

/** Lines of a made TMY3 file. */
export function tmy3Lines(change?: (hours: MadeHour[]) => void): string[] {
  const hours = madeHours();
  change?.(hours);
  return [...TMY3_HEAD, ...hours.map((h) => tmy3Row(h))];
}
