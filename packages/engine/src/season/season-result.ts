import type { MoldClass } from '../mold/classes.ts';
import type { Notice } from '../numerics/notice.ts';
import type { Ending } from '../numerics/solution.ts';
import { type Closure, energyClosure, waterClosure, yearTotal } from './closure.ts';
import type { CompiledCase } from './compiled-case.ts';
import type { SeasonHourly } from './hourly-series.ts';
import type { MoldSurface, WaterPath, WoodSite } from './places.ts';
import { FILM_SURFACES, type FilmSurface, MOLD_SURFACES, WATER_PATHS, WOOD_SITES } from './places.ts';
import { hourCounts, type Recorder } from './recorder.ts';
import type { SpaceState } from './state.ts';
import type { DriveRules } from './step-drive.ts';
import { stepPlaces } from './step-values.ts';

const { ABOVE_60, ABOVE_70, ABOVE_80, COLD_HOURS, DAYS_ABOVE_80, FROST_HOURS, HIGHEST_DAY } = hourCounts;
const {
  AIR_C,
  DEW_POINT_C,
  FANS_W,
  FLOOR_SHARE,
  FLOOR_W,
  HUMIDITY_RATIO,
  MACHINES_W,
  OUTDOOR_KG_PER_S,
  RELATIVE_HUMIDITY,
  RUN_SHARE,
  STARTS_PER_HOUR,
  SUMMED,
  WATER,
  WATER_MACHINES,
} = stepPlaces;

/** Means and sums of one month. */
export interface SeasonMonth {
  readonly temperatureC: number;
  /** Mean of the hourly relative humidity, 0..1. */
  readonly relativeHumidity: number;
  /** Mean of the hourly dew point (frost point below freezing), °C. */
  readonly dewPointC: number;
  readonly humidityRatio: number;
  /** Means of the joists, kg/kg. */
  readonly woodMoistureSurface: number;
  readonly woodMoistureCore: number;
  readonly wood: Readonly<Record<WoodSite, { readonly surface: number; readonly core: number }>>;
  /** Highest index of the month on any surface in the class that the case gives it. */
  readonly moldIndex: number;
  /** Air from outdoors, changes per hour. */
  readonly airChangesPerHour: number;
  /** Share of all air that enters the house through the floor, 0..1; 0 without a pressure network. */
  readonly floorShare: number;
  readonly waterRemovedKg: number;
  readonly energyKWh: number;
  readonly runHours: number;
  /** Heat from the house down through the floor, kWh. */
  readonly floorHeatKWh: number;
}

/** The mold index of one surface as one class. */
export interface SeasonMold {
  readonly surface: MoldSurface;
  readonly moldClass: MoldClass;
  /** Whether the case gives the surface this class. */
  readonly assigned: boolean;
  readonly peakIndex: number;
  readonly finalIndex: number;
  readonly monthlyPeak: readonly number[];
}

/** A settled year of one case. */
export interface SeasonResult {
  readonly name: string;
  /** January first. */
  readonly months: readonly SeasonMonth[];
  /** Days whose mean relative humidity is above 80 %. */
  readonly daysAbove80: number;
  /** Highest daily mean of the relative humidity, 0..1. */
  readonly highestDayRelativeHumidity: number;
  readonly hoursAbove60: number;
  readonly hoursAbove70: number;
  readonly hoursAbove80: number;
  /** Highest mold index of the year, from clean surfaces on January 1, in the classes that the case gives. */
  readonly peakMoldIndex: number;
  readonly mold: readonly SeasonMold[];
  readonly peakWoodMoisture: Readonly<Record<WoodSite, { readonly surface: number; readonly core: number }>>;
  /** Hours in which water condenses: on films, and on wood below the dew point of the air. */
  readonly condensationHours: Readonly<Record<FilmSurface | WoodSite, number>>;
  readonly waterRemovedKg: number;
  /** Electricity of dehumidifiers and fans. */
  readonly energyKWh: number;
  /** At the tariff of the case, whole cents. */
  readonly costCents: number;
  /** Running hours of all machines together. */
  readonly runHours: number;
  readonly starts: number;
  readonly floorHeatKWh: number;
  /**
   * Net water by path, kg in the year, positive into the air. Air paths are against the air of the space; `drained` is
   * what ran off liner and surfaces and is not part of the air.
   */
  readonly waterKg: Readonly<Record<WaterPath, number>>;
  readonly airChangesPerHour: number;
  readonly closure: Closure;
  /** Whether the year repeats: residual 1 is the tolerance (0.05 K of soil, 0.2 % of wood moisture content). */
  readonly ending: Ending;
  readonly hourly?: SeasonHourly;
  /** What the space held at the start of the reported year, when asked for. */
  readonly start?: SpaceState;
  readonly notices: readonly Notice[];
}

