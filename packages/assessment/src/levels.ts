import { geometry, levels } from '@undercroft/engine';
import type { Job, Point } from '@undercroft/record';

type LevelReading = Job['readings']['levels'][number];

/** A point of the space that was leveled, from all readings taken on it. */
export interface LeveledSpot {
  /** Id of its first reading. */
  readonly id: string;
  readonly readingIds: readonly string[];
  readonly at: Point;
  readonly on: LevelReading['on'];
  /** Over the datum of the sheet [m]. */
  readonly heightM: number;
}

/** A set-up of the instrument with the height of its line of sight. */
export interface LeveledSetup {
  readonly id: string;
  readonly method: 'rod' | 'laser-plane';
  readonly readingCount: number;
  /** Over the datum of the sheet [m]; absent while it shares no point with the others. */
  readonly instrumentHeightM?: number;
}

/** All that was leveled, brought to one datum. */
export interface LevelSheet {
  /** `floor`: the instrument's height over the floor was given. `first-point`: the first point read is zero. */
  readonly datum: 'floor' | 'first-point';
  readonly spots: readonly LeveledSpot[];
  readonly setups: readonly LeveledSetup[];
  /** Error of one height [m]. */
  readonly sigmaM: number;
  /** Ids of set-ups whose points hang in the air: they share none with the rest. */
  readonly looseSetupIds: readonly string[];
  /** True where two set-ups differ by more at one shared point than at another: a reading is likely wrong. */
  readonly setupsDisagree: boolean;
}

/** Readings count as taken on one point when they stand this near together [m]; a hand cannot set them closer. */
const SAME_POINT_M = 0.05;

/** A reading that is negative was taken upward from the line of sight, with the rod upside down. */
const rodOf = (reading: LevelReading) => (reading.readingM < 0 ? 'inverted' : 'upright');

interface Spot {
  readonly id: string;
  readonly at: Point;
  readonly on: LevelReading['on'];
  readonly readings: LevelReading[];
}

function spotsOf(readings: readonly LevelReading[]): Spot[] {
  const spots: Spot[] = [];
  for (const reading of readings) {
    const same = spots.find(
      ({ at, on }) => on === reading.on && geometry.distanceM(at, reading.at) <= SAME_POINT_M,
    );
    if (same === undefined) {
      spots.push({ id: reading.id, at: reading.at, on: reading.on, readings: [reading] });
    } else same.readings.push(reading);
  }
  return spots;
}

/**
 * Heights of all points that were leveled, relative to the floor where the height of an instrument over it is known, else
 * to the first point. Several set-ups are brought together at the points that they share.
 * @throws EngineError for a reading longer than any rod
 */
export function levelSheet(job: Job): LevelSheet {
  const { levels: readings, levelSetups } = job.readings;
  const spots = spotsOf(readings);
  const spotOf = new Map(spots.flatMap((spot) => spot.readings.map((r) => [r.id, spot.id] as const)));
  const ofSetup = (id: string) => readings.filter((r) => r.setupId === id);
  const known = levelSetups.find((s) => s.instrumentHeightM !== undefined && ofSetup(s.id).length > 0);
  const first = known === undefined ? undefined : ofSetup(known.id)[0];
  const survey = levels.joinSetUps({
    setUps: levelSetups.map((s) => ({
      readings: ofSetup(s.id).map((r) => ({
        pointId: spotOf.get(r.id) ?? r.id,
        readingM: Math.abs(r.readingM),
        rod: rodOf(r),
      })),
    })),
    ...(first === undefined || known?.instrumentHeightM === undefined
      ? {}
      : {
          datum: {
            pointId: spotOf.get(first.id) ?? first.id,
            heightM: known.instrumentHeightM - first.readingM,
          },
        }),
  });
  const heights = new Map(survey.points.map((p) => [p.pointId, p.heightM]));
  const setups = levelSetups.map(({ id, method }): LeveledSetup => {
    const own = ofSetup(id);
    const planes = own.flatMap((r) => {
      const height = heights.get(spotOf.get(r.id) ?? '');
      return height === undefined ? [] : [height + r.readingM];
    });
    const mean = planes.reduce((sum, plane) => sum + plane, 0) / planes.length;
    return {
      id,
      method,
      readingCount: own.length,
      ...(planes.length === 0 ? {} : { instrumentHeightM: mean }),
    };
  });
  return {
    datum: first === undefined ? 'first-point' : 'floor',
    spots: spots.flatMap(({ id, at, on, readings: own }) => {
      const heightM = heights.get(id);
      return heightM === undefined ? [] : [{ id, readingIds: own.map((r) => r.id), at, on, heightM }];
    }),
    setups,
    sigmaM: survey.sigmaM,
    looseSetupIds: setups
      .filter((s) => s.readingCount > 0 && s.instrumentHeightM === undefined)
      .map((s) => s.id),
    setupsDisagree: survey.notices.length > 0,
  };
}

/** The fall from one leveled point to another, along the straight line between them. */
export interface FallOfSpots extends levels.Fall {
  readonly lengthM: number;
}

/** Drains want to fall; a floor only tells which way its water runs. */
const DRAINS: readonly LevelReading['on'][] = ['drain-invert', 'pipe-top'];

/**
 * The fall between two points of a sheet: between two points of a drain against 1/8 in per foot, elsewhere as it is.
 * Null where one of them is not on the sheet, or both are one place.
 */
export function fallOfSpots(sheet: LevelSheet, fromId: string, toId: string): FallOfSpots | null {
  const from = sheet.spots.find((s) => s.id === fromId);
  const to = sheet.spots.find((s) => s.id === toId);
  if (from === undefined || to === undefined) return null;
  const lengthM = geometry.distanceM(from.at, to.at);
  if (lengthM < SAME_POINT_M) return null;
  const required = DRAINS.includes(from.on) && DRAINS.includes(to.on) ? levels.EIGHTH_INCH_PER_FOOT : 0;
  return { lengthM, ...levels.fallBetween(from.heightM, to.heightM, lengthM, sheet.sigmaM, required) };
}
