import { HOURS_PER_YEAR } from '../climate/calendar.ts';
import { type MoldClass, type MoldParameters, moldParameters } from '../mold/classes.ts';
import { cleanSurface, type MoldState, stepMoldIndex } from '../mold/step.ts';
import type { CompiledCase } from './compiled-case.ts';
import { dewPointTable, saturationTable, tableDewPoint, tableSaturations } from './fast-tables.ts';
import { FILM_SURFACES, MOLD_SURFACES, WOOD_SITES } from './places.ts';
import type { SpaceState } from './state.ts';
import { stepPlaces } from './step-values.ts';

const {
  AIR_C,
  BELOW_RATING,
  CONDENSING,
  DEFROSTING,
  DEW_POINT_C,
  FANS_W,
  GROUND_C,
  HUMIDITY_RATIO,
  MACHINES_W,
  OUTDOOR_KG_PER_S,
  RELATIVE_HUMIDITY,
  SUMMED,
  VALUES,
  VAPOR_PA,
  WALL_C,
  WATER_MACHINES,
  WOOD_C,
} = stepPlaces;

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
} as const;

const { ABOVE_60, ABOVE_70, ABOVE_80, COLD_HOURS, DAYS_ABOVE_80, DAY_SUM, FROST_HOURS, HIGHEST_DAY } =
  hourCounts;
const SITES = WOOD_SITES.length;
const FILMS = FILM_SURFACES.length;
/** No class grows anything below this humidity; the lowest floor of the classes is 0.8. */
const NO_MOLD_BELOW = 0.79;

/** Hourly series of one case, 8760 values each. Means of the hour; wood and mold at its end. */
export interface SeasonHourly {
  readonly temperatureC: Float64Array;
  readonly relativeHumidity: Float64Array;
  readonly humidityRatio: Float64Array;
  readonly dewPointC: Float64Array;
  readonly groundSurfaceC: Float64Array;
  /** Of the joists. */
  readonly woodMoistureSurface: Float64Array;
  readonly woodMoistureCore: Float64Array;
  readonly girderMoistureSurface: Float64Array;
  readonly sillMoistureSurface: Float64Array;
  /** Highest on any surface, in the class that the case gives it. */
  readonly moldIndex: Float64Array;
  readonly airChangesPerHour: Float64Array;
  readonly waterRemovedKg: Float64Array;
  readonly energyKWh: Float64Array;
}

/** One mold index that is followed. */
export interface MoldTrack {
  /** Place in MOLD_SURFACES. */
  readonly surface: number;
  readonly moldClass: MoldClass;
  /** Whether this is the class that the case gives the surface. */
  readonly assigned: boolean;
  readonly parameters: MoldParameters;
  readonly state: MoldState;
  peak: number;
  readonly monthPeak: Float64Array;
}

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
  readonly airMassKg: number;
  readonly seconds: number;
  readonly pressures: Float64Array;
  readonly dewPoints: Float64Array;
  /** Mean of the hour, gathered step by step. */
  readonly hour: Float64Array;
  readonly moldC: Float64Array;
  readonly moldPa: Float64Array;
  /** See `hourCounts`. */
  readonly counts: Float64Array;
}

export function createRecorder(
  c: CompiledCase,
  stepsPerHour: number,
  allClasses: boolean,
  hourly: boolean,
): Recorder {
  const classes: readonly MoldClass[] = ['very-sensitive', 'sensitive', 'medium-resistant', 'resistant'];
  const molds: MoldTrack[] = [];
  MOLD_SURFACES.forEach((surface, index) => {
    const own = c.source.moldClasses[surface];
    for (const moldClass of allClasses ? classes : [own]) {
      molds.push({
        surface: index,
        moldClass,
        assigned: moldClass === own,
        parameters: moldParameters(moldClass),
        state: cleanSurface(),
        peak: 0,
        monthPeak: new Float64Array(12),
      });
    }
  });
  return {
    monthHours: new Float64Array(12),
    months: new Float64Array(12 * SUMMED),
    monthWoodSurface: new Float64Array(12 * SITES),
    monthWoodCore: new Float64Array(12 * SITES),
    peakWoodSurface: new Float64Array(SITES),
    peakWoodCore: new Float64Array(SITES),
    filmCondensationHours: new Float64Array(FILMS),
    woodCondensationHours: new Float64Array(SITES),
    molds,
    hourly: hourly ? createHourly() : undefined,
    airMassKg: c.airMassKg,
    seconds: 3600 / stepsPerHour,
    pressures: saturationTable(),
    dewPoints: dewPointTable(),
    hour: new Float64Array(VALUES),
    moldC: new Float64Array(MOLD_SURFACES.length),
    moldPa: new Float64Array(MOLD_SURFACES.length),
    counts: new Float64Array(8),
  };
}