/** Puts the sums of a year into words and units. */
export function seasonResult(
  c: CompiledCase,
  rules: DriveRules,
  r: Recorder,
  start: SpaceState,
  end: SpaceState,
  ending: Ending,
  keepStart: boolean,
): SeasonResult {
  const months = Array.from({ length: 12 }, (_, month) => monthOf(c, r, month));
  const total = (pick: (month: SeasonMonth) => number) => months.reduce((sum, m) => sum + pick(m), 0);
  const energyKWh = total((m) => m.energyKWh);
  return {
    name: c.source.name,
    months,
    daysAbove80: r.counts[DAYS_ABOVE_80]!,
    highestDayRelativeHumidity: r.counts[HIGHEST_DAY]!,
    hoursAbove60: r.counts[ABOVE_60]!,
    hoursAbove70: r.counts[ABOVE_70]!,
    hoursAbove80: r.counts[ABOVE_80]!,
    peakMoldIndex: r.molds.reduce((most, m) => (m.assigned ? Math.max(most, m.peak) : most), 0),
    mold: r.molds.map((m) => ({
      surface: MOLD_SURFACES[m.surface]!,
      moldClass: m.moldClass,
      assigned: m.assigned,
      peakIndex: m.peak,
      finalIndex: m.last,
      monthlyPeak: Array.from(m.monthPeak),
    })),
    peakWoodMoisture: bySite((i) => ({ surface: r.peakWoodSurface[i]!, core: r.peakWoodCore[i]! })),
    condensationHours: {
      ...record(FILM_SURFACES, (_, i) => r.filmCondensationHours[i]!),
      ...bySite((i) => r.woodCondensationHours[i]!),
    },
    waterRemovedKg: total((m) => m.waterRemovedKg),
    energyKWh,
    costCents: Math.round(energyKWh * c.source.tariffCentsPerKWh),
    runHours: total((m) => m.runHours),
    starts: Math.round(yearTotal(r, STARTS_PER_HOUR) / 3600),
    floorHeatKWh: total((m) => m.floorHeatKWh),
    waterKg: record(WATER_PATHS, (_, i) => yearTotal(r, WATER + i)),
    airChangesPerHour: total((m) => m.airChangesPerHour) / 12,
    closure: {
      water: waterClosure(c, r, start, end),
      energy: energyClosure(c, r, start, end),
    },
    ending,
    ...(r.hourly === undefined ? {} : { hourly: r.hourly }),
    ...(keepStart ? { start } : {}),
    notices: noticesOf(c, rules, r, ending),
  };
}

function record<K extends string, V>(keys: readonly K[], value: (key: K, index: number) => V): Record<K, V> {
  return Object.fromEntries(keys.map((key, i) => [key, value(key, i)])) as Record<K, V>;
}

function bySite<V>(value: (index: number) => V): Record<WoodSite, V> {
  return record(WOOD_SITES, (_, i) => value(i));
}

function monthOf(c: CompiledCase, r: Recorder, month: number): SeasonMonth {
  const hours = r.monthHours[month]!;
  const sum = (place: number) => r.months[month * SUMMED + place]!;
  const mean = (place: number) => sum(place) / hours;
  const wood = bySite((i) => ({
    surface: r.monthWoodSurface[month * WOOD_SITES.length + i]! / hours,
    core: r.monthWoodCore[month * WOOD_SITES.length + i]! / hours,
  }));
  return {
    temperatureC: mean(AIR_C),
    relativeHumidity: mean(RELATIVE_HUMIDITY),
    dewPointC: mean(DEW_POINT_C),
    humidityRatio: mean(HUMIDITY_RATIO),
    woodMoistureSurface: wood.joists.surface,
    woodMoistureCore: wood.joists.core,
    wood,
    moldIndex: r.molds.reduce((most, m) => (m.assigned ? Math.max(most, m.monthPeak[month]!) : most), 0),
    airChangesPerHour: (mean(OUTDOOR_KG_PER_S) * 3600) / c.numbers.airMassKg,
    floorShare: mean(FLOOR_SHARE),
    waterRemovedKg: -3600 * sum(WATER_MACHINES),
    energyKWh: (sum(FANS_W) + sum(MACHINES_W)) / 1000,
    runHours: sum(RUN_SHARE),
    floorHeatKWh: sum(FLOOR_W) / 1000,
  };
}

function noticesOf(c: CompiledCase, rules: DriveRules, r: Recorder, ending: Ending): Notice[] {
  const notices: Notice[] = [];
  if (!ending.converged) {
    notices.push({
      code: 'year-not-settled',
      message: `The year did not repeat within tolerance after ${ending.iterations} years (residual ${ending.residual.toFixed(1)} times the tolerance); results still drift.`,
    });
  }
  if (r.counts[COLD_HOURS]! > 0) {
    notices.push({
      code: 'dehumidifier-below-tested-air',
      message: `The dehumidifier runs in ${r.counts[COLD_HOURS]!} hours below 18.3 °C (65 °F), where its capacity is extrapolated from warmer tests.`,
    });
  }
  if (r.counts[FROST_HOURS]! > 0) {
    notices.push({
      code: 'dehumidifier-frost',
      message: `In ${r.counts[FROST_HOURS]!} hours the dehumidifier runs so cold that it loses time to frost.`,
    });
  }
  const failed = (rules.heated.flows?.failed ?? 0) + (rules.cooled.flows?.failed ?? 0);
  if (failed > 0) {
    notices.push({
      code: 'air-network-not-solved',
      message: `The pressure network of ${c.source.name} had no balance at ${failed} of the weather points.`,
    });
  }
  return notices;
}
