import { type MoldClass, type MoldParameters, moldParameters } from '../mold/classes.ts';
import { moldDecline } from '../mold/decline.ts';
import { growthCeiling, NO_GROWTH, SLOW_DOWN } from '../mold/growth.ts';
import { decayOf } from './decay.ts';
import { loopRoom } from './loop-room.ts';
import { fillMoldTables, middleGrowthPerHour, tableMoldGrowth } from './mold-growth.ts';
import { MOLD_SURFACES } from './places.ts';
import type { SeasonCase } from './season-case.ts';
import { stepPlaces } from './step-values.ts';

const { MOLD_C, MOLD_PA, VAPOR_PA } = stepPlaces;
const { values } = loopRoom;

const CLASSES: readonly MoldClass[] = ['very-sensitive', 'sensitive', 'medium-resistant', 'resistant'];
const SURFACES = MOLD_SURFACES.length;
const STRIDE = 7;
const INDEX = 0;
const DRY_HOURS = 1;
const PEAK = 2;
const MONTH_PEAK = 3;
/** Relative humidity below which the class grows nowhere. */
const FLOOR = 4;
/** Growth in the air that `tableMoldGrowth` refers to, below and from index 1 on. */
const EARLY = 5;
const LATE = 6;
/** The mold of the year under way: classes by surface, `STRIDE` places each. */
const tracks = new Float64Array(SURFACES * CLASSES.length * STRIDE);

/** One mold index that is followed. */
export interface MoldTrack {
  /** Place in MOLD_SURFACES. */
  readonly surface: number;
  readonly moldClass: MoldClass;
  /** Whether this is the class that the case gives the surface. */
  readonly assigned: boolean;
  readonly parameters: MoldParameters;
  readonly monthPeak: Float64Array;
  peak: number;
  /** Index at the end of the year. */
  last: number;
}

/** Tracks of the class that the case gives each surface, or of all classes; as many for each surface, in their order. */
export function createMoldTracks(source: SeasonCase, allClasses: boolean): MoldTrack[] {
  return MOLD_SURFACES.flatMap((name, surface) => {
    const own = source.moldClasses[name];
    return (allClasses ? CLASSES : [own]).map((moldClass) => ({
      surface,
      moldClass,
      assigned: moldClass === own,
      parameters: moldParameters(moldClass),
      monthPeak: new Float64Array(12),
      peak: 0,
      last: 0,
    }));
  });
}

/** Clean surfaces on January 1. */
export function startMold(molds: readonly MoldTrack[]): void {
  tracks.fill(0);
  molds.forEach((track, k) => {
    // The curve of critical humidity runs a little below the floor where it meets it.
    const p = track.parameters;
    fillMoldTables(p);
    tracks[k * STRIDE + FLOOR] = p.humidityFloor - 0.01;
    tracks[k * STRIDE + EARLY] = p.earlyGrowth * middleGrowthPerHour(p);
    tracks[k * STRIDE + LATE] = p.lateGrowth * middleGrowthPerHour(p);
  });
}

/** Mold on each surface, in the air of the hour at the temperature of the surface. */
export function recordMold(molds: readonly MoldTrack[]): void {
  const vaporPa = values[VAPOR_PA]!;
  const each = molds.length / SURFACES;
  let at = 0;
  for (let surface = 0; surface < SURFACES; surface++) {
    const saturation = values[MOLD_PA + surface]!;
    for (let k = 0; k < each; k++, at += STRIDE) {
      const dry = vaporPa < tracks[at + FLOOR]! * saturation;
      // A clean surface in dry air stays as it is.
      if (dry && tracks[at + INDEX] === 0) continue;
      const p = molds[surface * each + k]!.parameters;
      const temperatureC = values[MOLD_C + surface]!;
      const humidity = vaporPa < saturation ? vaporPa / saturation : 1;
      const ceiling = dry ? NO_GROWTH : growthCeiling(temperatureC, humidity, p);
      if (ceiling === NO_GROWTH) decline(at, p.declineFactor);
      else grow(at, ceiling, temperatureC, humidity);
      const index = tracks[at + INDEX]!;
      if (index > tracks[at + PEAK]!) tracks[at + PEAK] = index;
      if (index > tracks[at + MONTH_PEAK]!) tracks[at + MONTH_PEAK] = index;
    }
  }
}

/** An hour of `stepMoldIndex` without growth. */
function decline(at: number, factor: number): void {
  const dryBefore = tracks[at + DRY_HOURS]!;
  const dryHours = dryBefore + 1;
  tracks[at + DRY_HOURS] = dryHours;
  tracks[at + INDEX] = Math.max(tracks[at + INDEX]! - factor * moldDecline(dryBefore, dryHours), 0);
}

/** An hour of `stepMoldIndex` with growth, with tables and `decayOf` in place of logarithms and exponentials. */
function grow(at: number, ceiling: number, temperatureC: number, humidity: number): void {
  tracks[at + DRY_HOURS] = 0;
  const before = tracks[at + INDEX]!;
  if (before >= ceiling) return;
  const rate = tracks[before < 1 ? at + EARLY : at + LATE]! * tableMoldGrowth(temperatureC, humidity);
  tracks[at + INDEX] = Math.min(before + rate * (1 - decayOf(SLOW_DOWN * (ceiling - before))), ceiling);
}

/** Highest index now, in the classes that the case gives. */
export function assignedMoldIndex(molds: readonly MoldTrack[]): number {
  let most = 0;
  for (let k = 0; k < molds.length; k++) {
    if (molds[k]!.assigned) most = Math.max(most, tracks[k * STRIDE + INDEX]!);
  }
  return most;
}

/** Hands the peaks of a month that is over to the tracks. */
export function closeMoldMonth(molds: readonly MoldTrack[], month: number): void {
  molds.forEach((track, k) => {
    const at = k * STRIDE;
    track.monthPeak[month] = tracks[at + MONTH_PEAK]!;
    track.peak = tracks[at + PEAK]!;
    track.last = tracks[at + INDEX]!;
    tracks[at + MONTH_PEAK] = 0;
  });
}
