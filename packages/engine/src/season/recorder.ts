import type { CompiledCase } from './compiled-case.ts';
import { setDewPoint } from './fast-tables.ts';
import { createHourly, keepHour, type SeasonHourly } from './hourly-series.ts';
import { loopRoom } from './loop-room.ts';
import {
  assignedMoldIndex,
  closeMoldMonth,
  createMoldTracks,
  type MoldTrack,
  recordMold,
  startMold,
} from './mold-record.ts';
import { FILM_SURFACES, WOOD_SITES } from './places.ts';
import { stepPlaces } from './step-values.ts';
import { waterPlaces } from './store-places.ts';

const { BELOW_RATING, CONDENSING, DEFROSTING, MOLD_PA, RELATIVE_HUMIDITY, SUMMED, VALUES, VAPOR_PA } =
  stepPlaces;
const { WOOD_CORE, WOOD_STRIDE, WOOD_SURFACE } = waterPlaces;
const { values, wood } = loopRoom;

/** Places in `counts`: hours above 60, 70, 80 %, days above 80 %, hours of frost and of cold, and of the humidity by the day. */
export const hourCounts = {
  ABOVE_60: 0,
  ABOVE_70: 1,
  ABOVE_80: 2,
  DAYS_ABOVE_80: 3,
  FROST_HOURS: 4,
  /** Hours in air that is colder than any that machines are tested in. */
  COLD_HOURS: 5,
  /** Sum of the day so far. */
  DAY_SUM: 6,
  /** Highest daily mean of the relative humidity. */
  HIGHEST_DAY: 7,
  /** Hours of the month so far. */
  MONTH_HOURS: 8,
  COUNTS: 9,
} as const;

const {
  ABOVE_60,
  ABOVE_70,
  ABOVE_80,
  COLD_HOURS,
  COUNTS,
  DAYS_ABOVE_80,
  DAY_SUM,
  FROST_HOURS,
  HIGHEST_DAY,
  MONTH_HOURS,
} = hourCounts;
const SITES = WOOD_SITES.length;
const FILMS = FILM_SURFACES.length;
const SITE_STRIDE = 5;
const SURFACE_SUM = 0;
const CORE_SUM = 1;
const SURFACE_PEAK = 2;
const CORE_PEAK = 3;
const WET_HOURS = 4;

/** Sums of the month under way, counts of the year, wood by site, hours of films: constants as in `loopRoom`. */
const sums = new Float64Array(SUMMED);
const counts = new Float64Array(COUNTS);
const sites = new Float64Array(SITES * SITE_STRIDE);
/** Longer than there are films, see `loopRoom`. */
const filmHours = new Float64Array(FILMS + 8);
/** Mean of the hour, gathered part by part. */
const hour = new Float64Array(VALUES);

/** Sums of one reported year. */
export interface Recorder {
  /** Hours of each month, and the sums of the hourly means of all step values. */
  readonly monthHours: Float64Array;
  readonly months: Float64Array;
  readonly monthWoodSurface: Float64Array;
  readonly monthWoodCore: Float64Array;
  readonly peakWoodSurface: Float64Array;
  readonly peakWoodCore: Float64Array;
  readonly filmCondensationHours: Float64Array;
  readonly woodCondensationHours: Float64Array;
  readonly molds: readonly MoldTrack[];
  readonly hourly: SeasonHourly | undefined;
  readonly seconds: number;
  /** See `hourCounts`. */
  readonly counts: Float64Array;
}

export function createRecorder(
  compiled: CompiledCase,
  stepsPerHour: number,
  allClasses: boolean,
  hourly: boolean,
): Recorder {
  return {
    monthHours: new Float64Array(12),
    months: new Float64Array(12 * SUMMED),
    monthWoodSurface: new Float64Array(12 * SITES),
    monthWoodCore: new Float64Array(12 * SITES),
    peakWoodSurface: new Float64Array(SITES),
    peakWoodCore: new Float64Array(SITES),
    filmCondensationHours: new Float64Array(FILMS),
    woodCondensationHours: new Float64Array(SITES),
    molds: createMoldTracks(compiled.source, allClasses),
    hourly: hourly ? createHourly() : undefined,
    seconds: 3600 / stepsPerHour,
    counts: new Float64Array(COUNTS),
  };
}

