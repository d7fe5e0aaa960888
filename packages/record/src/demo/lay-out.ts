import type { JobInput } from '../schema/job.ts';
import type { PlanInput } from '../schema/plan.ts';
import type { Point, TapedLength } from '../schema/scalars.ts';

const NM_PER_INCH = 25_400_000;
const M_PER_FOOT = 0.3048;

/** A length as a surveyor types it: feet, inches, sixteenths. */
export function tape(feet: number, inches = 0, sixteenths = 0): TapedLength {
  const fraction = sixteenths === 0 ? '' : ` ${sixteenths}/16`;
  const nm = (feet * 12 + inches) * NM_PER_INCH + (sixteenths * NM_PER_INCH) / 16;
  return { nm, typed: `${feet}' ${inches}${fraction}"` };
}

/** A point given in feet. */
export function feet(x: number, y: number): Point {
  return { xM: round(x * M_PER_FOOT), yM: round(y * M_PER_FOOT) };
}

/** A length given in inches [m]. */
export function inches(value: number): number {
  return round(value * 0.0254);
}

/** Temperature given in °F [°C], to a tenth as a meter shows it. */
export function fahrenheit(value: number): number {
  return Math.round(((value - 32) / 1.8) * 10) / 10;
}

function round(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}

/** A row of piers at even spacing between two points given in feet, ends included. */
export function pierRow(
  prefix: string,
  from: readonly [number, number],
  to: readonly [number, number],
  count: number,
  rest: (index: number) => Omit<PierInput, 'id' | 'at'>,
): PierInput[] {
  return Array.from({ length: count }, (_, i) => {
    const t = count === 1 ? 0 : i / (count - 1);
    const at = feet(from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1]));
    return { id: `${prefix}${i + 1}`, at, ...rest(i) };
  });
}

type PierInput = NonNullable<PlanInput['piers']>[number];

type ObservationInput = NonNullable<NonNullable<JobInput['readings']>['observations']>[number];
type WoodInput = NonNullable<NonNullable<JobInput['readings']>['wood']>[number];

/** What was measured or answered, where, in what words. */
export type Seen = readonly [quantity: string, value: number | boolean, at?: Point, note?: string];

/** Observations of one visit, numbered in the order given. */
export function observations(
  prefix: string,
  taken: { readonly when: string; readonly who: string },
  seen: readonly Seen[],
): ObservationInput[] {
  return seen.map(([quantity, value, at, note], i) => ({
    id: `${prefix}${i + 1}`,
    quantity,
    value,
    ...(at === undefined ? {} : { place: { at } }),
    ...(note === undefined ? {} : { note }),
    ...taken,
  }));
}

/** Pin readings of one visit: member, percent as the meter showed it, where. */
export function pins(
  prefix: string,
  taken: { readonly when: string; readonly who: string; readonly instrument?: string },
  wood: { readonly species: string; readonly woodTemperatureC: number },
  shown: readonly (readonly [member: WoodInput['member'], percent: number, at: Point])[],
): WoodInput[] {
  return shown.map(([member, percent, at], i) => ({
    id: `${prefix}${i + 1}`,
    member,
    place: { at },
    shown: Math.round(percent * 10) / 1000,
    ...wood,
    ...taken,
  }));
}

/** Answers to questions about the job that no reading settles. */
export function answers(
  taken: { readonly when: string; readonly who: string },
  given: Readonly<Record<string, boolean | string>>,
): NonNullable<NonNullable<JobInput['readings']>['answers']> {
  return Object.entries(given).map(([question, answer], i) => ({
    id: `an${i + 1}`,
    question,
    answer,
    ...taken,
  }));
}
