import { EngineError } from '../numerics/engine-error.ts';

const INCH_NM = 25_400_000;
const SIXTY_FOURTH_NM = 396_875;

/** Options of `formatFeetInches`. */
export interface FeetInchesOptions {
  /** Fractions of an inch to round to: 1, 2, 4, 8, 16, 32 or 64. */
  readonly denominator: number;
}

/**
 * A length as read on a tape, e.g. `12' 6 1/2"`, rounded to the nearest fraction (ties away from zero) with fractions
 * in lowest terms. Under a foot there are no feet: `6 1/2"`. A negative offset has a leading minus. What it prints,
 * `parseLength` reads back, except a minus.
 * @param meters length, m
 * @throws EngineError `not-finite` for a length that is no number, `bad-input` for another denominator
 */
export function formatFeetInches(
  meters: number,
  { denominator }: FeetInchesOptions = { denominator: 16 },
): string {
  const { negative, feet, inches, fraction } = tapeParts(meters, denominator);
  const inchText = [inches > 0 || !fraction ? String(inches) : '', fraction].filter(Boolean).join(' ');
  const text = feet === 0 ? `${inchText}"` : `${feet}' ${inchText}"`;
  return negative ? `-${text}` : text;
}

/**
 * A metric length: meters to the millimeter from 1 m up (`3.823 m`), whole millimeters below (`165 mm`).
 * @param meters length, m
 * @throws EngineError `not-finite`
 */
export function formatMetric(meters: number): string {
  requireFinite(meters);
  const mm = Math.round(Math.abs(meters) * 1000);
  const text = mm < 1000 ? `${mm} mm` : `${(mm / 1000).toFixed(3)} m`;
  return meters < 0 && mm > 0 ? `-${text}` : text;
}

/** Meters of an exact length in nanometers. */
export function metersFromNanometers(nanometers: number): number {
  return nanometers / 1e9;
}

/** Nearest whole nanometers of a length in meters. */
export function nanometersFromMeters(meters: number): number {
  return Math.round(meters * 1e9);
}

/** `12 ft 6 1/2 in`; says `about` when the length is not a whole number of 64ths and is rounded to 16ths. */
export function feetInchesOfNanometers(nanometers: number): string {
  const exact = nanometers % SIXTY_FOURTH_NM === 0;
  const { feet, inches, fraction } = tapeParts(nanometers / 1e9, exact ? 64 : 16);
  const inchText = [inches > 0 || (!fraction && feet === 0) ? String(inches) : '', fraction]
    .filter(Boolean)
    .join(' ');
  const text = [feet > 0 ? `${feet} ft` : '', inchText ? `${inchText} in` : ''].filter(Boolean).join(' ');
  return exact ? text : `about ${text}`;
}

function tapeParts(meters: number, denominator: number) {
  requireFinite(meters);
  if (![1, 2, 4, 8, 16, 32, 64].includes(denominator)) {
    throw new EngineError(
      'bad-input',
      `a tape is read to 1, 2, 4, 8, 16, 32 or 64 parts of an inch; got ${denominator}`,
    );
  }
  const nanometers = Math.round(Math.abs(meters) * 1e9);
  const parts = Math.round((nanometers * denominator) / INCH_NM);
  const partsPerFoot = 12 * denominator;
  const feet = Math.floor(parts / partsPerFoot);
  const inches = Math.floor((parts % partsPerFoot) / denominator);
  let numerator = parts % denominator;
  let reduced = denominator;
  while (numerator > 0 && numerator % 2 === 0) {
    numerator /= 2;
    reduced /= 2;
  }
  return {
    negative: meters < 0 && parts > 0,
    feet,
    inches,
    fraction: numerator > 0 ? `${numerator}/${reduced}` : '',
  };
}

function requireFinite(meters: number): void {
  if (!Number.isFinite(meters))
    throw new EngineError('not-finite', `length in m must be a number; got ${meters}`);
}