/** Begins a year. */
export function startRecording(r: Recorder): void {
  sums.fill(0);
  counts.fill(0);
  sites.fill(0);
  filmHours.fill(0);
  hour.fill(0);
  startMold(r.molds);
}

/** Adds one of several parts to the mean of its hour. */
export function recordPart(r: Recorder): void {
  const share = r.seconds / 3600;
  for (let k = 0; k < VALUES; k++) hour[k] = hour[k]! + values[k]! * share;
}

/** Makes the mean of the parts the values of the hour. */
export function joinParts(): void {
  values.set(hour);
  hour.fill(0);
}

/** Closes an hour, whose means stand in the working room: sums, thresholds, wood, mold and, when asked for, the series. */
export function recordHour(r: Recorder, hourIndex: number): void {
  setDewPoint();
  const humidity = values[RELATIVE_HUMIDITY]!;
  if (humidity > 0.6) {
    counts[ABOVE_60] = counts[ABOVE_60]! + 1;
    if (humidity > 0.7) counts[ABOVE_70] = counts[ABOVE_70]! + 1;
    if (humidity > 0.8) counts[ABOVE_80] = counts[ABOVE_80]! + 1;
  }
  counts[DAY_SUM] = counts[DAY_SUM]! + humidity;
  if (hourIndex % 24 === 23) {
    const mean = counts[DAY_SUM]! / 24;
    if (mean > counts[HIGHEST_DAY]!) counts[HIGHEST_DAY] = mean;
    if (mean > 0.8) counts[DAYS_ABOVE_80] = counts[DAYS_ABOVE_80]! + 1;
    counts[DAY_SUM] = 0;
  }
  if (values[DEFROSTING]! > 0) counts[FROST_HOURS] = counts[FROST_HOURS]! + 1;
  if (values[BELOW_RATING]! > 0) counts[COLD_HOURS] = counts[COLD_HOURS]! + 1;
  const vaporPa = values[VAPOR_PA]!;
  for (let i = 0; i < SITES; i++) {
    const at = i * SITE_STRIDE;
    const surface = wood[i * WOOD_STRIDE + WOOD_SURFACE]!;
    const core = wood[i * WOOD_STRIDE + WOOD_CORE]!;
    sites[at + SURFACE_SUM] = sites[at + SURFACE_SUM]! + surface;
    sites[at + CORE_SUM] = sites[at + CORE_SUM]! + core;
    if (surface > sites[at + SURFACE_PEAK]!) sites[at + SURFACE_PEAK] = surface;
    if (core > sites[at + CORE_PEAK]!) sites[at + CORE_PEAK] = core;
    if (vaporPa > values[MOLD_PA + i]!) sites[at + WET_HOURS] = sites[at + WET_HOURS]! + 1;
  }
  for (let j = 0; j < FILMS; j++) {
    const share = values[CONDENSING + j]!;
    if (share > 0) filmHours[j] = filmHours[j]! + share;
  }
  recordMold(r.molds);
  if (r.hourly !== undefined) keepHour(r.hourly, hourIndex, assignedMoldIndex(r.molds));
  counts[MONTH_HOURS] = counts[MONTH_HOURS]! + 1;
  for (let k = 0; k < SUMMED; k++) sums[k] = sums[k]! + values[k]!;
}

/** Hands a month that is over, and the year so far, to the recorder. */
export function closeMonth(r: Recorder, month: number): void {
  r.monthHours[month] = counts[MONTH_HOURS]!;
  counts[MONTH_HOURS] = 0;
  r.months.set(sums, month * SUMMED);
  sums.fill(0);
  for (let i = 0; i < SITES; i++) {
    const at = i * SITE_STRIDE;
    r.monthWoodSurface[month * SITES + i] = sites[at + SURFACE_SUM]!;
    r.monthWoodCore[month * SITES + i] = sites[at + CORE_SUM]!;
    sites[at + SURFACE_SUM] = 0;
    sites[at + CORE_SUM] = 0;
    r.peakWoodSurface[i] = sites[at + SURFACE_PEAK]!;
    r.peakWoodCore[i] = sites[at + CORE_PEAK]!;
    r.woodCondensationHours[i] = sites[at + WET_HOURS]!;
  }
  for (let j = 0; j < FILMS; j++) r.filmCondensationHours[j] = filmHours[j]!;
  r.counts.set(counts);
  closeMoldMonth(r.molds, month);
}
