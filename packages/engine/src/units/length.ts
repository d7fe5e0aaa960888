import { feetInchesOfNanometers, formatMetric } from './length-format.ts';
import { type LengthToken, type LengthUnit, lengthTokens } from './length-tokens.ts';
import { commaProblem, normalizeTyped } from './normalize-typed.ts';

/** A typed length that was understood, or why it was not. */
export type ParsedLength =
  | {
      readonly ok: true;
      /** Exact integer; 1/64 in is 396 875 nm. Decimals finer than 1 nm are rounded to it. */
      readonly nanometers: number;
      /** The reading in both systems, to be shown back at once, e.g. `12 ft 6 1/2 in = 3.823 m`. */
      readonly reading: string;
    }
  | {
      readonly ok: false;
      /** What is wrong or unclear. */
      readonly problem: string;
      /** What to type instead. */
      readonly hint: string;
    };

const NANOMETERS: Readonly<Record<LengthUnit, bigint>> = {
  ft: 304_800_000n,
  in: 25_400_000n,
  m: 1_000_000_000n,
  cm: 10_000_000n,
  mm: 1_000_000n,
};
const WRITING = `write e.g. 12' 6 1/2", 12ft 6-1/2in, 12 6 1/2, 150.5in, 3.81m or 381cm`;
const TAPE_DENOMINATORS = [2, 4, 8, 16, 32, 64];

/**
 * Reads a length as it is typed on site: feet, inches and fractions of an inch down to 64ths, or meters, centimeters,
 * millimeters. What could mean two things is asked about, never guessed: a bare number is refused with its possible
 * readings unless `defaultUnit` says in which unit the field is.
 *
 * Refused with a reason: decimal or thousands commas, negative lengths, inches of 12 or more after feet, fractions of
 * one or more or not on a tape, inches before feet, mixed systems, lengths beyond 9 007 km. Never throws.
 * Exact definitions: 1 in = 25.4 mm, 1 ft = 12 in.
 * @param text as typed; curly quotes, prime marks and fraction characters are understood
 * @param defaultUnit the unit that a number without one is in
 */
export function parseLength(text: string, defaultUnit?: LengthUnit): ParsedLength {
  const typed = normalizeTyped(text);
  if (typed === '') return refuse('no length was typed', WRITING);
  const comma = commaProblem(typed);
  if (comma) return { ok: false, ...comma };
  if (typed.startsWith('-')) return refuse(`"${typed}" is negative`, 'type the length without a sign');

  const cut = lengthTokens(typed);
  if ('unknown' in cut) return refuse(`"${cut.unknown}" in "${typed}" is not part of a length`, WRITING);
  const pieces = withoutJoiningDashes(cut.tokens);
  if (!pieces) return refuse(`"${typed}" has a dash that joins nothing`, WRITING);
  for (const piece of pieces) {
    const problem = piece.kind === 'fraction' && fractionProblem(piece);
    if (problem)
      return refuse(`"${typed}": ${problem}`, 'halves to 64ths of an inch can be typed, e.g. 6 3/8"');
  }
  return readPieces(typed, pieces, defaultUnit);
}

function refuse(problem: string, hint: string): ParsedLength {
  return { ok: false, problem, hint };
}

/** A dash may stand between feet and inches, between inches and their fraction, and before a unit (`6-inch`). */
function withoutJoiningDashes(tokens: readonly LengthToken[]): readonly LengthToken[] | undefined {
  const kept: LengthToken[] = [];
  for (const [index, token] of tokens.entries()) {
    if (token.kind !== 'dash') {
      kept.push(token);
      continue;
    }
    const before = tokens[index - 1];
    const after = tokens[index + 1];
    const joins =
      (before?.kind === 'number' || (before?.kind === 'unit' && before.unit === 'ft')) &&
      (after?.kind === 'number' ||
        after?.kind === 'fraction' ||
        (after?.kind === 'unit' && before.kind === 'number'));
    if (!joins) return undefined;
  }
  return kept;
}

function fractionProblem(piece: {
  numerator: number;
  denominator: number;
  text: string;
}): string | undefined {
  if (!TAPE_DENOMINATORS.includes(piece.denominator)) return `${piece.text} is not a fraction on a tape`;
  if (piece.numerator >= piece.denominator) return `the fraction ${piece.text} is one or more`;
  return undefined;
}

/** Numbers up to the next unit: a count and a fraction of it. */
interface Part {
  readonly numbers: readonly string[];
  readonly fraction: { readonly numerator: number; readonly denominator: number } | undefined;
  readonly unit: LengthUnit | undefined;
}

function partsOf(pieces: readonly LengthToken[]): readonly Part[] | undefined {
  const parts: Part[] = [];
  let numbers: string[] = [];
  let fraction: Part['fraction'];
  for (const piece of pieces) {
    if (piece.kind === 'unit') {
      if (numbers.length === 0 && !fraction) return undefined;
      parts.push({ numbers, fraction, unit: piece.unit });
      numbers = [];
      fraction = undefined;
    } else if (fraction) {
      return undefined;
    } else if (piece.kind === 'fraction') {
      fraction = piece;
    } else if (piece.kind === 'number') {
      numbers.push(piece.text);
    }
  }
  if (numbers.length > 0 || fraction) parts.push({ numbers, fraction, unit: undefined });
  return parts;
}

