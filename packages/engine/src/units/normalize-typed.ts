const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

/**
 * What a keyboard or a phone put in, in plain marks: curly quotes and primes become ' and ", fraction characters become
 * `1/2`, long dashes and minus signs become -, odd spaces become one space. Meaning is not touched.
 */
export function normalizeTyped(text: string): string {
  return text
    .replace(/[\u2018\u2019\u201b\u2032\u02b9\u00b4`]/g, "'")
    .replace(/[\u201c\u201d\u201f\u2033\u02ba]/g, '"')
    .replace(/''/g, '"')
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (mark) => ` ${FRACTIONS[mark]}`)
    .replace(/\u2044/g, '/')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

/** A comma in a number, told the same way wherever numbers are typed. Undefined when there is none. */
export function commaProblem(typed: string): { readonly problem: string; readonly hint: string } | undefined {
  if (!typed.includes(',')) return undefined;
  return {
    problem: `"${typed}" has a comma, which could be a decimal mark or a thousands mark`,
    hint: 'write decimals with a point and thousands without a mark, e.g. 12.5 or 1250',
  };
}
