import { HOURS_PER_YEAR } from '../climate/calendar.ts';
import { type MoldClass, type MoldParameters, moldParameters } from '../mold/classes.ts';
import { cleanSurface, type MoldState, stepMoldIndex } from '../mold/step.ts';
import type { CompiledCase } from './compiled-case.ts';
import { saturationTable, tableDewPointC, tableSaturationPa } from './fast-tables.ts';
import { FILM_SURFACES, HEAT_PATHS, MOLD_SURFACES, WATER_PATHS, WOOD_SITES } from './places.ts';
import type { SpaceState, StepDrive, StepResult } from './state.ts';

const SITES = WOOD_SITES.length;
const FILMS = FILM_SURFACES.length;

/** Hourly series of one case, 8760 values each. Means of the hour; wood and films at its end. */
export interface SeasonHourly {
  readonly temperatureC: Float64Array;
  readonly relativeHumidity: Float64Array;
  readonly humidityRatio: Float64Array;
  readonly dewPointC: Float64Array;
  readonly groundSurfaceC: Float64Array;
  readonly woodMoistureSurface: Float64Array;
  readonly woodMoistureCore: Float64Array;
  readonly sillMoistureSurface: Float64Array;
  readonly girderMoistureSurface: Float64Array;
  readonly moldIndex: Float64Array;
  readonly airChangesPerHour: Float64Array;
  readonly waterRemovedKg: Float64Array;
  readonly energyKWh: Float64Array;
}

/** One mold index that is followed. */
export interface MoldTrack {
  readonly surface: number;
  readonly moldClass: MoldClass;
  /** Whether this is the class that the case gives the surface. */
  readonly assigned: boolean;
  readonly parameters: MoldParameters;
  readonly state: MoldState;
  peak: number;
  readonly monthPeak: Float64Array;
}

/** Sums by month, in the order of the columns of a month's row. */
export const MONTH_COLUMNS = [
  'hours',
  'temperatureC',
  'relativeHumidity',
  'humidityRatio',
  'dewPointC',
  'outdoorKgPerS',
  'floorShare',
  'waterRemovedKg',
  'joules',
  'runHours',
  'starts',
  'floorJ',
] as const;
const COLUMNS = MONTH_COLUMNS.length;

/** Sums of one reported year. */
export interface Recorder {
  readonly months: Float64Array;
  readonly monthWoodSurface: Float64Array;
  readonly monthWoodCore: Float64Array;
  readonly peakWoodSurface: Float64Array;
  readonly peakWoodCore: Float64Array;
  readonly waterKg: Float64Array;
  readonly waterGrossKg: Float64Array;
  readonly heatJ: Float64Array;
  readonly heatGrossJ: Float64Array;
  readonly condensationHours: Float64Array;
  readonly molds: readonly MoldTrack[];
  readonly hourly: SeasonHourly | undefined;
  readonly airMassKg: number;
  readonly pressures: Float64Array;
  readonly hour: HourSums;
  hoursAbove60: number;
  hoursAbove70: number;
  hoursAbove80: number;
  daysAbove80: number;
  dayHumidity: number;
  defrostHours: number;
  belowRatingHours: number;
}

/** Means over the hour, gathered step by step: all times the seconds of the step. */
interface HourSums {
  seconds: number;
  airC: number;
  vaporPa: number;
  relativeHumidity: number;
  humidityRatio: number;
  surfaceC: number;
  outdoorKgPerS: number;
  floorShare: number;
  floorJ: number;
  waterKg: number;
  joules: number;
  run: number;
  starts: number;
  wallC: number;
  readonly wood: Float64Array;
  readonly condensing: Float64Array;
}