function readPieces(
  typed: string,
  pieces: readonly LengthToken[],
  defaultUnit: LengthUnit | undefined,
): ParsedLength {
  const parts = partsOf(pieces);
  const first = parts?.[0];
  if (!parts || !first || parts.length > 2) return refuse(`"${typed}" is not a length`, WRITING);
  const second = parts[1];
  if (first.numbers.length > 2 || (second && second.numbers.length > 1)) {
    return refuse(`"${typed}" has too many numbers`, WRITING);
  }

  if (second) {
    if (first.unit === 'in' && second.unit === 'ft') {
      return refuse(`"${typed}" has inches before feet`, `write feet first, e.g. 5' 7"`);
    }
    if (first.unit !== 'ft' || (second.unit ?? 'in') !== 'in' || first.numbers.length > 1) {
      return refuse(`"${typed}" mixes units`, WRITING);
    }
    return feetAndInches(typed, first.numbers[0], first.fraction, second.numbers[0], second.fraction);
  }
  if (first.numbers.length === 2) {
    if (first.unit !== undefined && first.unit !== 'in')
      return refuse(`"${typed}" has too many numbers`, WRITING);
    if (first.unit === undefined && !first.fraction && isMetric(defaultUnit)) {
      return refuse(`"${typed}" could be feet and inches, or two numbers in ${defaultUnit}`, WRITING);
    }
    return feetAndInches(typed, first.numbers[0], undefined, first.numbers[1], first.fraction);
  }
  return onePart(typed, first, defaultUnit);
}

function isMetric(unit: LengthUnit | undefined): boolean {
  return unit === 'm' || unit === 'cm' || unit === 'mm';
}

function onePart(typed: string, part: Part, defaultUnit: LengthUnit | undefined): ParsedLength {
  const [number] = part.numbers;
  if (number?.includes('.') && part.fraction) {
    return refuse(`"${typed}" has a decimal and a fraction`, 'use one or the other, e.g. 6.5in or 6 1/2in');
  }
  if (part.fraction && isMetric(part.unit)) {
    return refuse(
      `"${typed}" has a fraction of a metric unit`,
      'write metric lengths with a decimal point, e.g. 3.5m',
    );
  }
  const unit = part.unit ?? (part.fraction && isMetric(defaultUnit) ? undefined : defaultUnit);
  if (unit) return accept(typed, amount(number, part.fraction, unit));

  const bare = part.fraction ? typed : (number ?? typed);
  const readings = part.fraction ? [`${bare} in`, `${bare} ft`] : [`${bare} ft`, `${bare} in`];
  if (!part.fraction) {
    const asCrewsWrite = /^(\d+)\.(\d{1,2})$/.exec(bare);
    if (asCrewsWrite && Number(asCrewsWrite[2]) < 12) {
      readings.push(`${asCrewsWrite[1]} ft ${Number(asCrewsWrite[2])} in`);
    }
    readings.push(`${bare} m`, `${bare} cm`);
  }
  const last = readings.pop();
  return refuse(
    `"${typed}" has no unit: it could be ${readings.join(', ')} or ${last}`,
    `add the unit, e.g. ${bare}in or ${bare}ft`,
  );
}

function feetAndInches(
  typed: string,
  feet: string | undefined,
  feetFraction: Part['fraction'],
  inches: string | undefined,
  inchFraction: Part['fraction'],
): ParsedLength {
  if (feetFraction || feet === undefined || feet.includes('.')) {
    return refuse(
      `"${typed}" has a part of a foot and inches`,
      `write whole feet before inches, e.g. 12' 6"`,
    );
  }
  if (inches?.includes('.') && inchFraction) {
    return refuse(`"${typed}" has a decimal and a fraction`, 'use one or the other, e.g. 6.5in or 6 1/2in');
  }
  if (inches !== undefined && Number(inches) >= 12) {
    return refuse(
      `"${typed}" has ${inches} inches after the feet, which is a foot or more`,
      'give 0 to 11 inches after feet, or the whole length in inches',
    );
  }
  return accept(typed, amount(feet, undefined, 'ft') + amount(inches, inchFraction, 'in'));
}

/** Nanometers of a decimal number and a fraction, rounded to the nearest where decimals are finer than that. */
function amount(decimal: string | undefined, fraction: Part['fraction'], unit: LengthUnit): bigint {
  const [whole = '', decimals = ''] = (decimal ?? '0').split('.');
  const scale = 10n ** BigInt(decimals.length);
  const scaled = BigInt(`${whole}${decimals}` || '0') * NANOMETERS[unit];
  const rounded = (2n * scaled + scale) / (2n * scale);
  if (!fraction) return rounded;
  return rounded + (BigInt(fraction.numerator) * NANOMETERS[unit]) / BigInt(fraction.denominator);
}

function accept(typed: string, nanometers: bigint): ParsedLength {
  if (nanometers > BigInt(Number.MAX_SAFE_INTEGER)) {
    return refuse(`"${typed}" is longer than 9007 km`, WRITING);
  }
  const value = Number(nanometers);
  return {
    ok: true,
    nanometers: value,
    reading: `${feetInchesOfNanometers(value)} = ${formatMetric(value / 1e9)}`,
  };
}
