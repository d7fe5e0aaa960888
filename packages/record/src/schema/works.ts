import * as z from 'zod';
import { Cents, Day, Fraction, Id, Instant, Label, Place, Reference, Words } from './scalars.ts';

/** A repair that was chosen or rejected. */
export const RepairChoice = z.strictObject({
  id: Id,
  repair: z.enum([
    'ground-liner',
    'seal-edges',
    'wrap-piers',
    'close-vents',
    'open-vents',
    'air-seal-floor',
    'drain',
    'sump',
    'dehumidifier',
    'circulating-fan',
    'soil-gas-exhaust',
    'exhaust-fan',
    'remove-insulation',
    'insulate-walls',
    'wood-treatment',
    'regrade',
    'clear-debris',
  ]),
  chosen: z.boolean().default(true),
  priceCents: Cents.optional(),
  note: Words.optional(),
});

/** A machine the estimator may choose; the list is the user's own. */
export const Machine = z.strictObject({
  id: Id,
  name: Label,
  ratedKgPerDay: z.number().positive().max(1000),
  ratingPoint: z.enum(['80F-60', '73F-60', '65F-60']),
  litersPerKWh: z.number().positive().max(20).optional(),
  airflowM3PerS: z.number().positive().max(10).optional(),
  priceCents: Cents.optional(),
});

const designFields = {
  targetRelativeHumidity: Fraction.default(0.55),
  note: Words.optional(),
};

/** Fields of the design itself; its parts are lists of their own. */
export const DesignFields = z.strictObject(designFields);

export const Design = z.strictObject({
  ...designFields,
  repairs: z.array(RepairChoice).default([]),
  machines: z.array(Machine).default([]),
});
export type Design = z.infer<typeof Design>;

/** A price of the user's own price book. */
export const PriceLine = z.strictObject({
  id: Id,
  title: Label,
  unit: z.enum(['each', 'm', 'm2', 'm3', 'hour', 'lot']),
  cents: Cents,
  asOf: Day.optional(),
});

/** What a claim of "done" is about: every one of a kind, or one thing of the plan. */
const ClaimSubject = z.union([
  z.strictObject({ all: z.enum(['floor', 'walls', 'piers', 'vents', 'bays']) }),
  Reference,
]);

const ClaimSubjects = z.array(ClaimSubject).min(1).max(200);

/** A step of the build, as done. */
export const BuildStep = z.strictObject({
  id: Id,
  title: Label,
  state: z.enum(['open', 'done', 'stopped']),
  when: Instant.optional(),
  who: Label.optional(),
  /** What pictures of the finished step have to show; absent where that was not said. */
  about: ClaimSubjects.optional(),
  photoIds: z.array(Id).max(200).default([]),
  note: Words.optional(),
});

/** A claim of "done" at handover and its proof. */
export const AcceptanceItem = z.strictObject({
  id: Id,
  criterion: z.string().max(60),
  /** The claim in the words of whoever made it. */
  title: Label.optional(),
  claimed: z.boolean(),
  /** What its pictures have to show; absent where the criterion says it. */
  about: ClaimSubjects.optional(),
  photoIds: z.array(Id).max(200).default([]),
  when: Instant,
  who: Label,
  note: Words.optional(),
});

export type ClaimSubject = z.infer<typeof ClaimSubject>;

/** A visit or alarm after handover. */
export const WatchEvent = z.strictObject({
  id: Id,
  kind: z.enum(['visit', 'alarm', 'service', 'owner-note']),
  place: Place.optional(),
  when: Instant,
  who: Label,
  note: Words.optional(),
});