export function createRecorder(c: CompiledCase, allClasses: boolean, hourly: boolean): Recorder {
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
    months: new Float64Array(12 * COLUMNS),
    monthWoodSurface: new Float64Array(12 * SITES),
    monthWoodCore: new Float64Array(12 * SITES),
    peakWoodSurface: new Float64Array(SITES),
    peakWoodCore: new Float64Array(SITES),
    waterKg: new Float64Array(WATER_PATHS.length),
    waterGrossKg: new Float64Array(WATER_PATHS.length),
    heatJ: new Float64Array(HEAT_PATHS.length),
    heatGrossJ: new Float64Array(HEAT_PATHS.length),
    condensationHours: new Float64Array(FILMS + SITES),
    molds,
    hourly: hourly ? createHourly() : undefined,
    airMassKg: c.airMassKg,
    pressures: saturationTable(),
    hour: {
      seconds: 0,
      airC: 0.5,
      vaporPa: 0.5,
      relativeHumidity: 0.5,
      humidityRatio: 0.5,
      surfaceC: 0.5,
      outdoorKgPerS: 0.5,
      floorShare: 0.5,
      floorJ: 0.5,
      waterKg: 0.5,
      joules: 0.5,
      run: 0.5,
      starts: 0.5,
      wallC: 0.5,
      wood: new Float64Array(SITES),
      condensing: new Float64Array(FILMS),
    },
    hoursAbove60: 0,
    hoursAbove70: 0,
    hoursAbove80: 0,
    daysAbove80: 0,
    dayHumidity: 0,
    defrostHours: 0,
    belowRatingHours: 0,
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
    sillMoistureSurface: series(),
    girderMoistureSurface: series(),
    moldIndex: series(),
    airChangesPerHour: series(),
    waterRemovedKg: series(),
    energyKWh: series(),
  };
}

/** Adds one step to the sums of its hour and of the year. */
export function recordStep(r: Recorder, drive: StepDrive, out: StepResult, seconds: number): void {
  const h = r.hour;
  if (h.seconds === 0) clearHour(h);
  h.seconds += seconds;
  h.airC += out.airC * seconds;
  h.vaporPa += out.vaporPa * seconds;
  h.relativeHumidity += out.relativeHumidity * seconds;
  h.humidityRatio += out.humidityRatio * seconds;
  h.surfaceC += out.surfaceC * seconds;
  h.outdoorKgPerS += drive.outdoorKgPerS * seconds;
  h.floorShare += drive.floorShare * seconds;
  h.floorJ += out.floorW * seconds;
  h.waterKg += out.machineKgPerS * seconds;
  h.joules += out.heatW[9]! * seconds;
  h.run += out.runShare * seconds;
  h.starts += out.startsPerHour * seconds;
  h.wallC += Math.min(out.wallAboveC, out.wallBelowC) * seconds;
  for (let i = 0; i < SITES; i++) h.wood[i] = h.wood[i]! + out.woodC[i]! * seconds;
  for (let j = 0; j < FILMS; j++) h.condensing[j] = h.condensing[j]! + out.condensing[j]! * seconds;
  const { waterKg, waterGrossKg, heatJ, heatGrossJ } = r;
  for (let k = 0; k < waterKg.length; k++) {
    const kg = out.waterKgPerS[k]! * seconds;
    waterKg[k] = waterKg[k]! + kg;
    waterGrossKg[k] = waterGrossKg[k]! + Math.abs(kg);
  }
  for (let k = 0; k < heatJ.length; k++) {
    const joules = out.heatW[k]! * seconds;
    heatJ[k] = heatJ[k]! + joules;
    heatGrossJ[k] = heatGrossJ[k]! + Math.abs(joules);
  }
}

function clearHour(h: HourSums): void {
  h.airC = 0;
  h.vaporPa = 0;
  h.relativeHumidity = 0;
  h.humidityRatio = 0;
  h.surfaceC = 0;
  h.outdoorKgPerS = 0;
  h.floorShare = 0;
  h.floorJ = 0;
  h.waterKg = 0;
  h.joules = 0;
  h.run = 0;
  h.starts = 0;
  h.wallC = 0;
  h.wood.fill(0);
  h.condensing.fill(0);
}