function createHourly(): SeasonHourly {
  const series = () => new Float64Array(HOURS_PER_YEAR);
  return {
    temperatureC: series(),
    relativeHumidity: series(),
    humidityRatio: series(),
    dewPointC: series(),
    groundSurfaceC: series(),
    woodMoistureSurface: series(),
    woodMoistureCore: series(),
    girderMoistureSurface: series(),
    sillMoistureSurface: series(),
    moldIndex: series(),
    airChangesPerHour: series(),
    waterRemovedKg: series(),
    energyKWh: series(),
  };
}

/** Adds one of several steps to the mean of its hour. */
export function recordPart(r: Recorder, values: Float64Array): void {
  const { hour } = r;
  const share = r.seconds / 3600;
  for (let k = 0; k < VALUES; k++) hour[k] = hour[k]! + values[k]! * share;
}

/**
 * Closes an hour: month, thresholds, wood, mold and, when asked for, the hourly series.
 * @param hour means of the hour; receives the dew point
 */
export function recordHour(
  r: Recorder,
  hour: Float64Array,
  hourIndex: number,
  month: number,
  state: SpaceState,
): void {
  const { months, counts } = r;
  tableDewPoint(r.dewPoints, hour, VAPOR_PA, DEW_POINT_C);
  const humidity = hour[RELATIVE_HUMIDITY]!;
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
  if (hour[DEFROSTING]! > 0) counts[FROST_HOURS] = counts[FROST_HOURS]! + 1;
  if (hour[BELOW_RATING]! > 0) counts[COLD_HOURS] = counts[COLD_HOURS]! + 1;
  for (let i = 0; i < SITES; i++) {
    const surface = state.woodSurface[i]!;
    const core = state.woodCore[i]!;
    const k = month * SITES + i;
    r.monthWoodSurface[k] = r.monthWoodSurface[k]! + surface;
    r.monthWoodCore[k] = r.monthWoodCore[k]! + core;
    if (surface > r.peakWoodSurface[i]!) r.peakWoodSurface[i] = surface;
    if (core > r.peakWoodCore[i]!) r.peakWoodCore[i] = core;
  }
  for (let j = 0; j < FILMS; j++) {
    const share = hour[CONDENSING + j]!;
    if (share > 0) r.filmCondensationHours[j] = r.filmCondensationHours[j]! + share;
  }
  recordMold(r, hour, month);
  if (r.hourly !== undefined) keepHour(r, r.hourly, hour, hourIndex, state);
  r.monthHours[month] = r.monthHours[month]! + 1;
  const at = month * SUMMED;
  for (let k = 0; k < SUMMED; k++) {
    months[at + k] = months[at + k]! + hour[k]!;
  }
}

/** Mold on each surface, in the air of the hour at the temperature of the surface. */
function recordMold(r: Recorder, hour: Float64Array, month: number): void {
  const { moldC, moldPa } = r;
  const vaporPa = hour[VAPOR_PA]!;
  for (let i = 0; i < SITES; i++) moldC[i] = hour[WOOD_C + i]!;
  moldC[SITES] = hour[WALL_C]!;
  tableSaturations(r.pressures, moldC, moldPa);
  for (let i = 0; i < SITES; i++) {
    if (vaporPa > moldPa[i]!) r.woodCondensationHours[i] = r.woodCondensationHours[i]! + 1;
  }
  for (let k = 0; k < r.molds.length; k++) {
    const track = r.molds[k]!;
    const { state } = track;
    const saturation = moldPa[track.surface]!;
    // A clean surface in dry air stays as it is.
    if (state.index === 0 && vaporPa < NO_MOLD_BELOW * saturation) continue;
    const humidity = vaporPa < saturation ? vaporPa / saturation : 1;
    stepMoldIndex(state, moldC[track.surface]!, humidity, 1, track.parameters);
    const index = state.index;
    if (index > track.peak) track.peak = index;
    if (index > track.monthPeak[month]!) track.monthPeak[month] = index;
  }
}

function keepHour(r: Recorder, hourly: SeasonHourly, hour: Float64Array, i: number, state: SpaceState): void {
  hourly.temperatureC[i] = hour[AIR_C]!;
  hourly.relativeHumidity[i] = hour[RELATIVE_HUMIDITY]!;
  hourly.humidityRatio[i] = hour[HUMIDITY_RATIO]!;
  hourly.dewPointC[i] = hour[DEW_POINT_C]!;
  hourly.groundSurfaceC[i] = hour[GROUND_C]!;
  hourly.woodMoistureSurface[i] = state.woodSurface[0]!;
  hourly.woodMoistureCore[i] = state.woodCore[0]!;
  hourly.girderMoistureSurface[i] = state.woodSurface[1]!;
  hourly.sillMoistureSurface[i] = state.woodSurface[2]!;
  hourly.moldIndex[i] = r.molds.reduce((most, m) => (m.assigned ? Math.max(most, m.state.index) : most), 0);
  hourly.airChangesPerHour[i] = (3600 * hour[OUTDOOR_KG_PER_S]!) / r.airMassKg;
  hourly.waterRemovedKg[i] = -3600 * hour[WATER_MACHINES]!;
  hourly.energyKWh[i] = (hour[FANS_W]! + hour[MACHINES_W]!) / 1000;
}
