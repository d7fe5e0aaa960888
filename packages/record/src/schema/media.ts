import * as z from 'zod';
import { Bearing, distinctIds, Id, Instant, Label, Place, Point, Sha256, Words } from './scalars.ts';

/** What every captured file carries: its bytes by hash, when and where it was taken, by whom. */
const captured = {
  id: Id,
  sha256: Sha256,
  bytes: z.int().positive().max(1e11),
  mediaType: z.string().regex(/^(image|video|audio)\/[a-z0-9.+-]{1,60}$/, 'a media type like image/jpeg'),
  takenAt: Instant,
  /** The device's own clock when the file was taken, as text, even where it disagrees. */
  deviceTime: z.string().max(40).optional(),
  who: Label,
  place: Place,
  caption: Words.optional(),
};

/** Direction and reach of a camera. */
const view = {
  bearingDeg: Bearing.optional(),
  fieldOfViewDeg: z.number().positive().max(360).optional(),
  /** How far the lamp shows detail [m]. */
  rangeM: z.number().positive().max(100).optional(),
};

export const Photo = z.strictObject({ ...captured, ...view });

export const Clip = z.strictObject({
  ...captured,
  ...view,
  durationS: z.number().positive().max(36_000).optional(),
  /** Where the camera was at times in the clip. */
  marks: z
    .array(
      z.strictObject({
        id: Id,
        atS: z.number().min(0).max(36_000),
        at: Point,
        bearingDeg: Bearing.optional(),
      }),
    )
    .max(10_000)
    .check(distinctIds)
    .default([]),
});

export const AudioNote = z.strictObject({
  ...captured,
  durationS: z.number().positive().max(36_000).optional(),
});

export const Media = z.strictObject({
  photos: z.array(Photo).default([]),
  clips: z.array(Clip).default([]),
  audio: z.array(AudioNote).default([]),
});
export type Media = z.infer<typeof Media>;

/** A defect claimed: what, where, how it was proved. */
export const Finding = z.strictObject({
  id: Id,
  /** Key of the defect in the catalogue, or `other`. */
  defect: z.string().regex(/^[a-z][a-z0-9-]{1,60}$/, 'the key of a defect, like piers-not-wrapped'),
  title: Label,
  place: Place,
  /** Extent as measured, in the unit of the defect's quantity rule. */
  measured: z
    .strictObject({ quantity: z.string().max(80), value: z.union([z.number(), z.boolean()]) })
    .optional(),
  severity: z.int().min(0).max(4).optional(),
  photoIds: z.array(Id).max(200).default([]),
  /** Clips and voice notes about it. */
  clipIds: z.array(Id).max(50).optional(),
  audioIds: z.array(Id).max(50).optional(),
  observationIds: z.array(Id).max(200).default([]),
  when: Instant,
  who: Label,
  note: Words.optional(),
});
export type Finding = z.infer<typeof Finding>;
