import * as z from 'zod';

/** Random id of an item. Letters, digits, `-` and `_`, at most 64. */
export const Id = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/, 'an id of 1 to 64 letters, digits, - or _');

/** Check for a list within an item: a reference by id must mean one part of it. */
export function distinctIds({
  value,
  issues,
}: z.core.ParsePayload<readonly { readonly id: string }[]>): void {
  const seen = new Set<string>();
  value.forEach(({ id }, index) => {
    if (seen.has(id)) {
      issues.push({
        code: 'custom',
        path: [index, 'id'],
        message: 'an id that no other one here has',
        input: id,
      });
    }
    seen.add(id);
  });
}

/** Time stamp, ISO 8601 with offset, e.g. `2031-05-14T09:20:00-04:00`. */
export const Instant = z.iso.datetime({ offset: true, error: 'a time like 2031-05-14T09:20:00-04:00' });

/** Calendar date, ISO 8601. */
export const Day = z.iso.date({ error: 'a date like 2031-05-14' });

/** Plain text that a person wrote. */
export const Words = z.string().max(20_000);

/** Short label. */
export const Label = z.string().min(1).max(200);

/** Position along one axis of the plan [m]. The plan's x axis points right, its y axis up; `northDeg` turns it. */
const Coordinate = z.number().min(-1000).max(1000);

/** A point of the plan. */
export const Point = z.strictObject({ xM: Coordinate, yM: Coordinate });
export type Point = z.infer<typeof Point>;

/** A size [m], more than nothing. */
export const Size = z.number().positive().max(1000);

/** A height or distance [m] that may be nothing. */
export const Distance = z.number().min(0).max(1000);

/** A direction [degrees], clockwise from the plan's north (bearing). */
export const Bearing = z.number().min(0).lt(360);

/** Share of a whole, 0 to 1. */
export const Fraction = z.number().min(0).max(1);

/** Temperature of air, ground or a surface [°C]. */
export const Temperature = z.number().min(-60).max(80);

/** Thermal resistance [m²·K/W]. */
export const ThermalResistance = z.number().min(0).max(30);

/** Money, integer cents. */
export const Cents = z.int().min(-1e12).max(1e12);

/** Lower-case SHA-256 of a blob's bytes. */
export const Sha256 = z.string().regex(/^[0-9a-f]{64}$/, 'a SHA-256 as 64 lower-case hex digits');

/**
 * A length taken with a tape: exact integer nanometers (1/64 in = 396 875 nm), and the text as it was typed, so that
 * what the surveyor wrote is never lost to rounding.
 */
export const TapedLength = z.strictObject({
  nm: z.int().positive().max(1e12),
  typed: z.string().max(40).optional(),
});
export type TapedLength = z.infer<typeof TapedLength>;

/** What an item is fixed to or lies under. */
export const Reference = z.strictObject({
  kind: z.enum([
    'wall',
    'interior-wall',
    'pier',
    'girder',
    'duct',
    'vent',
    'door',
    'equipment',
    'obstacle',
    'zone',
    'drain',
  ]),
  id: Id,
});

/** Where something is: a point of the plan, a height over the floor, the thing it belongs to, or words. */
export const Place = z.strictObject({
  at: Point.optional(),
  heightM: z.number().min(-5).max(20).optional(),
  on: Reference.optional(),
  words: Words.optional(),
});
export type Place = z.infer<typeof Place>;

/** Who took a reading, when and with what. */
export const takenBy = {
  when: Instant,
  who: Label,
  instrument: Id.optional(),
};