/** Closes an hour: month, thresholds, wood, mold and, when asked for, the hourly series. */
export function recordHour(
  r: Recorder,
  hourIndex: number,
  month: number,
  state: SpaceState,
  out: StepResult,
): void {
  const h = r.hour;
  const s = h.seconds;
  const airC = h.airC / s;
  const vaporPa = h.vaporPa / s;
  const humidity = h.relativeHumidity / s;
  const dewPointC = tableDewPointC(r.pressures, vaporPa);
  const { months } = r;
  const at = month * COLUMNS;
  months[at] = months[at]! + 1;
  months[at + 1] = months[at + 1]! + airC;
  months[at + 2] = months[at + 2]! + humidity;
  months[at + 3] = months[at + 3]! + h.humidityRatio / s;
  months[at + 4] = months[at + 4]! + dewPointC;
  months[at + 5] = months[at + 5]! + h.outdoorKgPerS / s;
  months[at + 6] = months[at + 6]! + h.floorShare / s;
  months[at + 7] = months[at + 7]! + h.waterKg;
  months[at + 8] = months[at + 8]! + h.joules;
  months[at + 9] = months[at + 9]! + h.run / 3600;
  months[at + 10] = months[at + 10]! + h.starts / 3600;
  months[at + 11] = months[at + 11]! + h.floorJ;
  if (humidity > 0.6) r.hoursAbove60++;
  if (humidity > 0.7) r.hoursAbove70++;
  if (humidity > 0.8) r.hoursAbove80++;
  r.dayHumidity += humidity;
  if (hourIndex % 24 === 23) {
    if (r.dayHumidity > 24 * 0.8) r.daysAbove80++;
    r.dayHumidity = 0;
  }
  if (out.runShare > 0) {
    if (out.defrosting) r.defrostHours++;
    if (out.belowRating) r.belowRatingHours++;
  }
  for (let j = 0; j < FILMS; j++) {
    r.condensationHours[j] = r.condensationHours[j]! + h.condensing[j]! / s;
  }
  for (let i = 0; i < SITES; i++) {
    const surface = state.woodSurface[i]!;
    const core = state.woodCore[i]!;
    const k = month * SITES + i;
    r.monthWoodSurface[k] = r.monthWoodSurface[k]! + surface;
    r.monthWoodCore[k] = r.monthWoodCore[k]! + core;
    if (surface > r.peakWoodSurface[i]!) r.peakWoodSurface[i] = surface;
    if (core > r.peakWoodCore[i]!) r.peakWoodCore[i] = core;
  }
  const highest = recordMold(r, month, vaporPa);
  if (r.hourly !== undefined) {
    keepHour(r.hourly, hourIndex, h, airC, humidity, dewPointC, state);
    r.hourly.airChangesPerHour[hourIndex] = (3600 * h.outdoorKgPerS) / s / r.airMassKg;
    r.hourly.moldIndex[hourIndex] = highest;
  }
  h.seconds = 0;
}

/** Mold on each surface, in the air of the hour at the temperature of the surface; returns the highest index. */
function recordMold(r: Recorder, month: number, vaporPa: number): number {
  const h = r.hour;
  let last = -1;
  let surfaceC = 0;
  let humidity = 0;
  let highest = 0;
  for (let k = 0; k < r.molds.length; k++) {
    const track = r.molds[k]!;
    if (track.surface !== last) {
      last = track.surface;
      surfaceC = (last < SITES ? h.wood[last]! : h.wallC) / h.seconds;
      const saturation = tableSaturationPa(r.pressures, surfaceC);
      humidity = vaporPa < saturation ? vaporPa / saturation : 1;
      if (last < SITES && vaporPa > saturation) {
        r.condensationHours[FILMS + last] = r.condensationHours[FILMS + last]! + 1;
      }
    }
    const { state } = track;
    stepMoldIndex(state, surfaceC, humidity, 1, track.parameters);
    if (state.index > track.peak) track.peak = state.index;
    if (state.index > track.monthPeak[month]!) track.monthPeak[month] = state.index;
    if (track.assigned && state.index > highest) highest = state.index;
  }
  return highest;
}

function keepHour(
  hourly: SeasonHourly,
  i: number,
  h: HourSums,
  airC: number,
  humidity: number,
  dewPointC: number,
  state: SpaceState,
): void {
  hourly.temperatureC[i] = airC;
  hourly.relativeHumidity[i] = humidity;
  hourly.humidityRatio[i] = h.humidityRatio / h.seconds;
  hourly.dewPointC[i] = dewPointC;
  hourly.groundSurfaceC[i] = h.surfaceC / h.seconds;
  hourly.woodMoistureSurface[i] = state.woodSurface[0]!;
  hourly.woodMoistureCore[i] = state.woodCore[0]!;
  hourly.girderMoistureSurface[i] = state.woodSurface[1]!;
  hourly.sillMoistureSurface[i] = state.woodSurface[2]!;
  hourly.waterRemovedKg[i] = h.waterKg;
  hourly.energyKWh[i] = h.joules / 3.6e6;
}
