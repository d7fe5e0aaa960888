/** Units in which a length is typed on site. */
export type LengthUnit = 'ft' | 'in' | 'm' | 'cm' | 'mm';

/** A piece of a typed length. */
export type LengthToken =
  | { readonly kind: 'number'; readonly text: string }
  | {
      readonly kind: 'fraction';
      readonly numerator: number;
      readonly denominator: number;
      readonly text: string;
    }
  | { readonly kind: 'unit'; readonly unit: LengthUnit }
  | { readonly kind: 'dash' };

const UNIT_WORDS: Readonly<Record<string, LengthUnit>> = {
  "'": 'ft',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  pie: 'ft',
  pies: 'ft',
  '"': 'in',
  in: 'in',
  inch: 'in',
  inches: 'in',
  pulg: 'in',
  pulgada: 'in',
  pulgadas: 'in',
  m: 'm',
  meter: 'm',
  meters: 'm',
  metro: 'm',
  metros: 'm',
  cm: 'cm',
  mm: 'mm',
};

const PIECE = /\s*(?:(\d+)\s*\/\s*(\d+)|(\d+\.\d+|\.\d+|\d+)|(['"]|[a-z]+)\.?|(-))\s*/y;

/**
 * Cuts a normalized text into pieces. A text that has something else in it gives that rest, for the message.
 * A whole number directly before a fraction stays a piece of its own (`6 1/2`).
 */
export function lengthTokens(
  normalized: string,
): { readonly tokens: readonly LengthToken[] } | { readonly unknown: string } {
  const text = normalized.toLowerCase();
  const tokens: LengthToken[] = [];
  PIECE.lastIndex = 0;
  while (PIECE.lastIndex < text.length) {
    const start = PIECE.lastIndex;
    const match = PIECE.exec(text);
    if (!match) return { unknown: text.slice(start) };
    const [, numerator, denominator, number, word] = match;
    if (numerator !== undefined && denominator !== undefined) {
      tokens.push({
        kind: 'fraction',
        numerator: Number(numerator),
        denominator: Number(denominator),
        text: `${numerator}/${denominator}`,
      });
    } else if (number !== undefined) {
      tokens.push({ kind: 'number', text: number });
    } else if (word !== undefined) {
      const unit = UNIT_WORDS[word];
      if (!unit) return { unknown: word };
      tokens.push({ kind: 'unit', unit });
    } else {
      tokens.push({ kind: 'dash' });
    }
  }
  return { tokens };
}
