import * as z from 'zod';
import { Day, Fraction, Id, Instant, Label, Place, Point, Temperature, takenBy, Words } from './scalars.ts';

export const Instrument = z.strictObject({
  id: Id,
  kind: z.enum([
    'hygrometer',
    'pin-meter',
    'infrared',
    'level',
    'laser',
    'tape',
    'manometer',
    'radon-monitor',
    'other',
  ]),
  name: Label,
  calibratedOn: Day.optional(),
  note: Words.optional(),
});

/** One set-up of a level or laser. */
export const LevelSetup = z.strictObject({
  id: Id,
  method: z.enum(['rod', 'laser-plane']),
  /** Height of the instrument over the floor datum [m], when known. */
  instrumentHeightM: z.number().min(-20).max(20).optional(),
  note: Words.optional(),
});

export const LevelReading = z.strictObject({
  id: Id,
  setupId: Id,
  at: Point,
  /** Reading on the rod, or drop below the laser plane [m]. */
  readingM: z.number().min(-20).max(20),
  /** What the rod stood on. */
  on: z
    .enum(['floor', 'liner', 'drain-invert', 'pipe-top', 'sump-rim', 'joist', 'benchmark'])
    .default('floor'),
  ...takenBy,
});

/** Temperature and humidity of air. */
export const AirReading = z.strictObject({
  id: Id,
  where: z.enum(['crawl', 'outdoor', 'house']),
  place: Place,
  temperatureC: Temperature,
  relativeHumidity: Fraction,
  ...takenBy,
  note: Words.optional(),
});

/** Temperature of a surface. */
export const SurfaceReading = z.strictObject({
  id: Id,
  of: z.enum([
    'ground',
    'liner',
    'wall',
    'pier',
    'joist',
    'girder',
    'sill',
    'rim',
    'subfloor',
    'duct',
    'pipe',
    'other',
  ]),
  place: Place,
  temperatureC: Temperature,
  ...takenBy,
  note: Words.optional(),
});

/** A pin-meter reading, kept as the meter showed it. */
export const WoodReading = z.strictObject({
  id: Id,
  member: z.enum(['joist', 'girder', 'sill', 'rim', 'subfloor', 'post', 'other']),
  place: Place,
  /** As shown by the meter, share of dry mass; may be over 1 on soaked wood. */
  shown: z.number().min(0).max(3),
  /** Species of the meter's scale; most meters show Douglas-fir. */
  meterScale: z.string().max(60).default('douglas-fir'),
  /** Temperature at which the scale holds [°C]. */
  calibrationC: Temperature.default(21.1),
  meterCorrects: z.enum(['nothing', 'temperature', 'temperature-and-species']).default('nothing'),
  species: z.string().max(60).optional(),
  woodTemperatureC: Temperature.optional(),
  pinDepthM: z.number().positive().max(0.2).optional(),
  ...takenBy,
  note: Words.optional(),
});

/**
 * Anything else that was measured or answered, by the engine's name of the quantity, in its SI unit; yes and no as
 * true and false.
 */
export const Observation = z.strictObject({
  id: Id,
  quantity: z.string().regex(/^[a-z][A-Za-z0-9]{1,80}$/, 'the name of a quantity, like seamLapWidthM'),
  value: z.union([z.number(), z.boolean()], {
    error: 'a number in the SI unit of the quantity, or true or false',
  }),
  /** Doubt of a number, same unit, plus or minus. */
  plusMinus: z.number().min(0).optional(),
  /** True for an estimate or typical value that nobody measured. */
  assumed: z.boolean().default(false),
  place: Place.optional(),
  photoIds: z.array(Id).max(100).default([]),
  ...takenBy,
  note: Words.optional(),
});
export type Observation = z.infer<typeof Observation>;

/** Answer to one of the engine's questions about the job that no reading and no drawing settles. */
export const Answer = z.strictObject({
  id: Id,
  question: z.string().regex(/^[a-z][A-Za-z0-9]{1,60}$/, 'the name of a question, like crossVentilated'),
  answer: z.union([z.boolean(), z.string().min(1).max(60)], {
    error: 'true, false or one of the answers allowed',
  }),
  when: Instant,
  who: Label,
  note: Words.optional(),
});

export const Readings = z.strictObject({
  instruments: z.array(Instrument).default([]),
  levelSetups: z.array(LevelSetup).default([]),
  levels: z.array(LevelReading).default([]),
  air: z.array(AirReading).default([]),
  surface: z.array(SurfaceReading).default([]),
  wood: z.array(WoodReading).default([]),
  observations: z.array(Observation).default([]),
  answers: z.array(Answer).default([]),
});
export type Readings = z.infer<typeof Readings>;
